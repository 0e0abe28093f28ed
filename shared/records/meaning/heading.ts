import type { UnitSaid } from '../columns/cells/units';
import { unitOfText } from '../columns/cells/units';
import { fold } from '../words/fold';

/** A heading taken apart: the words that name the thing, the unit it is kept in, what a number stands for. */
export interface HeadingSaid {
  readonly text: string;
  /** Without brackets, units and multipliers. */
  readonly words: string;
  readonly unit: UnitSaid | undefined;
  /** 1000 for "Fry ('000)". */
  readonly times: number;
  /** The text without what a bracket only remarks: "(0.3 mg/kg)" beside a dose in mg. */
  readonly said: string;
}

const BRACKETS = /[([{]([^)\]}]*)[)\]}]/g;
const TIMES: readonly (readonly [RegExp, number])[] = [
  [
    /^(?:x ?|× ?)?(?:'?000s?|1[ .,]?000|k|thousands?|thou|mille|milliers?|mil|milhares|milheiros?|millares?|miles|ribu|ribuan|rb|nghin|ngan|hazar|elfu|الف)$/,
    1000,
  ],
  [/^(?:x ?)?(?:lakhs?|lacs?)$/, 1e5],
  [/^(?:x ?)?(?:millions?|million|milhoes|millones|juta|jt|trieu|مليون)$/, 1e6],
  [/^(?:x ?)?(?:van|man|10[ .,]?000)$/, 1e4],
];
const timesOf = (text: string): number | undefined =>
  TIMES.find(([word]) => word.test(fold(text).replace(/^(?:in|en|em|x|dalam|tinh bang) /, '')))?.[1];

/** "in kg", "en g": the unit behind a little word. */
const IN_UNIT = /[\s,;:/-]+(?:in|en|em|dalam|(?:tinh )?bang)?\s*([^\s,;()]+)$/i;
const SHORT_WORDS =
  /^(?:no|nos|n|number|day|days|hari|jour|dia|d|min|of|oc|un|u|fish|eggs|alevins|ekor|butir|con|in|saa|jam|gio|s|h|m|hora|heure|hour|jours|dias|horas|heures)$/i;

class Reader {
  unit: UnitSaid | undefined;
  times = 1;

  take(inside: string): string {
    const times = timesOf(inside);
    if (times !== undefined) {
      this.times = times;
      return ' ';
    }
    const named = unitOfText(inside);
    if (named) {
      this.unit ??= named;
      return ' ';
    }
    const [first = '', ...rest] = inside.split(/[\s,;]+/);
    const factor = timesOf(first);
    if (factor !== undefined && rest.length <= 1) {
      this.times = factor;
      return ' ';
    }
    return ` ${inside} `;
  }
}

/** "(4000/kg)", "(0.5 ml/kg)": a number with its unit says how it is done, not what the column is kept in. */
function isRemark(inside: string): boolean {
  const [, number = '', rest = ''] = /^([\d.,]+)\s*(\D+)$/.exec(inside) ?? [];
  return (
    number !== '' &&
    number !== '1' &&
    (/^\/\s*kg/i.test(rest) || (/\//.test(rest) && unitOfText(rest) !== undefined))
  );
}

const remembered = new Map<string, HeadingSaid>();

/** Anything counted in a gram or a millilitre, whatever it is called. */
const perOf = (text: string): UnitSaid | undefined => {
  const [, of = '', per = ''] = /(\S*)\s*\/\s*(g|gr|gram|ml)$/i.exec(text.trim()) ?? [];
  return of === '' || (unitOfText(of)?.of ?? 'count') !== 'count'
    ? undefined
    : unitOfText(/ml/i.test(per) ? '/ml' : '/g');
};

/** What is in one gram: "par g", "eggs in 1 g", "telur 1 g". */
const PER_ONE =
  /(?:^|\s)(?:(?:per|par|por|tiap|moi|proti|kwa|in (?:one|a))\s+|1\s?)(g|gr|gram|gramme|grama|gramo|ml)\b/i;

/** Units written outside brackets: "eggs/g", "per g", "%", "°C". */
function takeSigns(bare: string, reader: Reader): void {
  const slash = /(\S*)\s*\/\s*(?:g|gr|gram|ml|kg|l|day|jour|dia|hari)\b/i.exec(bare);
  if (slash) reader.unit ??= unitOfText(slash[0].trim()) ?? perOf(slash[0]);
  const [, per] = PER_ONE.exec(bare) ?? [];
  if (per) reader.unit ??= unitOfText(/ml/i.test(per) ? '/ml' : '/g');
  if (bare.includes('%')) reader.unit ??= unitOfText('%');
  const degree = /[°º]\s*([cf])\b/i.exec(bare);
  if (degree) reader.unit ??= unitOfText(`°${degree[1] ?? ''}`);
}

/** A unit or multiplier as the last word; answers what is left. */
function takeLast(bare: string, reader: Reader): string {
  const last = IN_UNIT.exec(bare)?.[1] ?? '';
  if (last === '' || SHORT_WORDS.test(last) || (reader.unit && unitOfText(last)?.of !== reader.unit.of))
    return bare;
  const named = unitOfText(last);
  const times = timesOf(last);
  if (named && !reader.unit) reader.unit = named;
  else if (times !== undefined && reader.times === 1) reader.times = times;
  return named || times !== undefined
    ? bare.slice(0, -last.length).replace(/[\s,;:/-]+(?:in|en|em|dalam)?\s*$/i, ' ')
    : bare;
}

function fresh(text: string): HeadingSaid {
  const reader = new Reader();
  const said = text.replace(BRACKETS, (whole, inside: string) => (isRemark(inside.trim()) ? ' ' : whole));
  const bare = said.replace(BRACKETS, (_, inside: string) => reader.take(inside.trim()));
  takeSigns(bare, reader);
  const left = takeLast(bare.trim(), reader);
  return { text, words: left.replace(/\s+/g, ' ').trim(), unit: reader.unit, times: reader.times, said };
}

export function headingOf(text: string): HeadingSaid {
  let said = remembered.get(text);
  if (!said) {
    if (remembered.size > 4000) remembered.clear();
    remembered.set(text, (said = fresh(text)));
  }
  return said;
}
