/**
 * Words that would give away what was blanked: every blanked text or number, looked for wherever text can stand. A text is found as
 * whole words in any letter case; a long number also when it is grouped differently.
 */
export class Telltales {
  private readonly exact = new Set<string>();
  private readonly byFirstWord = new Map<string, string[][]>();
  private readonly digits = new Set<string>();
  private readonly endings = new Set<string>();
  private digitLengths: readonly number[] = [];

  get size(): number { return this.exact.size; }

  add(raw: string): void {
    const text = raw.trim().toLowerCase();
    const words = wordsOf(text);
    if (words.length === 0 || !isTelling(text)) return;
    this.exact.add(text);
    const [first = ''] = words;
    if (words.length > 1 || first.length > 3) {
      const list = this.byFirstWord.get(first) ?? [];
      if (!list.some((one) => one.join(' ') === words.join(' '))) list.push(words);
      this.byFirstWord.set(first, list);
    }
    const digits = text.replace(/\D/g, '');
    if (digits.length >= 6 && !/[a-z]{2}/.test(text)) {
      this.digits.add(digits);
      for (let cut = 1; digits.length - cut >= 7; cut++) this.endings.add(digits.slice(cut));
      this.digitLengths = [...new Set([...this.digitLengths, digits.length])];
    }
  }

  /** Does the text give away a blanked value? */
  in(raw: string): boolean {
    if (this.exact.size === 0) return false;
    const text = raw.trim().toLowerCase();
    if (this.exact.has(text)) return true;
    const words = wordsOf(text);
    for (const [i, word] of words.entries())
      for (const wanted of this.byFirstWord.get(word) ?? []) if (wanted.every((one, k) => words[i + k] === one)) return true;
    return this.digits.size > 0 && this.hasDigits(text);
  }

  private hasDigits(text: string): boolean {
    for (const run of text.match(/\+?\d[\d\s().\-/]*\d/g) ?? []) {
      const digits = run.replace(/\D/g, '');
      // A telephone number is often written without its country in front.
      if (digits.length >= 7 && this.endings.has(digits)) return true;
      for (const length of this.digitLengths)
        for (let i = 0; i + length <= digits.length; i++) if (this.digits.has(digits.slice(i, i + length))) return true;
    }
    return false;
  }
}

const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];

/** "yes", 12 or 0.5 stand in every workbook; names and telephone numbers do not. */
const isTelling = (text: string): boolean => (/^[-+\d.,e]+$/.test(text) ? text.replace(/\D/g, '').length >= 5 : text.length >= 3);
