/**
 * XML in and out. Reading goes through saxes wherever the text is not of the plainest kind, and knows where in the text each element stands, so that saving
 * can replace single elements and leave every other character alone. Names are without namespace prefix:
 * programs differ in the prefixes they choose.
 */
import { SaxesParser } from 'saxes';
import { scanPlainXml } from './plainXml';
import { UnreadableWorkbook } from './unreadable';
import type { Attributes, OpenTag, XmlHandler } from './xmlHandler';

export interface XmlElement extends OpenTag {
  readonly children: XmlElement[];
  /** Text directly inside, without that of children. */
  text: string;
  closeStart: number;
  closeEnd: number;
}

/** Deeper than any part of a workbook; keeps walks over a hostile file from running out of stack. */
const MAX_DEPTH = 200;

export function decodePart(bytes: Uint8Array, part: string): string {
  try {
    const wide = utf16(bytes);
    if (wide !== undefined) return asUtf8(new TextDecoder(wide, { fatal: true }).decode(bytes));
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UnreadableWorkbook(`The part "${part}" of the file is not readable text.`);
  }
}

/** Parts may be written in two bytes a character: they begin with a mark of order, or with `<` and a zero. */
function utf16([first, second]: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be';
  return undefined;
}

/** What is written again is written in UTF-8, so its declaration must say so. */
const asUtf8 = (xml: string): string =>
  xml.replace(/^(<\?xml[^>]*?encoding=["'])[^"']*/i, (_, before: string) => `${before}UTF-8`);

export const encodePart = (text: string): Uint8Array => new TextEncoder().encode(text);

export function scanXml(xml: string, part: string, handler: XmlHandler): void {
  const tags = scanPlainXml(xml, MAX_DEPTH, handler);
  if (tags !== undefined) parseFrom(tags, xml, part, handler);
}

/** Reads the whole text, but hands over only what follows the first so many tags. */
function parseFrom(first: number, xml: string, part: string, handler: XmlHandler): void {
  const parser = new SaxesParser();
  let tags = 0;
  let depth = 0;
  parser.on('doctype', () => {
    throw new UnreadableWorkbook(
      `The part "${part}" declares a document type or entities, which no workbook needs; it was not opened.`,
    );
  });
  parser.on('error', (error) => {
    throw new UnreadableWorkbook(`The part "${part}" is not well-formed XML (${error.message}).`);
  });
  parser.on('opentag', (tag) => {
    if (++depth > MAX_DEPTH)
      throw new UnreadableWorkbook(`The part "${part}" is nested too deep to be a workbook's.`);
    if (++tags <= first) return;
    const end = parser.position;
    const colon = tag.name.indexOf(':') + 1;
    handler.open({
      name: tag.name.slice(colon),
      prefix: tag.name.slice(0, colon),
      attributes: tag.attributes,
      selfClosing: tag.isSelfClosing,
      // An attribute cannot hold a bare "<", so the nearest one before opened this tag.
      start: xml.lastIndexOf('<', end - 1),
      end,
    });
  });
  parser.on('text', (text) => {
    if (tags >= first) handler.text(text);
  });
  parser.on('cdata', (text) => {
    if (tags >= first) handler.text(text);
  });
  parser.on('closetag', (tag) => {
    depth--;
    if (++tags <= first) return;
    const end = parser.position;
    handler.close(
      tag.name.slice(tag.name.indexOf(':') + 1),
      tag.isSelfClosing ? end : xml.lastIndexOf('<', end - 1),
      end,
    );
  });
  parser.write(xml).close();
}

/** Collects elements into trees; feed it the events of one subtree or of a whole part. */
export class TreeBuilder implements XmlHandler {
  root: XmlElement | undefined;
  private readonly stack: XmlElement[] = [];

  get depth(): number {
    return this.stack.length;
  }

  open(tag: OpenTag): void {
    const element: XmlElement = { ...tag, children: [], text: '', closeStart: tag.end, closeEnd: tag.end };
    this.stack.at(-1)?.children.push(element);
    this.root ??= element;
    this.stack.push(element);
  }

  text(text: string): void {
    const top = this.stack.at(-1);
    if (top !== undefined) top.text += text;
  }

  close(_name: string, start: number, end: number): void {
    const element = this.stack.pop();
    if (element === undefined) return;
    element.closeStart = start;
    element.closeEnd = end;
  }
}

export function parseXml(xml: string, part: string): XmlElement {
  const tree = new TreeBuilder();
  scanXml(xml, part, tree);
  if (tree.root === undefined) throw new UnreadableWorkbook(`The part "${part}" is empty.`);
  return tree.root;
}

export function child(element: XmlElement | undefined, name: string): XmlElement | undefined {
  return element?.children.find((one) => one.name === name);
}

export function childrenOf(element: XmlElement | undefined, name: string): XmlElement[] {
  return element?.children.filter((one) => one.name === name) ?? [];
}

/** Every element of that name at any depth. */
export function descendants(element: XmlElement, name: string): XmlElement[] {
  return element.children.flatMap((one) => [...(one.name === name ? [one] : []), ...descendants(one, name)]);
}

/** The value of an attribute by its name without prefix; for `r:id` and its like, whose prefix is the writer's choice. */
export function prefixed(attributes: Attributes, local: string): string | undefined {
  return Object.entries(attributes).find(([name]) => name.endsWith(`:${local}`))?.[1];
}

/** XML Schema booleans; `fallback` where the attribute is left out. */
export function flag(value: string | undefined, fallback = false): boolean {
  return value === undefined ? fallback : value === '1' || value === 'true' || value === 'on';
}

/** A finite number or the fallback. */
export function numeric(value: string | undefined, fallback: number): number {
  const number = value === undefined || value.trim() === '' ? NaN : Number(value);
  return Number.isFinite(number) ? number : fallback;
}

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Replaces stretches of a text; they must not overlap. Insertions at one place keep the order given. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let at = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    pieces.push(text.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(text.slice(at));
  return pieces.join('');
}

/** An insertion as the last child, also into an element that closed itself. */
export function appendChild(xml: string, element: XmlElement, text: string): Edit {
  if (!element.selfClosing) return { start: element.closeStart, end: element.closeStart, text };
  const open = xml.slice(element.start, element.end).replace(/\s*\/>$/, '>');
  return {
    start: element.start,
    end: element.end,
    text: `${open}${text}</${element.prefix}${element.name}>`,
  };
}

/** The opening tag anew with some attributes set, or taken away where the value is undefined. */
export function withAttributes(tag: OpenTag, changes: Readonly<Record<string, string | undefined>>): string {
  const attributes = Object.entries({ ...tag.attributes, ...changes }).filter(
    (pair) => pair[1] !== undefined,
  );
  const text = attributes.map(([name, value]) => ` ${name}="${escapeXml(value ?? '')}"`).join('');
  return `<${tag.prefix}${tag.name}${text}${tag.selfClosing ? '/' : ''}>`;
}

export function escapeXml(text: string): string {
  return text.replace(/[&<>"\t\n\r]/g, (character) => ESCAPES[character] ?? character);
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};

/** Cell text: characters that XML cannot carry are written `_xHHHH_`, and text that looks so is guarded (ECMA-376 part 1, 22.9.2.19). */
export function encodeText(text: string): string {
  const guarded = text.replace(/_(?=x[0-9a-fA-F]{4}_)/g, '_x005F_');
  // eslint-disable-next-line no-control-regex
  const carried = guarded.replace(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|\p{Cs}/gu, (character) => {
    return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;
  });
  return escapeXml(carried);
}

export function decodeText(text: string): string {
  return text.replace(/_x([0-9a-fA-F]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

/** A `<t>` element, its outer spaces kept. */
export function textElement(text: string, prefix = ''): string {
  const space = text !== text.trim() || text.includes('\n') ? ' xml:space="preserve"' : '';
  return `<${prefix}t${space}>${encodeText(text)}</${prefix}t>`;
}
