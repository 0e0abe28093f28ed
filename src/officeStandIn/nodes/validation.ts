import { formatReference } from '../address';
import type { StandInArea, ValidationState } from '../book';
import { fail } from '../failure';
import { asFlag } from '../input';
import type { Env, ObjectNode } from '../node';
import { placeOf, sheetById } from './find';
import { guardChange } from './guard';

type Bag = Readonly<Record<string, unknown>>;
type Rule = ValidationState['rule'];
const bag = (given: unknown, what: string): Bag =>
  typeof given === 'object' && given !== null && !Array.isArray(given)
    ? (given as Bag)
    : fail('InvalidArgument', `${what} must be an object.`);

const KINDS = {
  wholeNumber: 'whole',
  decimal: 'decimal',
  date: 'date',
  time: 'time',
  textLength: 'textLength',
} as const;
type Compared = keyof typeof KINDS;
const OPERATORS = [
  'Between',
  'NotBetween',
  'EqualTo',
  'NotEqualTo',
  'GreaterThan',
  'LessThan',
  'GreaterThanOrEqualTo',
  'LessThanOrEqualTo',
];

const bound = (given: unknown): string | number =>
  typeof given === 'number' || typeof given === 'string'
    ? given
    : fail('InvalidArgument', 'A bound is a number or a formula.');

function comparedRule(kind: Compared, given: unknown): Rule {
  const { formula1, formula2, operator } = bag(given, kind);
  if (typeof operator !== 'string' || !OPERATORS.includes(operator))
    return fail('InvalidArgument', `operator must be one of ${OPERATORS.join(', ')}.`);
  const isPair = operator === 'Between' || operator === 'NotBetween';
  return {
    kind: KINDS[kind],
    operator,
    formula1: bound(formula1),
    ...(isPair ? { formula2: bound(formula2) } : {}),
  };
}

async function listSource(env: Env, source: unknown): Promise<string> {
  const place = placeOf(source);
  if (place) return `=${formatReference((await sheetById(env.book, place.sheet)).name, place.area, true)}`;
  return typeof source === 'string' && source !== ''
    ? source
    : fail('InvalidArgument', 'A list needs its items or a range.');
}

async function readRule(env: Env, given: unknown): Promise<Rule> {
  const rule = bag(given, 'rule');
  const kinds = Object.keys(rule).filter((key) => rule[key] !== undefined && rule[key] !== null);
  const [kind] = kinds;
  if (kinds.length !== 1 || kind === undefined)
    return fail('InvalidArgument', 'A rule has exactly one kind.');
  if (kind === 'list') {
    const { source, inCellDropDown } = bag(rule.list, 'list');
    return { kind: 'list', source: await listSource(env, source), dropDown: inCellDropDown !== false };
  }
  if (kind === 'custom') {
    const { formula } = bag(rule.custom, 'custom');
    return typeof formula === 'string'
      ? { kind: 'custom', formula }
      : fail('InvalidArgument', 'A custom rule needs its formula.');
  }
  return kind in KINDS
    ? comparedRule(kind as Compared, rule[kind])
    : fail('InvalidArgument', `There is no rule kind ${kind}.`);
}

const showRule = (rule: Rule | undefined): unknown => {
  if (!rule) return {};
  if (rule.kind === 'list') return { list: { source: rule.source, inCellDropDown: rule.dropDown } };
  if (rule.kind === 'custom') return { custom: { formula: rule.formula } };
  const { kind, ...rest } = rule;
  return { [kind === 'whole' ? 'wholeNumber' : kind]: rest };
};
const typeName = (rule: Rule | undefined): string => {
  if (!rule) return 'None';
  return rule.kind === 'whole' ? 'WholeNumber' : `${rule.kind.charAt(0).toUpperCase()}${rule.kind.slice(1)}`;
};

const text = (given: unknown): string => (typeof given === 'string' ? given : '');
/** Excel cuts neither: a longer message is refused. */
const MESSAGE_LIMIT = 255;
const TITLE_LIMIT = 32;
function message(given: Bag): { title: string; message: string } {
  const found = { title: text(given.title), message: text(given.message) };
  if (found.title.length > TITLE_LIMIT || found.message.length > MESSAGE_LIMIT)
    fail('InvalidArgument', `A title has at most ${TITLE_LIMIT} characters, a message ${MESSAGE_LIMIT}.`);
  return found;
}

const readError = (given: unknown): NonNullable<ValidationState['error']> => {
  const alert = bag(given, 'errorAlert');
  const style = alert.style === 'Warning' || alert.style === 'Information' ? alert.style : 'Stop';
  return { ...message(alert), style, show: alert.showAlert !== false };
};

export function dataValidationNode(env: Env, sheet: string, area: StandInArea): ObjectNode {
  const current = (): Promise<ValidationState | undefined> =>
    Promise.resolve(env.book.validation(sheet, area));
  const change = async (patch: Partial<ValidationState>): Promise<void> => {
    await guardChange(env.book, sheet, 'structure');
    const before = await current();
    const rule = patch.rule ?? before?.rule;
    if (!rule) return fail('InvalidOperation', 'Set the rule before its messages.');
    await env.book.setValidation(sheet, area, { ignoreBlanks: true, ...before, ...patch, rule });
  };
  return {
    type: 'DataValidation',
    scalars: {
      Rule: async () => showRule((await current())?.rule),
      Type: async () => typeName((await current())?.rule),
      IgnoreBlanks: async () => (await current())?.ignoreBlanks ?? true,
      ErrorAlert: async () => {
        const e = (await current())?.error;
        return {
          title: e?.title ?? '',
          message: e?.message ?? '',
          style: e?.style ?? 'Stop',
          showAlert: e?.show ?? true,
        };
      },
      Prompt: async () => {
        const p = (await current())?.prompt;
        return { title: p?.title ?? '', message: p?.message ?? '', showPrompt: p?.show ?? true };
      },
    },
    setters: {
      Rule: async (given) => change({ rule: await readRule(env, given) }),
      IgnoreBlanks: (given) => change({ ignoreBlanks: asFlag(given, 'ignoreBlanks') }),
      ErrorAlert: (given) => change({ error: readError(given) }),
      Prompt: (given) => {
        const p = bag(given, 'prompt');
        return change({ prompt: { ...message(p), show: p.showPrompt !== false } });
      },
    },
    methods: {
      Clear: async () => {
        await guardChange(env.book, sheet, 'structure');
        await env.book.setValidation(sheet, area, undefined);
      },
    },
  };
}
