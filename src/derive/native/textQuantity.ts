import { KINDS, type Kind } from '../../core/quantity';
import { findUnit } from '../../core/readQuantity';
import type { DataTables } from './tables';

/** Worksheet texts that read a cell's text such as "70000 MPa". */
export interface TextQuantity {
  /** The figures before the first blank. */
  readonly figures: string;
  /** The line of its unit in the table of units. */
  readonly row: (figures: string) => string;
  /** The amount in SI; an error where it is none. */
  readonly si: (figures: string, row: string) => string;
}

/**
 * Reads a text of figures, a blank and a unit. Figures, or one number over another, are taken only where they read back the same: a worksheet's own
 * reading takes dates and percentages for numbers too. Undefined for a kind without units.
 */
export function textQuantity(text: string, kind: Kind, tables: DataTables): TextQuantity | undefined {
  const rows = rowsOf(kind);
  if (rows.length === 0) return undefined;
  const table = { title: `Units: ${KINDS[kind].says}`, heads: ['unit', 'one of it in SI', 'its zero in SI'] };
  const find = tables.exact(table, rows);
  return {
    figures: `LEFT(TRIM(${text}),FIND(" ",TRIM(${text})&" ")-1)`,
    row: (figures) => find.row(`MID(TRIM(${text}),LEN(${figures})+2,99)`),
    si: (figures, row) => {
      const slash = `FIND("/",${figures})`;
      const [top, bottom] = [`VALUE(LEFT(${figures},${slash}-1))`, `VALUE(MID(${figures},${slash}+1,9))`];
      const again = `IFERROR(INT(${top})&"/"&INT(ABS(${bottom})),VALUE(${figures})&"")`;
      const isPlain = `AND(EXACT(${figures},${again}),COUNT(FIND({",","  ","*","?","~"},${text}))=0)`;
      const number = `IFERROR(${top}/${bottom},VALUE(${figures}))`;
      const zero = rows.some(([, , offset]) => offset !== 0) ? `+${find.cell(row, 2)}` : '';
      return `IF(${isPlain},${number}*${find.cell(row, 1)}${zero},NA())`;
    },
  };
}

type UnitRow = readonly [name: string, factor: number, offset: number];
const known = new Map<Kind, readonly UnitRow[]>();

/** Every spelling of the units of a kind. */
function rowsOf(kind: Kind): readonly UnitRow[] {
  let rows = known.get(kind);
  if (!rows) {
    rows = KINDS[kind].units.flatMap((unit) =>
      [unit.symbol, ...unit.aliases]
        // A spelling of two units that differ in capitals alone is told apart by no look-up.
        .filter((name) => name !== '' && findUnit(kind, name.toLowerCase()) === unit)
        .map((name): UnitRow => [name, unit.factor, unit.offset]),
    );
    known.set(kind, rows);
  }
  return rows;
}

/** Whether a text is one that these formulas read. */
export const isPlainlyWritten = (text: string): boolean =>
  /^-?(?:[1-9]\d{0,3}\/[1-9]\d{0,3}|(?:0|[1-9]\d{0,9})(?:\.\d{0,3}[1-9])?) \S+(?: \S+)*$/.test(text) &&
  !/[,*?~]| {2}/.test(text);
