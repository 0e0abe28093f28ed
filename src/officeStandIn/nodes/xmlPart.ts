import type { XmlPartState } from '../book';
import { asText } from '../input';
import type { Env, ObjectNode } from '../node';

/** Parts of custom XML. A book that keeps settings itself has none. */

const partNode = (env: Env, { id, xml }: XmlPartState): ObjectNode => ({
  type: 'CustomXmlPart',
  identity: () => ({ Id: id }),
  scalars: { Id: () => id },
  methods: {
    GetXml: () => xml,
    Delete: () => env.book.deleteXmlPart?.(id),
  },
});

const partsOf = async (env: Env, namespace: string): Promise<readonly ObjectNode[]> =>
  ((await env.book.xmlParts?.()) ?? [])
    .filter((part) => part.namespace === namespace)
    .map((part) => partNode(env, part));

const scopedNode = (env: Env, namespace: string): ObjectNode => ({
  type: 'CustomXmlPartScopedCollection',
  scalars: {},
  items: () => partsOf(env, namespace),
  item: async (id) => {
    const found = ((await env.book.xmlParts?.()) ?? []).find((part) => part.id === id);
    return found ? partNode(env, found) : null;
  },
  methods: {
    GetOnlyItemOrNullObject: async () => {
      const [only, ...others] = await partsOf(env, namespace);
      return only && others.length === 0 ? only : null;
    },
  },
});

export const xmlPartsNode = (env: Env): ObjectNode => ({
  type: 'CustomXmlPartCollection',
  scalars: {},
  methods: { GetByNamespace: (namespace) => scopedNode(env, asText(namespace, 'namespaceUri')) },
});
