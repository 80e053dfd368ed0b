import { KINDS, type Kind } from '../../core/quantity';
import { findUnit } from '../../core/readQuantity';
import type { DataTables } from './tables';

/** Gives a piece of the reading a line of its own. */
type Line = (text: string, says: string) => string;

/**
 * The amount in SI of a text of figures, a blank and a unit, such as "70000 MPa", as worksheet text; an error where it is
 * none. Figures, or one number over another, are taken only where they read back the same: a worksheet's own reading takes
 * dates and percentages for numbers too. Undefined for a kind without units.
 */
export function textQuantity(text: string, kind: Kind, tables: DataTables, line: Line): string | undefined {
  const rows = rowsOf(kind);
  if (rows.length === 0) return undefined;
  const table = { title: `Units: ${KINDS[kind].says}`, heads: ['unit', 'one of it in SI', 'its zero in SI'] };
  const find = tables.exact(table, rows);
  const own = line(`TRIM(${text})`, 'the text of');
  const figures = line(`LEFT(${own},FIND(" ",${own}&" ")-1)`, 'the figures of');
  // A name in place of an amount is no error for whoever reads these lines.
  const row = line(
    `IFERROR(${find.row(`MID(${own},LEN(${figures})+2,99)`)},"no unit")`,
    'row, in its table, of the unit in',
  );
  const slash = `FIND("/",${figures})`;
  const top = line(
    `IFERROR(IFERROR(VALUE(LEFT(${figures},${slash}-1)),VALUE(${figures})),"no number")`,
    'the number in',
  );
  const below = line(`IFERROR(VALUE(MID(${figures},${slash}+1,9)),1)`, 'what divides it in');
  const again = line(
    `IF(ISNUMBER(${top}),IF(ISNUMBER(${slash}),INT(${top})&"/"&INT(ABS(${below})),${top}&""),"–")`,
    'the same number written anew, of',
  );
  const isPlain = `AND(EXACT(${figures},${again}),COUNT(FIND({",","  ","*","?","~"},${text}))=0)`;
  const zero = rows.some(([, , offset]) => offset !== 0) ? `+${find.cell(row, 2)}` : '';
  return `IF(${isPlain},${top}/${below}*${find.cell(row, 1)}${zero},NA())`;
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
