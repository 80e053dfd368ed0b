import { amountSI } from './amount';
import type { Constant } from './define';

export interface NamedConstant extends Constant {
  readonly symbol: string;
  readonly si: number;
}

export const constantSI = ({ is, gives }: Constant): number => amountSI(is, gives);

/** In the order in which a definition names them. */
export const namedConstants = (constants: Readonly<Record<string, Constant>> = {}): NamedConstant[] =>
  Object.entries(constants).map(([symbol, one]) => ({ ...one, symbol, si: constantSI(one) }));
