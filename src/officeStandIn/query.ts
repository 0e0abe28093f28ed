import { fail } from './failure';
import type { QueryInfo } from './messages';
import type { ObjectNode } from './node';

/**
 * Answers a load: the named properties, deeper ones through slashes, of an object or of each item of a
 * collection.
 */

const upper = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

interface Wanted {
  readonly own: Set<string>;
  isAll: boolean;
  readonly deeper: Map<string, string[]>;
}

function wantedOf(select: readonly string[], expand: readonly string[]): Wanted {
  const wanted: Wanted = { own: new Set(), isAll: select.length === 0, deeper: new Map() };
  const go = (name: string, rest: string): void => {
    wanted.deeper.set(name, [...(wanted.deeper.get(name) ?? []), ...(rest ? [rest] : [])]);
  };
  for (const path of select) {
    const [first = '', ...rest] = path.split('/').map((part) => part.trim());
    if (first === '*' || first === '$all') wanted.isAll = true;
    else if (rest.length > 0) go(upper(first), rest.join('/'));
    else wanted.own.add(upper(first));
  }
  for (const path of expand) {
    const [first = '', ...rest] = path.split('/');
    go(upper(first), rest.join('/'));
  }
  return wanted;
}

async function collection(node: ObjectNode, info: QueryInfo): Promise<Record<string, unknown>> {
  const all = (await node.items?.()) ?? [];
  const skip = info.Skip ?? 0;
  const items = all.slice(skip, info.Top === undefined ? undefined : skip + info.Top);
  // "items/name" and "name" mean the same; "items" alone asks for everything.
  const select = (info.Select ?? []).map((path) => path.replace(/^items\/?/, '')).filter(Boolean);
  const own = select.filter((path) => upper(path) in node.scalars);
  const rest = select.filter((path) => !own.includes(path));
  const answer: Record<string, unknown> = {};
  for (const path of own) answer[upper(path)] = await node.scalars[upper(path)]?.();
  if (own.length > 0 && rest.length === 0) return answer;
  const found: unknown[] = [];
  for (const item of items)
    found.push({ ...(await item.identity?.()), ...(await object(item, rest, info.Expand ?? [])) });
  return { ...answer, _Items: found };
}

async function object(
  node: ObjectNode,
  select: readonly string[],
  expand: readonly string[],
): Promise<Record<string, unknown>> {
  const wanted = wantedOf(select, expand);
  const names = wanted.isAll ? new Set([...Object.keys(node.scalars), ...wanted.own]) : wanted.own;
  const answer: Record<string, unknown> = {};
  for (const name of names) {
    const read = node.scalars[name];
    if (read) answer[name] = await read();
    else if (node.links?.[name]) wanted.deeper.set(name, wanted.deeper.get(name) ?? []);
    else return fail('InvalidArgument', `${node.type} has no property ${name} here.`);
  }
  for (const [name, rest] of wanted.deeper) {
    const link = node.links?.[name] ?? fail('InvalidArgument', `${node.type} has no object ${name} here.`);
    const target = await link();
    answer[name] = target && (await query(target, { Select: rest }));
  }
  return answer;
}

export async function query(node: ObjectNode, info: QueryInfo): Promise<Record<string, unknown>> {
  if (node.items) return collection(node, info);
  return { ...(await node.identity?.()), ...(await object(node, info.Select ?? [], info.Expand ?? [])) };
}
