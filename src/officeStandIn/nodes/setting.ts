import { fail } from '../failure';
import { asText } from '../input';
import type { Env, ObjectNode } from '../node';

/** What an add-in keeps with the workbook, outside its cells. Protection of sheets does not touch it. */

const KEY_LIMIT = 255;
const isMissing = (value: unknown): boolean => value === undefined || value === null;

const settingNode = (env: Env, key: string): ObjectNode => {
  const current = async (): Promise<unknown> => {
    const value = (await env.book.settings())[key];
    return isMissing(value) ? fail('ItemNotFound', `The setting ${key} is gone.`) : value;
  };
  return {
    type: 'Setting',
    identity: () => ({ Id: key }),
    scalars: { Key: () => key, Value: current },
    setters: {
      Value: async (given) => {
        await current();
        await env.book.putSetting(key, given);
      },
    },
    methods: {
      Delete: async () => {
        await current();
        await env.book.putSetting(key, undefined);
      },
    },
  };
};

export function settingsNode(env: Env): ObjectNode {
  const find = async (key: unknown): Promise<ObjectNode | null> =>
    typeof key === 'string' && !isMissing((await env.book.settings())[key]) ? settingNode(env, key) : null;
  const item = async (key: unknown): Promise<ObjectNode> =>
    (await find(key)) ?? fail('ItemNotFound', `There is no setting ${String(key)}.`);
  return {
    type: 'SettingCollection',
    scalars: {},
    item,
    items: async () => Object.keys(await env.book.settings()).map((key) => settingNode(env, key)),
    methods: {
      GetItem: item,
      GetItemOrNullObject: find,
      GetCount: async () => Object.keys(await env.book.settings()).length,
      // One of that key is replaced.
      Add: async (given, value) => {
        const key = asText(given, 'key');
        if (key === '' || key.length > KEY_LIMIT)
          return fail('InvalidArgument', `A key has 1 to ${KEY_LIMIT} characters.`);
        if (isMissing(value)) return fail('InvalidArgument', 'A setting needs a value.');
        await env.book.putSetting(key, value);
        return settingNode(env, key);
      },
    },
  };
}
