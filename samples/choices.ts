import { METALS } from '../src/tables/metals';
import { RESINS } from '../src/tables/resins';

/** Cutters are made of two of them, and plain steel has no strength of its own. */
const NOT_OF_MOLDS = ['carbide', 'HSS', 'steel'];

/** Names that cells of the design sheets offer; a list in a cell holds 255 letters. */
export const metals = METALS.map(({ name }) => name).filter((name) => !NOT_OF_MOLDS.includes(name));
export const resins = RESINS.map(({ name }) => name);
