/** Lists and bounds of cells. */
import { areaAddress, type Area } from '../../cells/address';
import { insertOrdered } from '../metadata';
import { shiftFormula } from '../shiftFormula';
import { isComplete, toFileSpelling } from '../spelling';
import { CannotChange } from '../structure';
import { readAreas, writeAreas } from '../structure/rules';
import { readSheetXml } from '../structure/sheetCells';
import {
  applyEdits,
  child,
  childrenOf,
  encodeText,
  escapeXml,
  withAttributes,
  type Edit,
  type XmlElement,
} from '../xml';
import type { EntryRule } from './acts';
import { without } from './areas';
import { behind } from '../sheetOrder';

/** The XML of a sheet with another rule, or none, on an area. */
export function withEntryRule(xml: string, part: string, area: Area, rule: EntryRule | null): string {
  if (rule) check(rule);
  const { root } = readSheetXml(xml, part);
  const p = root.prefix;
  const edits = extensionEdits(xml, root, area);
  const list = child(root, 'dataValidations');
  const kept = childrenOf(list, 'dataValidation').flatMap((one) => cut(xml, one, area) ?? []);
  if (rule) kept.push(written(rule, area, p));
  const text =
    kept.length === 0
      ? ''
      : `<${p}dataValidations count="${kept.length}">${kept.join('')}</${p}dataValidations>`;
  if (list) edits.push({ start: list.start, end: list.closeEnd, text });
  else if (text !== '') edits.push(insertOrdered(xml, root, behind('dataValidations'), text));
  return applyEdits(xml, edits);
}

/** Rules that look at other sheets may stand in an extension of the format. */
function extensionEdits(xml: string, root: XmlElement, area: Area): Edit[] {
  const extensions = child(root, 'extLst');
  const lists = childrenOf(extensions, 'ext').flatMap((ext) => {
    const list = child(ext, 'dataValidations');
    if (!list) return [];
    const before = childrenOf(list, 'dataValidation');
    const kept = before.flatMap((one) => cut(xml, one, area) ?? []);
    const name = `${list.prefix}dataValidations`;
    const text = `${withAttributes(list, { count: String(kept.length) })}${kept.join('')}</${name}>`;
    return [{ ext, list, text, isEmpty: kept.length === 0 }];
  });
  const isGone =
    extensions && lists.length === extensions.children.length && lists.every((one) => one.isEmpty);
  if (isGone && lists.length > 0) return [{ start: extensions.start, end: extensions.closeEnd, text: '' }];
  return lists.map(({ ext, list, text, isEmpty }) =>
    isEmpty
      ? { start: ext.start, end: ext.closeEnd, text: '' }
      : { start: list.start, end: list.closeEnd, text },
  );
}

/** A rule without the cells of an area, its formulas counted from the cell that is its first now; undefined: none left. */
function cut(xml: string, element: XmlElement, area: Area): string | undefined {
  const own = element.attributes['sqref'];
  const place = child(element, 'sqref');
  const before = readAreas(own ?? place?.text ?? '');
  const left = without(before, area);
  const [first] = before;
  const [base] = left;
  if (!base || !first) return undefined;
  const start = element.start;
  const same = left.map(areaAddress).join() === before.map(areaAddress).join();
  const whole = xml.slice(start, element.closeEnd);
  if (same) return whole;
  const cells = writeAreas(left);
  const formulas = ['formula1', 'formula2'].flatMap((name) => {
    const formula = child(element, name);
    return (formula && (child(formula, 'f') ?? formula)) ?? [];
  });
  const edits: Edit[] = formulas.map(({ end, closeStart, text }) => ({
    start: end - start,
    end: closeStart - start,
    text: escapeXml(shiftFormula(text, base.top - first.top, base.left - first.left)),
  }));
  if (own !== undefined)
    edits.push({ start: 0, end: element.end - start, text: withAttributes(element, { sqref: cells }) });
  if (place) edits.push({ start: place.end - start, end: place.closeStart - start, text: cells });
  return applyEdits(whole, edits);
}

function written(rule: EntryRule, area: Area, p: string): string {
  const { kind, choices, operator, formulas, allowBlank, prompt, refusal } = rule;
  const texts = choices ? [`"${choices.join(',').replaceAll('"', '""')}"`] : formulas.map(toFileSpelling);
  const compares = !['none', 'list', 'custom'].includes(kind);
  const attributes: Readonly<Record<string, string | undefined>> = {
    type: kind === 'none' ? undefined : kind,
    operator: compares && operator !== 'between' ? operator : undefined,
    errorStyle: refusal && refusal.style !== 'stop' ? refusal.style : undefined,
    allowBlank: allowBlank ? '1' : undefined,
    showInputMessage: prompt ? '1' : undefined,
    showErrorMessage: refusal ? '1' : undefined,
    errorTitle: refusal?.title,
    error: refusal?.text,
    promptTitle: prompt?.title,
    prompt: prompt?.text,
  };
  const said = Object.entries(attributes)
    .map(([name, text]) => (text === undefined || text === '' ? '' : ` ${name}="${encodeText(text)}"`))
    .join('');
  const inner = texts
    .map((text, i) => `<${p}formula${i + 1}>${escapeXml(text)}</${p}formula${i + 1}>`)
    .join('');
  return `<${p}dataValidation${said} sqref="${areaAddress(area)}">${inner}</${p}dataValidation>`;
}

/** The format's limits. */
function check({ kind, choices, formulas, prompt, refusal }: EntryRule): void {
  if (choices && (choices.some((one) => one.includes(',')) || choices.join(',').length > 255))
    throw new CannotChange(
      'A list written out takes words without commas, 255 characters in all: put longer ones into cells and choose from those.',
    );
  if (choices ? choices.every((one) => one.trim() === '') : kind !== 'none' && formulas.length === 0)
    throw new CannotChange('The rule is not whole yet: say what it lets in.');
  for (const formula of choices ? [] : formulas)
    if (formula.trim() === '' || !isComplete(formula))
      throw new CannotChange('The rule is not whole yet: a bound or a formula is missing.');
  for (const message of [prompt, refusal])
    if (message && (message.title.length > 32 || message.text.length > 225))
      throw new CannotChange('A message takes a title of 32 characters and a text of 225.');
}
