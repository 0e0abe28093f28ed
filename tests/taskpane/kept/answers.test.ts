import type { CardContext, CardField } from '../../../taskpane/screens/vat/state/cards';
import { CARDS } from '../../../taskpane/screens/vat/state/cards';
import { en } from '../../../taskpane/words/en';
import { expectKept } from '../../support/kept';

/** What every card answers, and the lines it writes: numbers from the least to the most each field takes. */
const NOW = 46_400.25;
const least = ({ min = 0 }: CardField): number => min;
const most = ({ max = 1000 }: CardField): number => max;
const between =
  (share: number) =>
  (field: CardField): number => {
    const [low, high] = [Math.max(least(field), most(field) / 1e4), most(field)];
    const x = low * (high / low) ** share;
    return field.kind === 'whole' ? Math.round(x) : Number(x.toPrecision(3));
  };
const PATTERNS: Readonly<Record<string, (field: CardField, i: number) => number | undefined>> = {
  least,
  most,
  low: between(0.3),
  middle: (field) => (field.initial === undefined ? between(0.5)(field) : Number(field.initial)),
  high: between(0.8),
  mixed: (field, i) => between(i % 2 ? 0.25 : 0.7)(field),
  needed: (field) => (field.isOptional ? undefined : between(0.55)(field)),
  'only what may be left out': (field) => (field.isOptional ? between(0.75)(field) : undefined),
  nothing: () => undefined,
};
const context = (more: Partial<CardContext> = {}): CardContext => ({
  words: en,
  earlier: () => [],
  now: NOW,
  text: (key) => `(${key})`,
  ...more,
});
const CONTEXTS: Readonly<Record<string, CardContext>> = {
  alone: context(),
  'in a season': context({
    earlier: (what) => [
      { at: NOW - 1, value: what === 'fish' ? 4000 : 12 },
      { at: NOW - 0.1, value: what === 'fish' ? 3900 : 9 },
    ],
    planned: 0.3,
    fish: { alive: 3800, age: 12, food: 3 },
  }),
};

test('answers of the cards at the vat', () => {
  expectKept(
    'vat-cards',
    Object.entries(CARDS).map(([id, card]) => ({
      card: id,
      answers: Object.entries(PATTERNS).flatMap(([pattern, number]) => {
        const values = Object.fromEntries(
          card.fields.flatMap((field, i): [string, number][] => {
            const value = field.kind === 'text' ? undefined : number(field, i);
            return value === undefined ? [] : [[field.key, value]];
          }),
        );
        return Object.entries(CONTEXTS).map(([where, there]) => {
          const answer = card.answer(values, there);
          return {
            values: `${pattern}, ${where}: ${JSON.stringify(values)}`,
            said: answer && `${answer.tone}: ${[answer.big, ...answer.small].join(' | ')}`,
            lines: card
              .lines(values, there)
              .map(({ what, value, unit, note }) => `${what} ${value ?? '–'} ${unit} ${note ?? ''}`.trim()),
            minutes: card.minutes?.(values),
          };
        });
      }),
    })),
  );
});
