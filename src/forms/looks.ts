import type { Kind } from '../core/quantity';

/** How the design sheets look: ink, what a person types, what the sheet answers, what to watch for. */

interface Line {
  readonly line: 'thin';
  readonly color: string;
}

/** What differs from a plain cell, whatever program writes it. */
export interface Look {
  readonly font?: {
    readonly name?: string;
    readonly size?: number;
    readonly bold?: boolean;
    readonly italic?: boolean;
    readonly underline?: 'single';
    readonly color?: string;
  };
  readonly fill?: string;
  readonly borders?: { readonly [side in 'top' | 'right' | 'bottom' | 'left']?: Line };
  readonly horizontal?: 'left' | 'center' | 'right';
  readonly vertical?: 'center';
  readonly wrap?: boolean;
  readonly indent?: number;
  readonly shrink?: boolean;
  readonly numberFormat?: string;
}

const INK = '#1F2D3A';
const QUIET = '#5A6772';
const RULE = '#D5DCE2';
const HEAD = '#24475C';

export const FONT = { name: 'Arial', size: 10 } as const;
const SMALL = { ...FONT, size: 9 } as const;
const bottom = { bottom: { line: 'thin', color: RULE } } as const;
const box = {
  top: { line: 'thin', color: '#C9B458' },
  right: { line: 'thin', color: '#C9B458' },
  bottom: { line: 'thin', color: '#C9B458' },
  left: { line: 'thin', color: '#C9B458' },
} as const;
const typed = { fill: '#FFF7D1', borders: box, font: { ...FONT, color: '#0B3D91' } } as const;
const middle = { vertical: 'center' } as const;
const text = { ...middle, wrap: true, horizontal: 'left' } as const;

export const STYLES = {
  title: { ...middle, font: { ...FONT, size: 16, bold: true, color: HEAD } },
  scenario: { ...text, font: { ...FONT, color: QUIET } },
  danger: { ...text, font: { ...FONT, bold: true, color: '#8A2B06' } },
  label: { ...text, font: { ...FONT, color: INK }, borders: bottom },
  strong: { ...text, font: { ...FONT, bold: true, color: INK } },
  head: { ...middle, wrap: true, font: { ...SMALL, bold: true, color: '#FFFFFF' }, fill: HEAD },
  headUnit: { ...middle, indent: 1, font: { ...SMALL, bold: true, color: '#FFFFFF' }, fill: HEAD },
  headRight: {
    ...middle,
    wrap: true,
    horizontal: 'right',
    font: { ...SMALL, bold: true, color: '#FFFFFF' },
    fill: HEAD,
  },
  section: { ...middle, font: { ...FONT, size: 11, bold: true, color: HEAD }, fill: '#DFE8EE' },
  decide: { ...text, font: { ...FONT, italic: true, color: QUIET } },
  unit: {
    ...middle,
    horizontal: 'left',
    indent: 1,
    shrink: true,
    font: { ...SMALL, color: QUIET },
    borders: bottom,
  },
  typedUnit: {
    ...middle,
    ...typed,
    horizontal: 'left',
    indent: 1,
    shrink: true,
    font: { ...SMALL, color: '#0B3D91' },
  },
  // As text, or a spreadsheet would take a thread such as 10-24 for a day in October.
  typedWords: { ...middle, ...typed, horizontal: 'center', wrap: true, numberFormat: '@' },
  listFirst: { ...middle, wrap: true, font: { ...SMALL, bold: true, color: '#FFFFFF' }, fill: HEAD },
  listHead: {
    ...middle,
    wrap: true,
    horizontal: 'center',
    font: { ...SMALL, bold: true, color: '#FFFFFF' },
    fill: HEAD,
  },
  listUnit: { ...middle, horizontal: 'center', font: { ...SMALL, color: QUIET }, fill: '#DFE8EE' },
  typedNumber: { ...middle, ...typed, horizontal: 'center' },
  typedName: { ...text, ...typed },
  blank: { ...middle, horizontal: 'left', indent: 1, font: { ...SMALL, color: QUIET }, borders: bottom },
  words: {
    ...middle,
    wrap: true,
    horizontal: 'center',
    font: { ...FONT, bold: true, color: INK },
    borders: bottom,
  },
  note: { ...text, font: { ...SMALL, color: INK }, borders: bottom },
  formula: { ...text, font: { ...SMALL, color: QUIET }, borders: bottom },
  caution: { ...text, font: { ...FONT, color: '#6B2306' }, fill: '#FCEADF' },
  link: { ...middle, font: { ...FONT, underline: 'single', color: '#0B5394' } },
} as const satisfies Record<string, Look>;

/** The look of a number the sheet gives, and of one a person types. */
export const numberStyle = (numberFormat: string): Look => ({
  ...middle,
  horizontal: 'right',
  font: { ...FONT, bold: true, color: INK },
  borders: bottom,
  numberFormat,
});
export const convertedStyle = (numberFormat: string): Look => ({
  ...numberStyle(numberFormat),
  font: { ...FONT, color: INK },
});
export const typedStyle: Look = { ...middle, ...typed, horizontal: 'right' };

export const GOOD = { font: { color: '#1D5B2A' }, fill: '#DFF0DA' } as const;
export const WARN = { font: { color: '#8A2B06' }, fill: '#FBDFCF' } as const;
export const INFO = { font: { color: '#1B4B7A' }, fill: '#E1ECF7' } as const;

/**
 * Decimals that read well in both systems. Of conditions the least stands first, and takes the negative numbers: LibreOffice
 * leaves out their sign in a later section.
 */
const FORMATS: Partial<Record<Kind | 'text', string>> = {
  length: '0.000',
  area: '[<100]0.000;#,##0',
  volume: '0.00',
  gasVolume: '0.000',
  force: '[<100]0.0;#,##0',
  tonnage: '0.00',
  pressure: '[<50]0.00;[<1000]0;#,##0',
  torque: '0.0',
  stiffness: '[<1000]0.0;#,##0',
  mass: '0.00',
  temperature: '0',
  rise: '0',
  time: '0.0',
  angle: '0.0',
  ratio: '0.00',
  count: '0',
  rotation: '#,##0',
  feedRate: '0.0',
  cuttingSpeed: '0',
  speed: '0.0',
  money: '#,##0.00',
  heatContent: '0',
  film: '0.0',
};
export const formatOf = (kind: Kind | 'text'): string => FORMATS[kind] ?? 'General';

/** With more decimals where a value needs them: whatever is typed into a form must show. */
export const valueFormat = (kind: Kind): string => FINE[kind] ?? formatOf(kind);
const FINE: Partial<Record<Kind, string>> = {
  length: '0.000##',
  area: '0.000##',
  ratio: '0.00##',
  angle: '0.0##',
  torque: '0.0##',
  stiffness: '[<10]0.000##;[<1000]0.00;#,##0',
  pressure: '[<1000]0.0##;#,##0',
  money: '#,##0.00##',
  count: 'General',
};
