/** The charts and pictures of a sheet, where they stand (ECMA-376 part 1, 20.5). */
import { readTheme, type Theme } from '../colors';
import type { Workbook } from '../model';
import { workbookPart } from '../open';
import { listSheets } from '../read';
import {
  contentType,
  readText,
  relatedPart,
  relationshipsOf,
  type Parts,
  type Relationship,
} from '../relationships';
import {
  child,
  childrenOf,
  decodeText,
  descendants,
  flag,
  numeric,
  parseXml,
  prefixed,
  type XmlElement,
} from '../xml';
import { fillColor } from './drawingColor';
import { EMU, type Anchor, type Corner, type Crop, type Drawing, type Shown, type Size } from './model';
import { readChart } from './readChart';

/** Pictures that every browser shows. */
const SHOWN = /^image\/(?:png|jpeg|gif|svg\+xml|webp|bmp)$/;
const ANCHORS = /^(?:twoCell|oneCell|absolute)Anchor$/;
/** Shares of a picture are counted in thousandths of a percent. */
const WHOLE = 100_000;

const known = new WeakMap<Workbook, Map<string, readonly Drawing[]>>();

/** What stands over the cells of a sheet, the last on top; empty where there is nothing or it cannot be read. */
export function drawingsOf(workbook: Workbook, sheet: string): readonly Drawing[] {
  let sheets = known.get(workbook);
  if (!sheets) known.set(workbook, (sheets = new Map<string, readonly Drawing[]>()));
  let drawings = sheets.get(sheet);
  if (!drawings) sheets.set(sheet, (drawings = readDrawings(workbook.parts, sheet)));
  return drawings;
}

function readDrawings(parts: Parts, sheet: string): readonly Drawing[] {
  const book = workbookPart(parts);
  const listed = listSheets(parts, book, parseXml(readText(parts, book) ?? '', book));
  const sheetPart = listed.find(({ name }) => name === sheet)?.part;
  const part = sheetPart === undefined ? undefined : relatedPart(parts, sheetPart, 'drawing');
  const xml = part === undefined ? undefined : readText(parts, part);
  if (part === undefined || xml === undefined) return [];
  const reader = new DrawingReader(parts, part, readTheme(parts, relatedPart(parts, book, 'theme')));
  return anchorsIn(parseXml(xml, part)).flatMap((anchor) => reader.read(anchor));
}

/** Programs offer newer content with older beside it: the older is what we know. */
function anchorsIn(root: XmlElement): XmlElement[] {
  return root.children.flatMap((one): XmlElement[] => {
    if (ANCHORS.test(one.name)) return [one];
    return one.name === 'AlternateContent' ? anchorsIn(chosen(one)) : [];
  });
}

/** A choice that holds a newer kind of chart has nothing for us but its name. */
const chosen = (alternatives: XmlElement): XmlElement =>
  child(alternatives, 'Choice') ?? child(alternatives, 'Fallback') ?? alternatives;

class DrawingReader {
  private readonly related: readonly Relationship[];

  constructor(
    private readonly parts: Parts,
    part: string,
    private readonly theme: Theme,
  ) {
    this.related = relationshipsOf(parts, part);
  }

  read(element: XmlElement): Drawing[] {
    const anchor = anchorOf(element);
    const holder = element.children.find(({ name }) => name === 'AlternateContent');
    const content = (holder ? chosen(holder) : element).children.find(({ name }) =>
      ['graphicFrame', 'pic', 'sp', 'grpSp'].includes(name),
    );
    const properties = content && descendants(content, 'cNvPr')[0]?.attributes;
    if (!anchor || !content || flag(properties?.['hidden'])) return [];
    const shown = this.shown(content);
    if (!shown) return [];
    const description = properties?.['descr'] ?? '';
    return [
      {
        ...shown,
        anchor,
        name: properties?.['name'] ?? '',
        ...(description !== '' && { description }),
      },
    ];
  }

  private shown(content: XmlElement): Shown | undefined {
    switch (content.name) {
      case 'pic':
        return this.picture(content);
      case 'graphicFrame':
        return this.chart(content);
      case 'sp':
        return this.shape(content);
      default:
        return { shows: 'frame', words: 'Shapes grouped together' };
    }
  }

  private chart(content: XmlElement): Shown {
    const data = descendants(content, 'graphicData')[0];
    const part = this.target(child(data, 'chart'), 'id');
    const xml = part === undefined ? undefined : readText(this.parts, part);
    if (part === undefined || xml === undefined)
      return { shows: 'frame', words: 'A chart of a kind that is not drawn here' };
    const root = parseXml(xml, part);
    if (root.name !== 'chartSpace')
      return { shows: 'frame', words: 'A chart of a kind that is not drawn here' };
    return { shows: 'chart', chart: readChart(root, this.theme) };
  }

  private picture(content: XmlElement): Shown {
    const fill = child(content, 'blipFill');
    const blip = child(fill, 'blip');
    // A drawing that scales has a picture of dots beside it for older programs.
    const scaled = blip && descendants(blip, 'svgBlip')[0];
    const part = this.target(scaled, 'embed') ?? this.target(blip, 'embed');
    const type = part === undefined ? undefined : contentType(this.parts, part);
    if (part === undefined || !this.parts.has(part))
      return { shows: 'frame', words: 'A picture outside of the file' };
    if (type === undefined || !SHOWN.test(type)) {
      const ending = part.slice(part.lastIndexOf('.') + 1).toUpperCase();
      return { shows: 'frame', words: `A picture in the format ${ending}, which is not shown here` };
    }
    const cut = cropOf(child(fill, 'srcRect'));
    return { shows: 'picture', type, part, ...(cut && { crop: cut }) };
  }

  /** Boxes with words are shown as such; lines and arrows would be in the way as frames. */
  private shape(content: XmlElement): Shown | undefined {
    const lines = childrenOf(child(content, 'txBody'), 'p').map((line) =>
      descendants(line, 't')
        .map(({ text }) => decodeText(text))
        .join(''),
    );
    const words = lines.join('\n').trim();
    const fill = fillColor(child(content, 'spPr'), this.theme);
    return words === '' ? undefined : { shows: 'frame', words, ...(fill !== undefined && { fill }) };
  }

  private target(element: XmlElement | undefined, attribute: string): string | undefined {
    const id = element && (prefixed(element.attributes, attribute) ?? element.attributes[attribute]);
    const found = this.related.find((one) => one.id === id);
    return found && !found.external ? found.target : undefined;
  }
}

function anchorOf(element: XmlElement): Anchor | undefined {
  const from = child(element, 'from');
  const to = child(element, 'to');
  const ext = child(element, 'ext')?.attributes;
  const size: Size = { width: pixels(ext?.['cx']), height: pixels(ext?.['cy']) };
  if (from && to) return { from: cornerOf(from), to: cornerOf(to) };
  if (from && ext) return { from: cornerOf(from), size };
  const place = child(element, 'pos')?.attributes;
  if (place && ext) return { at: { x: pixels(place['x']), y: pixels(place['y']) }, size };
  return undefined;
}

function cornerOf(element: XmlElement): Corner {
  const number = (name: string): number => numeric(child(element, name)?.text, 0);
  return {
    row: Math.max(0, number('row')),
    column: Math.max(0, number('col')),
    right: number('colOff') / EMU,
    down: number('rowOff') / EMU,
  };
}

const pixels = (emu: string | undefined): number => Math.max(0, numeric(emu, 0) / EMU);

function cropOf(element: XmlElement | undefined): Crop | undefined {
  if (!element) return undefined;
  const share = (name: string): number => Math.max(0, numeric(element.attributes[name], 0) / WHOLE);
  const [left, top, right, bottom] = [share('l'), share('t'), share('r'), share('b')];
  return left + right < 1 && top + bottom < 1 && left + top + right + bottom > 0
    ? { left, top, right, bottom }
    : undefined;
}
