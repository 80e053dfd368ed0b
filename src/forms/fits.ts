import { areaAddress, cellAddress } from '../cells/address';
import type { Ground } from './ground';
import { CannotWrite, type FormPlan, type Place } from './plan';

/**
 * The plan, where its cells are free to be written.
 * @throws CannotWrite with a place further down where it would fit, if something stands in its way.
 */
export function whereItFits(plan: FormPlan, ground: Ground, what: string): FormPlan {
  const { area } = plan;
  const locked = ground.locked(area);
  if (locked)
    throw new CannotWrite(
      `The sheet "${ground.sheet}" is protected and ${at(locked)} is locked: unprotect it in the program that protected it, or write the ${what} to another sheet.`,
    );
  const filled = ground.filled(area);
  if (!filled) return plan;
  const height = area.bottom - area.top;
  for (let row = area.top + 1; ; row++) {
    const moved = { ...area, top: row, bottom: row + height };
    const taken = ground.filled(moved);
    if (taken) {
      row = taken.row;
      continue;
    }
    const instead = { row, column: area.left };
    throw new CannotWrite(
      `The ${what} needs ${areaAddress(area)} of "${ground.sheet}", where ${at(filled)} is not empty. It fits at ${at(instead)}.`,
      instead,
    );
  }
}

const at = ({ row, column }: Place): string => cellAddress(row, column);
