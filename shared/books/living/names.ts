/** eggsNeeded → eggs_needed: a key as the name of a cell. */
export const nameOf = (key: string): string => key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
