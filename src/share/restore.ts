import type { WorksheetFunction } from '../call/worksheetFunction';
import { readCustomXml, removeSheets, withoutCustomXml } from '../package/author';
import { recalculate } from '../workbook/recalculate';
import { areaContains, cellAddress, parseArea, quotedSheet } from '../cells/address';
import { cellFinder, type Sheet, type Workbook } from '../package/model';
import type { CellChange } from '../package/changes';
import { readWorkbook } from '../package';
import { withOutsideFormulas } from '../package/outsideFormulas';
import { saveWorkbook } from '../package/save';
import { shiftFormula } from '../package/shiftFormula';
import { knownFunctions, type KnownFunctions } from '../package/spelling';
import type { Placed } from '../package/structure/mapping';
import { saveCalculated } from '../workbook/basis';
import { placeKey } from '../workbook/references';
import { EARLIER_NAMESPACE, readEarlierOriginal } from './earlierOriginal';
import { Moves } from './moves';
import { contentText, type Original, type OriginalCell } from './original';
import { readRecord } from './recordSheet';
import { sameContent, shownContent } from './sameContent';
import { FROZEN_FILL } from './frozen';

/** A cell that is not as it was when the copy was made. */
export interface ChangedCell {
  readonly sheet: string;
  readonly cell: string;
  readonly before: string;
  readonly now: string;
  /** The formula that would have come back; the colleague's content stays in its place. */
  readonly kept?: string;
}

export interface RestoreReport {
  readonly bytes: Uint8Array;
  /** Formulas put back. */
  readonly restored: number;
  readonly changed: readonly ChangedCell[];
  /** What could not be brought back or not in whole, a sentence each. */
  readonly problems: readonly string[];
  /** The basis with which the copy was made. */
  readonly basis: string;
}

/** A shared copy as a sheet of ours again; undefined where it carries no original formulas. */
export async function restoreWorkbook(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<RestoreReport | undefined> {
  const record = recordOf(workbook);
  return record && (await new Restoring(workbook, functions, record).run());
}

interface Carried extends Original {
  readonly moves: Moves;
  /** The sheets of sharing's own, the record among them, by their present names. */
  readonly added: readonly string[];
  readonly damage: readonly string[];
}

function recordOf(workbook: Workbook): Carried | undefined {
  const record = readRecord(workbook);
  if (record) return { ...record, added: [...record.added, record.sheet] };
  const xml = readCustomXml(workbook, EARLIER_NAMESPACE);
  if (xml === undefined) return undefined;
  return {
    ...readEarlierOriginal(xml),
    moves: new Moves(workbook.sheets.map(({ name }) => name)),
    damage: [],
  };
}

class Restoring {
  private readonly changed: ChangedCell[] = [];
  private readonly changes: CellChange[] = [];
  private readonly problems: string[];
  private restored = 0;

  constructor(
    private readonly workbook: Workbook,
    private readonly functions: readonly WorksheetFunction[],
    private readonly record: Carried,
  ) {
    this.problems = record.damage.map(
      (what) => `The record of the originals was edited: ${what}. What stands in the copy stays there.`,
    );
  }

  async run(): Promise<RestoreReport> {
    const { workbook, functions, record } = this;
    for (const name of this.sheetsGone())
      this.changed.push({ sheet: name, cell: '', before: 'the sheet', now: 'is gone' });
    const spilled = spilledCells(record.cells);
    for (const cell of record.cells) this.cell(cell, spilled.has(keyOf(cell)));
    this.additions();
    const ids = functions.map(({ id }) => id);
    const back = this.outsideBack(
      readWorkbook(saveWorkbook(workbook, this.changes), ids),
      knownFunctions(ids),
    );
    const bare = withoutCustomXml(removeSheets(back, this.removable(back)), EARLIER_NAMESPACE);
    const results = await recalculate(bare, functions);
    const bytes = saveCalculated(
      bare,
      results.filter((one) => one.changed),
    );
    const { restored, changed, problems } = this;
    return { bytes, restored, changed, problems, basis: record.basis };
  }

  private cell(cell: OriginalCell, isSpilled: boolean): void {
    const { sheet: name, is, was } = cell;
    const { moves } = this.record;
    const at = moves.cell(name, cell.row, cell.column);
    const sheet = at && this.workbook.sheets.find((one) => one.name === at.sheet);
    const kept = was === undefined ? {} : { kept: was };
    if (!sheet) {
      if (moves.sheet(name) === undefined) return;
      const told = { sheet: moves.sheet(name) ?? name, cell: cellAddress(cell.row, cell.column) };
      this.changed.push({ ...told, before: shownContent(is), now: 'deleted', ...kept });
      return;
    }
    const { top: row, left: column } = at;
    const found = cellFinder(sheet)(row, column);
    const before = is.startsWith('=') ? `=${moves.formula(is.slice(1), name)}` : is;
    const now = contentText(found);
    if (!sameContent(before, now, sheet.name)) {
      const told = { sheet: sheet.name, cell: cellAddress(row, column) };
      this.changed.push({ ...told, before: shownContent(before), now: shownContent(now), ...kept });
      return;
    }
    const looks = this.looksBefore(cell, sheet, at);
    const value = found?.value ?? null;
    if (was !== undefined) {
      const formula = moves.formula(was, name);
      if (formula.includes('#REF!') && !was.includes('#REF!'))
        this.problems.push(
          `${sheet.name}!${cellAddress(row, column)} reads cells that were deleted in the copy: =${formula}.`,
        );
      this.restored += 1;
      this.changes.push({ sheet: sheet.name, row, column, formula, value, ...looks });
    } else if (isSpilled) {
      this.changes.push({ sheet: sheet.name, row, column, value: null, ...looks });
    } else if (before.startsWith('=') && before !== now) {
      // Written in another way by the program that saved it, and still what its author wrote.
      this.changes.push({ sheet: sheet.name, row, column, formula: before.slice(1), value });
    }
  }

  /** Names, rules and conditional formats. */
  private outsideBack(workbook: Workbook, known: KnownFunctions): Workbook {
    const { moves, outside } = this.record;
    const open = new Set(outside);
    const back = withOutsideFormulas(workbook, known, (at) => {
      for (const one of outside) {
        const sheet = one.sheet === '' ? undefined : moves.sheet(one.sheet);
        if (one.what !== at.what || sheet !== at.sheet) continue;
        const [first] = at.areas;
        const cell = sheet === undefined || !first ? undefined : moves.cell(one.sheet, one.row, one.column);
        if (
          first
            ? !cell || !at.areas.some((area) => areaContains(area, cell.top, cell.left))
            : at.name !== one.name
        )
          continue;
        // Relative references count from the first cell, which may be another one now.
        const [down, right] = first && cell ? [first.top - cell.top, first.left - cell.left] : [0, 0];
        const own = sheet ?? '';
        if (
          !sameContent(
            `=${shiftFormula(moves.formula(one.is, one.sheet), down, right)}`,
            `=${at.formula}`,
            own,
          )
        )
          continue;
        open.delete(one);
        return shiftFormula(moves.formula(one.was, one.sheet), down, right);
      }
      return undefined;
    });
    for (const { what, name, sheet, row, column, was } of open)
      this.problems.push(
        `${what === 'name' ? `The name ${name}` : `A rule on ${sheet}!${cellAddress(row, column)}`} is not as it was when shared and stays; it was =${was}.`,
      );
    return back;
  }

  /** What sharing did to the looks of a cell, undone; what the colleague did to them stays. */
  private looksBefore(
    { fill, note }: OriginalCell,
    sheet: Sheet,
    { top: row, left: column }: Placed,
  ): Partial<CellChange> {
    const style = this.workbook.styles[cellFinder(sheet)(row, column)?.style ?? 0];
    const { fill: present, ...bare } = style ?? {};
    const isOurs = fill !== undefined && present?.toUpperCase() === FROZEN_FILL;
    const noted = sheet.notes.find((one) => one.row === row && one.column === column)?.text;
    const rest = note === undefined || noted === undefined ? undefined : withoutText(noted, note);
    return {
      ...(isOurs && { style: fill === NO_FILL ? bare : { ...bare, fill } }),
      ...(rest !== undefined && { note: rest === '' ? null : rest }),
    };
  }

  /** Sheets of which nothing is left. */
  private sheetsGone(): string[] {
    const names = new Set(this.record.cells.map(({ sheet }) => sheet));
    return [...names].filter((name) => this.record.moves.sheet(name) === undefined);
  }

  private additions(): void {
    const known = new Set(
      this.record.cells.flatMap(({ sheet, row, column }) => {
        const at = this.record.moves.cell(sheet, row, column);
        return at ? [placeKey(at.sheet, at.top, at.left)] : [];
      }),
    );
    for (const sheet of this.workbook.sheets) {
      if (this.record.added.includes(sheet.name)) continue;
      for (const cell of sheet.cells) {
        const { row, column, value, formula } = cell;
        if (known.has(placeKey(sheet.name, row, column)) || (value === null && formula === undefined))
          continue;
        this.changed.push({
          sheet: sheet.name,
          cell: cellAddress(row, column),
          before: '',
          now: shownContent(contentText(cell)),
        });
      }
    }
  }

  /** Of the sheets that sharing added, those that no formula needs any more. */
  private removable(back: Workbook): readonly string[] {
    const { added } = this.record;
    const own = back.sheets.filter(({ name }) => !added.includes(name));
    const texts = [
      ...own.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? [])),
      ...back.names.map(({ formula }) => formula),
    ].map((text) => text.toLowerCase());
    const needed = added.some((name) =>
      texts.some((text) => text.includes(`${quotedSheet(name).toLowerCase()}!`)),
    );
    if (!needed) return added;
    this.problems.push('The sheets of the working stay, since formulas of the copy still read them.');
    return added.slice(-1);
  }
}

/** Of a cell that had no color, in the record. */
export const NO_FILL = 'none';

function withoutText(text: string, part: string): string | undefined {
  const same = (one: string): string => one.replaceAll('\r\n', '\n');
  const [whole, ours] = [same(text), same(part)];
  const at = whole.indexOf(ours);
  return at < 0 ? undefined : (whole.slice(0, at) + whole.slice(at + ours.length)).trim();
}

const keyOf = ({ sheet, row, column }: OriginalCell): string => placeKey(sheet, row, column);

/** Cells that the original formulas filled from elsewhere. */
function spilledCells(cells: readonly OriginalCell[]): Set<string> {
  const filled = new Set<string>();
  for (const { sheet, row: own, column: ownColumn, spill } of cells) {
    const area = spill === undefined ? undefined : parseArea(spill);
    if (!area) continue;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row !== own || column !== ownColumn) filled.add(placeKey(sheet, row, column));
      }
    }
  }
  return filled;
}
