/**
 * The one canonical unit per quantity. A parameter or a result names one of these; the unit text in help,
 * headings and errors comes from here. `slip` names the likely mistake behind a value that is out of bounds.
 */
export interface Quantity<U extends string = string> {
  /** Unit as printed, '' for a bare number. */
  readonly unit: U;
  /** What is measured, in the words of the trade. */
  readonly noun: string;
  /** Excel number format for cells that show it. */
  readonly format: string;
  readonly slip?: (value: number) => string | undefined;
}

declare const flavour: unique symbol;
/** A number that remembers its unit: a plain number fits, a number of another unit does not. */
export type Measure<U extends string> = number & { readonly [flavour]?: U };

const quantity = <U extends string>(
  unit: U,
  noun: string,
  format: string,
  slip?: (value: number) => string | undefined,
): Quantity<U> => (slip ? { unit, noun, format, slip } : { unit, noun, format });

/** What was moved by a power of ten, without the dust of the division: 0.48, not 0.48000000000000004. */
const clean = (value: number): number => Number(value.toPrecision(12));
const round1 = (value: number): number => Math.round(value * 10) / 10;

export const celsius = quantity('°C', 'temperature', '0.0', (t) =>
  t > 45 && t < 115 ? `That looks like °F: ${t} °F is ${round1(((t - 32) * 5) / 9)} °C.` : undefined,
);
export const share = quantity('share', 'share', '0.0%', (p) =>
  p > 1 && p <= 100
    ? `Excel stores ${p} % as ${clean(p / 100)}: type ${p}% or ${clean(p / 100)}.`
    : undefined,
);
export const moment = quantity('date and time', 'date and time', 'd mmm yyyy hh:mm', (t) =>
  t >= 0 && t < 1
    ? 'That looks like a clock time without its date: add the date, for example ' +
      '=DATE(2026,3,14)+TIME(8,30,0).'
    : undefined,
);
export const day = quantity('date', 'date', 'd mmm yyyy');

export const litre = quantity('L', 'volume', '#,##0.0', (v) =>
  v > 1e6 ? 'That looks like millilitres.' : undefined,
);
export const millilitre = quantity('mL', 'volume', '#,##0.00');
export const cubicMetre = quantity('m³', 'volume', '#,##0.000');
export const centimetre = quantity('cm', 'length', '#,##0.0', (length) =>
  length > 0 && length < 10 ? `That looks like metres: ${length} m is ${clean(100 * length)} cm.` : undefined,
);
export const millimetre = quantity('mm', 'length', '#,##0.0');
export const metre = quantity('m', 'length', '#,##0');
export const squareMetre = quantity('m²', 'area', '#,##0.00');
export const litrePerMinute = quantity('L/min', 'flow', '#,##0.0');

export const milligram = quantity('mg', 'weight', '#,##0.0');
export const gram = quantity('g', 'weight', '#,##0.00');
export const kilogram = quantity('kg', 'weight', '#,##0.000', (w) =>
  w > 30 ? `That looks like grams: ${w} g is ${clean(w / 1000)} kg.` : undefined,
);

export const spermPerMillilitre = quantity('per mL', 'sperm density', '0.00E+00', (n) =>
  n > 0 && n < 1000
    ? `That looks like thousands of millions: ${n} thousand million per mL is ${n}E9.`
    : undefined,
);
/** Hormone amounts come in mg, µg, IU or mL: the preparation says which. */
export const amount = quantity('', 'amount', '#,##0.00');
export const amountPerKilogram = quantity('per kg', 'dose', '#,##0.00');
export const amountPerMillilitre = quantity('per mL', 'concentration', '#,##0.00');
export const minutes = quantity('min', 'time span', '#,##0.0');

/**
 * Weight of one fish: a fresh larva is about a thousandth of a gram, so anything lighter was typed in
 * kilograms.
 */
export const fishGram = quantity('g', 'weight of one fish', '#,##0.000', (w) =>
  w > 0 && w < 0.0005
    ? `A fish of ${w} g is lighter than a new larva. That looks like kilograms: ${w} kg is ${clean(w * 1000)} g.`
    : w > 30000
      ? 'That looks like milligrams.'
      : undefined,
);
export const milligramPerHour = quantity('mg/h', 'rate', '#,##0');
export const microgram = quantity('µg', 'weight', '#,##0.000');
export const mgPerGram = quantity('mg/g', 'yield', '#,##0');
/** Vats hold litres, ponds have an area: the stage says which is meant. */
export const litreOrSquareMetre = quantity('L or m²', 'size of a vat or pond', '#,##0.0');
export const gramPerDay = quantity('g/d', 'daily amount', '#,##0.00');
export const perSquareMetre = quantity('per m²', 'number per square metre', '#,##0.0');
export const kilogramPerCubicMetre = quantity('kg/m³', 'weight of fish per volume', '#,##0.00');

export const pH = quantity('pH', 'pH', '0.00', (ph) =>
  ph < 3 || ph > 11
    ? 'No vat of water stands there: the meter is off, dry or not calibrated, or a digit slipped. ' +
      'Check it in a buffer and read again.'
    : undefined,
);
export const meqPerLitre = quantity('meq/L', 'alkalinity', '0.000', (a) =>
  a > 20 ? `That looks like mg/L CaCO3: ${a} mg/L is ${round1(a / 50.04)} meq/L.` : undefined,
);
export const mmolPerLitre = quantity('mmol/L', 'carbon', '0.000');
export const mgPerLitre = quantity('mg/L', 'concentration', '#,##0.000');
export const gPerLitre = quantity('g/L', 'concentration', '#,##0.00');
export const mgPerLitreCaCO3 = quantity('mg/L CaCO3', 'alkalinity or hardness', '#,##0.0');
export const microsiemens = quantity('µS/cm', 'conductivity', '#,##0');
export const partsPerMillion = quantity('ppm', 'CO2 in air', '#,##0');

export const seconds = quantity('s', 'time span', '#,##0.0');
export const perHour = quantity('per h', 'times per hour', '0.00');
export const hours = quantity('h', 'time span', '0.0');
export const days = quantity('d', 'time span', '0.0');
export const degreeHours = quantity('°C·h', 'warmth sum', '#,##0.0');

export const count = quantity('', 'number', '#,##0');
export const ratio = quantity('', 'ratio', '#,##0.000');
export const perGram = quantity('per g', 'number per gram', '#,##0.0');
export const perMillilitre = quantity('per mL', 'number per millilitre', '#,##0.0');
export const perLitre = quantity('per L', 'number per litre', '#,##0.0');
export const perKilogram = quantity('per kg', 'number per kilogram', '#,##0');
export const mgPerKg = quantity('mg/kg', 'dose', '#,##0.00');
export const mlPerKg = quantity('mL/kg', 'dose', '#,##0.00');
export const percentPerDay = quantity('%/d', 'daily rate', '0.00');
export const money = quantity('money', 'amount of money', '#,##0.00');
export const text = quantity('text', 'text', '@');
