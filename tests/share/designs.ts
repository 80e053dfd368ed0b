import { worksheetFunctions } from '../../src/call/functions';
import { columnLetters, type Area } from '../../src/cells/address';
import { NAMESPACE } from '../../src/cells/namespace';
import type { CellValue } from '../../src/cells/value';
import { inputsOf } from '../../src/core/define';
import { SYSTEMS, type System } from '../../src/core/quantity';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import type { CellChange } from '../../src/package/changes';
import type { CellDescription, SheetDescription } from '../../src/package/description';
import type { Workbook } from '../../src/package/model';
import { constantText } from '../../src/workbook/references';
import { recalculate } from '../../src/workbook/recalculate';
import { unzip, zip } from '../package/packages';
import { callsOfChecks, type GeneratedCall } from './generated';
import {
  cellsDeleted,
  copied,
  deleted,
  filled,
  inserted,
  moved,
  sorted,
  type Rearranging,
} from './rearranged';

/** A design as somebody might have built it, and what a colleague puts into the cells of its copy, round by round. */
export interface GeneratedDesign {
  readonly workbook: Workbook;
  readonly rounds: readonly { readonly says: string; readonly changes: readonly CellChange[] }[];
  /** What is done to its cells in turn, each to a copy as it was sent. */
  readonly rearranged: readonly Rearranging[];
}

/** A cell that a colleague may fill in. */
interface Entry {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** What else a name or a word may be. */
  readonly others: readonly CellValue[];
}

const ids = worksheetFunctions.map(({ id }) => id);

/** Evenly spread numbers from 0 to 1, the same for the same seed. */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const INPUT_SHEETS = ['Inputs', "The maker's data", 'Plate 2 (top)', '2nd tool'];
const RESULT_SHEETS = ['Results', "Tool's sums", 'R+D 1', 'A-B'];
const TABLE_SHEET = 'Loads';
const HIDDEN_SHEET = 'Lists of names';

/** Rows of the table: push, draft. */
const LOADS = [
  [100, 5],
  [150, 7],
  [220, 10],
];
const FIRST_LOAD = 3;

class Design {
  private readonly random: () => number;
  private readonly system: System;
  private readonly inputs: string;
  private readonly results: string;
  private readonly cells: Record<string, Record<string, CellDescription | string | number | boolean>>;
  private readonly names: Record<string, string> = {};
  private readonly entries: Entry[] = [];
  private readonly rows: Record<string, number> = {};
  private readonly calls: string[] = [];
  /** Places of the results that are numbers. */
  private readonly numbers: string[] = [];
  private fillsRows = false;

  constructor(seed: number) {
    this.random = chance(seed);
    this.system = this.oneOf(SYSTEMS);
    this.inputs = this.oneOf(INPUT_SHEETS);
    this.results = this.oneOf(RESULT_SHEETS);
    this.cells = { [this.inputs]: {}, [this.results]: {}, [TABLE_SHEET]: {}, [HIDDEN_SHEET]: {} };
  }

  async make(): Promise<GeneratedDesign> {
    this.put(this.inputs, 1, { value: 'A design of random parts' }, 0);
    this.rows[this.inputs] = 3;
    this.rows[this.results] = 3;
    this.rows[HIDDEN_SHEET] = 1;
    const units = this.entry(this.inputs, this.system, SYSTEMS);
    this.names['units'] = units;
    this.table();
    const usable = callsOfChecks().filter(({ cells }) => cells.at(-1)?.[0] === this.system);
    const wanted = 8 + Math.floor(this.random() * 5);
    for (let n = 0; n < wanted; n++) this.call(this.oneOf(usable));
    this.summary();
    const workbook = await this.workbook();
    return { workbook, rounds: this.rounds(), rearranged: this.rearranged() };
  }

  private oneOf<T>(all: readonly T[]): T {
    return all[Math.floor(this.random() * all.length)] as T;
  }

  private put(
    sheet: string,
    row: number,
    cell: CellDescription | string | number | boolean,
    column = 1,
  ): string {
    const address = `${columnLetters(column)}${row}`;
    (this.cells[sheet] ??= {})[address] = cell;
    return address;
  }

  /** Puts what a person fills in; gives its reference from any sheet, with all signs of `$`. */
  private entry(sheet: string, value: CellValue, others: readonly CellValue[] = []): string {
    const row = (this.rows[sheet] ?? 1) + 1;
    this.rows[sheet] = row;
    if (value !== null) this.put(sheet, row, { value });
    this.put(sheet, row, `Entry ${row}`, 0);
    this.entries.push({ sheet, row: row - 1, column: 1, value, others });
    return `${quoted(sheet)}!$B$${row}`;
  }

  /** An argument in one of the ways in which people write one. */
  private argument(cells: readonly CellValue[], others: readonly CellValue[], kind: string): string {
    const [first = null] = cells;
    if (cells.length > 1) {
      const places = cells.map((one) => this.entry(this.inputs, one));
      const last = places.at(-1)?.split('!').at(-1) ?? '';
      return `${places[0] ?? ''}:${last}`;
    }
    if (first === null) return '';
    const sheet = this.random() < 0.25 ? HIDDEN_SHEET : this.inputs;
    const way = this.random();
    if (way < 0.15) return constantText(first);
    const place = this.entry(sheet, first, others);
    if (way < 0.35) {
      const name = `entry_${Object.keys(this.names).length}`;
      this.names[name] = place;
      return name;
    }
    if (kind === 'quantity' && typeof first === 'number') {
      if (way < 0.45) return `${place}*1`;
      if (way < 0.52) return `IF(${place}>0,${place},-${place})`;
      if (way < 0.6) return `${place}+0*${NAMESPACE}.SEAT.FREEDRAFT(mu)`;
    }
    return place;
  }

  private call({ definition, cells }: GeneratedCall): void {
    const inputs = inputsOf(definition);
    const texts = inputs.map((input, i) => {
      const { reading } = input;
      const own = cells[i];
      if (!own) return '';
      if (reading.as === 'choice') return this.argument(own, reading.words, 'choice');
      if (reading.as !== 'named') return this.argument(own, [], reading.as);
      const names = reading.names?.() ?? [];
      return this.argument(own, [this.oneOf(names), this.oneOf(names)].filter(Boolean), 'named');
    });
    const call = `${NAMESPACE}.${definition.name}(${[...texts, 'units'].join(',')})`;
    this.calls.push(call);
    const row = (this.rows[this.results] ?? 1) + 1;
    // Some functions fill a row.
    this.rows[this.results] = row;
    this.put(this.results, row, definition.name, 0);
    const { formula, isNumber } = this.wrapped(call);
    const gives = 'gives' in definition ? definition.gives : undefined;
    const isRow = typeof gives === 'object' && 'row' in gives;
    const width = isRow ? gives.row.length : 1;
    this.fillsRows ||= width > 1;
    const place = this.put(this.results, row, {
      formula: isRow ? call : formula,
      ...(width > 1 && { fills: `B${row}:${columnLetters(width)}${row}` }),
    });
    if (isNumber) this.numbers.push(`${quoted(this.results)}!${place}`);
  }

  private wrapped(call: string): { formula: string; isNumber: boolean } {
    const before = this.numbers.at(-1);
    const ways = [
      { formula: call, isNumber: true },
      { formula: call, isNumber: true },
      { formula: `IFERROR(${call},-1)`, isNumber: true },
      { formula: `IFERROR(2*${call},"none")`, isNumber: true },
      { formula: `IF(ISNUMBER(${call}),${call},0)`, isNumber: true },
      { formula: `IF(ISERROR(${call}),"refused","fine")`, isNumber: false },
      { formula: `${call}&" as text"`, isNumber: false },
      { formula: `ROUND(${call},6)+0*mu`, isNumber: true },
      { formula: `MAX(${call},0)+1`, isNumber: true },
      { formula: before === undefined ? call : `${call}+0*N(${before})`, isNumber: true },
      { formula: `${NAMESPACE}.UNIT.CONVERT(${call},"in","mm")`, isNumber: true },
    ];
    return this.oneOf(ways);
  }

  /** A table with a column of calls of its own rows, and calls on its columns. */
  private table(): void {
    this.put(TABLE_SHEET, FIRST_LOAD - 1, 'Push', 0);
    this.put(TABLE_SHEET, FIRST_LOAD - 1, 'Draft', 1);
    this.put(TABLE_SHEET, FIRST_LOAD - 1, 'Force', 2);
    LOADS.forEach((line, i) => {
      const row = FIRST_LOAD + i;
      line.forEach((value, column) => {
        this.put(TABLE_SHEET, row, { value }, column);
        this.entries.push({ sheet: TABLE_SHEET, row: row - 1, column, value, others: [] });
      });
      this.put(TABLE_SHEET, row, { formula: `${NAMESPACE}.SEAT.FORCE(Loads[@Push],Loads[@Draft],mu)` }, 2);
    });
    const end = FIRST_LOAD + LOADS.length - 1;
    this.put(TABLE_SHEET, end + 2, { formula: `SUM(Loads[Force])` }, 2);
    this.put(TABLE_SHEET, end + 3, { formula: `${NAMESPACE}.STACK.WORST(Loads[Draft],units)` }, 2);
    this.put(TABLE_SHEET, end + 4, { formula: `COUNT(Loads[Force])` }, 2);
    this.put(
      TABLE_SHEET,
      end + 6,
      {
        formula: `${NAMESPACE}.SEAT.FORCE(Loads[Push],Loads[Draft],mu)`,
        fills: `C${end + 6}:C${end + 5 + LOADS.length}`,
      },
      2,
    );
    this.names['mu'] = this.entry(this.inputs, 0.15);
    this.names['half'] = `${this.names['mu']}/2`;
  }

  /** What no function of ours is in, and rests on all that is. */
  private summary(): void {
    const all = this.numbers.join(',');
    const sums = [
      `SUM(${all})`,
      `COUNT(${all})`,
      `IF(SUM(${all})>1000,"too much","fine")`,
      `IFERROR(AVERAGE(${all}),"none")`,
      `${NAMESPACE}.SEAT.FREEDRAFT(half)`,
      `IF(${this.numbers[0] ?? '0'}>0,"above","not above")`,
    ];
    for (const formula of this.numbers.length === 0 ? [] : sums) {
      const row = (this.rows[this.results] ?? 1) + 1;
      this.rows[this.results] = row;
      this.put(this.results, row, { formula });
    }
  }

  private async workbook(): Promise<Workbook> {
    const last = this.rows[this.inputs] ?? 3;
    const sheets = Object.entries(this.cells).map(([name, cells]): SheetDescription => ({
      name,
      cells,
      ...(name === HIDDEN_SHEET && { state: 'hidden' }),
      ...(name === this.inputs && {
        merges: ['A1:D1'],
        validations: [
          { cells: 'B4', choices: [...SYSTEMS] },
          { cells: `B${last + 2}`, accepts: `${NAMESPACE}.SEAT.FREEDRAFT(B${last + 2})>0` },
        ],
        conditions: [
          {
            cells: `B5:B${last}`,
            when: `${NAMESPACE}.SEAT.FREEDRAFT(mu)>ABS(N(B5))`,
            style: { fill: '#FFEEDD' },
          },
        ],
      }),
    }));
    const bytes = saveWorkbook(newWorkbook({ sheets, names: this.names }), []);
    const at = Object.keys(this.cells).indexOf(TABLE_SHEET) + 1;
    const made = readWorkbook(withTable(bytes, `xl/worksheets/sheet${at}.xml`), ids);
    return readWorkbook(saveWorkbook(made, await recalculate(made, worksheetFunctions)), ids);
  }

  private rearranged(): Rearranging[] {
    const { inputs, results } = this;
    const [firstInput, lastInput] = [3, (this.rows[inputs] ?? 4) - 1];
    const lastResult = (this.rows[results] ?? 4) - 1;
    const top = FIRST_LOAD - 1;
    const input = firstInput + 1 + Math.floor(this.random() * (lastInput - firstInput - 1));
    const result = 3 + Math.floor(this.random() * (lastResult - 3));
    const loads = (left: number, right: number): Area => area(top, left, TABLE_END, right);
    // A row of results is an array of LibreOffice's, which lets no part of it be changed.
    const ofResults = this.fillsRows
      ? []
      : [
          filled(results, area(3, 1, lastResult, 2), 'RIGHT'),
          copied(results, area(3, 1, lastResult, 1), 4, 1),
          moved(results, area(result, 1, lastResult, 1), 50, 7),
        ];
    return [
      deleted(inputs, 'Rows', input),
      moved(TABLE_SHEET, { ...loads(0, 2), top: top - 1 }, 40, 5),
      sorted(TABLE_SHEET, loads(0, 2), 'rows'),
      deleted(TABLE_SHEET, 'Rows', top + 1),
      moved(inputs, area(input, 1, input, 1), 60, 6),
      filled(TABLE_SHEET, loads(2, 2), 'BOTTOM'),
      cellsDeleted(inputs, area(input, 1, input, 1), 'UP'),
      inserted(TABLE_SHEET, 'Rows', top + 1),
      filled(TABLE_SHEET, area(top, 2, TABLE_END + 2, 2), 'TOP'),
      deleted(results, 'Columns', 0),
      sorted(inputs, area(firstInput, 1, lastInput, 1), 'rows'),
      cellsDeleted(TABLE_SHEET, area(top, 0, top, 0), 'LEFT'),
      copied(TABLE_SHEET, loads(0, 2), top, 1),
      moved(TABLE_SHEET, area(top, 0, top, 1), TABLE_END, 0),
      deleted(results, 'Rows', result),
      deleted(TABLE_SHEET, 'Columns', 1),
      ...ofResults,
    ];
  }

  private rounds(): GeneratedDesign['rounds'] {
    const change = (one: Entry, value: CellValue): CellChange => ({
      sheet: one.sheet,
      row: one.row,
      column: one.column,
      value,
    });
    const [units, ...rest] = this.entries;
    if (!units) throw new Error('no units');
    const other = SYSTEMS.find((one) => one !== this.system) ?? 'in';
    const some = (share: number) => rest.filter(() => this.random() < share);
    const number = ({ value }: Entry, factor: number): CellValue =>
      typeof value === 'number' ? value * factor : value;
    const named = (entries: readonly Entry[]) => entries.filter(({ others }) => others.length > 0);
    return [
      { says: 'nothing', changes: [] },
      { says: 'other units', changes: [change(units, other)] },
      { says: 'other numbers', changes: some(0.6).map((one) => change(one, number(one, 1.0625))) },
      { says: 'other names', changes: named(rest).map((one) => change(one, this.oneOf(one.others))) },
      { says: 'blanks', changes: some(0.2).map((one) => change(one, null)) },
      { says: 'text', changes: some(0.15).map((one) => change(one, `${String(one.value)} mm`)) },
      {
        says: 'of everything something',
        changes: [
          change(units, this.random() < 0.5 ? other : this.system),
          ...some(0.25).map((one) =>
            change(
              one,
              this.oneOf<CellValue>([number(one, 0.9375), number(one, 1.125), 0, true, '1/2', '*']),
            ),
          ),
        ],
      },
    ];
  }
}

const TABLE_END = FIRST_LOAD + LOADS.length - 2;
const area = (top: number, left: number, bottom: number, right: number): Area => ({
  top,
  left,
  bottom,
  right,
});

const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

/** The file with the table of loads on one of its sheets. */
function withTable(bytes: Uint8Array, sheet: string): Uint8Array {
  const parts = Object.fromEntries(
    Object.entries(unzip(bytes)).map(([name, part]) => [name, new TextDecoder().decode(part)]),
  );
  const put = (name: string, before: string, text: string): void => {
    parts[name] = (parts[name] ?? '').replace(before, text + before);
  };
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const end = FIRST_LOAD + LOADS.length - 1;
  const columns = ['Push', 'Draft', 'Force'].map((name, i) => `<tableColumn id="${i + 1}" name="${name}"/>`);
  parts['xl/tables/table1.xml'] =
    `<?xml version="1.0" encoding="UTF-8"?><table xmlns="${main}" id="1" name="Loads" displayName="Loads" ` +
    `ref="A${FIRST_LOAD - 1}:C${end}"><tableColumns count="3">${columns.join('')}</tableColumns></table>`;
  put(
    '[Content_Types].xml',
    '</Types>',
    '<Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/>',
  );
  put(
    sheet,
    '</worksheet>',
    `<tableParts xmlns:r="${office}" count="1"><tablePart r:id="rIdTable"/></tableParts>`,
  );
  const rels = sheet.replace('worksheets/', 'worksheets/_rels/') + '.rels';
  parts[rels] ??=
    '<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>';
  put(
    rels,
    '</Relationships>',
    `<Relationship Id="rIdTable" Type="${office}/table" Target="../tables/table1.xml"/>`,
  );
  return zip(parts);
}

export const generatedDesign = (seed: number): Promise<GeneratedDesign> => new Design(seed).make();
