import { dimensionText, RATIO, sameDimension, type Dimension } from '../dimension';
import { OPERATORS, type Dim } from './operators';
import { toText } from './text';
import type { Expr } from './tree';

/** A definition whose units do not fit; found by a test, never by a worksheet. */
export class DimensionError extends Error {
  override readonly name = 'DimensionError';
}

/** Infers the dimension of an equation; both branches of a conditional must agree. `say` puts a dimension into words. */
export function inferDimension(
  e: Expr,
  dimensionOf: (name: string) => Dimension,
  say: (dimension: Dimension) => string = dimensionText,
): Dim {
  switch (e.type) {
    case 'num':
      return e.value === 0 ? 'any' : RATIO;
    case 'var':
      return dimensionOf(e.name);
    case 'if': {
      inferDimension(e.test, dimensionOf, say);
      const yes = inferDimension(e.then, dimensionOf, say);
      const no = inferDimension(e.else, dimensionOf, say);
      if (yes === 'any') return no;
      if (no === 'any' || sameDimension(yes, no)) return yes;
      throw new DimensionError(`the branches of "${toText(e)}" are ${say(yes)} and ${say(no)}`);
    }
    case 'op': {
      const dims = e.args.map((arg) => inferDimension(arg, dimensionOf, say));
      const result = OPERATORS[e.op].dims(dims, e.args);
      if (typeof result === 'object' && 'problem' in result) {
        const parts = dims.map((d) => (d === 'any' ? '0' : say(d))).join(', ');
        throw new DimensionError(`"${toText(e)}" ${result.problem} (${parts})`);
      }
      return result;
    }
  }
}
