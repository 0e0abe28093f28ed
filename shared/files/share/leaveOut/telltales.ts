import { lex } from '../references/lex';

/**
 * Words that would give away what was blanked: every blanked text or number, looked for wherever text can
 * stand. A text is found as whole words in any letter case; a telephone number also with other spaces, and
 * with or without its country in front.
 */
export class Telltales {
  private readonly exact = new Set<string>();
  private readonly byFirstWord = new Map<string, string[][]>();
  /** Digits of telephone-like values, and their endings. */
  private readonly digits = new Set<string>();
  private readonly endings = new Set<string>();

  get size(): number {
    return this.exact.size;
  }

  add(raw: string): void {
    const text = raw.trim().toLowerCase();
    const words = wordsOf(text);
    if (words.length === 0 || !isTelling(text)) return;
    this.exact.add(text);
    const [first = ''] = words;
    if (words.length > 1 || (first.length > 3 && !isNumeric(text))) {
      const list = this.byFirstWord.get(first) ?? [];
      if (!list.some((one) => one.join(' ') === words.join(' '))) list.push(words);
      this.byFirstWord.set(first, list);
    }
    const digits = text.replace(/\D/g, '');
    if (digits.length < SHORTEST || /[a-z]{2}|\.\d+e/.test(text)) return;
    this.digits.add(digits);
    for (let cut = 1; cut <= COUNTRY && digits.length - cut >= SHORTEST; cut++)
      this.endings.add(digits.slice(cut));
  }

  /** Does the text give away a blanked value? */
  in(raw: string): boolean {
    if (this.exact.size === 0) return false;
    const text = raw.trim().toLowerCase();
    if (this.exact.has(text)) return true;
    const words = wordsOf(text);
    for (const [i, word] of words.entries())
      for (const wanted of this.byFirstWord.get(word) ?? [])
        if (wanted.every((one, k) => words[i + k] === one)) return true;
    return (
      this.digits.size > 0 &&
      (text.match(/\+?\d[\d\s().\-/]*\d/g) ?? []).some((run) => this.hasDigits(run.replace(/\D/g, '')))
    );
  }

  /** In a formula only what it spells out counts: texts and numbers, not the addresses it reads. */
  inFormula(formula: string): boolean {
    return (
      this.exact.size > 0 &&
      lex(formula).some((piece) => {
        if (piece.kind !== 'string' && piece.kind !== 'literal') return false;
        const text = formula.slice(piece.at, piece.end);
        return this.in(piece.kind === 'string' ? text.slice(1, -1).replaceAll('""', '"') : text);
      })
    );
  }

  private hasDigits(run: string): boolean {
    if (run.length < SHORTEST) return false;
    if (this.digits.has(run) || this.endings.has(run)) return true;
    for (let cut = 1; cut <= COUNTRY; cut++)
      if (run.length - cut >= SHORTEST && this.digits.has(run.slice(cut))) return true;
    return false;
  }
}

/** Digits of the shortest telephone number that counts, and of the longest country code with its zeros. */
const SHORTEST = 7;
const COUNTRY = 5;

const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];
const isNumeric = (text: string): boolean => /^[-+\d.,e]+$/.test(text);

/** "yes", 12 or 0.5 stand in every workbook; names and telephone numbers do not. */
const isTelling = (text: string): boolean =>
  isNumeric(text) ? text.replace(/\D/g, '').length >= 5 : text.length >= 3;
