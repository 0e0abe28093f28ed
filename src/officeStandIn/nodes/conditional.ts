import { contains, overlaps } from '../address';
import type { StandInArea, ConditionalState } from '../book';
import { fail } from '../failure';
import { asText, checkColor, isBalanced } from '../input';
import type { Env, ObjectNode } from '../node';
import { guardChange } from './guard';

async function byId(env: Env, sheet: string, id: unknown): Promise<ConditionalState> {
  return (
    (await env.book.conditionals(sheet)).find((c) => c.id === id) ??
    fail('ItemNotFound', 'The conditional format is gone.')
  );
}

const conditionalNode = (env: Env, sheet: string, id: string): ObjectNode => {
  const current = (): Promise<ConditionalState> => byId(env, sheet, id);
  const change = async (patch: Partial<ConditionalState>): Promise<void> => {
    await guardChange(env.book, sheet, 'structure');
    await env.book.putConditional(sheet, { ...(await current()), ...patch });
  };
  const colour = (type: string, key: 'fill' | 'color'): ObjectNode => ({
    type,
    scalars: { Color: async () => (await current())[key] ?? '' },
    setters: { Color: (given) => change({ [key]: checkColor(given) }) },
  });
  const rule: ObjectNode = {
    type: 'ConditionalFormatRule',
    scalars: { Formula: async () => (await current()).formula },
    setters: {
      Formula: (given) => {
        const formula = asText(given, 'formula');
        // Custom functions are asynchronous, and Excel refuses them inside rules.
        if (!isBalanced(formula) || /\bSPAWN\./i.test(formula))
          return fail('InvalidArgument', 'A rule takes a formula of built-in functions.');
        return change({ formula });
      },
    },
  };
  const format: ObjectNode = {
    type: 'ConditionalRangeFormat',
    scalars: {},
    links: {
      Fill: () => colour('ConditionalRangeFill', 'fill'),
      Font: () => colour('ConditionalRangeFont', 'color'),
    },
  };
  const custom: ObjectNode = {
    type: 'CustomConditionalFormat',
    scalars: {},
    links: { Rule: () => rule, Format: () => format },
  };
  return {
    type: 'ConditionalFormat',
    identity: () => ({ Id: id }),
    scalars: { Id: () => id, Type: () => 'Custom' },
    links: { Custom: () => custom },
    methods: {
      Delete: async () => {
        await guardChange(env.book, sheet, 'structure');
        await env.book.deleteConditional(sheet, id);
      },
    },
  };
};

export function conditionalFormatsNode(env: Env, sheet: string, area: StandInArea): ObjectNode {
  const here = async (): Promise<readonly ConditionalState[]> =>
    (await env.book.conditionals(sheet)).filter((c) => overlaps(c.area, area));
  const item = async (key: unknown): Promise<ObjectNode> =>
    conditionalNode(env, sheet, (await byId(env, sheet, key)).id);
  return {
    type: 'ConditionalFormatCollection',
    scalars: {},
    item,
    items: async () => (await here()).map((c) => conditionalNode(env, sheet, c.id)),
    methods: {
      GetCount: async () => (await here()).length,
      GetItem: item,
      Add: async (kind) => {
        if (kind !== 'Custom')
          return fail('NotImplemented', 'The local sheet knows conditional formats by formula only.');
        await guardChange(env.book, sheet, 'structure');
        const taken = new Set((await env.book.conditionals(sheet)).map((c) => c.id));
        let n = 1;
        while (taken.has(`cf${n}`)) n += 1;
        await env.book.putConditional(sheet, { id: `cf${n}`, area, formula: '' });
        return conditionalNode(env, sheet, `cf${n}`);
      },
      ClearAll: async () => {
        await guardChange(env.book, sheet, 'structure');
        for (const { id, area: covered } of await here())
          if (contains(area, covered)) await env.book.deleteConditional(sheet, id);
      },
    },
  };
}
