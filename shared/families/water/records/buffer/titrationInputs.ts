// Long: records of one kind of question, one after the other; each stands alone.
import { gram, meqPerLitre, microsiemens, moment, pH } from '../../../../units/quantities';
import type { CellError } from '../../../../base/values';
import { isError, outside, refuse } from '../../../../base/values';
import { hoursFromDays } from '../../../../units/convert';
import { constantsAt } from '../../carbonate/constants';
import type { MaterialName } from '../../carbonate/materials';
import { harmsFish, raisesPH, solubleGrams } from '../../carbonate/materials';
import type { MeterName, OriginName } from '../../titration/beliefs';
import { beliefsFrom, riskFor } from '../../titration/beliefs';
import { CEILING } from '../../titration/advise';
import type { EventName, Log } from '../../titration/log';
import type { Aim } from '../../titration/nextDose';
import type { Beliefs } from '../../titration/series';
import { neverWithFish } from '../refusals';
import { choice, flag, num, series, texts } from '../../../../functions/params';
import { backgroundOf, materialOf, materialParam, molesOf, purityParam, temperatureParam } from '../inputs';

/** The arguments of the functions that follow a dosing reading by reading, said once. */

const MOST_READINGS = 40;

export const dosesParam = series(gram, {
  min: 0,
  max: 1e7,
  pair: 'readings',
  blanks: 'keep',
  atLeast: 0,
  doc: 'Running total of product given since the start, g, one per reading; the first is 0.',
});
export const readingsParam = series(pH, {
  min: 3,
  max: 11,
  pair: 'readings',
  blanks: 'keep',
  doc: 'pH read after each dose, once mixed and steady; the first before any product.',
});
export const originParam = choice(['unknown', 'aerated', 'well', 'peat'] as const, {
  default: 'unknown',
  doc:
    'Where the water comes from: "aerated" after an hour of strong air, "well" for well ' +
    'or borehole water, rich in carbon dioxide, "peat" for water brown as tea from peat, leaves or forest.',
  aliases: {
    borehole: 'well',
    rain: 'aerated',
    aired: 'aerated',
    brown: 'peat',
    tannin: 'peat',
    forest: 'peat',
    bog: 'peat',
  },
});
export const meterParam = choice(['good', 'cheap', 'strips'] as const, {
  default: 'good',
  doc: 'How pH is read: "good" two decimals and calibrated, "cheap" one decimal, "strips" paper.',
});
const kitParam = num(meqPerLitre, {
  min: -5,
  max: 20,
  optional: true,
  doc: 'Alkalinity of the untouched water from a kit, if measured.',
});
const conductivityParam = num(microsiemens, {
  min: 0,
  max: 20000,
  default: 0,
  doc: 'Conductivity of the untouched water, if measured; it limits the alkalinity there can be.',
});

export const common = {
  temperature: temperatureParam,
  material: materialParam,
  purity: purityParam,
  origin: originParam,
  alkalinity: kitParam,
  conductivity: conductivityParam,
  meter: meterParam,
};

/** What else a notebook can hold, at the end of the arguments because it came later. */
export const notebook = {
  events: texts({
    pair: 'readings',
    optional: true,
    doc:
      'What happened before each reading: "aired" (strong air for an hour or more), "jar" (the reading is of ' +
      'a shaken or aired jar), "night", "refill", "change" (part of the water), "rain"; blank for ' +
      'nothing but the dose.',
  }),
  again: series(pH, {
    min: 3,
    max: 11,
    pair: 'readings',
    blanks: 'keep',
    optional: true,
    doc: 'Second reading some minutes after the first; blank where not taken. The two must agree.',
  }),
  at: series(moment, {
    min: 0,
    max: 3e6,
    pair: 'readings',
    blanks: 'keep',
    optional: true,
    doc: 'Date and time of each reading; three hours and more without a dose count as a night.',
  }),
  dosesAre: choice(['running totals', 'given before', 'given after'] as const, {
    default: 'running totals',
    doc:
      'What stands in doses: running totals; or each part-dose by itself, "given before" the reading of its ' +
      'row or "given after" it. Blank cells are then nothing given.',
    aliases: { totals: 'running totals', before: 'given before', after: 'given after' },
  }),
  bufferRead: num(pH, {
    min: 1,
    max: 13,
    optional: true,
    doc: 'What the meter shows in a fresh buffer solution; its error is taken off every reading.',
  }),
  bufferValue: num(pH, { min: 1, max: 13, default: 7, doc: 'pH printed on that buffer.' }),
};

/** A meter further off than this in its buffer is not used (judgement). */
const MOST_METER_ERROR = 0.5;

export const alkalinityWithinParam = num(meqPerLitre, {
  above: 0,
  max: 5,
  optional: true,
  doc:
    'How sure that alkalinity is: half the width of its range, 90 of 100, as BUFFER.FIT gives it for a vat of ' +
    "the same water. Left out: a kit's usual error.",
});

export const airingParam = choice(['can', 'cannot'] as const, {
  default: 'can',
  doc:
    'Whether the vat can be put under strong air for an hour; if it "cannot", the answer says how ' +
    'far the pH will drift.',
  aliases: { yes: 'can', no: 'cannot' },
});

export interface TitrationInputs {
  readonly volume: number;
  readonly doses: readonly number[];
  readonly readings: readonly number[];
  readonly temperature: number;
  readonly material: MaterialName;
  readonly purity: number;
  readonly origin: OriginName;
  readonly alkalinity: number | undefined;
  readonly conductivity: number;
  readonly meter: MeterName;
  readonly events: readonly string[] | undefined;
  readonly again: readonly number[] | undefined;
  readonly at: readonly number[] | undefined;
  readonly dosesAre: 'running totals' | 'given before' | 'given after';
  readonly bufferRead: number | undefined;
  readonly bufferValue: number;
  readonly alkalinityWithin?: number | undefined;
}

export const beliefsOf = (
  given: Pick<
    TitrationInputs,
    'temperature' | 'material' | 'origin' | 'alkalinity' | 'conductivity' | 'meter'
  > &
    Partial<Pick<TitrationInputs, 'bufferRead' | 'alkalinityWithin'>>,
): Beliefs | CellError => {
  const back = backgroundOf({
    temperature: given.temperature,
    hardness: 0,
    dissolved: given.conductivity,
    dissolvedIn: 'µS/cm',
  });
  if (isError(back)) return back;
  return beliefsFrom({
    k: constantsAt(given.temperature),
    back,
    material: materialOf(given.material),
    meter: given.meter,
    origin: given.origin,
    kit: given.alkalinity,
    kitWithin: given.alkalinityWithin,
    conductivity: given.conductivity,
    airPpm: 420,
    isChecked: given.bufferRead !== undefined,
  });
};

/** Words of a log for what happened. Words for a plain reading or dose mean nothing but that. */
const WORDS: Readonly<Record<EventName, readonly string[]>> = {
  '': ['', 'reading', 'dose', 'ph', 'dosed', 'meter check', 'from tank', 'note', 'given', 'start'],
  aired: ['aired', 'air', 'aerated', 'airing', 'aeration', 'air on'],
  jar: ['jar', 'shaken jar', 'aired jar', 'bucket'],
  night: ['night', 'overnight', 'next day', 'morning', 'next morning'],
  refill: ['refill', 'refilled', 'new water', 'filled', 'fill', 'filled anew'],
  change: ['change', 'water change', 'partial change', 'exchange', 'top-up', 'topped up'],
  rain: ['rain', 'rained'],
};
const EVENT_OF = new Map(
  Object.entries(WORDS).flatMap(([event, words]) => words.map((word) => [word, event as EventName] as const)),
);

const eventsOf = (events: readonly string[]): readonly EventName[] | CellError => {
  const read = events.map((word) => EVENT_OF.get(word.trim().toLowerCase()));
  const bad = read.indexOf(undefined);
  return bad < 0
    ? read.map((event) => event ?? '')
    : refuse(
        `events, row ${bad + 1}: expected "aired", "jar", "night", "refill", "change", "rain" or a ` +
          `blank cell, got "${events[bad] ?? ''}".`,
      );
};

interface Line {
  readonly row: number;
  readonly grams: number;
  readonly reading: number;
}

/** The rows as running totals beside readings; rows that hold only a dose are carried to the next reading. */
const linesOf = ({ doses, readings, dosesAre }: TitrationInputs): readonly Line[] | CellError => {
  if (dosesAre === 'running totals') return totalsOf(doses, readings);
  const lines: Line[] = [];
  let total = 0;
  for (let row = 0; row < readings.length; row++) {
    const part = Number.isNaN(doses[row]) ? 0 : (doses[row] ?? 0);
    const reading = readings[row] ?? NaN;
    if (dosesAre === 'given before') total += part;
    if (!Number.isNaN(reading)) lines.push({ row, grams: total, reading });
    if (dosesAre === 'given after') total += part;
  }
  return lines.length > 0 ? lines : outside('readings: needs at least 1 value, got only blank cells.');
};

const totalsOf = (doses: readonly number[], readings: readonly number[]): readonly Line[] | CellError => {
  const lines: Line[] = [];
  for (let row = 0; row < readings.length; row++) {
    const [grams = NaN, reading = NaN] = [doses[row], readings[row]];
    if (Number.isNaN(grams) && Number.isNaN(reading)) continue;
    if (Number.isNaN(grams) || Number.isNaN(reading)) {
      const [blank, other] = Number.isNaN(grams) ? ['doses', 'readings'] : ['readings', 'doses'];
      return refuse(
        `${blank}, row ${row + 1}: the cell is blank while ${other} has a value. Fill it or clear the row.`,
      );
    }
    lines.push({ row, grams, reading });
  }
  if (lines[0] && lines[0].grams !== 0)
    return refuse(
      `doses, row ${lines[0].row + 1}: expected 0 g with the pH before any product, got ${lines[0].grams}` +
        '. Put that reading first.',
    );
  return lines.length > 0 ? lines : outside('readings: needs at least 1 value, got only blank cells.');
};

const disorder = (lines: readonly Line[], at: readonly number[] | undefined): CellError | undefined => {
  for (let i = 1; i < lines.length; i++) {
    const [above, here] = [lines[i - 1], lines[i]];
    if (!above || !here) continue;
    if (here.grams < above.grams)
      return refuse(
        `doses, row ${here.row + 1}: ${here.grams} g is less than ${above.grams} g in the row above. ` +
          'Give running totals since the start, in the order they were given, or say in dosesAre that ' +
          'each part stands by itself.',
      );
    const [before = NaN, now = NaN] = [at?.[above.row], at?.[here.row]];
    if (now < before)
      return refuse(
        `at, row ${here.row + 1}: the time is before that of the row above. Give the rows in order.`,
      );
  }
  return undefined;
};

/** The product itself cannot be used like this. */
const productFault = (
  { material, volume, purity }: TitrationInputs,
  grams: number,
): CellError | undefined => {
  if (!raisesPH(materialOf(material)))
    return refuse(
      `material: ${material} lowers pH; this method follows doses that raise it. Use BUFFER.DOSE ` +
        'downwards, in small parts.',
    );
  const most = solubleGrams(material, volume, purity);
  return grams > most
    ? refuse(
        `doses: ${grams} g of ${material} is more than dissolves in ${volume} L of water (about ${Number(most.toPrecision(2))}` +
          ' g). Check grams, litres and product.',
      )
    : undefined;
};

/** The notebook's columns as a log, or the sentence that says what is wrong with them. */
export const logOf = (given: TitrationInputs): Log | CellError => {
  const lines = linesOf(given);
  if (isError(lines)) return lines;
  const wrong =
    productFault(given, lines.at(-1)?.grams ?? 0) ?? disorder(lines, given.at) ?? meterFault(given);
  if (wrong) return wrong;
  if (lines.length > MOST_READINGS)
    return outside(
      `readings: one dosing has up to ${MOST_READINGS} readings, got ${lines.length}. Give the rows ` +
        "of this vat's dosing only.",
    );
  const events = eventsOf(given.events ?? []);
  if (isError(events)) return events;
  const { material, volume, purity } = given;
  return lines.map(({ row, grams, reading }, i) => {
    const above = lines[i - 1]?.row ?? row;
    return {
      dose: molesOf(materialOf(material), grams, volume, purity),
      ...secondOf(given, row, reading),
      event: eventBetween(events, i === 0 ? row - 1 : above, row),
      hours: hoursBetween(given.at, above, row),
    };
  });
};

/** Both readings of a row with the meter's error in its buffer taken off. */
const secondOf = (
  { bufferRead, bufferValue, again }: TitrationInputs,
  row: number,
  reading: number,
): { readonly reading: number; readonly again: number | undefined } => {
  const off = bufferRead === undefined ? 0 : bufferRead - bufferValue;
  const second = again?.[row] ?? NaN;
  return { reading: reading - off, again: Number.isNaN(second) ? undefined : second - off };
};

const hoursBetween = (at: readonly number[] | undefined, above: number, row: number): number | undefined => {
  const days = (at?.[row] ?? NaN) - (at?.[above] ?? NaN);
  return above === row || Number.isNaN(days) ? undefined : hoursFromDays(days);
};

/** The event of the reading's own row, or of a row without a reading since the last one. */
const eventBetween = (events: readonly EventName[], after: number, row: number): EventName => {
  for (let i = row; i > after; i--) if (events[i]) return events[i] ?? '';
  return '';
};

const meterFault = ({ bufferRead, bufferValue }: TitrationInputs): CellError | undefined =>
  bufferRead !== undefined && Math.abs(bufferRead - bufferValue) > MOST_METER_ERROR + 1e-9
    ? refuse(
        `bufferRead: the meter shows ${bufferRead} in a buffer of pH ${bufferValue}, more than ${MOST_METER_ERROR}` +
          ' off. Clean and calibrate it, or take another, before anything is dosed by it.',
      )
    : undefined;

export const targetOf = num(pH, {
  min: 4,
  max: CEILING,
  default: 7,
  doc: 'pH wanted once the water is aired, up to 8.',
});
export const aimParams = {
  bottom: num(pH, { min: 4, max: CEILING, default: 6.5, doc: 'Lower edge of the pH window.' }),
  top: num(pH, {
    min: 4,
    max: CEILING,
    default: 7.5,
    doc: 'Upper edge of the pH window, not to be passed; never above 8.',
  }),
  step: num(pH, { above: 0, max: 2, default: 1, doc: 'Most pH units in one part-dose, once aired.' }),
  stocked: flag(false, 'TRUE when fish or eggs are in the water: steps of no more than 0.3 pH, and no lime.'),
};
const STOCKED_STEP = 0.3;
export const NEAR_TARGET_PH = 0.2;

export const aimOf = (a: {
  target: number;
  bottom: number;
  top: number;
  step: number;
  stocked: boolean;
  meter: MeterName;
  material: MaterialName;
  airing: 'can' | 'cannot';
}): Aim | CellError =>
  a.stocked && harmsFish(a.material)
    ? neverWithFish(a.material)
    : a.bottom < a.target && a.target < a.top
      ? {
          target: a.target,
          bottom: a.bottom,
          top: a.top,
          step: a.stocked ? Math.min(a.step, STOCKED_STEP) : a.step,
          near: Math.min(NEAR_TARGET_PH, a.target - a.bottom),
          risk: riskFor(a.meter, materialOf(a.material)),
          canAir: a.airing === 'can',
          isStocked: a.stocked,
        }
      : refuse(
          `target: expected a pH between the edges of the window (${a.bottom} to ${a.top}), got ${a.target}.`,
        );
