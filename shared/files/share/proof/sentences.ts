import type { Proof } from './search';

const SHOWN = 40;

/** The outcome for the person who makes the copy; it names places, never values. */
export function proofSentences({ parts, values, short, places, more: beyond }: Proof): string[] {
  const rest =
    short > 0
      ? ` ${short} more cells hold values of one or two signs, which stand in every workbook by chance and were not looked for.`
      : '';
  if (places.length === 0)
    return [
      `All ${parts} parts of the copy were searched for the ${values} values left out: none is in it.${rest}`,
    ];
  const list = places.slice(0, SHOWN).join('; ');
  const others = places.length - Math.min(SHOWN, places.length) + beyond;
  const more = others > 0 ? ` and ${others} more places` : '';
  return [
    `Values equal to some of the ${values} left out stand in: ${list}${more}. They were not worked out from what is left out, so they were kept; leave them out too if they tell.${rest}`,
  ];
}
