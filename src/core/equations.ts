import type { System } from './quantity';

/**
 * A formula's equations in one go: its result in SI, or its answer in words. Throws a `Refusal`. Into `stresses` go the
 * steps that its strength names, where it gets so far.
 */
export type Equations = (values: readonly unknown[], system?: System, stresses?: number[]) => number | string;

/**
 * How a formula runs. From the sources it is interpreted; webpack and vitest put in place of this module one that holds
 * the equations of the catalogue as functions (`webpack/equations.js`), which needs neither eval nor parser.
 */
export { interpreted as equationsOf } from './interpret';
