/**
 * The structure of a workbook changed: rows, columns and cells inserted, deleted and moved; sheets added, copied,
 * renamed, moved and deleted. All that points at cells follows, in every part of the file. Values are as they were;
 * calculate the workbook afterwards.
 */
import { cellAddress } from '../../cells/address';
import type { Workbook } from '../model';
import { workbookPart } from '../open';
import { listSheets, readParts } from '../read';
import { readText, relatedPart, removePart, writeText, type EditableParts } from '../relationships';
import type { KnownFunctions } from '../spelling';
import { encodeText, parseXml } from '../xml';
import { CannotChange, type StructureAct } from './acts';
import { copySheet } from './copySheet';
import {
  moveDrawings,
  movePivots,
  rewriteChartSheets,
  rewriteDrawings,
  rewritePivotSources,
} from './drawingParts';
import type { Rewriting } from './formula';
import { rewriteNames } from './names';
import { holdsNotes, moveNotes } from './notesParts';
import { planOf, type Plan } from './plan';
import { moveCells, pushedOff, type MovedCell } from './sheetData';
import { readSheetXml } from './sheetCells';
import { boundToSheet, rewriteFormulasOfSheet, rewriteSheet } from './sheetPart';
import { checkSlicers } from './slicers';
import { deleteSheet, hideSheet, moveSheet, renameSheet } from './sheets';
import {
  bracketAfter,
  planTable,
  rewriteTableFormulas,
  tablesOf,
  writeTable,
  type TableAfter,
} from './tableParts';

export { CannotChange, type StructureAct } from './acts';

/**
 * The workbook after an act.
 * @throws CannotChange with one sentence for a person; the workbook is then as it was.
 */
export function changeStructure(workbook: Workbook, act: StructureAct, known: KnownFunctions): Workbook {
  const parts: EditableParts = new Map(workbook.parts);
  applyAct(parts, act);
  const book = workbookPart(parts);
  // The order of calculation is another; spreadsheet programs find it anew.
  const chain = relatedPart(parts, book, 'calcChain');
  if (chain !== undefined) removePart(parts, book, chain);
  return readParts(parts, known);
}

function applyAct(parts: EditableParts, act: StructureAct): void {
  switch (act.do) {
    case 'renameSheet':
      renameSheet(parts, act.sheet, act.name);
      return;
    case 'deleteSheet':
      deleteSheet(parts, act.sheet);
      return;
    case 'moveSheet':
      moveSheet(parts, act.sheet, act.to);
      return;
    case 'hideSheet':
      hideSheet(parts, act.sheet, act.hidden);
      return;
    case 'copySheet':
      copySheet(parts, act.sheet, act.name);
      return;
    default:
      new CellMover(parts, act).run();
  }
}

type MovingAct = Parameters<typeof planOf>[0];

class CellMover {
  private readonly plan: Plan;
  private readonly book: string;
  private readonly sheets: readonly { readonly name: string; readonly part: string | undefined }[];

  constructor(
    private readonly parts: EditableParts,
    private readonly act: MovingAct,
  ) {
    this.plan = planOf(act);
    this.book = workbookPart(parts);
    this.sheets = listSheets(parts, this.book, parseXml(readText(parts, this.book) ?? '', this.book));
  }

  run(): void {
    const { plan, parts } = this;
    const source = this.part(plan.sheet);
    const target = this.act.do === 'moveCells' ? this.act.to.sheet : plan.sheet;
    if (target !== plan.sheet) this.checkLeaves(source, target);
    const own = this.sheetXml(plan.sheet);
    const lost = pushedOff(own.sheet, plan, plan.sheet);
    if (lost !== undefined)
      throw new CannotChange(
        `${lost} on "${plan.sheet}" would be pushed off the sheet; clear what stands at its edge first.`,
      );
    const tables = this.tables();
    checkSlicers(parts, this.book, tables);
    const how = (from: string, to = from): Rewriting => ({
      from,
      to,
      area: (sheet, area) => plan.area(sheet, area),
      columns: (table, bracket) => {
        const after = tables.find((one) => same(one.table.name, table));
        return after ? bracketAfter(after, bracket) : bracket;
      },
      word: (text) => (tables.some(({ table, area }) => !area && same(table.name, text)) ? '#REF!' : text),
    });
    let arriving: readonly MovedCell[] = [];
    for (const { name } of this.sheets.filter((one) => one.name === plan.sheet))
      arriving = this.moveOn(name, how, tables, []);
    for (const { name, part } of this.sheets) {
      if (part === undefined) continue;
      if (name === target && target !== plan.sheet) this.moveOn(name, how, tables, arriving);
      else if (name !== plan.sheet) {
        const { xml, sheet } = this.sheetXml(name);
        const changed = rewriteFormulasOfSheet(xml, sheet, how(name));
        if (changed !== xml) writeText(parts, part, changed);
      }
      rewriteDrawings(parts, part, how(name));
      for (const table of tablesOf(parts, part)) {
        if (name !== plan.sheet) rewriteTableFormulas(parts, table.part, how(name));
      }
    }
    rewriteChartSheets(parts, this.book, how(plan.sheet));
    rewriteNames(
      parts,
      this.book,
      this.sheets.map(({ name }) => name),
      (sheet) => how(sheet),
    );
    rewritePivotSources(parts, this.book, how(plan.sheet));
  }

  /** Moves the cells of one sheet and all that hangs on them; gives those that leave it. */
  private moveOn(
    name: string,
    how: (from: string, to?: string) => Rewriting,
    tables: readonly TableAfter[],
    arriving: readonly MovedCell[],
  ): readonly MovedCell[] {
    const { plan, parts } = this;
    const part = this.part(name);
    const { xml, sheet } = this.sheetXml(name);
    const other = this.act.do === 'moveCells' ? this.act.to.sheet : name;
    const { here, away } = moveCells(xml, sheet, plan, how(name), how(name, other));
    const own = tables.filter(({ table }) => tablesOf(parts, part).some((one) => one.part === table.part));
    const headers = own.flatMap((one) => one.headers);
    const cells = [...withHeaders(here, headers), ...arriving];
    const gone = new Set(own.filter(({ area }) => !area).map(({ table }) => table.id));
    writeText(parts, part, rewriteSheet(xml, sheet, plan, how(name), cells, gone));
    for (const one of own) {
      if (one.area) writeTable(parts, one, plan, how(name));
      else removePart(parts, part, one.table.part);
    }
    moveNotes(parts, part, plan, how(name));
    moveDrawings(parts, part, plan, how(name));
    movePivots(parts, part, plan, how(name));
    return away;
  }

  private tables(): TableAfter[] {
    const { plan } = this;
    const target = this.act.do === 'moveCells' ? this.act.to.sheet : plan.sheet;
    return [...new Set([plan.sheet, target])].flatMap((sheet) =>
      tablesOf(this.parts, this.part(sheet)).map((table) =>
        planTable(plan, { from: sheet, to: sheet, area: (where, area) => plan.area(where, area) }, table),
      ),
    );
  }

  /** Cells alone go to another sheet; what is bound to its sheet stays, so nothing of it may lie among them. */
  private checkLeaves(source: string, target: string): void {
    if (this.act.do !== 'moveCells') return;
    const { area, sheet } = this.act;
    this.part(target);
    const tables = tablesOf(this.parts, source).filter((table) => {
      const one = table.area;
      return (
        one.top <= area.bottom && one.bottom >= area.top && one.left <= area.right && one.right >= area.left
      );
    });
    const what = tables[0]
      ? `the table "${tables[0].name}"`
      : holdsNotes(this.parts, source, area)
        ? 'a note'
        : boundToSheet(this.sheetXml(sheet).sheet, area);
    if (what !== undefined)
      throw new CannotChange(
        `The cells hold ${what}, which cannot go to another sheet: move them within "${sheet}", or copy them.`,
      );
  }

  private part(name: string): string {
    const found = this.sheets.find((one) => one.name === name);
    if (!found) throw new CannotChange(`The workbook has no sheet "${name}".`);
    if (found.part === undefined) throw new CannotChange(`"${name}" holds a chart alone and has no cells.`);
    return found.part;
  }

  private sheetXml(name: string) {
    const part = this.part(name);
    const xml = readText(this.parts, part) ?? '';
    return { xml, sheet: readSheetXml(xml, part) };
  }
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** New columns of a table need a heading in the sheet as well, or the file is taken for broken. */
function withHeaders(cells: readonly MovedCell[], headers: TableAfter['headers']): readonly MovedCell[] {
  const blank = cells.filter(
    ({ row, column }) => !headers.some((one) => one.row === row && one.column === column),
  );
  return [
    ...blank,
    ...headers.map(({ row, column, text }) => ({
      row,
      column,
      write: () => `<c r="${cellAddress(row, column)}" t="inlineStr"><is><t>${encodeText(text)}</t></is></c>`,
    })),
  ];
}
