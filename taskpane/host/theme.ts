/** The look and the language of the spreadsheet program around the pane. */

interface OfficeContext {
  readonly displayLanguage?: string;
  readonly officeTheme?: { readonly bodyBackgroundColor?: string; readonly isDarkTheme?: boolean };
}
const officeContext = (): OfficeContext | undefined =>
  (Reflect.get(globalThis, 'Office') as { context?: OfficeContext } | undefined)?.context;

export const hostLanguageTag = (): string => officeContext()?.displayLanguage ?? navigator.language;

/** Perceived lightness of #RRGGBB, 0 to 1 (weights of ITU-R BT.601). */
const lightness = (colour: string): number => {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour);
  if (!match) return 1;
  const [r, g, b] = match.slice(1).map((part) => parseInt(part, 16) / 255) as [number, number, number];
  return 0.299 * r + 0.587 * g + 0.114 * b;
};

/** Dark in a dark program, light in a light one, whatever the system says; without a word from it, the system. */
export function followTheme(root: Element): void {
  const theme = officeContext()?.officeTheme;
  const ground = theme?.bodyBackgroundColor;
  if (theme?.isDarkTheme === undefined && ground === undefined) return;
  const isDark = theme?.isDarkTheme ?? (ground !== undefined && lightness(ground) < 0.5);
  root.classList.toggle('dark', isDark);
  root.classList.toggle('light', !isDark);
}
