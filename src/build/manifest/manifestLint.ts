// Long: one rule of the manifest after the other.
import { PREFIX } from '../../../shared/functions/define';
import { RIBBON } from '../../../taskpane/pane/frame/ribbon';
import type { XmlElement } from './xml';
import { child, descend, everyElement, parseXml } from './xml';

/**
 * What makes Excel refuse or silently ignore an add-in-only manifest, checked without a network. Rules follow
 * the published element order, resource limits and shared-runtime instructions. Answers with sentences; none
 * when all is well.
 */
export type PixelSize = (path: string) => readonly [number, number] | undefined;
type Rule = (app: XmlElement, pixels: PixelSize) => string[];

/** Children out of this order and Excel does not load the add-in. Names not listed may not appear. */
const ORDER: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    'Id',
    'AlternateId',
    'Version',
    'ProviderName',
    'DefaultLocale',
    'DisplayName',
    'Description',
    'IconUrl',
    'HighResolutionIconUrl',
    'SupportUrl',
    'AppDomains',
    'Hosts',
    'Requirements',
    'DefaultSettings',
    'Permissions',
    'VersionOverrides',
  ],
  VersionOverrides: [
    'Description',
    'Requirements',
    'Hosts',
    'Resources',
    'WebApplicationInfo',
    'EquivalentAddins',
  ],
  Host: ['Runtimes', 'AllFormFactors', 'DesktopFormFactor'],
  DesktopFormFactor: ['GetStarted', 'FunctionFile', 'ExtensionPoint'],
  GetStarted: ['Title', 'Description', 'LearnMoreUrl'],
  Resources: ['bt:Images', 'bt:Urls', 'bt:ShortStrings', 'bt:LongStrings'],
  Group: ['OverriddenByRibbonApi', 'Label', 'Icon', 'Control'],
  Control: ['Label', 'ToolTip', 'Supertip', 'Icon', 'Action'],
  Supertip: ['Title', 'Description'],
};
const CUSTOM_FUNCTIONS_ORDER = ['Script', 'Page', 'Metadata', 'Namespace'];
const REQUIRED = [
  'Id',
  'Version',
  'ProviderName',
  'DefaultLocale',
  'DisplayName',
  'Description',
  'IconUrl',
  'HighResolutionIconUrl',
  'SupportUrl',
  'Hosts',
  'DefaultSettings',
  'Permissions',
];
const LIMITS = { resid: 32, short: 125, long: 250, url: 2048 } as const;
const TAKEN_BY_EQUIVALENT = 'EquivalentAddins';
const RIBBON_SIZES = ['16', '32', '80'];

const isCustomFunctions = (e: XmlElement): boolean =>
  e.name === 'ExtensionPoint' && e.attributes['xsi:type'] === 'CustomFunctions';
const orderOf = (e: XmlElement): readonly string[] | undefined =>
  isCustomFunctions(e) ? CUSTOM_FUNCTIONS_ORDER : ORDER[e.name];

const order: Rule = (app) =>
  [...everyElement(app)].flatMap((element) => {
    const wanted = orderOf(element);
    if (!wanted) return [];
    const places = element.children.map((c) => wanted.indexOf(c.name));
    const strangers = element.children
      .filter((_, i) => places[i] === -1)
      .map((c) => `<${c.name}> does not belong in <${element.name}>`);
    const late = element.children.find((_, i) => (places[i] ?? 0) < Math.max(0, ...places.slice(0, i)));
    return [
      ...strangers,
      ...(late && strangers.length === 0
        ? [`<${late.name}> stands too late in <${element.name}>; the order is ${wanted.join(', ')}`]
        : []),
    ];
  });

const required: Rule = (app) =>
  REQUIRED.filter((name) => !child(app, name)).map((name) => `<${name}> is missing`);

const identity: Rule = (app) => {
  const id = child(app, 'Id')?.text ?? '';
  const version = child(app, 'Version')?.text ?? '';
  return [
    ...(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(id)
      ? []
      : [`Id "${id}" is not a GUID in lower case`]),
    ...(/^(0|[1-9]\d{0,4})(\.(0|[1-9]\d{0,4})){2,3}$/.test(version)
      ? []
      : [`Version "${version}" is not three or four numbers joined by dots`]),
  ];
};

interface Resource {
  readonly id: string;
  readonly kind: string;
  readonly value: string;
  /** The same in other languages. */
  readonly others: readonly string[];
}
const resourcesOf = (app: XmlElement): Resource[] =>
  (descend(app, 'VersionOverrides', 'Resources')?.children ?? []).flatMap((list) =>
    list.children.map((e) => ({
      id: e.attributes.id ?? '',
      kind: list.name,
      value: e.attributes.DefaultValue ?? '',
      others: e.children.map((other) => other.attributes.Value ?? ''),
    })),
  );

/** Which list a reference must point into. */
const expectedKind = (element: XmlElement, parent: string): string => {
  if (element.name === 'bt:Image') return 'bt:Images';
  if (['SourceLocation', 'Runtime', 'FunctionFile', 'LearnMoreUrl'].includes(element.name)) return 'bt:Urls';
  return element.name === 'Description' && (parent === 'Supertip' || parent === 'GetStarted')
    ? 'bt:LongStrings'
    : 'bt:ShortStrings';
};
const parented = function* (element: XmlElement, parent = ''): Generator<readonly [XmlElement, string]> {
  yield [element, parent];
  for (const c of element.children) yield* parented(c, element.name);
};

const references: Rule = (app) => {
  const resources = resourcesOf(app);
  const used = [...parented(app)].filter(([e]) => 'resid' in e.attributes);
  const doubles = resources.filter((r, i) => resources.findIndex((o) => o.id === r.id) !== i);
  return [
    ...resources
      .filter((r) => r.id === '' || r.id.length > LIMITS.resid)
      .map((r) => `resource id "${r.id}" must have 1 to ${LIMITS.resid} characters`),
    ...doubles.map((r) => `resource id "${r.id}" is given twice`),
    ...used.flatMap(([e, parent]) => {
      const found = resources.find((r) => r.id === e.attributes.resid);
      if (!found) return [`<${e.name} resid="${e.attributes.resid ?? ''}"> points at nothing`];
      const kind = expectedKind(e, parent);
      return found.kind === kind
        ? []
        : [`<${e.name} resid="${found.id}"> points into ${found.kind}, not ${kind}`];
    }),
    ...resources
      .filter((r) => !used.some(([e]) => e.attributes.resid === r.id))
      .map((r) => `resource "${r.id}" is used nowhere`),
  ];
};

const lengths: Rule = (app) => {
  const over = (what: string, text: string, limit: number): string[] =>
    text.length > limit || text === ''
      ? [`${what} must have 1 to ${limit} characters, has ${text.length}`]
      : [];
  return [
    ...over('DisplayName', child(app, 'DisplayName')?.attributes.DefaultValue ?? '', LIMITS.short),
    ...over('Description', child(app, 'Description')?.attributes.DefaultValue ?? '', LIMITS.long),
    ...over('ProviderName', child(app, 'ProviderName')?.text ?? '', LIMITS.short),
    ...resourcesOf(app).flatMap(({ kind, id, value, others }) => {
      const limit = { 'bt:ShortStrings': LIMITS.short, 'bt:LongStrings': LIMITS.long }[kind];
      const what = kind === 'bt:ShortStrings' ? 'short' : 'long';
      return limit === undefined
        ? []
        : [value, ...others].flatMap((text) => over(`${what} string "${id}"`, text, limit));
    }),
  ];
};

const urlsOf = (app: XmlElement): (readonly [string, string])[] => [
  ...['IconUrl', 'HighResolutionIconUrl', 'SupportUrl'].flatMap((name) => {
    const e = child(app, name);
    return e ? [[name, e.attributes.DefaultValue ?? ''] as const] : [];
  }),
  ...[...everyElement(app)]
    .filter((e) => e.name === 'SourceLocation' && e.attributes.DefaultValue !== undefined)
    .map((e) => ['SourceLocation', e.attributes.DefaultValue ?? ''] as const),
  ...resourcesOf(app)
    .filter((r) => r.kind === 'bt:Images' || r.kind === 'bt:Urls')
    .map((r) => [r.id, r.value] as const),
];
const urls: Rule = (app) => {
  const all = urlsOf(app);
  const origins = new Set(
    all.filter(([, url]) => url.startsWith('https://')).map(([, url]) => new URL(url).origin),
  );
  return [
    ...all.flatMap(([what, url]) =>
      url.startsWith('https://') && url.length <= LIMITS.url
        ? []
        : [`${what}: "${url.slice(0, 60)}" is not an https address of at most ${LIMITS.url} characters`],
    ),
    ...(origins.size > 1 ? [`addresses point at several hosts: ${[...origins].join(', ')}`] : []),
  ];
};

/** A command calls a function that the pane knows. */
const commands: Rule = (app) =>
  [...everyElement(app)]
    .filter((e) => e.name === 'Action' && e.attributes['xsi:type'] === 'ExecuteFunction')
    .map((e) => child(e, 'FunctionName')?.text ?? '')
    .filter((name) => !Object.hasOwn(RIBBON, name))
    .map((name) => `the command "${name}" is none the pane knows`);

/** Pane, functions page and command file are one page that stays alive. */
const sharedRuntime: Rule = (app) => {
  const host = descend(app, 'VersionOverrides', 'Hosts', 'Host');
  const runtime = descend(host, 'Runtimes', 'Runtime');
  const functions = [...everyElement(app)].find(isCustomFunctions);
  const places: readonly (readonly [string, string | undefined])[] = [
    ['the functions page', descend(functions, 'Page', 'SourceLocation')?.attributes.resid],
    ['the function file', descend(host, 'DesktopFormFactor', 'FunctionFile')?.attributes.resid],
    ...[...everyElement(app)]
      .filter((e) => e.name === 'Action' && e.attributes['xsi:type'] === 'ShowTaskpane')
      .map((e) => ['the pane button', child(e, 'SourceLocation')?.attributes.resid] as const),
  ];
  const set = [...everyElement(app)].find((e) => e.name === 'Set' && e.attributes.Name === 'SharedRuntime');
  return [
    ...(runtime?.attributes.lifetime === 'long' ? [] : ['the runtime must have lifetime="long"']),
    ...places
      .filter(([, resid]) => resid !== runtime?.attributes.resid)
      .map(([what]) => `${what} must carry the runtime's resid`),
    ...(set?.attributes.MinVersion === '1.1' ? [] : ['the requirement SharedRuntime 1.1 is missing']),
    ...[...everyElement(app)]
      .filter((e) => e.name === 'TaskpaneId')
      .map(() => 'a shared runtime has no TaskpaneId'),
  ];
};

const functions: Rule = (app) => {
  const point = [...everyElement(app)].find(isCustomFunctions);
  const resid = child(point, 'Namespace')?.attributes.resid;
  const namespace = resourcesOf(app).find((r) => r.id === resid)?.value;
  return [
    ...(namespace === PREFIX
      ? []
      : [`the namespace is "${namespace ?? ''}", the functions are called ${PREFIX}.…`]),
    ...[...everyElement(app)]
      .filter((e) => e.name === TAKEN_BY_EQUIVALENT)
      .map(() => `<${TAKEN_BY_EQUIVALENT}> makes Excel store calls under other names`),
    ...(child(app, 'Permissions')?.text === 'ReadWriteDocument'
      ? []
      : ['Permissions must be ReadWriteDocument, the least that reaches cells']),
    ...(descend(app, 'Hosts', 'Host')?.attributes.Name === 'Workbook' ? [] : ['the host must be Workbook']),
  ];
};

const icons: Rule = (app, pixels) => {
  const resources = resourcesOf(app);
  const sized = (what: string, url: string, size: number): string[] => {
    const found = url.startsWith('https://') ? pixels(new URL(url).pathname) : undefined;
    if (!found) return [`${what}: there is no picture ${url}`];
    return found[0] === size && found[1] === size
      ? []
      : [`${what}: ${url} is ${found[0]} × ${found[1]}, not ${size} × ${size}`];
  };
  const lists = [...everyElement(app)].filter((e) => e.name === 'Icon');
  return [
    ...sized('IconUrl', child(app, 'IconUrl')?.attributes.DefaultValue ?? '', 32),
    ...sized('HighResolutionIconUrl', child(app, 'HighResolutionIconUrl')?.attributes.DefaultValue ?? '', 64),
    ...lists.flatMap((list) =>
      RIBBON_SIZES.filter((size) => !list.children.some((i) => i.attributes.size === size)).map(
        (size) => `an <Icon> lacks the size ${size}`,
      ),
    ),
    ...lists
      .flatMap((list) => list.children)
      .flatMap((image) => {
        const url = resources.find((r) => r.id === image.attributes.resid)?.value;
        return url === undefined
          ? []
          : sized(`icon ${image.attributes.size ?? ''}`, url, Number(image.attributes.size));
      }),
  ];
};

const RULES: readonly Rule[] = [
  required,
  order,
  identity,
  references,
  lengths,
  urls,
  sharedRuntime,
  commands,
  functions,
  icons,
];

export function lintManifest(source: string, pixels: PixelSize): string[] {
  let app: XmlElement;
  try {
    app = parseXml(source);
  } catch (error) {
    return [`not well-formed: ${error instanceof Error ? error.message : String(error)}`];
  }
  if (app.name !== 'OfficeApp' || app.attributes['xsi:type'] !== 'TaskPaneApp')
    return ['the outermost element must be <OfficeApp xsi:type="TaskPaneApp">'];
  return [...new Set(RULES.flatMap((rule) => rule(app, pixels)))];
}
