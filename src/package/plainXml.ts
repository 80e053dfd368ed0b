/**
 * The plain XML that programs write, read in steps as long as whole names and values. It hands over nothing but what it
 * knows to be well-formed and stops at the first thing that is of another kind, right or wrong: what that is, the full
 * parser says.
 */
import type { Attributes, XmlHandler } from './xmlHandler';

const DECLARATION =
  /^(?:<\?xml version="1\.0"(?: encoding="[A-Za-z][\w.-]*")?(?: standalone="(?:yes|no)")? ?\?>)?[ \t\r\n]*/;

/** Characters that XML forbids or that a parser must change, and the end of a CDATA section. */
// eslint-disable-next-line no-control-regex
const NOT_PLAIN = /[\0-\x08\x0b-\x1f\ufffe\uffff]|\]\]>/g;

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&apos;': "'",
};
const SPACE = 1;
const LETTER = 2;
const IN_NAME = 4;
const KINDS = Uint8Array.from({ length: 128 }, (_, code) => {
  const character = String.fromCharCode(code);
  if (/[ \t\n]/.test(character)) return SPACE;
  if (/[A-Za-z]/.test(character)) return LETTER | IN_NAME;
  return /[\w.:-]/.test(character) ? IN_NAME : 0;
});

/** Hands over the tags and texts from the start on. Gives the number of tags where it had to stop, else `undefined`. */
export function scanPlainXml(xml: string, deepest: number, handler: XmlHandler): number | undefined {
  const start = DECLARATION.exec(xml)?.[0].length ?? 0;
  NOT_PLAIN.lastIndex = start;
  return NOT_PLAIN.test(xml) ? 0 : new PlainScan(xml, start, handler).run(deepest);
}

class PlainScan {
  private readonly open: string[] = [];

  constructor(
    private readonly xml: string,
    private at: number,
    private readonly handler: XmlHandler,
  ) {}

  run(deepest: number): number | undefined {
    const { xml, open, handler } = this;
    for (let tags = 0; ;) {
      const start = xml.indexOf('<', this.at);
      if (start < 0) return tags > 0 && this.isSpaceTo(xml.length) ? undefined : tags;
      if (open.length === 0 && (tags > 0 || start > this.at)) return tags;
      const text = start > this.at ? plainText(xml.slice(this.at, start)) : '';
      if (text === undefined) return tags;
      if (xml.charCodeAt(start + 1) === 47) {
        const name = open.at(-1);
        if (name === undefined) return tags;
        const end = this.skipSpace(start + 2 + name.length);
        if (!xml.startsWith(name, start + 2) || xml.charCodeAt(end) !== 62) return tags;
        if (text !== '') handler.text(text);
        this.at = end + 1;
        open.pop();
        handler.close(name.slice(name.indexOf(':') + 1), start, this.at);
        tags++;
        continue;
      }
      const nameEnd = this.nameEnd(start + 1);
      const attributes = nameEnd > start + 1 ? this.attributes(nameEnd) : undefined;
      if (attributes === undefined) return tags;
      const selfClosing = xml.charCodeAt(this.at) === 47;
      const end = this.at + (selfClosing ? 2 : 1);
      if (xml.charCodeAt(end - 1) !== 62 || open.length >= deepest) return tags;
      if (text !== '') handler.text(text);
      const written = xml.slice(start + 1, nameEnd);
      const colon = written.indexOf(':') + 1;
      const name = colon === 0 ? written : written.slice(colon);
      const prefix = colon === 0 ? '' : written.slice(0, colon);
      this.at = end;
      handler.open({ name, prefix, attributes, selfClosing, start, end });
      tags++;
      if (!selfClosing) open.push(written);
      else {
        handler.close(name, end, end);
        tags++;
      }
    }
  }

  /** From the end of a tag's name to its `>` or `/`, where this then stands. */
  private attributes(from: number): Attributes | undefined {
    const { xml } = this;
    const found: Record<string, string> = {};
    for (let at = from; ;) {
      const next = this.skipSpace(at);
      const code = xml.charCodeAt(next);
      if (code === 62 || code === 47) {
        this.at = next;
        return found;
      }
      const equals = this.nameEnd(next);
      if (
        next === at ||
        equals === next ||
        xml.charCodeAt(equals) !== 61 ||
        xml.charCodeAt(equals + 1) !== 34
      )
        return undefined;
      const name = xml.slice(next, equals);
      const end = xml.indexOf('"', equals + 2);
      const written = xml.slice(equals + 2, end);
      const value = plainText(written);
      if (end < 0 || value === undefined || /[<\t\n]/.test(written) || Object.hasOwn(found, name))
        return undefined;
      found[name] = value;
      at = end + 1;
    }
  }

  /** The place behind a name; the same place where none begins. */
  private nameEnd(from: number): number {
    const { xml } = this;
    if (((KINDS[xml.charCodeAt(from)] ?? 0) & LETTER) === 0) return from;
    let at = from + 1;
    while (((KINDS[xml.charCodeAt(at)] ?? 0) & IN_NAME) !== 0) at++;
    return at;
  }

  private skipSpace(from: number): number {
    let at = from;
    while (KINDS[this.xml.charCodeAt(at)] === SPACE) at++;
    return at;
  }

  private isSpaceTo(end: number): boolean {
    return this.open.length === 0 && this.skipSpace(this.at) === end;
  }
}

/** Nothing where it holds a reference to a character or to an entity that is not among the five of XML. */
function plainText(text: string): string | undefined {
  if (!text.includes('&')) return text;
  const entities = text.match(/&[^;&]*;?/g) ?? [];
  if (!entities.every((entity) => entity in ENTITIES)) return undefined;
  return text.replace(/&[^;&]*;/g, (entity) => ENTITIES[entity] ?? entity);
}
