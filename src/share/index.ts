import type { Matrix } from '../cells/value';
import { CellError, type CellValue } from '../cells/value';
import { BASIS_TEXT } from '../call/version';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { DataTables } from '../derive/native';
import { addSheets, saveWithSheets, withoutCustomXml } from '../package/author';
import { sheetOfValues } from '../package/newSheets';
import type { Limits } from '../sheet/budget';
import { recalculate } from '../workbook/recalculate';
import { areaAddress, cellAddress, type Area } from '../cells/address';
import { cellFinder, type Sheet, type Workbook } from '../package/model';
import type { CellChange } from '../package/changes';
import { readParts } from '../package/read';
import { applyChanges } from '../package/save';
import type { SheetDescription } from '../package/description';
import { callsOurs, knownFunctions, type KnownFunctions } from '../package/spelling';
import { basisSheet, SHARE_STYLES, type BasisLine } from './basisSheet';
import { CalculatedWorkbook, type OurFormula } from '../workbook/calculated';
import { allCalls, Converter, type CallsOfFormula } from './convert';
import { describeCall, withItsUnit } from './describe';
import { FROZEN_FILL, FrozenWatch } from './frozen';
import { HelperSheets } from './helperSheets';
import { EARLIER_NAMESPACE } from './earlierOriginal';
import { NamedFormulas } from './namedFormulas';
import { contentText, type Original, type OriginalCell } from './original';
import { OutsideFormulas } from './outside';
import { PassedOver, type LiveFormula } from './passedOver';
import { RECORD_NAME, recordSheet } from './recordSheet';
import { NO_FILL } from './restore';
import { agrees } from '../workbook/agrees';
import { placeKey, References } from '../workbook/references';
import { withSignedFormats } from './signedFormats';
import { RefusedNow, Unconvertible } from './unconvertible';
import { inItsFormat } from './workingSheet';
import type { SharedCell } from './sharedCell';

export { cellsInWords, groupsOf, type SharedGroup } from './groups';
export { restoreWorkbook, type RestoreReport } from './restore';

export interface ShareOptions {
  /**
   * `native`: formulas that need no add-in. `values`: values only, every formula told in a note. `both`: native formulas,
   * with the notes.
   */
  readonly as: 'native' | 'values' | 'both';
  /** Adds the sheet that tells what the numbers rest on. */
  readonly basis?: boolean;
  /** Native formulas hold all their steps, which otherwise stand on a sheet of their own, one a line. */
  readonly oneCell?: boolean;
  /** In one cell, the formulas name their parts by LET, which programs older than 2021 do not know. */
  readonly let?: boolean;
  /** The date for the basis sheet, as it should read; today unless told. */
  readonly date?: string;
  /** How long each calculation may take. */
  readonly limits?: Limits;
}

export type { SharedCell };

export interface ShareResult {
  readonly bytes: Uint8Array;
  readonly cells: readonly SharedCell[];
  /** Where our functions stay: rules and names, which hold no result. */
  readonly left: readonly string[];
}

/** What stands in a native copy as a value, which holds for its inputs alone. */
const isValue = ({ how }: SharedCell): boolean => how === 'frozen' || how === 'refused';

const WORKING_NAME = 'How it is calculated';

const FORMULA_TEXT = /^\s*FORMULATEXT\(([^()]+)\)\s*$/i;

/** A copy of the workbook for somebody who has nothing installed. */
export async function shareWorkbook(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  options: ShareOptions,
): Promise<ShareResult> {
  const calculated = CalculatedWorkbook.of(withSignedFormats(workbook), functions, options.limits);
  return await new Sharing(calculated, functions, options).run();
}

interface Rewritten {
  readonly at: OurFormula;
  readonly changes: readonly CellChange[];
  readonly report: SharedCell;
  /** Of a formula that lives on. */
  readonly calls?: CallsOfFormula;
}

/** What asks whether the copy can tell a value, before it gives it. */
interface Asking {
  readonly rests: (sheet: string, row: number, column: number) => boolean;
  readonly asking: (change: CellChange) => CellChange;
}

class Sharing {
  private readonly workbook: Workbook;
  private readonly references: References;
  /** Cells whose native form did not give their value, by place. */
  private readonly refuted = new Set<string>();
  private readonly known: KnownFunctions;
  private readonly names: NamedFormulas;

  constructor(
    private readonly calculated: CalculatedWorkbook,
    functions: readonly WorksheetFunction[],
    private readonly options: ShareOptions,
  ) {
    this.workbook = calculated.workbook;
    this.references = new References(this.workbook, calculated);
    this.known = knownFunctions(functions.map(({ id }) => id));
    this.names = new NamedFormulas(this.workbook.names);
  }

  async run(): Promise<ShareResult> {
    for (;;) {
      const result = await this.attempt();
      if (result) return result;
    }
  }

  /** Undefined where a native formula gave another value: the next attempt freezes it. */
  private async attempt(): Promise<ShareResult | undefined> {
    const tables = new DataTables();
    const rows = this.options.oneCell !== true && this.options.let !== true;
    const names = {
      tables: this.freeName('MoldTables'),
      steps: this.freeName(rows ? WORKING_NAME : 'MoldSteps'),
      questions: this.freeName('MoldQuestions'),
    };
    const helpers = new HelperSheets(tables, names, rows ? 'visible' : 'hidden');
    const converter = new Converter(this.workbook, this.calculated, tables, helpers, {
      rows,
      let: this.options.let === true,
    });
    const outside = new OutsideFormulas(
      this.workbook,
      this.known,
      this.names,
      this.calculated,
      this.references,
      converter,
      helpers,
      this.refuted,
      this.options.as === 'values',
    );
    const formulas = [...this.calculated.ourFormulas(), ...this.byNamesLeft(outside)];
    const rewritten: Rewritten[] = [];
    for (const at of formulas) rewritten.push(this.rewrite(at, converter, outside));
    const watch = new FrozenWatch(
      this.calculated,
      this.names,
      rewritten.flatMap(({ at, report }) =>
        isValue(report) ? [{ ...at, area: this.areaOf(at.sheet, at.row, at.column) }] : [],
      ),
      helpers,
    );
    const over = new PassedOver(this.calculated, this.names, this.live(rewritten, outside), helpers);
    const asks: Asking = {
      rests: (...place) => over.rests(...place) || watch.rests(...place),
      asking: (own) => watch.asking(over.asking(own)),
    };
    const asking = rewritten.flatMap(({ changes }) => changes.map((own) => asks.asking(own)));
    const changes = [...this.otherFormulas(asks, formulas), ...asking].map((change) => {
      const own = this.clean(change);
      return own.formula === undefined ? own : { ...own, formula: helpers.withPlaces(own.formula) };
    });
    const noted = this.options.as === 'native' ? changes : this.withNotes(changes, formulas);
    const added = [...helpers.describe(), ...this.basis(rewritten)];
    const own = outside.put(this.changed(this.workbook, noted), this.known);
    // Without our functions, as the colleague's program will.
    const results = await recalculate(withSheets(own, added), [], { ...this.options.limits, anew: true });
    const wrong =
      this.options.as === 'values' ? [] : [...this.disagreeing(results), ...outside.disagreeing(results)];
    if (wrong.length > 0) {
      for (const place of wrong) this.refuted.add(place);
      return undefined;
    }
    // What is added is by far the larger part: it is written once, with its values.
    const isAdded = new Set(added.map(({ name }) => name));
    const filled = withoutCustomXml(
      this.changed(
        own,
        results.filter(({ sheet, changed }) => changed && !isAdded.has(sheet)),
      ),
      EARLIER_NAMESPACE,
    );
    const original = this.original(filled, noted, [...isAdded], outside);
    const sheets = [...withValues(added, results), recordSheet(this.freeName(RECORD_NAME), original)];
    const cells = rewritten.map(({ report }) => ({
      ...report,
      ...(watch.unwatched.includes(`${report.sheet}!${report.cell}`) && {
        why: `${report.why}; what it reads cannot be watched, so it does not notice another input`,
      }),
    }));
    return {
      bytes: saveWithSheets(filled, { sheets, styles: SHARE_STYLES }),
      cells,
      left: outside.left,
    };
  }

  /** Formulas that are ours only by a name that has no native form. */
  private byNamesLeft(outside: OutsideFormulas): OurFormula[] {
    return this.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap((cell): OurFormula[] => {
        const { row, column, formula } = cell;
        return formula === undefined || callsOurs(formula) || outside.nameLeft(formula) === undefined
          ? []
          : [{ sheet, cell, row, column, formula }];
      }),
    );
  }

  /** All that calls of ours live in, itself or by a name. */
  private live(rewritten: readonly Rewritten[], outside: OutsideFormulas): LiveFormula[] {
    const own = new Map(
      rewritten.map(({ at, report, calls }) => [
        placeKey(at.sheet.name, at.row, at.column),
        isValue(report) ? undefined : calls,
      ]),
    );
    return this.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }): LiveFormula[] => {
        if (formula === undefined) return [];
        const key = placeKey(sheet.name, row, column);
        if (own.has(key) && !own.get(key)) return [];
        const calls = [own.get(key), outside.callsOf(formula)].flatMap((one) => one ?? []);
        if (calls.length === 0) return [];
        return [
          { sheet, row, column, formula, area: this.areaOf(sheet, row, column), calls: allCalls(calls) },
        ];
      }),
    );
  }

  private changed(workbook: Workbook, changes: readonly CellChange[]): Workbook {
    const parts = new Map(workbook.parts);
    if (changes.length > 0) applyChanges(workbook, changes, parts);
    return readParts(parts, this.known);
  }

  private rewrite(at: OurFormula, converter: Converter, outside: OutsideFormulas): Rewritten {
    const { sheet, row, column, formula } = at;
    const told = { sheet: sheet.name, cell: cellAddress(row, column), formula };
    if (this.options.as === 'values') {
      return { at, changes: this.frozen(at, undefined), report: { ...told, how: 'value', why: '' } };
    }
    try {
      if (this.refuted.has(placeKey(sheet.name, row, column)))
        throw new Unconvertible('its native form gives another value here');
      const name = outside.nameLeft(formula);
      if (name !== undefined) throw new Unconvertible(`the name ${name} stands for a MOLD function`);
      const { formulas, spills, looksUp, notes, calls } = converter.formula(formula, at);
      const how = looksUp ? 'looked up' : 'native';
      return {
        at,
        changes: this.native(at, formulas, spills),
        report: { ...told, how, why: [...new Set(notes)].join('; ') },
        calls,
      };
    } catch (error) {
      // A fault of ours in one formula must not cost the person the copy; the formula is frozen and says so.
      const why =
        error instanceof Unconvertible ? error.message : `a fault in sharing: ${(error as Error).message}`;
      const how = error instanceof RefusedNow ? 'refused' : 'frozen';
      return { at, changes: this.frozen(at, why), report: { ...told, how, why } };
    }
  }

  private native(at: OurFormula, formulas: readonly (readonly string[])[], spills: boolean): CellChange[] {
    const { sheet, row, column } = at;
    if (spills) {
      const value = this.calculated.at(sheet, row, column);
      const spill = this.spillValues(at);
      return [
        { sheet: sheet.name, row, column, value, formula: formulas[0]?.[0] ?? '', ...(spill && { spill }) },
      ];
    }
    const area = this.calculated.spill(sheet, row, column);
    return formulas.flatMap((line, down) =>
      line.flatMap((formula, right): CellChange[] => {
        const isAnchor = down === 0 && right === 0;
        // A blocked spill shows its error in one cell only.
        if (!isAnchor && !area) return [];
        const value = this.calculated.at(sheet, row + down, column + right);
        return [{ sheet: sheet.name, row: row + down, column: column + right, value, formula }];
      }),
    );
  }

  /** Values in place of a formula and of what it spilled; with a reason they are marked and noted. */
  private frozen(at: OurFormula, why: string | undefined): CellChange[] {
    const { sheet, row, column, formula } = at;
    const find = cellFinder(sheet);
    const mark = (r: number, c: number): Partial<CellChange> => {
      const style = this.workbook.styles[find(r, c)?.style ?? 0];
      return why === undefined ? {} : { style: { ...style, fill: FROZEN_FILL } };
    };
    const note = `Moldsheet: =${formula}\nFrozen when shared: ${why ?? ''}. Where its inputs change it says so.`;
    const area = this.areaOf(sheet, row, column);
    return cellsOf(area).map(([r, c]): CellChange => ({
      sheet: sheet.name,
      row: r,
      column: c,
      value: this.calculated.at(sheet, r, c),
      ...mark(r, c),
      ...(why !== undefined && r === row && c === column && { note: this.joined(sheet, r, c, note) }),
    }));
  }

  private areaOf(sheet: Sheet, row: number, column: number): Area {
    return (
      this.calculated.spill(sheet, row, column) ?? { top: row, left: column, bottom: row, right: column }
    );
  }

  private joined(sheet: Sheet, row: number, column: number, note: string): string {
    const present = sheet.notes.find((one) => one.row === row && one.column === column)?.text;
    return present === undefined ? note : `${present}\n\n${note}`;
  }

  /** Of a note, what `joined` put behind the present one. */
  private withoutPresent(sheet: Sheet, row: number, column: number, note: string): string {
    const present = sheet.notes.find((one) => one.row === row && one.column === column)?.text;
    return present === undefined ? note : note.slice(present.length).trim();
  }

  /** Formulas without our functions: to values in a copy of values; else only where they read a spill of ours. */
  private otherFormulas({ rests, asking }: Asking, own: readonly OurFormula[]): CellChange[] {
    const ours = new Set(own.map(({ sheet, row, column }) => placeKey(sheet.name, row, column)));
    const others = this.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, formula }) =>
        formula === undefined || ours.has(placeKey(sheet.name, row, column))
          ? []
          : [{ sheet, row, column, formula }],
      ),
    );
    if (this.options.as === 'values')
      return others.flatMap(({ sheet, row, column }) =>
        cellsOf(this.areaOf(sheet, row, column)).map(([r, c]) => ({
          sheet: sheet.name,
          row: r,
          column: c,
          value: this.calculated.at(sheet, r, c),
        })),
      );
    const changes = others.flatMap(({ formula, ...place }): CellChange[] => {
      const { sheet, row, column } = place;
      const text = this.references.withoutAnchors(formula, place, (other, r, c) =>
        ours.has(placeKey(other.name, r, c)),
      );
      if (text === formula && !rests(sheet.name, row, column)) return [];
      const spill = this.spillValues(place);
      const value = this.calculated.at(sheet, row, column);
      return [asking({ sheet: sheet.name, row, column, value, formula: text, ...(spill && { spill }) })];
    });
    const rewritten = new Set([...ours, ...changes.map((one) => placeKey(one.sheet, one.row, one.column))]);
    // The formula that a sheet shows beside a number is the one its author typed.
    const shown = others.flatMap(({ formula, ...place }): CellChange[] => {
      const told = FORMULA_TEXT.exec(formula)?.[1];
      const of = told === undefined ? undefined : this.references.read(told, place, false)?.place;
      if (of === undefined || !rewritten.has(of)) return [];
      const { sheet, row, column } = place;
      return [{ sheet: sheet.name, row, column, value: this.calculated.at(sheet, row, column) }];
    });
    const isShown = new Set(shown.map((one) => placeKey(one.sheet, one.row, one.column)));
    return [...changes.filter((one) => !isShown.has(placeKey(one.sheet, one.row, one.column))), ...shown];
  }

  private spillValues({
    sheet,
    row,
    column,
  }: {
    sheet: Sheet;
    row: number;
    column: number;
  }): Matrix | undefined {
    const area = this.calculated.spill(sheet, row, column);
    if (!area) return undefined;
    return Array.from({ length: area.bottom - area.top + 1 }, (_, down) =>
      Array.from({ length: area.right - area.left + 1 }, (__, right) =>
        this.calculated.at(sheet, area.top + down, area.left + right),
      ),
    );
  }

  /** Files keep an error's code, not its reason. */
  private clean(change: CellChange): CellChange {
    const { value } = change;
    return value instanceof CellError ? { ...change, value: new CellError(value.code) } : change;
  }

  /** Every formula of ours told in a note: what it was, its unit and source. In a copy of values, all other formulas too. */
  private withNotes(changes: readonly CellChange[], formulas: readonly OurFormula[]): CellChange[] {
    const texts = new Map<string, string>();
    for (const at of formulas) {
      const calls = this.calculated.callsIn(at).flatMap((call) => describeCall(call) ?? []);
      const unit = calls.length === 1 ? (calls[0]?.unit ?? '') : '';
      const lines = [
        `=${at.formula}`,
        sharedValue(this.calculated.at(at.sheet, at.row, at.column), unit),
        ...(unit === '' ? [] : [`Unit: ${unit}`]),
        ...[...new Set(calls.flatMap(({ sources }) => sources))].map((source) => `Source: ${source}`),
        `Moldsheet, ${BASIS_TEXT}`,
      ];
      texts.set(placeKey(at.sheet.name, at.row, at.column), lines.join('\n'));
    }
    if (this.options.as === 'values') {
      for (const sheet of this.workbook.sheets) {
        for (const { row, column, formula } of sheet.cells) {
          const key = placeKey(sheet.name, row, column);
          if (formula === undefined || texts.has(key)) continue;
          const value = this.calculated.at(sheet, row, column);
          const trouble = value instanceof CellError ? [sharedValue(value, '')] : [];
          texts.set(key, [`=${formula}`, ...trouble].join('\n'));
        }
      }
    }
    return changes.map((change) => {
      const text = texts.get(placeKey(change.sheet, change.row, change.column));
      const sheet = this.workbook.sheets.find(({ name }) => name === change.sheet);
      if (text === undefined || !sheet || change.note !== undefined) return change;
      return { ...change, note: this.joined(sheet, change.row, change.column, text) };
    });
  }

  private basis(rewritten: readonly Rewritten[]): ReturnType<typeof basisSheet>[] {
    if (this.options.basis !== true) return [];
    const lines: BasisLine[] = [];
    for (const { at, report } of rewritten) {
      for (const call of this.calculated.callsIn(at)) {
        const told = describeCall(call);
        if (!told) continue;
        lines.push({
          sheet: at.sheet.name,
          cell: report.cell,
          call: told,
          status: report.how === 'value' ? '' : report.how,
        });
      }
    }
    const date = this.options.date ?? new Date().toISOString().slice(0, 10);
    const frozen = rewritten.flatMap(({ report }) => (isValue(report) ? [report] : []));
    return [basisSheet(this.freeName('Basis'), lines, frozen, date)];
  }

  /** Places of our formulas whose copies give something else. */
  private disagreeing(results: readonly CellChange[]): string[] {
    const anchors = new Map<string, string>();
    for (const { sheet, row, column } of this.calculated.ourFormulas()) {
      const area = this.areaOf(sheet, row, column);
      for (const [r, c] of cellsOf(area))
        anchors.set(placeKey(sheet.name, r, c), placeKey(sheet.name, row, column));
    }
    return results.flatMap(({ sheet, row, column, value }) => {
      const anchor = anchors.get(placeKey(sheet, row, column));
      const own = this.workbook.sheets.find(({ name }) => name === sheet);
      if (anchor === undefined || !own || this.refuted.has(anchor)) return [];
      return agrees(value, this.calculated.at(own, row, column)) ? [] : [anchor];
    });
  }

  /** What the copy holds, and what stood there before. */
  private original(
    copy: Workbook,
    changes: readonly CellChange[],
    added: readonly string[],
    { rewritten }: OutsideFormulas,
  ): Original {
    const changed = new Map(changes.map((one) => [placeKey(one.sheet, one.row, one.column), one]));
    const cells = copy.sheets.flatMap((sheet) => {
      const before = this.workbook.sheets.find(({ name }) => name === sheet.name);
      if (!before) return [];
      const find = cellFinder(before);
      const present = cellFinder(sheet);
      const emptied = changes
        .filter((one) => one.sheet === sheet.name && !present(one.row, one.column))
        .map(({ row, column }) => ({ row, column, value: null, formula: undefined }));
      return [...sheet.cells, ...emptied].flatMap((cell): OriginalCell[] => {
        const { row, column, value, formula } = cell;
        const change = changed.get(placeKey(sheet.name, row, column));
        if (formula === undefined && value === null && !change) return [];
        const own = find(row, column);
        const area = own?.formula === undefined ? undefined : this.calculated.spill(before, row, column);
        const note = change?.note ?? undefined;
        return [
          {
            sheet: sheet.name,
            row,
            column,
            is: contentText(present(row, column)),
            ...(change && own?.formula !== undefined && { was: own.formula }),
            ...(area && { spill: areaAddress(area) }),
            ...(change?.style !== undefined && {
              fill: this.workbook.styles[own?.style ?? 0]?.fill ?? NO_FILL,
            }),
            ...(note !== undefined && { note: this.withoutPresent(before, row, column, note) }),
          },
        ];
      });
    });
    const outside = rewritten.map(
      ({
        at: {
          what,
          name = '',
          sheet = '',
          areas: [first],
          formula,
        },
        is,
      }) => ({
        what,
        name,
        sheet,
        row: first?.top ?? 0,
        column: first?.left ?? 0,
        is,
        was: formula,
      }),
    );
    return { basis: BASIS_TEXT, added, cells, outside };
  }

  private freeName(wanted: string): string {
    const taken = new Set(this.workbook.sheets.map(({ name }) => name.toLowerCase()));
    for (let n = 1; ; n++) {
      const name = n === 1 ? wanted : `${wanted}${n}`;
      if (!taken.has(name.toLowerCase())) return name;
    }
  }
}

/** With more sheets, to be calculated: those that hold values alone need not be written and read for it. */
function withSheets(workbook: Workbook, added: readonly SheetDescription[]): Workbook {
  const hasFormulas = ({ cells }: SheetDescription): boolean =>
    Object.values(cells).some((cell) => typeof cell === 'object' && cell.formula !== undefined);
  const sheets = added.filter(hasFormulas);
  const copy = sheets.length > 0 ? addSheets(workbook, { sheets, styles: SHARE_STYLES }) : workbook;
  const values = added.filter((sheet) => !hasFormulas(sheet)).map(sheetOfValues);
  return { ...copy, sheets: [...copy.sheets, ...values] };
}

/** Sheets with what their formulas give. */
function withValues(sheets: readonly SheetDescription[], results: readonly CellChange[]): SheetDescription[] {
  const values = new Map(
    results.map(({ sheet, row, column, value }) => [`${sheet}!${cellAddress(row, column)}`, value]),
  );
  return sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]) => {
        const value = values.get(`${sheet.name}!${address}`);
        return [
          address,
          typeof cell === 'object' && value !== undefined ? inItsFormat({ ...cell, value }) : cell,
        ];
      }),
    ),
  }));
}

/** A cell in error says so, with the reason where the function gave one. */
const sharedValue = (value: CellValue, unit: string): string =>
  value instanceof CellError
    ? `In error when shared: ${value.code}${value.message === '' || value.message === value.code ? '' : `, ${value.message}`}`
    : `Value when shared: ${withItsUnit(value, unit)}`;

const cellsOf = ({ top, left, bottom, right }: Area): [number, number][] =>
  Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across): [number, number] => [top + down, left + across]),
  ).flat();
