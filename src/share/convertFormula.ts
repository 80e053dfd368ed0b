import { nativeNumber, toNative } from '../core/expr/native';
import { anyUnit } from '../core/anyUnit';
import { equationOf, readRows, type FormulaInput } from '../call/tools/unitFormula';
import { partMark, type Guard, type NativeCall, type NativePart } from '../derive/native';
import { constantText, type Reference } from '../workbook/references';
import { Unconvertible } from './unconvertible';

/**
 * UNIT.FORMULA written out: the equation in the worksheet's own functions on the cells of its values. What settled how
 * it was written (the equation, symbols, units, values that brought a unit along) is guarded: another entry is an error.
 */
export function nativeFormula([equation, rows, unit]: readonly (Reference | undefined)[]): NativeCall {
  if (!equation || !rows) throw new Unconvertible('an argument is missing');
  const text = cellOf(equation);
  const inputs = readRows(rows.cells.map((row) => row.map(({ value }) => value)));
  const target = anyUnit(String((unit && cellOf(unit).value) ?? ''));
  if (!target) throw new Unconvertible('its unit is not known');
  const { tree } = equationOf(String(text.value ?? ''), inputs);
  const lines = rows.cells.filter(
    ([symbol]) => symbol !== undefined && symbol.value !== null && symbol.value !== '',
  );
  const holds = [
    ...settled(text, equation.varies),
    ...(unit ? settled(cellOf(unit), unit.varies) : []),
    ...lines.flatMap(([symbol, value, own]) => [
      ...(symbol ? settled(symbol, rows.varies) : []),
      ...(own ? settled(own, rows.varies) : []),
      ...(value && rows.varies
        ? typeof value.value === 'number'
          ? [`ISNUMBER(${value.text})`]
          : settled(value, true)
        : []),
    ]),
  ];
  const parts = inputs.map((input, i): NativePart => {
    const value = lines[i]?.[1];
    const words = {
      role: 'input',
      says: 'Value of the list',
      equation: value?.text ?? '',
      unit: 'SI',
    } as const;
    return { name: `v_${i}`, symbol: input.symbol, text: inSI(input, value, rows.varies), words };
  });
  const si = toNative(tree, (symbol) =>
    partMark(`v_${inputs.findIndex((input) => input.symbol === symbol)}`),
  );
  const shifted = target.offset === 0 ? si : `(${si}-${nativeNumber(target.offset)})`;
  const result = target.factor === 1 ? shifted : `${shifted}/${nativeNumber(target.factor)}`;
  const guards = holds.map((one): Guard => ({ when: `NOT(${one})`, code: '#VALUE!', says: OTHER }));
  const results = [
    {
      text: result,
      says: String(text.value ?? ''),
      unit: constantText(String(unit?.cells[0]?.[0]?.value ?? '')),
    },
  ];
  const variants = [{ when: [], form: { guards, gates: [], results } }];
  return { parts, variants, looksUp: false, settles: true, notes: [] };
}

const OTHER = 'made for other symbols, units or equation: ask for a new copy';

interface CellText {
  readonly text: string;
  readonly value: Reference['cells'][number][number]['value'];
}

function cellOf({ cells }: Reference): CellText {
  const [[cell] = []] = cells;
  if (cells.length !== 1 || cells[0]?.length !== 1 || !cell)
    throw new Unconvertible('an argument is no single cell');
  return cell;
}

const settled = ({ text, value }: CellText, varies: boolean): string[] => {
  if (!varies) return [];
  return [value === null ? `ISBLANK(${text})` : `EXACT(${text},${constantText(value)})`];
};

function inSI({ si, unit }: FormulaInput, value: CellText | undefined, varies: boolean): string {
  if (!varies || typeof value?.value !== 'number') return nativeNumber(si);
  const scaled = unit.factor === 1 ? value.text : `(${value.text}*${nativeNumber(unit.factor)})`;
  return unit.offset === 0 ? scaled : `(${scaled}+${nativeNumber(unit.offset)})`;
}
