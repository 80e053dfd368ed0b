import { METALS } from '../src/tables/metals';
import { RESINS } from '../src/tables/resins';

/** Names that cells of the design sheets offer. */
export const metals = METALS.map(({ name }) => name);
export const resins = RESINS.map(({ name }) => name);
