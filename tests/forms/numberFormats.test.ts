import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { KINDS, type Kind } from '../../src/core/quantity';
import { formatOf, valueFormat } from '../../src/forms/looks';
import { readWorkbook } from '../../src/package';
import { shownText } from '../../src/render/shownText';
import { SHARE_STYLES } from '../../src/share/basisSheet';

const kinds = Object.keys(KINDS) as Kind[];
const SAMPLES = new URL('../../samples/', import.meta.url);

/** In a section that comes after a condition LibreOffice leaves out the sign of a negative number. */
function keepsSign(format: string): boolean {
  const [, sign, limit] = /^\[([<>]=?)(-?[\d.]+(?:E-?\d+)?)\]/i.exec(format) ?? [];
  return sign === undefined || (sign.startsWith('<') && Number(limit) > 0);
}

it.each([
  ['results', kinds.map(formatOf)],
  ['entries', kinds.map(valueFormat)],
  ['copies', Object.values(SHARE_STYLES).flatMap(({ numberFormat }) => numberFormat ?? [])],
  ...readdirSync(SAMPLES)
    .filter((file) => file.endsWith('.xlsx'))
    .map((file): [string, string[]] => [
      file,
      readWorkbook(readFileSync(new URL(file, SAMPLES)), []).styles.map(({ numberFormat }) => numberFormat),
    ]),
])('formats of %s show a negative number as negative, in LibreOffice too', (_, formats) => {
  expect(formats.length).toBeGreaterThan(0);
  expect(formats.filter((format) => !keepsSign(format))).toEqual([]);
});

it.each([
  ['force', -4.34, '-4.3'],
  ['force', 4.34, '4.3'],
  ['force', 5984, '5,984'],
  ['pressure', 0.25, '0.25'],
  ['pressure', 110.2, '110'],
  ['pressure', 5984, '5,984'],
] as const)('%s %d is shown as %s', (kind, value, text) => {
  expect(shownText(value, formatOf(kind), () => true, false).text).toBe(text);
});
