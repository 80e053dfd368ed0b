import type { Matrix } from '../cells/value';
import { CellError } from '../cells/value';
import { cellAddress, quotedSheet, type Area } from '../cells/address';
import { tokenize } from '../cells/formulaTokens';
import type { CellChange } from '../package/changes';
import type { DefinedName, Workbook } from '../package/model';
import { withOutsideFormulas, type OutsideFormula } from '../package/outsideFormulas';
import { shiftFormula } from '../package/shiftFormula';
import { callsOurs, type KnownFunctions } from '../package/spelling';
import { agrees } from '../workbook/agrees';
import { constantText, placeKey, type Place, type References, type Values } from '../workbook/references';
import { allCalls, type CallsOfFormula, type Converter } from './convert';
import type { HelperSheets } from './helperSheets';
import type { NamedFormulas } from './namedFormulas';
import { passesOver } from './passedOver';
import { goesAlong } from './slice';
import type { WorkingHead } from './workingLine';
import { Unconvertible } from './unconvertible';

/** Cells of a rule that get a cell each on the sheet of the working; more are left as they are. */
const MOST_CELLS = 500;
/** A list that is written out in its rule. */
const LONGEST_LIST = 255;

export interface RewrittenOutside {
  readonly at: OutsideFormula;
  readonly is: string;
}

/** What a formula becomes; places of the working are known only once all is collected. */
interface Written {
  readonly text: string;
  /** Values of the lines that the text names, from the first cell of the rule on. */
  readonly lines?: Matrix;
  /** Cells from the first line to the one of the first cell; the reference then goes along with the cell. */
  readonly base?: { readonly down: number; readonly across: number };
  /** Of a name. */
  readonly calls?: CallsOfFormula;
}

/** Our functions in names, in rules for entries and in conditional formats, written in the worksheet's own. */
export class OutsideFormulas {
  private readonly written: { readonly at: OutsideFormula; readonly as: Written }[] = [];
  /** A sentence for each that stays, with why. */
  readonly left: string[] = [];
  constructor(
    private readonly workbook: Workbook,
    known: KnownFunctions,
    private readonly names: NamedFormulas,
    private readonly values: Values,
    private readonly references: References,
    private readonly converter: Converter,
    private readonly helpers: HelperSheets,
    /** Those whose native form gave another value, by `outsideKey`. */
    private readonly refuted: ReadonlySet<string>,
    private readonly isValuesOnly: boolean,
  ) {
    withOutsideFormulas(workbook, known, (at) => {
      if (callsOurs(at.formula)) this.write(at);
      return undefined;
    });
  }

  /** The first name that a formula rests on and that still stands for a formula of ours. */
  nameLeft(formula: string): string | undefined {
    return this.ourNames(formula).find((one) => !this.asWritten(one))?.name;
  }

  /** What the calls rest on that a formula makes by its names; undefined where it makes none. */
  callsOf(formula: string): CallsOfFormula | undefined {
    const all = this.ourNames(formula).flatMap((one) => this.asWritten(one)?.calls ?? []);
    return all.length === 0 ? undefined : allCalls(all);
  }

  private ourNames(formula: string): DefinedName[] {
    return [...this.names.namesIn(formula)].filter((one) => callsOurs(one.formula));
  }

  private asWritten({ name, sheet }: DefinedName): Written | undefined {
    return this.written.find(({ at }) => at.what === 'name' && at.name === name && at.sheet === sheet)?.as;
  }

  /** Asked for once all formulas of the workbook are written. */
  get rewritten(): RewrittenOutside[] {
    return this.written.map(({ at, as: { text, base } }) => {
      const is = this.helpers.withPlaces(text);
      if (!base) return { at, is };
      return { at, is: shiftFormula(firstOf(is), base.down, base.across) };
    });
  }

  put(copy: Workbook, known: KnownFunctions): Workbook {
    const texts = new Map(this.rewritten.map(({ at, is }) => [outsideKey(at), is]));
    return texts.size === 0 ? copy : withOutsideFormulas(copy, known, (at) => texts.get(outsideKey(at)));
  }

  /** Of what the copy calculates, those that come to something else. */
  disagreeing(results: readonly CellChange[]): string[] {
    const found = new Map(
      results.map(({ sheet, row, column, value }) => [
        `${quotedSheet(sheet)}!${cellAddress(row, column)}`,
        value,
      ]),
    );
    return this.written.flatMap(({ at, as: { text, lines = [] } }) => {
      const first = firstOf(this.helpers.withPlaces(text));
      const isAsWanted = lines.every((line, down) =>
        line.every((value, across) => agrees(found.get(shiftFormula(first, down, across)) ?? null, value)),
      );
      return isAsWanted ? [] : [outsideKey(at)];
    });
  }

  private write(at: OutsideFormula): void {
    try {
      if (this.refuted.has(outsideKey(at)))
        throw new Unconvertible('its native form gives another value here');
      const as = this.helpers.undone(() => (at.what === 'list' ? { text: this.list(at) } : this.text(at)));
      this.written.push({ at, as });
    } catch (error) {
      if (!(error instanceof Unconvertible)) throw error;
      this.left.push(`${outsideText(at)}: =${at.formula} (${error.message})`);
    }
  }

  /** The choices of a list as they are now. */
  private list(at: OutsideFormula): string {
    const choices = this.evaluated(at.formula, this.placeOf(at))
      .flat()
      .filter((one) => one !== null && one !== '');
    if (choices.length === 0 || choices.some((one) => one instanceof CellError))
      throw new Unconvertible('it gives no choices now');
    const written = choices.map(String).join(',');
    if (written.length <= LONGEST_LIST && !choices.some((one) => /[,"]/.test(String(one))))
      return `"${written}"`;
    return this.helpers.placeResults(
      headOf(at),
      choices.map((one) => [constantText(one)]),
    );
  }

  private text(at: OutsideFormula): Written {
    if (this.isValuesOnly) {
      if (at.what !== 'name') throw new Unconvertible('a copy of values calculates nothing');
      const [[value = null] = []] = this.evaluated(at.formula, this.placeOf(at));
      return { text: constantText(value) };
    }
    if (tokenize(at.formula).some(({ text }) => /^(?:LAMBDA|LET)$/i.test(text)))
      throw new Unconvertible('it names parts of its own');
    if (at.what === 'name') {
      if (goesAlong(at.formula)) throw new Unconvertible('what it reads goes along with the cell that asks');
      const { text, calls } = this.converted(at, at.formula, this.placeOf(at));
      const values = this.evaluated(at.formula, this.placeOf(at));
      if (values.length * (values[0]?.length ?? 0) > 1) return { text, calls };
      const placed = this.helpers.placeResults(headOf(at), [[text]]);
      const results = passesOver(at.formula) ? calls.results : [placed];
      return { text: placed, lines: values, calls: { ...calls, results } };
    }
    const box = at.areas.reduce((all, one): Area => ({
      top: Math.min(all.top, one.top),
      left: Math.min(all.left, one.left),
      bottom: Math.max(all.bottom, one.bottom),
      right: Math.max(all.right, one.right),
    }));
    const [base = box] = at.areas;
    if ((box.bottom - box.top + 1) * (box.right - box.left + 1) > MOST_CELLS)
      throw new Unconvertible(`it is for more than ${MOST_CELLS} cells`);
    const own = this.placeOf(at);
    const lines = Array.from({ length: box.bottom - box.top + 1 }, (_, down) =>
      Array.from({ length: box.right - box.left + 1 }, (__, across) => {
        const [row, column] = [box.top + down, box.left + across];
        const formula = shiftFormula(at.formula, row - base.top, column - base.left);
        const place = { ...own, row, column };
        return {
          text: this.converted(at, formula, place).text,
          value: this.evaluated(formula, place)[0]?.[0] ?? null,
        };
      }),
    );
    const text = this.helpers.placeResults(
      headOf(at),
      lines.map((line) => line.map((one) => one.text)),
    );
    return {
      text,
      lines: lines.map((line) => line.map(({ value }) => value)),
      base: { down: base.top - box.top, across: base.left - box.left },
    };
  }

  private converted(at: OutsideFormula, formula: string, place: Place): ReturnType<Converter['elsewhere']> {
    const name = this.nameLeft(formula);
    if (name !== undefined && name.toLowerCase() !== at.name?.toLowerCase())
      throw new Unconvertible(`the name ${name} stands for a MOLD function`);
    return this.converter.elsewhere(formula, place);
  }

  private evaluated(formula: string, place: Place): Matrix {
    return this.values.evaluate(this.references.qualified(formula, place));
  }

  private placeOf({ sheet, areas: [first] }: OutsideFormula): Place {
    const own = this.workbook.sheets.find(({ name }) => name === sheet) ?? this.workbook.sheets[0];
    if (!own) throw new Unconvertible('it has no sheet');
    return { sheet: own, row: first?.top ?? 0, column: first?.left ?? 0 };
  }
}

/** The first cell of a placed range, as a relative reference. */
const firstOf = (text: string): string => text.replaceAll('$', '').split(':')[0] ?? '';

const headOf = (at: OutsideFormula): WorkingHead => ({
  sheet: at.sheet ?? '',
  cell: at.areas[0] ? cellAddress(at.areas[0].top, at.areas[0].left) : (at.name ?? ''),
  what: `=${at.formula}`,
  says: OUTSIDE[at.what],
});

const OUTSIDE = {
  name: 'a name',
  list: 'the choices of a list',
  rule: 'a rule for entries',
  format: 'a conditional format',
} as const;

/** `the name force`, `a conditional format on Press!B3`. */
export function outsideText({ what, name, sheet, areas: [first] }: OutsideFormula): string {
  if (what === 'name') return `the name ${name ?? ''}${sheet === undefined ? '' : ` of ${sheet}`}`;
  return `${OUTSIDE[what]} on ${sheet ?? ''}${first ? `!${cellAddress(first.top, first.left)}` : ''}`;
}

const outsideKey = (at: OutsideFormula): string =>
  [
    at.what,
    at.name?.toLowerCase() ?? '',
    placeKey(at.sheet ?? '', at.areas[0]?.top ?? 0, at.areas[0]?.left ?? 0),
    at.formula,
  ].join('\n');
