/**
 * Rows of a section of design sheets in a sample's own words: which functions of which arguments, which verdicts and
 * which names of inputs are the section's; values, units and, where it says more, the text are the sample's.
 */
import { argumentNamed, findDefinition } from '../src/call/findDefinition';
import { inputsOf } from '../src/core/define';
import { label as labelOf } from '../src/forms/names';
import type { Section, Use, Worked } from '../src/forms/sections/section';
import { entry, result, type Entry, type Result, type Verdict } from './description';

interface Words {
  readonly label?: string;
  readonly note?: string;
}

interface Own extends Words {
  /** Of the row, where a part of the section stands twice on the sheet. */
  readonly key?: string;
  readonly format?: string;
  /** Arguments that are another formula here than in the section; an empty one is left out. */
  readonly with?: Readonly<Record<string, string>>;
}

export interface SectionRows {
  entry(
    key: string,
    value: number | string,
    unit: string,
    note: string,
    own?: Pick<Entry, 'choices' | 'format'> & { readonly label?: string },
  ): Entry;
  result(key: string, own?: Own): Result;
  /** The verdict that the section has under this label. */
  verdict(of: string, own?: Words): Verdict;
  /** The formula of a result, for each thing of a list. */
  formula(key: string, bound?: Own['with']): string;
  /** The formula of a column of the section's table; what was typed in a row is given in the order of the row. */
  column(head: string, cells: readonly string[]): string;
  /** What a function about functions is asked of a call: `MOLD.SHOW.MARGIN("SEAT.SINK", …)`. */
  asked(tool: string, key: string, bound?: Own['with']): string;
}

export function rowsOf(section: Section): SectionRows {
  const missing = (what: string): Error => new Error(`The section ${section.id} has no ${what}`);
  const partOf = (key: string): Use | Worked => {
    for (const part of section.parts)
      if ((part.type === 'use' || part.type === 'worked') && part.key === key) return part;
    throw missing(key);
  };
  const formula = (key: string, bound?: Own['with']): string => {
    const part = partOf(key);
    return part.type === 'use' ? `MOLD.${part.fn}(${argumentsOf(part, bound)})` : inKeys(part.formula);
  };
  return {
    formula,
    column(head, cells) {
      for (const part of section.parts) {
        const column = part.type === 'table' && part.gives.find((one) => one.head === head);
        if (column) return inKeys(column.formula).replace(/\{(\d)\}/g, (sign, at) => cells[at - 1] ?? sign);
      }
      throw missing(`column "${head}"`);
    },
    entry(key, value, unit, note, { label, ...own } = {}) {
      const input = section.inputs[key];
      if (!input) throw missing(key);
      return entry(key, label ?? input.label ?? labelOf(key), value, unit, note, own);
    },
    result(key, own = {}) {
      const part = partOf(key);
      const { label = part.label, note = part.note } = own;
      return result(own.key ?? key, label, formula(key, own.with), note, {
        ...(part.type === 'worked' && { kind: part.kind }),
        ...(own.format !== undefined && { format: own.format }),
      });
    },
    verdict(of, own = {}) {
      for (const part of section.parts) {
        if (part.type !== 'verdict' || part.label !== of) continue;
        const { judged, label, note } = part;
        return {
          type: 'verdict',
          label: own.label ?? label,
          note: own.note ?? note,
          judged: 'when' in judged ? { when: inKeys(judged.when) } : { margin: inKeys(judged.margin) },
        };
      }
      throw missing(`verdict "${of}"`);
    },
    asked(tool, key, bound) {
      const part = partOf(key);
      if (part.type !== 'use') throw missing(`function for ${key}`);
      return `MOLD.${tool}("${part.fn}", ${argumentsOf(part, bound)})`;
    },
  };
}

/** What stands between the brackets, the units last. */
function argumentsOf({ fn, with: bound }: Use, own: Own['with'] = {}): string {
  const definition = findDefinition(fn);
  for (const name of Object.keys(own)) argumentNamed(definition, name);
  const given = inputsOf(definition).map(
    ({ name, optional }) => own[name] ?? bound[name] ?? (optional ? '' : name),
  );
  return [...given, 'units'].join(', ');
}

/** Formulas of sections are written with names of cells, those of samples with keys: `spring_travel/lift`. */
const inKeys = (formula: string): string =>
  formula.replace(/"[^"]*"|\b[a-z]+(?:_[a-z0-9]+)+\b/g, (text) =>
    text.startsWith('"') ? text : text.replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase()),
  );
