import { workbookPart } from '../package/open';
import type { Workbook } from '../package/model';
import { readText, relatedPart, writeText } from '../package/relationships';
import { applyEdits, descendants, parseXml, withAttributes } from '../package/xml';

/** A section for all numbers above one that is positive. */
const ABOVE = /^\[(>=?)((?:\d*[1-9]\d*(?:\.\d*)?|0?\.\d*[1-9]\d*))\]([^]*)$/;
const HAS_CONDITION = /\[[<>=]/;
/** Its author wrote how a negative number looks. */
const WRITES_SIGN = /[-(]/;

const sectionsOf = (format: string): string[] =>
  format.match(/(?:"[^"]*"|\\[^]|\[[^\]]*\]|[^;])+/g) ?? [format];

/**
 * The same format with its least condition first. A section that is left for all other numbers shows negative ones
 * without their sign in LibreOffice, where it comes after a condition: -4.3 in `[>=100]0;0.0` as 4.3.
 */
export function withSign(format: string): string {
  const sections = sectionsOf(format);
  const rest = sections.at(-1) ?? '';
  const above = sections.slice(0, -1).map((section) => ABOVE.exec(section));
  if (above.length === 0 || above.length > 2 || HAS_CONDITION.test(rest) || WRITES_SIGN.test(rest))
    return format;
  const bounds = above.map((found) => Number(found?.[2] ?? Number.NaN));
  const climbs = bounds.every((bound, i) => i === 0 || bound < (bounds[i - 1] ?? 0));
  if (!climbs || above.some((found) => !found)) return format;
  const turned = above.reduceRight<{ texts: string[]; open: string }>(
    ({ texts, open }, found) => {
      const [, sign, bound, own = ''] = found ?? [];
      return { texts: [...texts, `[${sign === '>=' ? '<' : '<='}${bound ?? ''}]${open}`], open: own };
    },
    { texts: [], open: rest },
  );
  return [...turned.texts, turned.open].join(';');
}

/** The workbook with formats that show the sign in every program. */
export function withSignedFormats(workbook: Workbook): Workbook {
  const part = relatedPart(workbook.parts, workbookPart(workbook.parts), 'styles');
  const xml = part === undefined ? undefined : readText(workbook.parts, part);
  if (part === undefined || xml === undefined) return workbook;
  const edits = descendants(parseXml(xml, part), 'numFmt').flatMap((element) => {
    const { formatCode = '' } = element.attributes;
    const signed = withSign(formatCode);
    if (signed === formatCode) return [];
    return [
      { start: element.start, end: element.end, text: withAttributes(element, { formatCode: signed }) },
    ];
  });
  if (edits.length === 0) return workbook;
  const parts = new Map(workbook.parts);
  writeText(parts, part, applyEdits(xml, edits));
  const styles = workbook.styles.map((style) => ({ ...style, numberFormat: withSign(style.numberFormat) }));
  return { ...workbook, parts, styles };
}
