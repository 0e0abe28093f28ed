import { formatReference, parseArea } from '../address';
import type { NameState } from '../book';
import { fail } from '../failure';
import { asText } from '../input';
import type { Env, ObjectNode } from '../node';
import { placeOf, resolveReference, sheetById } from './find';
import { rangeNode } from './range';

const same = (a: string, b: unknown): boolean => typeof b === 'string' && a.toLowerCase() === b.toLowerCase();

/** Letters, digits, dots and underscores, and nothing a cell address could be. */
const isLegal = (name: string): boolean =>
  /^[A-Za-z_\\\p{L}][\w.\p{L}]{0,254}$/u.test(name) && !parseArea(name) && !/^(r\d*c\d*|r|c)$/i.test(name);

async function referenceText(env: Env, given: unknown): Promise<string> {
  const place = placeOf(given);
  if (place) return `=${formatReference((await sheetById(env.book, place.sheet)).name, place.area, true)}`;
  const text = asText(given, 'reference');
  return text.startsWith('=') ? text : fail('InvalidArgument', 'A reference text begins with =.');
}

function nameNode(env: Env, state: NameState): ObjectNode {
  const current = async (): Promise<NameState> =>
    (await env.book.names()).find((n) => n.name === state.name && n.scope === state.scope) ??
    fail('ItemNotFound', `The name ${state.name} is gone.`);
  const range = async (): Promise<ObjectNode | null> => {
    const place = await resolveReference(env.book, (await current()).formula);
    return place ? rangeNode(env, place.sheet, place.area) : null;
  };
  return {
    type: 'NamedItem',
    identity: () => ({ Id: state.name }),
    scalars: {
      Name: () => state.name,
      Formula: async () => (await current()).formula,
      Comment: async () => (await current()).comment,
      Scope: () => (state.scope === undefined ? 'Workbook' : 'Worksheet'),
      Type: async () => ((await range()) ? 'Range' : 'String'),
    },
    setters: {
      Formula: async (given) =>
        env.book.putName({ ...(await current()), formula: await referenceText(env, given) }),
      Comment: async (given) => env.book.putName({ ...(await current()), comment: asText(given, 'comment') }),
    },
    methods: {
      Delete: () => env.book.deleteName(state.name, state.scope),
      GetRange: async () => (await range()) ?? fail('ItemNotFound', `${state.name} does not name cells.`),
      GetRangeOrNullObject: range,
    },
  };
}

/** Names of the workbook, or of one sheet. */
export function namesNode(env: Env, scope?: string): ObjectNode {
  const mine = async (): Promise<readonly NameState[]> =>
    (await env.book.names()).filter((n) => n.scope === scope);
  const find = async (key: unknown): Promise<ObjectNode | null> => {
    const state = (await mine()).find((n) => same(n.name, key));
    return state ? nameNode(env, state) : null;
  };
  const item = async (key: unknown): Promise<ObjectNode> =>
    (await find(key)) ?? fail('ItemNotFound', `There is no name ${String(key)}.`);
  return {
    type: 'NamedItemCollection',
    scalars: {},
    item,
    items: async () => (await mine()).map((n) => nameNode(env, n)),
    methods: {
      GetItem: item,
      GetItemOrNullObject: find,
      GetCount: async () => (await mine()).length,
      Add: async (given, reference, comment) => {
        const name = asText(given, 'name');
        if (!isLegal(name))
          return fail(
            'InvalidArgument',
            `${name} cannot be a name: letters, digits, dots and underscores, and not a cell address.`,
          );
        if (await find(name)) return fail('ItemAlreadyExists', `The name ${name} exists already.`);
        const state: NameState = {
          name,
          formula: await referenceText(env, reference),
          comment: typeof comment === 'string' ? comment : '',
          ...(scope === undefined ? {} : { scope }),
        };
        await env.book.putName(state);
        return nameNode(env, state);
      },
    },
  };
}
