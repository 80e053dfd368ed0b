/**
 * How a formula runs. From the sources it is interpreted; webpack and vitest put in place of this module one that holds
 * the equations of the catalogue as functions (`webpack/equations.js`), which needs neither eval nor parser.
 */
export { interpreted as equationsOf } from './interpret';
