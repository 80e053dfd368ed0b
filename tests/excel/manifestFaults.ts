import { parseXml, within, type Element } from './xml';

export interface ManifestSurroundings {
  /** The names given to `Office.actions.associate`. */
  readonly commands: readonly string[];
  /** Width in pixels of the image at an address, undefined where there is none. */
  readonly imageSize: (url: string) => number | undefined;
}

/**
 * What is wrong with a manifest for an add-in of custom functions in a shared runtime. Office refuses such a file, or
 * worse, loads it and leaves the functions out, mostly without a word; its own checker needs the internet.
 * The rules are those of Microsoft's manifest reference and its article on the shared runtime.
 */
export const manifestFaults = (xml: string, surroundings: ManifestSurroundings): string[] => {
  const app = parseXml(xml);
  const manifest: Manifest = { app, all: within(app), resources: resourcesOf(app), ...surroundings };
  return RULES.flatMap((rule) => rule(manifest));
};

interface Manifest extends ManifestSurroundings {
  readonly app: Element;
  readonly all: readonly Element[];
  readonly resources: ReadonlyMap<string, string>;
}

type Rule = (manifest: Manifest) => string[];

const RESOURCE_KINDS = ['bt:Image', 'bt:Url', 'bt:String'];
const CONTROLS = ['Control', 'Item'];

const resourcesOf = (app: Element): Map<string, string> =>
  new Map(
    within(app)
      .filter(({ name }) => RESOURCE_KINDS.includes(name))
      .flatMap(({ attributes }): [string, string][] => {
        const { id, DefaultValue } = attributes;
        return id === undefined ? [] : [[id, DefaultValue ?? '']];
      }),
  );

const value = (element: Element): string => element.attributes['DefaultValue'] ?? element.text.trim();
const residOf = (element: Element | undefined): string => element?.attributes['resid'] ?? '';
const child = (element: Element | undefined, name: string): Element | undefined =>
  element?.children.find((inner) => inner.name === name);
const kindOf = (element: Element): string => element.attributes['xsi:type'] ?? '';

/** Children must stand in the order of the schema; anything else is "not a valid child". */
const ORDERS: readonly { readonly of: (element: Element) => boolean; readonly names: readonly string[] }[] = [
  {
    of: ({ name }) => name === 'OfficeApp',
    names: [
      ...[
        'Id',
        'AlternateId',
        'Version',
        'ProviderName',
        'DefaultLocale',
        'DisplayName',
        'Description',
        'IconUrl',
      ],
      ...['HighResolutionIconUrl', 'SupportUrl', 'AppDomains', 'Hosts', 'Requirements', 'DefaultSettings'],
      ...['Permissions', 'VersionOverrides'],
    ],
  },
  {
    of: (element) => element.name === 'Host' && kindOf(element) !== '',
    names: ['Runtimes', 'AllFormFactors', 'DesktopFormFactor'],
  },
  {
    of: (element) => kindOf(element) === 'CustomFunctions',
    names: ['Script', 'Page', 'Metadata', 'Namespace'],
  },
  { of: ({ name }) => name === 'DesktopFormFactor', names: ['GetStarted', 'FunctionFile', 'ExtensionPoint'] },
  {
    of: ({ name }) => CONTROLS.includes(name),
    names: ['OverriddenByRibbonApi', 'Label', 'Supertip', 'Icon', 'Action', 'Enabled', 'Items'],
  },
  {
    of: ({ name }) => name === 'Resources',
    names: ['bt:Images', 'bt:Urls', 'bt:ShortStrings', 'bt:LongStrings'],
  },
];

const order: Rule = ({ all }) =>
  all.flatMap((element) => {
    const names = ORDERS.find(({ of }) => of(element))?.names;
    if (!names) return [];
    let last = -1;
    return element.children.flatMap(({ name }) => {
      const place = names.indexOf(name);
      if (place < 0) return [`${element.name}: ${name} is not a valid child`];
      if (place < last) return [`${element.name}: ${name} stands too late`];
      last = place;
      return [];
    });
  });

const identity: Rule = ({ app }) => {
  const id = child(app, 'Id')?.text ?? '';
  const version = child(app, 'Version')?.text ?? '';
  return [
    ...(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(id) ? [] : [`Id: "${id}" is not a GUID`]),
    ...(/^[0-9]{1,5}(\.[0-9]{1,5}){0,3}$/.test(version)
      ? []
      : [`Version: "${version}" is not 1 to 4 numbers`]),
  ];
};

const lengths: Rule = ({ app, all }) => {
  const limited = (elements: readonly (Element | undefined)[], limit: number): string[] =>
    elements.flatMap((element) => {
      const length = element ? value(element).length : 0;
      const called = element?.attributes['id'] ?? element?.name ?? 'missing element';
      return length >= 1 && length <= limit
        ? []
        : [`${called}: ${length} characters, 1 to ${limit} are allowed`];
    });
  const strings = (kind: string): Element[] => all.find(({ name }) => name === kind)?.children ?? [];
  return [
    ...limited([child(app, 'DisplayName'), child(app, 'ProviderName'), ...strings('bt:ShortStrings')], 125),
    ...limited([child(app, 'Description'), ...strings('bt:LongStrings')], 250),
  ];
};

const resourceIds: Rule = ({ all, resources }) => {
  const ids = all
    .filter(({ name }) => RESOURCE_KINDS.includes(name))
    .flatMap(({ attributes: { id } }) => id ?? []);
  const resids = all.flatMap(({ attributes: { resid } }) => resid ?? []);
  return [
    ...repeated(ids).map((id) => `resource ${id} is there twice`),
    ...[...ids, ...resids]
      .filter((id) => id.length < 1 || id.length > 32)
      .map((id) => `"${id}": 1 to 32 characters`),
    ...resids.filter((id) => !resources.has(id)).map((id) => `resid ${id} has no resource`),
  ];
};

const controlIds: Rule = ({ all }) =>
  [['Group'], CONTROLS].flatMap((names) => {
    const ids = all
      .filter(({ name }) => names.includes(name))
      .map(({ attributes }) => attributes['id'] ?? '');
    return [
      ...repeated(ids).map((id) => `${names.join('/')} id ${id} is there twice`),
      ...ids.filter((id) => id.length < 1 || id.length > 125).map((id) => `"${id}": 1 to 125 characters`),
    ];
  });

const urls: Rule = ({ app, all }) => {
  const direct = ['IconUrl', 'HighResolutionIconUrl', 'SupportUrl'].flatMap((name) => child(app, name) ?? []);
  const resources = all.filter(
    ({ name, attributes }) => (name === 'bt:Url' || name === 'bt:Image') && attributes['id'],
  );
  const pages = all.filter(({ name, attributes }) => name === 'SourceLocation' && attributes['DefaultValue']);
  const addresses = [...direct, ...pages, ...resources].map(value);
  const [main = ''] = pages.map(value);
  return addresses.flatMap((address) => {
    if (!address.startsWith('https://')) return [`"${address}" is not https`];
    if (address.length > 2048) return [`an address of ${address.length} characters, 2048 are allowed`];
    return originOf(address) === originOf(main) ? [] : [`"${address}" is served from elsewhere than ${main}`];
  });
};

const icons: Rule = ({ app, all, resources, imageSize }) => {
  const sized = (url: string, size: number): string[] =>
    imageSize(url) === size ? [] : [`"${url}" is not an image of ${size} × ${size} pixels`];
  const direct = (name: string, size: number): string[] => {
    const element = child(app, name);
    return element ? sized(value(element), size) : [`${name} is missing`];
  };
  const sets = all.filter(({ name }) => name === 'Icon');
  return [
    ...direct('IconUrl', 32),
    ...direct('HighResolutionIconUrl', 64),
    ...sets.flatMap(({ children }) => {
      const sizes = children.map(({ attributes }) => attributes['size']);
      return ['16', '32', '80']
        .filter((size) => !sizes.includes(size))
        .map((size) => `an Icon without size ${size}`);
    }),
    ...sets.flatMap(({ children }) =>
      children.flatMap((image) =>
        sized(resources.get(residOf(image)) ?? '', Number(image.attributes['size'])),
      ),
    ),
  ];
};

const runtime: Rule = ({ all }) => {
  const element = all.find(({ name }) => name === 'Runtime');
  const shared = residOf(element);
  const point = all.find((inner) => kindOf(inner) === 'CustomFunctions');
  const users = [
    child(child(point, 'Page'), 'SourceLocation'),
    all.find(({ name }) => name === 'FunctionFile'),
    ...all
      .filter((inner) => kindOf(inner) === 'ShowTaskpane')
      .map((action) => child(action, 'SourceLocation')),
  ];
  return [
    ...(element?.attributes['lifetime'] === 'long' ? [] : ['a shared runtime needs lifetime "long"']),
    ...(users.every((user) => residOf(user) === shared)
      ? []
      : ['Runtime, Page, FunctionFile and the panel must have the same resid']),
    ...(all.some(({ name }) => name === 'TaskpaneId')
      ? ['a shared runtime has one panel: no TaskpaneId']
      : []),
  ];
};

const requirements: Rule = ({ all }) => {
  const sets = all.filter(({ name }) => name === 'Set').map(({ attributes }) => attributes);
  const needs = [
    ['SharedRuntime', '1.1'],
    ['CustomFunctionsRuntime', '1.3'],
  ] as const;
  return needs.flatMap(([name, version]) =>
    sets.some((set) => set['Name'] === name && set['MinVersion'] === version)
      ? []
      : [`requirement set ${name} ${version} is missing`],
  );
};

const namespace: Rule = ({ all, resources }) => {
  const text = resources.get(residOf(all.find(({ name }) => name === 'Namespace'))) ?? '';
  return /^[A-Za-z][A-Za-z0-9._]{0,31}$/.test(text) ? [] : [`"${text}" is not a namespace`];
};

const commands: Rule = ({ all, commands: known }) => [
  ...all
    .filter(({ name }) => name === 'FunctionName')
    .filter(({ text }) => !known.includes(text))
    .map(({ text }) => `no command is associated with ${text}`),
  ...all
    .filter(({ name }) => name === 'OfficeMenu')
    .filter(({ attributes: { id } }) => id !== 'ContextMenuCell' && id !== 'ContextMenuText')
    .map(({ attributes: { id } }) => `OfficeMenu ${id ?? ''} does not exist`),
];

const RULES: readonly Rule[] = [
  order,
  identity,
  lengths,
  resourceIds,
  controlIds,
  urls,
  icons,
  runtime,
  requirements,
  namespace,
  commands,
];

const repeated = (ids: readonly string[]): string[] => [
  ...new Set(ids.filter((id, i) => ids.findIndex((other) => other.toLowerCase() === id.toLowerCase()) < i)),
];

const originOf = (address: string): string => {
  try {
    return new URL(address).origin;
  } catch {
    return '';
  }
};
