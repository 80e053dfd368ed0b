import type { Area } from '../cells/address';
import type { Cell, Sheet, Workbook } from './model';
import { areaContains } from '../cells/address';
import { cellFinder } from './model';
import { CellError } from '../cells/value';
import type { CellValue } from '../cells/value';
import type { CellChange, Changes } from './changes';
import { ensureDynamicMark } from './metadata';
import { changeNotes } from './notes';
import { workbookPart } from './open';
import type { CellPatch } from './patchSheet';
import { cellKey, patchSheet } from './patchSheet';
import { listSheets } from './read';
import { dropUndefined } from './readStyles';
import type { EditableParts } from './relationships';
import { readText, relatedPart, removePart, writeText } from './relationships';
import { callsOurs, isComplete, needsArrayMark } from './spelling';
import { followHeadings } from './structure/headings';
import { StyleEditor } from './styleEditor';
import { applyEdits, child, flag, parseXml, withAttributes } from './xml';
import { writeZip } from './zip';

/**
 * The workbook's file with the changes put in. Every part that is not touched by them is kept byte for byte, and in
 * a touched sheet every element but the changed cells.
 */
export function saveWorkbook(workbook: Workbook, changes: Changes): Uint8Array {
  const parts: EditableParts = new Map(workbook.parts);
  if (changes.length > 0) applyChanges(workbook, changes, parts);
  return writeZip(parts);
}

/** Puts the changes into parts that hold what the workbook holds. */
export function applyChanges(workbook: Workbook, changes: Changes, parts: EditableParts): void {
  const book = workbookPart(parts);
  const stylesPart = relatedPart(parts, book, 'styles');
  const stylesXml = stylesPart === undefined ? undefined : readText(parts, stylesPart);
  const styles =
    stylesPart === undefined || stylesXml === undefined ? undefined : new StyleEditor(stylesXml, stylesPart);
  const sheetParts = new Map(
    listSheets(parts, book, parseXml(readText(parts, book) ?? '', book)).map((one) => [one.name, one.part]),
  );
  let mark: number | undefined;
  const context = { styles, mark: () => (mark ??= ensureDynamicMark(parts, book)) };
  for (const [name, ofSheet] of groupBySheet(changes)) {
    const sheet = workbook.sheets.find((one) => one.name === name);
    const part = sheetParts.get(name);
    if (sheet === undefined || part === undefined)
      throw new Error(`The workbook has no sheet "${name}" to change.`);
    const cellAt = cellFinder(sheet);
    const patches = new SheetPatches(sheet, cellAt, ofSheet, context).patches;
    if (patches.size > 0)
      writeText(parts, part, patchSheet(readText(parts, part) ?? '', part, patches, cellAt));
    const notes = [...ofSheet.values()].flatMap(({ row, column, note }) =>
      note === undefined ? [] : [{ row, column, text: note }],
    );
    if (notes.length > 0) changeNotes(parts, part, notes);
  }
  followHeadings(parts, workbook, changes);
  if (styles !== undefined && stylesPart !== undefined && styles.hasAdditions)
    writeText(parts, stylesPart, styles.xml());
  // The order of calculation may have changed; spreadsheet programs find it anew.
  const chain = relatedPart(parts, book, 'calcChain');
  if (chain !== undefined) removePart(parts, book, chain);
  keepResults(workbook, changes, parts, book);
}

/**
 * Whoever opens the file without the add-in sees the results stored in it until something makes the spreadsheet
 * program calculate everything; then each of our cells turns into #NAME?. So a workbook with our functions must not
 * ask for that at every opening, and need not: every result in it has just been written.
 */
function keepResults(workbook: Workbook, changes: Changes, parts: EditableParts, book: string): void {
  const xml = readText(parts, book) ?? '';
  const settings = child(parseXml(xml, book), 'calcPr');
  if (settings === undefined || !flag(settings.attributes['fullCalcOnLoad'])) return;
  const formulas = [...workbook.sheets.flatMap((sheet) => sheet.cells), ...changes];
  if (!formulas.some((one) => one.formula !== undefined && callsOurs(one.formula))) return;
  const text = withAttributes(settings, { fullCalcOnLoad: undefined });
  writeText(parts, book, applyEdits(xml, [{ start: settings.start, end: settings.end, text }]));
}

/** Sheet → cell → its last change. */
function groupBySheet(changes: Changes): Map<string, Map<number, CellChange>> {
  const sheets = new Map<string, Map<number, CellChange>>();
  for (const change of changes) {
    let cells = sheets.get(change.sheet);
    if (cells === undefined) sheets.set(change.sheet, (cells = new Map<number, CellChange>()));
    cells.set(cellKey(change.row, change.column), change);
  }
  return sheets;
}

interface PatchContext {
  readonly styles: StyleEditor | undefined;
  /** The number that marks dynamic arrays; asked for only where one is needed. */
  mark(): number;
}

/** Works out what each cell of a sheet becomes. */
class SheetPatches {
  readonly patches = new Map<number, CellPatch>();
  private readonly rowStyles = new Map<number, number>();

  constructor(
    private readonly sheet: Sheet,
    private readonly cellAt: (row: number, column: number) => Cell | undefined,
    changes: ReadonlyMap<number, CellChange>,
    private readonly context: PatchContext,
  ) {
    for (const { row, style } of sheet.rows) if (style !== undefined) this.rowStyles.set(row, style);
    const writable = [...changes.values()].map((change) => this.asWritable(change));
    for (const change of writable) this.emptyOldArray(change);
    for (const change of writable) this.fillArray(change);
    for (const change of writable) this.changeCell(change);
  }

  /** A formula typed only half is kept as text, where its author can see and finish it. */
  private asWritable(change: CellChange): CellChange {
    const { sheet, row, column, formula, style, numberFormat, note } = change;
    if (formula === undefined || this.cellAt(row, column)?.formula === formula || isComplete(formula))
      return change;
    return { sheet, row, column, value: `=${formula}`, ...dropUndefined({ style, numberFormat, note }) };
  }

  private changeCell(change: CellChange): void {
    const { row, column, value, formula } = change;
    const old = this.cellAt(row, column);
    const isUnchanged = formula !== undefined && formula === old?.formula;
    const isDynamic = formula !== undefined && this.isDynamic(change, formula, old);
    const plain = old?.style ?? this.styleOfEmpty(row, column);
    const style = this.changedStyle(change, plain);
    const saysNothing = old === undefined && value === null && formula === undefined && style === plain;
    const isSame =
      old !== undefined && formula === old.formula && style === old.style && sameValue(value, old.value);
    if (saysNothing) return;
    if (isSame && !isDynamic) {
      // Also where an array that is gone or has grown would have touched it.
      this.patches.delete(cellKey(row, column));
      return;
    }
    const array = isDynamic ? { area: areaOf(change), mark: this.context.mark() } : undefined;
    this.patches.set(cellKey(row, column), {
      row,
      column,
      style,
      value,
      ...(formula === undefined
        ? {}
        : { formula: { text: formula, isUnchanged, ...(array === undefined ? {} : { array }) } }),
    });
  }

  private changedStyle({ style, numberFormat }: CellChange, present: number): number {
    const { styles } = this.context;
    if (styles === undefined) return present;
    if (typeof style === 'object') return styles.addStyle({ ...style, ...dropUndefined({ numberFormat }) });
    const base = style ?? present;
    return numberFormat === undefined ? base : styles.withNumberFormat(base, numberFormat);
  }

  /** An array formula of the old kind keeps its fixed area as long as nobody changes it. */
  private isDynamic(change: CellChange, formula: string, old: Cell | undefined): boolean {
    const isUnchanged = formula === old?.formula;
    if (isUnchanged && old.fixedArray === true) return false;
    if (isUnchanged && old.spill !== undefined) return true;
    if (change.spill !== undefined && (change.spill.length > 1 || (change.spill[0]?.length ?? 0) > 1))
      return true;
    return isUnchanged ? callsOurs(formula) : needsArrayMark(formula);
  }

  /** Takes the values away that the array of this cell has put into others. */
  private emptyOldArray(change: CellChange): void {
    const old = this.cellAt(change.row, change.column);
    if (old?.spill === undefined || (old.fixedArray === true && old.formula === change.formula)) return;
    for (const cell of cellsWithin(this.sheet, old.spill, this.cellAt)) {
      if (cell.formula !== undefined) continue;
      this.patches.set(cellKey(cell.row, cell.column), {
        row: cell.row,
        column: cell.column,
        style: cell.style,
        value: null,
      });
    }
  }

  private fillArray(change: CellChange): void {
    const old = this.cellAt(change.row, change.column);
    const limit = old?.fixedArray === true && old.formula === change.formula ? old.spill : undefined;
    change.spill?.forEach((values, down) => {
      values.forEach((value, across) => {
        const row = change.row + down;
        const column = change.column + across;
        const present = this.cellAt(row, column);
        const isTaken = (down === 0 && across === 0) || present?.formula !== undefined;
        if (isTaken || (limit !== undefined && !areaContains(limit, row, column))) return;
        const style = present?.style ?? this.styleOfEmpty(row, column);
        this.patches.set(cellKey(row, column), { row, column, style, value, isSpilled: true });
      });
    });
  }

  private styleOfEmpty(row: number, column: number): number {
    const ofRow = this.rowStyles.get(row);
    return ofRow ?? this.sheet.columns.find((run) => column >= run.first && column <= run.last)?.style ?? 0;
  }
}

/** A file may claim an area of millions of cells, so the shorter way is taken. */
function cellsWithin(sheet: Sheet, area: Area, cellAt: SheetFinder): Cell[] {
  const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
  if (size > sheet.cells.length)
    return sheet.cells.filter((cell) => areaContains(area, cell.row, cell.column));
  const cells: Cell[] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) {
      const cell = cellAt(row, column);
      if (cell !== undefined) cells.push(cell);
    }
  }
  return cells;
}

type SheetFinder = (row: number, column: number) => Cell | undefined;

function areaOf({ row, column, spill }: CellChange): Area {
  return {
    top: row,
    left: column,
    bottom: row + Math.max(1, spill?.length ?? 1) - 1,
    right: column + Math.max(1, spill?.[0]?.length ?? 1) - 1,
  };
}

function sameValue(a: CellValue, b: CellValue): boolean {
  return a instanceof CellError && b instanceof CellError ? a.code === b.code : a === b;
}
