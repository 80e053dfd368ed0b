import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { OfficeAddinManifest } from 'office-addin-manifest';
import { describe, expect, it } from 'vitest';
import { commands } from '../../src/excel/commands';
import { NAMESPACE } from '../../src/cells/namespace';
import { version } from '../../package.json';
import { drawIcon, ICONS, type IconName } from '../../scripts/excel/icons';
import { DEVELOPMENT_ORIGIN, manifestFor, readOrigin } from '../../scripts/excel/manifest';
import { manifestFaults } from './manifestFaults';

const file = resolve('manifest.xml');
const manifest = readFileSync(file, 'utf8');

/** The width that stands in the header of the PNG which the build draws for an address. */
const imageSize = (url: string): number | undefined => {
  const [, name, size] = /\/assets\/([a-z]+)-(\d+)\.png$/.exec(url) ?? [];
  return name !== undefined && name in ICONS ? pngWidth(name as IconName, Number(size)) : undefined;
};

const widths = new Map<string, number>();
const pngWidth = (name: IconName, size: number): number => {
  const known = widths.get(`${name} ${size}`);
  const width = known ?? new DataView(drawIcon(name, size).buffer).getUint32(16);
  widths.set(`${name} ${size}`, width);
  return width;
};

const faults = (xml: string): string[] => manifestFaults(xml, { commands: Object.keys(commands), imageSize });

/** The manifest with one thing changed; a change that finds nothing to change would test nothing. */
const changed = (from: string | RegExp, to: string): string => {
  const result = manifest.replace(from, to);
  expect(result).not.toBe(manifest);
  return result;
};

describe('manifest.xml', () => {
  it('breaks no rule', () => {
    expect(faults(manifest)).toEqual([]);
  });

  it('is readable for office-addin-manifest and carries the version of the package', async () => {
    const info = await OfficeAddinManifest.readManifestFile(file);
    expect(info).toMatchObject({
      displayName: 'Moldsheet',
      version: `${version}.0`,
      hosts: ['Workbook'],
      permissions: 'ReadWriteDocument',
    });
  });

  it('declares the namespace under which the functions are typed', () => {
    expect(manifest).toContain(`<bt:String id="Functions.Namespace" DefaultValue="${NAMESPACE}" />`);
  });

  it('shows every icon that the build draws', () => {
    const shown = [...manifest.matchAll(/\/assets\/([a-z]+)-\d+\.png"/g)].map(([, name]) => name);
    expect([...new Set(shown)].sort()).toEqual(Object.keys(ICONS).sort());
  });

  it('names every command and no other', () => {
    const named = [...manifest.matchAll(/<FunctionName>(\w+)</g)].map(([, name]) => name);
    expect([...new Set(named)].sort()).toEqual(Object.keys(commands).sort());
  });
});

describe('the manifest for another address', () => {
  it('has every address replaced and breaks no rule', () => {
    const built = manifestFor(manifest, readOrigin('https://tools.example/moldsheet/'));
    expect(built).not.toContain(DEVELOPMENT_ORIGIN);
    expect(built).toContain('"https://tools.example/moldsheet/functions.json"');
    expect(faults(built)).toEqual([]);
  });

  it.each(['http://tools.example', 'tools.example', 'https://tools.example/?a=1', 'true'])(
    'refuses %s',
    (given) => {
      expect(() => readOrigin(given)).toThrow('origin must be an https address');
    },
  );
});

const swap = (first: string, second: string): [RegExp, string] => [
  new RegExp(
    `(<${first}[ >/][\\s\\S]*?</${first}>|<${first} [^>]*/>)(\\s*)(<${second}[ >/][\\s\\S]*?</${second}>|<${second} [^>]*/>)`,
  ),
  '$3$2$1',
];

describe('the rules find', () => {
  const wrong: [what: string, change: [string | RegExp, string], fault: string][] = [
    [
      'elements of the add-in out of order',
      swap('Version', 'ProviderName'),
      'OfficeApp: Version stands too late',
    ],
    [
      'an element that the schema has not',
      ['<Hosts>', '<Colour>red</Colour><Hosts>'],
      'Colour is not a valid child',
    ],
    [
      'form factors before the runtimes',
      swap('Runtimes', 'AllFormFactors'),
      'Host: Runtimes stands too late',
    ],
    ['parts of the functions out of order', swap('Script', 'Page'), 'ExtensionPoint: Script stands too late'],
    ['a function file before the greeting', swap('GetStarted', 'FunctionFile'), 'GetStarted stands too late'],
    [
      'a button with its parts out of order',
      [/(<Supertip>[\s\S]*?<\/Supertip>)(\s*)(<Icon>[\s\S]*?<\/Icon>)/, '$3$2$1'],
      'Control: Supertip stands too late',
    ],
    ['resources out of order', swap('bt:Urls', 'bt:ShortStrings'), 'Resources: bt:Urls stands too late'],
    ['an id that is no GUID', ['df8a15d4-', ''], 'is not a GUID'],
    ['a version with too many digits', ['<Version>2.', '<Version>123456.'], 'Version: "123456.0.0.0"'],
    [
      'a display name that is too long',
      ['DisplayName DefaultValue="', `$&${'x'.repeat(125)}`],
      'DisplayName: 134 characters',
    ],
    ['an empty provider', [/<ProviderName>.*</, '<ProviderName><'], 'ProviderName: 0 characters'],
    [
      'a short string that is too long',
      ['DefaultValue="Show work"', `DefaultValue="${'x'.repeat(126)}"`],
      'Work.Label: 126 characters',
    ],
    [
      'a description that is too long',
      ['Description DefaultValue="', `$&${'x'.repeat(250)}`],
      'Description: ',
    ],
    [
      'a long string that is too long',
      ['id="Start.Text" DefaultValue="', `$&${'x'.repeat(250)}`],
      'Start.Text: ',
    ],
    [
      'a resource id that is too long',
      [/Functions\.Script"/g, `Functions.Script${'x'.repeat(20)}"`],
      '1 to 32 characters',
    ],
    [
      'a resource id given twice',
      ['<bt:Url id="Help.Url"', '<bt:Url id="Panel.Url"'],
      'resource Panel.Url is there twice',
    ],
    [
      'a resid without a resource',
      ['resid="Start.Title"', 'resid="Start.Name"'],
      'resid Start.Name has no resource',
    ],
    [
      'a control id given twice',
      ['id="Moldsheet.Work"', 'id="Moldsheet.Panel"'],
      'id Moldsheet.Panel is there twice',
    ],
    [
      'a group id that is too long',
      ['id="Moldsheet.Group"', `id="${'x'.repeat(126)}"`],
      '1 to 125 characters',
    ],
    [
      'an address without https',
      ['"https://localhost:3443/functions.js"', '"http://localhost:3443/functions.js"'],
      'functions.js" is not https',
    ],
    [
      'an address that is too long',
      ['3443/functions.js"', `3443/${'x'.repeat(2048)}.js"`],
      '2048 are allowed',
    ],
    [
      'an address on another server',
      ['https://localhost:3443/functions.js"', 'https://example.com/functions.js"'],
      'served from elsewhere',
    ],
    ['an icon of the wrong size', ['assets/icon-32.png', 'assets/icon-64.png'], 'is not an image of 32 × 32'],
    [
      'a high-resolution icon of the wrong size',
      [
        'HighResolutionIconUrl DefaultValue="https://localhost:3443/assets/icon-64',
        'HighResolutionIconUrl DefaultValue="https://localhost:3443/assets/icon-80',
      ],
      'is not an image of 64 × 64',
    ],
    [
      'an image that the build does not make',
      ['assets/work-80.png', 'assets/working-80.png'],
      'is not an image of 80 × 80',
    ],
    [
      'a set of icons without size 80',
      [/<bt:Image size="80" resid="work.80" \/>/, ''],
      'an Icon without size 80',
    ],
    ['a runtime that ends when idle', ['lifetime="long"', 'lifetime="short"'], 'lifetime "long"'],
    [
      'a runtime with another page',
      ['<Runtime resid="Panel.Url"', '<Runtime resid="Help.Url"'],
      'must have the same resid',
    ],
    [
      'a functions page of its own',
      [/(<Page>\s*<SourceLocation resid=)"Panel.Url"/, '$1"Help.Url"'],
      'must have the same resid',
    ],
    ['a second panel', ['<Action xsi:type="ShowTaskpane">', '$&<TaskpaneId>a</TaskpaneId>'], 'no TaskpaneId'],
    [
      'a missing requirement set',
      ['Name="SharedRuntime"', 'Name="Other"'],
      'requirement set SharedRuntime 1.1 is missing',
    ],
    [
      'a requirement set that is too old',
      ['MinVersion="1.3"', 'MinVersion="1.1"'],
      'CustomFunctionsRuntime 1.3 is missing',
    ],
    [
      'a namespace with a space',
      ['DefaultValue="MOLD"', 'DefaultValue="MO LD"'],
      '"MO LD" is not a namespace',
    ],
    [
      'a command that the code has not',
      ['<FunctionName>showWork<', '<FunctionName>showWorks<'],
      'no command is associated with showWorks',
    ],
    [
      'a context menu that Excel has not',
      ['id="ContextMenuCell"', 'id="ContextMenuRow"'],
      'OfficeMenu ContextMenuRow does not exist',
    ],
  ];

  it.each(wrong)('%s', (_what, [from, to], fault) => {
    expect(faults(changed(from, to)).join('\n')).toContain(fault);
  });
});
