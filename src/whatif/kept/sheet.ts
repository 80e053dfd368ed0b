/** A what-if as a sheet of a workbook: what it is, whether it stands, its tables, a chart beside each, what it was made for. */
import { areaAddress, cellAddress, type Area } from '../../cells/address';
import { CellError, type CellValue } from '../../cells/value';
import { referenceText } from '../../cells/reference';
import type {
  CellDescription,
  ConditionDescription,
  SheetDescription,
  SheetsDescription,
} from '../../package/description';
import type { ChartDescription } from '../../package/drawings/writeChart';
import type { CellInput } from '../../workbook/cells';
import { cellText } from '../plan';
import type { Outcome } from '../run';
import { headsOf, numberFormats } from '../table';
import { changedColor, limitLines, statusColor, STYLES, verdictColors } from './looks';
import { verdictOf } from '../verdictMatrix';
import { SPARE_LINES, standsFormula, type MadeLine } from './made';
import { CHANGED, namesOf, type KeptWhatIf } from './record';

export interface KeptSheet {
  readonly description: SheetsDescription;
  readonly charts: readonly ChartDescription[];
  readonly record: KeptWhatIf;
}

const CHART = { columns: 8, rows: 17 } as const;
const COLUMN = 16;
/** Points: three lines of a heading. */
const HEADING = 42;
/** More lines are not told apart. */
const MOST_LINES = 8;
/** The one error that all spreadsheets leave out of a chart; a text would be drawn at 0. */
const NO_NUMBER = new CellError('#N/A');
/** Rows of title, standing and notes above the first table. */
const TOP = 6;

/** Where the list of what it was made for begins. */
export const madePlace = (outcome: Outcome): { readonly row: number; readonly column: number } => ({
  row: TOP + 1,
  column: tableColumns(outcome) + CHART.columns + 2,
});

const tableColumns = ({ inputs, results }: Outcome): number =>
  inputs.length === 1 ? 1 + results.length : 1 + (inputs[1]?.values.length ?? 0);

export function keptSheet(
  name: string,
  number: number,
  outcome: Outcome,
  lines: readonly MadeLine[],
): KeptSheet {
  const writer = new SheetWriter(name, outcome);
  writer.top();
  const tables = outcome.inputs.length === 1 ? [writer.column()] : writer.matrices();
  const made = writer.madeFor(lines);
  const record: KeptWhatIf = {
    number,
    vary: outcome.inputs.map(({ cell }) => cell),
    read: outcome.results.map(({ cell }) => cell),
    tables: tables.map((area) => ({ sheet: name, area })),
    made: { sheet: name, area: made },
  };
  return {
    description: { sheets: [writer.described()], styles: writer.styles, hiddenNames: namesOf(record) },
    charts: writer.charts,
    record,
  };
}

class SheetWriter {
  readonly charts: ChartDescription[] = [];
  readonly styles: Record<string, NonNullable<SheetsDescription['styles']>[string]> = { ...STYLES };
  private readonly cells: Record<string, CellDescription> = {};
  private readonly conditions: ConditionDescription[] = [];
  /** Rows of headings. */
  private readonly headings: number[] = [];
  private readonly heads: readonly string[];
  private readonly formats: readonly string[];
  private readonly contents: readonly ((value: CellValue) => CellValue)[];
  private readonly made: { readonly row: number; readonly column: number };

  constructor(
    private readonly name: string,
    private readonly outcome: Outcome,
  ) {
    this.heads = headsOf(outcome);
    this.formats = numberFormats(outcome);
    this.contents = resultContents(outcome);
    this.made = madePlace(outcome);
  }

  top(): void {
    const { inputs, results } = this.outcome;
    const [first = ''] = results.map(({ label }) => label);
    const what = `What if: ${inputs.map(({ label }) => label).join(' and ')}, for ${first}${results.length > 1 ? ' and others' : ''}`;
    const named = (all: Outcome['results'], from: number): string =>
      all.map(({ cell }, at) => `${this.heads[from + at] ?? ''}, ${cellText(cell)}`).join('; ');
    this.put(0, 0, { value: what, style: 'title' });
    this.put(2, 0, { value: `Varied: ${named(inputs, 0)}.`, style: 'note' });
    this.put(3, 0, { value: `Read: ${named(results, inputs.length)}.`, style: 'note' });
    this.put(4, 0, {
      value:
        'Values in yellow cells may be changed. Then run it again: What if tab, or moldsheet whatif --again.',
      style: 'note',
    });
    this.put(5, 0, {
      value: `${NO_NUMBER.code}: the design gives no number for that value; put it into the design to read why.`,
      style: 'note',
    });
  }

  /** One input down, its results beside it; gives the cells below the heading. */
  column(): Area {
    const { rows, results } = this.outcome;
    this.headings.push(TOP);
    this.heads.forEach((head, column) => {
      this.put(TOP, column, { value: head, style: 'head' });
    });
    rows.forEach((row, down) => {
      this.tried(TOP + 1 + down, 0, row.inputs[0] ?? null);
      row.results.forEach((value, at) => {
        this.value(TOP + 1 + down, 1 + at, value, at);
      });
    });
    const area = { top: TOP + 1, left: 0, bottom: TOP + Math.max(1, rows.length), right: results.length };
    const column = (at: number): Area => ({ ...area, left: at, right: at });
    this.colorByVerdict((at) => column(1 + at));
    const isOrdinal = rows.some((row) => typeof row.inputs[0] !== 'number');
    let top = TOP;
    results.forEach((_, at) => {
      if (!hasNumbers(rows, at)) return;
      this.chart(at, isOrdinal ? 'column' : 'scatter', top, results.length, [
        {
          name: { cell: this.at(TOP, 1 + at) },
          along: this.reference(column(0)),
          values: this.reference(column(1 + at)),
        },
      ]);
      top += CHART.rows + 1;
    });
    return area;
  }

  /** Two inputs: a matrix for each result; gives the cells of each with its headings. */
  matrices(): Area[] {
    const { inputs, results, rows } = this.outcome;
    const [down = [], across = []] = inputs.map(({ values }) => values);
    const height = Math.max(down.length + 1, CHART.rows) + 3;
    const areas = results.map((_, at): Area => {
      const top = TOP + 1 + at * height;
      return { top, left: 0, bottom: top + down.length, right: across.length };
    });
    results.forEach((_, at) => {
      const area = areas[at] as Area;
      this.headings.push(area.top);
      this.put(area.top - 1, 0, { value: this.heads[2 + at] ?? '', style: 'status' });
      this.put(area.top, 0, {
        value: `${this.heads[0] ?? ''} down, ${this.heads[1] ?? ''} across`,
        style: 'head',
      });
      across.forEach((value, one) => {
        this.tried(area.top, 1 + one, value);
      });
      down.forEach((value, one) => {
        this.tried(area.top + 1 + one, 0, value);
      });
      rows.forEach((row, index) => {
        const place = [
          area.top + 1 + Math.floor(index / across.length),
          1 + (index % across.length),
        ] as const;
        this.value(place[0], place[1], row.results[at] ?? null, at);
      });
      if (hasNumbers(rows, at)) this.linesOf(at, area);
    });
    const inner = (at: number): Area => {
      const { top, left, bottom, right } = areas[at] as Area;
      return { top: top + 1, left: left + 1, bottom, right };
    };
    this.colorByVerdict(inner);
    return areas;
  }

  /** What it was made for, with room for more; gives the lines below the heading. */
  madeFor(lines: readonly MadeLine[]): Area {
    const { row, column } = this.made;
    const area = { top: row, left: column, bottom: row + lines.length + SPARE_LINES - 1, right: column + 3 };
    ['Made for', 'Then', 'Now', ''].forEach((head, at) => {
      this.put(row - 1, column + at, { value: head, style: 'head' });
    });
    lines.forEach(({ label, then, now, changed }, down) => {
      this.put(row + down, column, { value: label, style: 'label' });
      this.put(row + down, column + 1, { value: then, style: 'value' });
      this.put(row + down, column + 2, { formula: now, style: 'value' });
      if (changed !== undefined) this.put(row + down, column + 3, { formula: changed, style: 'value' });
    });
    const marks = areaAddress({ ...area, left: area.right });
    this.conditions.push(changedColor(marks, cellAddress(area.top, area.right), CHANGED), statusColor(1, 0));
    this.put(1, 0, { formula: standsFormula(area), style: 'status' });
    return area;
  }

  described(): SheetDescription {
    const { column } = this.made;
    return {
      name: this.name,
      columns: Object.fromEntries([
        ['A', 22],
        ...Array.from({ length: tableColumns(this.outcome) - 1 }, (_, at): [string, number] => [
          letters(at + 1),
          COLUMN,
        ]),
        [letters(column), 30],
        [letters(column + 1), COLUMN],
        [letters(column + 2), COLUMN],
      ]),
      rows: { 1: 24, ...Object.fromEntries(this.headings.map((row) => [row + 1, HEADING])) },
      cells: this.cells,
      conditions: this.conditions,
      print: { paper: 'Letter', landscape: true },
    };
  }

  private linesOf(at: number, area: Area): void {
    const [down = [], across = []] = this.outcome.inputs.map(({ values }) => values);
    const isNumbers = (values: readonly unknown[]): boolean =>
      values.every((value) => typeof value === 'number');
    const alongAcross = isNumbers(across) && !isNumbers(down);
    const count = alongAcross ? down.length : across.length;
    const chosen = spread(count, MOST_LINES);
    const line = (one: number): Area =>
      alongAcross
        ? { top: area.top + 1 + one, bottom: area.top + 1 + one, left: area.left + 1, right: area.right }
        : { left: area.left + 1 + one, right: area.left + 1 + one, top: area.top + 1, bottom: area.bottom };
    const along: Area = alongAcross
      ? { top: area.top, bottom: area.top, left: area.left + 1, right: area.right }
      : { left: area.left, right: area.left, top: area.top + 1, bottom: area.bottom };
    const kind = isNumbers(alongAcross ? across : down) ? 'scatter' : 'column';
    this.chart(
      at,
      kind,
      area.top,
      area.right,
      chosen.map((one) => ({
        name: {
          cell: alongAcross ? this.at(area.top + 1 + one, area.left) : this.at(area.top, area.left + 1 + one),
        },
        along: this.reference(along),
        values: this.reference(line(one)),
      })),
      alongAcross ? 1 : 0,
    );
  }

  private chart(
    at: number,
    kind: ChartDescription['kind'],
    top: number,
    right: number,
    series: ChartDescription['series'],
    along = 0,
  ): void {
    const { inputs } = this.outcome;
    const result = this.heads[inputs.length + at] ?? '';
    const other = inputs.length > 1 ? this.heads[1 - along] : undefined;
    this.charts.push({
      kind,
      title: other === undefined ? result : `${result}, a line for each ${other}`,
      alongTitle: this.heads[along] ?? '',
      valuesTitle: result,
      over: areaAddress({ top, left: right + 2, bottom: top + CHART.rows - 1, right: right + CHART.columns }),
      series,
    });
  }

  /** Results have the colors of their verdict, where one is among them. */
  private colorByVerdict(areaOf: (at: number) => Area): void {
    this.outcome.results.forEach((_, at) => {
      const verdict = verdictOf(this.outcome, at);
      if (verdict === undefined) return;
      const [own, other] = [areaOf(at), areaOf(verdict)];
      this.conditions.push(...verdictColors(areaAddress(own), cellAddress(other.top, other.left)));
      if (this.outcome.inputs.length > 1) this.conditions.push(...limitLines(own, other));
    });
  }

  private tried(row: number, column: number, value: CellInput): void {
    this.put(row, column, { value, style: 'tried' });
  }

  private value(row: number, column: number, value: CellValue, at: number): void {
    const format = this.formats[this.outcome.inputs.length + at] ?? 'General';
    const style = format === 'General' ? 'value' : `value ${format}`;
    this.styles[style] ??= { ...STYLES.value, numberFormat: format };
    this.put(row, column, { value: this.contents[at]?.(value) ?? null, style });
  }

  private put(row: number, column: number, cell: CellDescription): void {
    this.cells[cellAddress(row, column)] = cell;
  }

  private at = (row: number, column: number): string =>
    this.reference({ top: row, left: column, bottom: row, right: column });

  private reference = (area: Area): string => referenceText({ sheet: this.name, area });
}

/** What a result puts into its cell: no text among the numbers that a chart shows. */
export const resultContents = ({ rows, results }: Outcome): ((value: CellValue) => CellValue)[] =>
  results.map((_, at) => {
    const isNumber = hasNumbers(rows, at);
    return (value) =>
      value instanceof CellError || (isNumber && typeof value !== 'number') ? NO_NUMBER : value;
  });

const hasNumbers = (rows: Outcome['rows'], at: number): boolean =>
  rows.some(({ results }) => typeof results[at] === 'number');

const letters = (column: number): string => cellAddress(0, column).replace(/\d+$/, '');

/** So many of a count, evenly, with both ends. */
const spread = (count: number, most: number): number[] =>
  count <= most
    ? Array.from({ length: count }, (_, at) => at)
    : Array.from({ length: most }, (_, at) => Math.round((at * (count - 1)) / (most - 1)));
