import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { scanPlainXml } from '../../src/package/plainXml';
import { scanXml } from '../../src/package/xml';
import type { XmlHandler } from '../../src/package/xmlHandler';

/** What a handler was told, texts joined, those outside of the root left out. */
class Heard implements XmlHandler {
  readonly events: string[] = [];
  private depth = 0;
  open({ name, prefix, attributes, selfClosing, start, end }: Parameters<XmlHandler['open']>[0]) {
    this.events.push(`<${prefix}${name} ${JSON.stringify(attributes)} ${selfClosing} ${start} ${end}`);
    this.depth++;
  }
  text(text: string) {
    if (this.depth > 0) this.events.push(text);
  }
  close(name: string, start: number, end: number) {
    this.events.push(`/${name} ${start} ${end}`);
    this.depth--;
  }
}

function heard(xml: string): string[] | 'refused' {
  const handler = new Heard();
  try {
    scanXml(xml, 'part', handler);
  } catch {
    return 'refused';
  }
  return handler.events;
}

const isWellFormed = (xml: string): boolean => {
  let isGood = true;
  const parser = new SaxesParser();
  parser.on('error', () => (isGood = false));
  parser.write(xml).close();
  return isGood;
};

/** The same, said so that only the full parser can read it: the comment stops the plain scan at once. */
const behindComment = '<!-- -->';

const PIECES = [
  ...[
    '<a>',
    '</a>',
    '<b>',
    '</b>',
    '<x:c ',
    '</x:c>',
    'r="1"',
    ' r="2"',
    " s='1'",
    ' t="&lt;&amp;"',
    '>',
    '/>',
  ],
  ...[' ', '\n', '\t', '\r\n', 'text', '&gt;', '&#65;', '&nope;', '&', '<', ']]>', '<![CDATA[<]]>', '<?p ?>'],
  ...[
    '<!-- c -->',
    '"',
    '=',
    'é',
    '\u0001',
    '<a r="1" s="a>b"/>',
    '<a r="1" r="2"/>',
    '<a r="1"s="2"/>',
    '</ a>',
  ],
  ...['</a >', '</>', '<_a/>', '<é/>', '<a constructor="1"/>', '<a r="x\ny"/>', '<1/>', '<a/ >', '\ufffe'],
];

describe('the scan of plain XML', () => {
  it('tells the same as the full parser, and refuses whatever that refuses', () => {
    let seed = 7;
    const random = (below: number) => (seed = (seed * 48271) % 2147483647) % below;
    let good = 0;
    for (let round = 0; round < 30_000; round++) {
      const inner = Array.from({ length: random(5) }, () => PIECES[random(PIECES.length)] ?? '').join('');
      const xml = round % 3 === 0 ? inner : `<r>${inner}</r>`;
      const now = heard(xml);
      const full = heard(behindComment + xml);
      expect(now === 'refused', JSON.stringify(xml)).toBe(!isWellFormed(xml));
      if (full === 'refused' || now === 'refused') continue;
      good++;
      const shifted = full.map((event) =>
        /^[</]/.test(event)
          ? event.replace(/(\d+) (\d+)$/, (_, a, b) => `${Number(a) - 8} ${Number(b) - 8}`)
          : event,
      );
      expect(now, JSON.stringify(xml)).toEqual(shifted);
    }
    expect(good).toBeGreaterThan(2_000);
  });

  it('reads a sheet as programs write it to its end', () => {
    const xml =
      '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n<worksheet xmlns="m" xmlns:r="d"><sheetData>' +
      '<row r="1"><c r="A1" s="2"><f>A2&amp;"&gt;"</f><v>1.5</v></c></row></sheetData></worksheet>\n';
    expect(scanPlainXml(xml, 200, new Heard())).toBeUndefined();
    expect(scanPlainXml(`${xml}<!-- -->`, 200, new Heard())).toBe(12);
  });
});
