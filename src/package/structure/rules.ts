/** Areas that carry something (a rule, a list of choices, a merge) and the formulas that count from their first cell. */
import { areaAddress, parseArea, type Area } from '../../cells/address';
import { shiftFormula } from '../shiftFormula';
import { rewriteFormula, type Rewriting } from './formula';
import type { Plan } from './plan';

export const readAreas = (text: string): Area[] =>
  text
    .trim()
    .split(/\s+/)
    .flatMap((one) => parseArea(one) ?? []);

export const writeAreas = (areas: readonly Area[]): string => joined(areas).map(areaAddress).join(' ');

/** Neighbours that a cut has parted are one again where they still lie side by side. */
function joined(areas: readonly Area[]): Area[] {
  const list = [...areas];
  for (let i = 0; i < list.length; i++) {
    for (let j = i + 1; j < list.length; j++) {
      const both = merged(list[i], list[j]);
      if (!both) continue;
      list[i] = both;
      list.splice(j, 1);
      j = i;
    }
  }
  return list;
}

function merged(a: Area | undefined, b: Area | undefined): Area | undefined {
  if (!a || !b) return undefined;
  const sameColumns = a.left === b.left && a.right === b.right;
  const sameRows = a.top === b.top && a.bottom === b.bottom;
  if (sameColumns && (a.bottom + 1 === b.top || b.bottom + 1 === a.top))
    return { ...a, top: Math.min(a.top, b.top), bottom: Math.max(a.bottom, b.bottom) };
  if (sameRows && (a.right + 1 === b.left || b.right + 1 === a.left))
    return { ...a, left: Math.min(a.left, b.left), right: Math.max(a.right, b.right) };
  return undefined;
}

export interface RulePart {
  readonly areas: readonly Area[];
  readonly formulas: readonly string[];
}

/** Where the areas of a sheet go; those that are gone are left out. */
export function areasAfter(plan: Plan, sheet: string, areas: readonly Area[]): Area[] {
  return areas.flatMap((area) =>
    plan.cut(sheet, area).flatMap((piece) => {
      const placed = plan.area(sheet, piece);
      return placed?.sheet === sheet ? [placed] : [];
    }),
  );
}

/**
 * A rule after the act: usually one, more where its parts went different ways and their formulas no longer read alike.
 * Relative references of a rule count from the first cell of its first area.
 */
export function ruleAfter(
  plan: Plan,
  how: Rewriting,
  areas: readonly Area[],
  formulas: readonly string[],
): RulePart[] {
  const [base] = areas;
  if (!base) return [];
  const parts = new Map<string, { areas: Area[]; formulas: string[] }>();
  for (const piece of areas.flatMap((area) => plan.cut(how.from, area))) {
    const placed = plan.area(how.from, piece);
    if (placed?.sheet !== how.to) continue;
    const texts = formulas.map((formula) => pieceFormula(plan, how, formula, base, piece, placed));
    const key = texts.map((text) => shiftFormula(text, -placed.top, -placed.left)).join('\0');
    const known = parts.get(key);
    if (known) known.areas.push(placed);
    else parts.set(key, { areas: [placed], formulas: texts });
  }
  return [...parts.values()];
}

/**
 * A piece's formula as its first cell reads it. Lines that come or go beside a single cell of the piece can part it from
 * the neighbour it looks at, while all the others keep theirs: what most of its cells say counts.
 */
function pieceFormula(
  plan: Plan,
  how: Rewriting,
  formula: string,
  base: Area,
  piece: Area,
  placed: Area,
): string {
  const said = [piece.top, Math.floor((piece.top + piece.bottom) / 2), piece.bottom].flatMap((row) =>
    [piece.left, Math.floor((piece.left + piece.right) / 2), piece.right].flatMap((column) => {
      const cell = plan.area(how.from, { top: row, bottom: row, left: column, right: column });
      if (cell?.sheet !== how.to) return [];
      const text = rewriteFormula(shiftFormula(formula, row - base.top, column - base.left), how);
      return [shiftFormula(text, placed.top - cell.top, placed.left - cell.left)];
    }),
  );
  const count = (text: string): number => said.filter((one) => one === text).length;
  return said.reduce((best, text) => (count(text) > count(best) ? text : best), said[0] ?? formula);
}
