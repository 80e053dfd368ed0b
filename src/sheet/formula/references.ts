/** What the operators `:`, space and comma make of references. */
import { ERRORS, Reference, type SheetArea, type Value } from '../values';

export function spannedAreas(a: readonly SheetArea[], b: readonly SheetArea[]): Value {
  const all = [...a, ...b];
  const sheet = all[0]?.sheet;
  if (sheet === undefined || all.some((area) => area.sheet !== sheet)) return ERRORS['#VALUE!'];
  return new Reference([
    {
      sheet,
      top: Math.min(...all.map(({ top }) => top)),
      left: Math.min(...all.map(({ left }) => left)),
      bottom: Math.max(...all.map(({ bottom }) => bottom)),
      right: Math.max(...all.map(({ right }) => right)),
    },
  ]);
}

export function metAreas(a: readonly SheetArea[], b: readonly SheetArea[]): Value {
  const met = a.flatMap((one) =>
    b.flatMap((other): SheetArea[] => {
      const area = {
        sheet: one.sheet,
        top: Math.max(one.top, other.top),
        left: Math.max(one.left, other.left),
        bottom: Math.min(one.bottom, other.bottom),
        right: Math.min(one.right, other.right),
      };
      const meets = one.sheet === other.sheet && area.top <= area.bottom && area.left <= area.right;
      return meets ? [area] : [];
    }),
  );
  return met.length > 0 ? new Reference(met) : ERRORS['#NULL!'];
}

export const joinedAreas = (a: readonly SheetArea[], b: readonly SheetArea[]): Value =>
  new Reference([...a, ...b]);
