import type { CellValue } from '../../src/cells/value';
import { CellError } from '../../src/cells/value';
import { columnLetters } from '../../src/cells/address';
import { constantText } from '../../src/workbook/references';
import { NAMESPACE } from '../../src/cells/namespace';
import { worksheetFunction } from '../../src/call/worksheet';
import { readerOf } from '../../src/call/readArgument';
import { inputsOf, type AnyInput } from '../../src/core/define';
import { fromSI, SYSTEMS, systemUnit } from '../../src/core/quantity';
import type { CellDescription, WorkbookDescription } from '../../src/package/description';
import type { CellChange } from '../../src/package/changes';
import { callsOfChecks, randomCalls, type GeneratedCall } from './generated';

/** What stands in the cells of one argument. */
type Content = readonly CellValue[];

/**
 * A call whose arguments stand in cells or in the formula, and what is put into its cells after the copy was made: each
 * change gives the cells of every argument.
 */
export interface Followed extends GeneratedCall {
  /** Arguments that the formula holds itself. */
  readonly literal: ReadonlySet<number>;
  readonly changes: readonly { readonly says: string; readonly cells: readonly (Content | undefined)[] }[];
}

const inPlace = (
  cells: readonly (Content | undefined)[],
  at: number,
  content: Content | undefined,
): (Content | undefined)[] => cells.map((own, i) => (i === at ? content : own));

const otherUnits = (value: CellValue | undefined): CellValue =>
  SYSTEMS.find((system) => system !== value) ?? null;

/** What a person may put into any cell. */
const ANYTHING: readonly CellValue[] = [null, true, 'text', '*', '?', '~', 0, -1, 1];

/** A number of the same magnitude. */
function nearby(value: CellValue | undefined): CellValue[] {
  const number =
    typeof value === 'number' ? value : Number(/^[\d.]+(?=\s|$)/.exec(String(value))?.[0] ?? NaN);
  return Number.isNaN(number) ? [] : [number * 1.0625];
}

function changesOf({ definition, cells }: GeneratedCall, known: readonly CellValue[][]): Followed['changes'] {
  const inputs = inputsOf(definition);
  const units = inputs.length;
  const alone = cells.flatMap((own, i) => {
    const now = own?.[0];
    const words = inputs[i]?.reading.as === 'choice' ? inputs[i].reading.words : (known[i] ?? []);
    const contents = [
      ...ANYTHING,
      ...(typeof now === 'string' ? [`${now.slice(0, 2)}*`, `${now.slice(0, -1)}?`] : []),
      ...nearby(now),
      ...words,
    ];
    return [...new Set(contents)].map((one) => ({
      says: `${inputs[i]?.name ?? 'units'} ${JSON.stringify(one)}`,
      cells: inPlace(cells, i, [one, ...(own ?? []).slice(1)]),
    }));
  });
  return [
    { says: 'nothing', cells },
    { says: 'other units', cells: inPlace(cells, units, [otherUnits(cells[units]?.[0])]) },
    ...alone,
  ];
}

const REFUSED = '(refused)';

/** What the function gives, its refusal as one word for all. */
export function answerOf({ definition, cells }: GeneratedCall): CellValue[] {
  const [row = []] = worksheetFunction(definition).call(cells.map((own) => own?.map((cell) => [cell])));
  return row.map((cell) => (cell instanceof CellError ? REFUSED : cell));
}

export const isRefused = (answer: readonly CellValue[]): boolean => answer.includes(REFUSED);

/** The calls of the proof: each function with every argument in a cell and in the formula. */
export function followedCalls(each: number, seed: number): Followed[] {
  const random = randomCalls(each, seed);
  const checks = callsOfChecks();
  const names = [...new Set(checks.map(({ definition }) => definition))];
  return names.flatMap((definition) => {
    const own = checks.filter((call) => call.definition === definition);
    const [first] = own;
    if (!first) return [];
    const inputs = inputsOf(definition);
    const known = inputs.map(({ reading }, i) =>
      reading.as === 'quantity' || reading.as === 'list'
        ? []
        : [
            ...new Set(
              [...own, ...random.filter((call) => call.definition === definition)].flatMap(
                ({ cells }) => cells[i]?.slice(0, 1) ?? [],
              ),
            ),
          ]
            .filter((one) => typeof one === 'string')
            .slice(0, 6),
    );
    // Every optional argument has a cell, blank or not; once as the check has it, once in plain numbers.
    const full: GeneratedCall = { definition, cells: first.cells.map((one) => one ?? [null]) };
    const plain: GeneratedCall = {
      definition,
      cells: full.cells.map((own, i) => plainCells(own, inputs[i], first)),
    };
    const literals = own.slice(0, 1).flatMap((call) =>
      inputs.flatMap((_, i): Followed[] =>
        call.cells[i] === undefined
          ? []
          : [
              {
                ...call,
                literal: new Set([i]),
                changes: [
                  {
                    says: 'other units',
                    cells: inPlace(call.cells, inputs.length, [otherUnits(call.cells[inputs.length]?.[0])]),
                  },
                ],
              },
            ],
      ),
    );
    const drawn = random
      .filter((call) => call.definition === definition)
      .map(({ cells }) => ({
        says: 'random',
        cells: full.cells.map((own, i) => fill(cells[i] ?? [null], own?.length ?? 1)),
      }))
      .filter((_, i) => i < each);
    const all = new Set(inputs.map((_, i) => i));
    return [
      { ...full, literal: new Set<number>(), changes: changesOf(full, known) },
      { ...plain, literal: new Set<number>(), changes: [...changesOf(plain, known), ...drawn] },
      {
        ...first,
        literal: all,
        changes: [
          {
            says: 'other units',
            cells: inPlace(first.cells, inputs.length, [otherUnits(first.cells[inputs.length]?.[0])]),
          },
          ...([true, null, 'MM', 'cm'] as CellValue[]).map((one) => ({
            says: `units ${String(one)}`,
            cells: inPlace(first.cells, inputs.length, [one]),
          })),
        ],
      },
      ...literals,
    ];
  });
}

/** So many changes of each call, other ones with each seed; of calls with one argument in the formula one a function. */
export function sampled(calls: readonly Followed[], most: number, seed: number): Followed[] {
  const literals = new Map<unknown, number>();
  return calls.flatMap((call, i) => {
    const isLiteral = call.literal.size === 1;
    const count = literals.get(call.definition) ?? 0;
    if (isLiteral) literals.set(call.definition, count + 1);
    if (isLiteral && count !== seed % Math.max(1, call.cells.length - 1)) return [];
    const { changes } = call;
    const step = Math.max(1, changes.length / most);
    const first = (seed + i) % Math.ceil(step);
    return [
      {
        ...call,
        changes: changes
          .filter((_, at) => Math.floor((at + first) / step) !== Math.floor((at + first - 1) / step))
          .slice(0, most),
      },
    ];
  });
}

/** Quantities as plain numbers in the units of the call. */
function plainCells(
  own: Content | undefined,
  input: AnyInput | undefined,
  { cells }: GeneratedCall,
): Content | undefined {
  const reading = input?.reading;
  if (!own || !input || (reading?.as !== 'quantity' && reading?.as !== 'list')) return own;
  const system = SYSTEMS.find((one) => one === cells.at(-1)?.[0]) ?? 'in';
  return own.map((cell) =>
    typeof cell === 'string'
      ? Number(
          fromSI(readerOf(input)(cell, system) as number, systemUnit(reading.kind, system)).toPrecision(12),
        )
      : cell,
  );
}

const fill = (cells: Content, length: number): Content =>
  Array.from({ length: Math.max(length, 1) }, (_, i) => cells[i] ?? null);

export interface PlacedCall {
  readonly call: Followed;
  /** Which of its changes this row goes through, by round. */
  readonly changes: Followed['changes'];
  readonly row: number;
}

const FIRST_ARGUMENT = 8;

/** Places every call as often as its changes need in so many rounds. */
export function placed(calls: readonly Followed[], rounds: number): PlacedCall[] {
  let row = 1;
  return calls.flatMap((call) => {
    const height = Math.max(1, ...call.cells.map((own) => own?.length ?? 0));
    const times = Math.ceil(call.changes.length / rounds);
    return Array.from({ length: times }, (_, n) => {
      const at = row;
      row += height;
      return { call, row: at, changes: call.changes.slice(n * rounds, (n + 1) * rounds) };
    });
  });
}

export function workbookOfPlaced(calls: readonly PlacedCall[]): WorkbookDescription {
  const cells: Record<string, CellDescription | string | number | boolean> = {};
  for (const { call, row } of calls) {
    const texts = call.cells.map((own, at) => {
      if (!own) return '';
      if (call.literal.has(at)) {
        const [one = null] = own;
        return own.length > 1
          ? `{${own.map(constantText).join(';')}}`
          : one === null
            ? ''
            : constantText(one);
      }
      const letter = columnLetters(FIRST_ARGUMENT + at);
      own.forEach((value, down) => {
        if (value !== null) cells[`${letter}${row + down}`] = { value };
      });
      return own.length > 1 ? `${letter}${row}:${letter}${row + own.length - 1}` : `${letter}${row}`;
    });
    cells[`B${row}`] = { formula: `${NAMESPACE}.${call.definition.name}(${texts.join(',')})` };
  }
  return { sheets: [{ name: 'Calls', cells }] };
}

/** The changes of one round, for every call that has one. */
export function changesOfRound(calls: readonly PlacedCall[], round: number): CellChange[] {
  return calls.flatMap(({ call, changes, row }) =>
    (changes[round]?.cells ?? []).flatMap((own, at) =>
      call.literal.has(at) || !own
        ? []
        : own.map((value, down) => ({
            sheet: 'Calls',
            row: row + down - 1,
            column: FIRST_ARGUMENT + at,
            value,
          })),
    ),
  );
}
