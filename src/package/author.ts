/**
 * Makes workbooks and sheets from a readable description. The same description always gives the same file; nothing
 * in it names a person, a machine or a time.
 *
 * Formulas come out without results: calculate the workbook and save it with the results before giving it away.
 */
import type { Properties, SheetsDescription, WorkbookDescription } from './description';
import type { Workbook } from './model';
import { addChartParts } from './drawings/addCharts';
import type { ChartDescription } from './drawings/writeChart';
import { removeCustomXml, writeCustomXml } from './customXml';
import { emptyPackage } from './emptyPackage';
import { addSheetParts } from './newSheets';
import { writeProperties } from './properties';
import { readParts } from './read';
import type { EditableParts } from './relationships';
import { removeSheetParts } from './removeSheets';
import { calledFunctions, knownFunctions } from './spelling';
import { writeZip } from './zip';

export { readCustomXml } from './customXml';

const EMPTY: WorkbookDescription = { sheets: [{ name: 'Sheet1', cells: {} }] };

export function newWorkbook(description: WorkbookDescription = EMPTY): Workbook {
  const parts = emptyPackage(description.font);
  writeProperties(parts, description.properties ?? {});
  addSheetParts(parts, description);
  return readParts(parts, knownFunctions(describedFunctions(description)));
}

/** The workbook with more sheets behind the ones it has. Names and styles of the description join its own. */
export function addSheets(workbook: Workbook, description: SheetsDescription): Workbook {
  return withParts(
    workbook,
    (parts) => {
      addSheetParts(parts, description);
    },
    describedFunctions(description),
  );
}

/** The file of the workbook with more sheets, where nothing more is done with it. */
export function saveWithSheets(workbook: Workbook, description: SheetsDescription): Uint8Array {
  const parts = new Map(workbook.parts);
  addSheetParts(parts, description);
  return writeZip(parts);
}

/** The workbook with charts over the cells of a sheet. Its values should be up to date: charts keep them as well. */
export function addCharts(workbook: Workbook, sheet: string, charts: readonly ChartDescription[]): Workbook {
  return withParts(workbook, (parts) => {
    addChartParts(parts, workbook, sheet, charts);
  });
}

/** The workbook without sheets that no other sheet refers to. */
export function removeSheets(workbook: Workbook, names: readonly string[]): Workbook {
  return withParts(workbook, (parts) => {
    removeSheetParts(parts, new Set(names));
  });
}

/** The workbook with a hidden part of data, found again by the namespace of its root element; one per namespace. */
export function withCustomXml(workbook: Workbook, namespace: string, xml: string): Workbook {
  return withParts(workbook, (parts) => {
    writeCustomXml(parts, namespace, xml);
  });
}

export function withoutCustomXml(workbook: Workbook, namespace: string): Workbook {
  return withParts(workbook, (parts) => {
    removeCustomXml(parts, namespace);
  });
}

/** The workbook under another title and subject; properties that are left out stay. */
export function withProperties(workbook: Workbook, properties: Properties): Workbook {
  return withParts(workbook, (parts) => {
    writeProperties(parts, properties);
  });
}

function withParts(
  workbook: Workbook,
  change: (parts: EditableParts) => void,
  ids: readonly string[] = [],
): Workbook {
  const parts = new Map(workbook.parts);
  change(parts);
  const formulas = [...workbook.names, ...workbook.sheets.flatMap((sheet) => sheet.cells)].flatMap(
    (one) => one.formula ?? [],
  );
  return readParts(parts, knownFunctions([...ids, ...formulas.flatMap(calledFunctions)]));
}

function describedFunctions({ sheets, names }: SheetsDescription): string[] {
  const cells = sheets.flatMap((sheet) => Object.values(sheet.cells));
  const formulas = cells.flatMap((cell) => (typeof cell === 'object' ? (cell.formula ?? []) : []));
  const rules = sheets.flatMap((sheet) => sheet.conditions ?? []).map((condition) => condition.when);
  return [...formulas, ...rules, ...Object.values(names ?? {})].flatMap(calledFunctions);
}
