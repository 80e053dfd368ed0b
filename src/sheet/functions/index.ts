import { arithmetic } from './arithmetic';
import { arrays } from './arrays';
import { bases } from './bases';
import { bessel } from './bessel';
import { comparisons } from './comparisons';
import { complex } from './complex';
import { conditional } from './conditional';
import { CONVERT } from './convert';
import { database } from './database';
import { dates } from './dates';
import { distributions } from './distributions';
import { finance } from './finance';
import { formats } from './formats';
import { information } from './information';
import { lookups } from './lookups';
import { matrices } from './matrices';
import { patterns } from './patterns';
import { references } from './references';
import { subtotals } from './subtotals';
import { lambdas } from './lambdas';
import { logic } from './logic';
import { rounding } from './rounding';
import type { SheetFunction } from './spec';
import { splitting } from './splitting';
import { statistics } from './statistics';
import { sums } from './sums';
import { texts } from './texts';
import { trigonometry } from './trigonometry';

/** Every function but ours, which the workbook brings along, and the language's own (IF, LET and their kind). */
export const sheetFunctions: readonly SheetFunction[] = [
  CONVERT,
  ...arithmetic,
  ...arrays,
  ...bases,
  ...bessel,
  ...comparisons,
  ...complex,
  ...conditional,
  ...database,
  ...dates,
  ...distributions,
  ...finance,
  ...formats,
  ...information,
  ...lambdas,
  ...logic,
  ...lookups,
  ...matrices,
  ...patterns,
  ...references,
  ...rounding,
  ...splitting,
  ...statistics,
  ...subtotals,
  ...sums,
  ...texts,
  ...trigonometry,
];
