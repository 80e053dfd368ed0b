/** Adds fonts, fills, borders, formats and styles to a styles part; what is there stays as it is. */
import type { Borders, CellStyle, Font, StyleOverlay } from './model';
import { FIRST_OWN_FORMAT, BUILT_IN_FORMATS } from './numberFormats';
import { growList, insertOrdered } from './metadata';
import type { Edit, XmlElement } from './xml';
import { applyEdits, child, childrenOf, escapeXml, numeric, parseXml, withAttributes } from './xml';

/** What differs from a plain cell. */
export type StyleDescription = Partial<Omit<CellStyle, 'font'>> & { readonly font?: Partial<Font> };

const ORDER = [
  'numFmts',
  'fonts',
  'fills',
  'borders',
  'cellStyleXfs',
  'cellXfs',
  'cellStyles',
  'dxfs',
  'tableStyles',
  'colors',
  'extLst',
];

type List = 'numFmts' | 'fonts' | 'fills' | 'borders' | 'cellXfs' | 'dxfs';

export class StyleEditor {
  private readonly root: XmlElement;
  private readonly added: Record<List, string[]> = {
    numFmts: [],
    fonts: [],
    fills: [],
    borders: [],
    cellXfs: [],
    dxfs: [],
  };
  private readonly formats = new Map<string, number>();
  private nextFormat = FIRST_OWN_FORMAT;

  constructor(
    private readonly xmlText: string,
    part: string,
  ) {
    this.root = parseXml(xmlText, part);
    for (const [id, code] of BUILT_IN_FORMATS) this.formats.set(code, id);
    for (const { attributes } of childrenOf(child(this.root, 'numFmts'), 'numFmt')) {
      const id = numeric(attributes['numFmtId'], 0);
      this.formats.set(attributes['formatCode'] ?? '', id);
      this.nextFormat = Math.max(this.nextFormat, id + 1);
    }
  }

  /** The style at `index` with another number format: its index. */
  withNumberFormat(index: number, code: string): number {
    const present = childrenOf(child(this.root, 'cellXfs'), 'xf');
    const xf = present[index] ?? present[0];
    const changes = { numFmtId: String(this.format(code)), applyNumberFormat: '1' };
    if (xf === undefined)
      return this.add('cellXfs', `<xf numFmtId="${changes.numFmtId}" applyNumberFormat="1"/>`);
    return this.add('cellXfs', withAttributes(xf, changes) + this.xmlText.slice(xf.end, xf.closeEnd));
  }

  /** Index of a new style, or of an equal one added before. */
  addStyle(style: StyleDescription): number {
    const font = style.font === undefined ? 0 : this.add('fonts', this.fontXml(style.font));
    const fill = style.fill === undefined ? 0 : this.add('fills', fillXml(style.fill));
    const border = style.borders === undefined ? 0 : this.add('borders', bordersXml(style.borders));
    const format = this.format(style.numberFormat ?? 'General');
    const alignment = alignmentXml(style);
    const protection = style.locked === undefined ? '' : `<protection locked="${style.locked ? 1 : 0}"/>`;
    const applies =
      (format === 0 ? '' : ' applyNumberFormat="1"') +
      (font === 0 ? '' : ' applyFont="1"') +
      (fill === 0 ? '' : ' applyFill="1"') +
      (border === 0 ? '' : ' applyBorder="1"') +
      (alignment === '' ? '' : ' applyAlignment="1"') +
      (protection === '' ? '' : ' applyProtection="1"');
    const xf = `xf numFmtId="${format}" fontId="${font}" fillId="${fill}" borderId="${border}" xfId="0"${applies}`;
    const inner = alignment + protection;
    return this.add('cellXfs', inner === '' ? `<${xf}/>` : `<${xf}>${inner}</xf>`);
  }

  /** Index of a new overlay for conditional formats. */
  addOverlay(
    style: Omit<StyleOverlay, 'font' | 'borders'> & {
      readonly font?: Partial<Font>;
      readonly borders?: Borders;
    },
  ): number {
    const { font, fill, borders, numberFormat } = style;
    const inner =
      (font === undefined ? '' : overlayFontXml(font)) +
      (numberFormat === undefined
        ? ''
        : `<numFmt numFmtId="${this.format(numberFormat)}" formatCode="${escapeXml(numberFormat)}"/>`) +
      (fill === undefined
        ? ''
        : `<fill><patternFill patternType="solid"><bgColor rgb="${argb(fill)}"/></patternFill></fill>`) +
      (borders === undefined ? '' : bordersXml(borders));
    return this.add('dxfs', `<dxf>${inner}</dxf>`);
  }

  get hasAdditions(): boolean {
    return Object.values(this.added).some((entries) => entries.length > 0);
  }

  xml(): string {
    const edits: Edit[] = [];
    for (const list of ORDER) {
      const entries = list in this.added ? this.added[list as List] : [];
      if (entries.length === 0) continue;
      const own = entries.map((entry) => this.withNamespace(entry));
      const present = child(this.root, list);
      if (present !== undefined) edits.push(...growList(this.xmlText, present, ...own));
      else edits.push(this.newList(list, entries));
    }
    return applyEdits(this.xmlText, edits);
  }

  private newList(list: string, entries: readonly string[]): Edit {
    const text = this.withNamespace(`<${list} count="${entries.length}">${entries.join('')}</${list}>`);
    return insertOrdered(this.xmlText, this.root, ORDER.slice(ORDER.indexOf(list) + 1), text);
  }

  /** Index in the whole list; an entry added before is not added twice. */
  private add(list: List, xml: string): number {
    const entries = this.added[list];
    const known = entries.indexOf(xml);
    const at = known < 0 ? entries.push(xml) - 1 : known;
    return (child(this.root, list)?.children.length ?? 0) + at;
  }

  private format(code: string): number {
    const known = this.formats.get(code);
    if (known !== undefined) return known;
    const id = this.nextFormat++;
    this.formats.set(code, id);
    this.add('numFmts', `<numFmt numFmtId="${id}" formatCode="${escapeXml(code)}"/>`);
    return id;
  }

  /** Name and size follow the workbook's own first font where the description is silent. */
  private fontXml(font: Partial<Font>): string {
    const base = childrenOf(child(this.root, 'fonts'), 'font')[0];
    const name = font.name ?? child(base, 'name')?.attributes['val'] ?? 'Calibri';
    const size = font.size ?? numeric(child(base, 'sz')?.attributes['val'], 11);
    const color = font.color === undefined ? '' : `<color rgb="${argb(font.color)}"/>`;
    return `<font>${switchesXml(font)}<sz val="${size}"/>${color}<name val="${escapeXml(name)}"/></font>`;
  }

  private withNamespace(entry: string): string {
    if (this.root.prefix === '') return entry;
    if (entry.startsWith(`<${this.root.prefix}`)) return entry;
    const uri = this.root.attributes[`xmlns:${this.root.prefix.slice(0, -1)}`] ?? '';
    return entry.replace(/^<(\w+)/, `<$1 xmlns="${uri}"`);
  }
}

const argb = (color: string) => `FF${color.replace('#', '').toUpperCase()}`;

function switchesXml(font: Partial<Font>): string {
  const underline =
    font.underline === undefined || font.underline === 'none' ? '' : `<u val="${font.underline}"/>`;
  return (
    (font.bold === true ? '<b/>' : '') +
    (font.italic === true ? '<i/>' : '') +
    (font.strike === true ? '<strike/>' : '') +
    underline
  );
}

/** An overlay says only what it changes; spreadsheets do not let it change name or size. */
function overlayFontXml(font: Partial<Font>): string {
  const off = (name: string, value: boolean | undefined) => (value === false ? `<${name} val="0"/>` : '');
  const color = font.color === undefined ? '' : `<color rgb="${argb(font.color)}"/>`;
  return `<font>${off('b', font.bold)}${off('i', font.italic)}${switchesXml(font)}${color}</font>`;
}

const fillXml = (color: string) =>
  `<fill><patternFill patternType="solid"><fgColor rgb="${argb(color)}"/><bgColor indexed="64"/></patternFill></fill>`;

function bordersXml(borders: Borders): string {
  const sides = (['left', 'right', 'top', 'bottom'] as const).map((side) => {
    const border = borders[side];
    if (border === undefined) return `<${side}/>`;
    const color = border.color === undefined ? '<color auto="1"/>' : `<color rgb="${argb(border.color)}"/>`;
    return `<${side} style="${border.line}">${color}</${side}>`;
  });
  return `<border>${sides.join('')}</border>`;
}

function alignmentXml({ horizontal, vertical, wrap, indent, rotation, shrink }: StyleDescription): string {
  const attributes = [
    horizontal === undefined || horizontal === 'general' ? '' : ` horizontal="${horizontal}"`,
    vertical === undefined || vertical === 'bottom' ? '' : ` vertical="${vertical}"`,
    rotation === undefined || rotation === 0
      ? ''
      : ` textRotation="${rotation < 0 ? 90 - rotation : rotation}"`,
    wrap === true ? ' wrapText="1"' : '',
    indent === undefined || indent === 0 ? '' : ` indent="${indent}"`,
    shrink === true ? ' shrinkToFit="1"' : '',
  ].join('');
  return attributes === '' ? '' : `<alignment${attributes}/>`;
}
