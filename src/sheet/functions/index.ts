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

export interface Family {
  readonly name: string;
  readonly functions: readonly SheetFunction[];
  /** What else than its descriptions says that it calculates rightly. */
  readonly proof: string;
}

const RECORDED = 'values recorded from LibreOffice 7.4.7';
const BY_HAND = 'values worked out by hand';
const FUZZ = 'random formulas beside LibreOffice (npm run fuzz)';
const CORPUS = 'stored values of foreign workbooks (npm run corpus)';
const family = (name: string, functions: readonly SheetFunction[], ...proofs: readonly string[]): Family => ({
  name,
  functions,
  proof: proofs.join('; '),
});

/** A function whose name no value in tests/sheet/functions calls fails the tests: what is not proven stays out. */
export const families: readonly Family[] = [
  family('units', [CONVERT], RECORDED, BY_HAND, CORPUS),
  family('arithmetic', arithmetic, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('arrays', arrays, RECORDED, BY_HAND, CORPUS),
  family('number bases', bases, RECORDED, CORPUS),
  family('Bessel functions', bessel, RECORDED, BY_HAND, CORPUS),
  family('two samples compared', comparisons, RECORDED, CORPUS),
  family('complex numbers', complex, RECORDED, 'identities between them', CORPUS),
  family('sums with conditions', conditional, BY_HAND, FUZZ, CORPUS),
  family('lists as databases', database, BY_HAND, CORPUS),
  family('dates and times', dates, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('distributions', distributions, RECORDED, BY_HAND, CORPUS),
  family('finance', finance, RECORDED, CORPUS),
  family('numbers as text', formats, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('information', information, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('LAMBDA helpers', lambdas, BY_HAND),
  family('logic', logic, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('look-ups', lookups, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('matrices and regressions', matrices, RECORDED, CORPUS),
  family('regular expressions', patterns, BY_HAND),
  family('references', references, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('rounding', rounding, RECORDED, FUZZ, CORPUS),
  family('splitting of texts', splitting, BY_HAND, CORPUS),
  family('statistics', statistics, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('subtotals', subtotals, BY_HAND, CORPUS),
  family('sums', sums, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('texts', texts, RECORDED, BY_HAND, FUZZ, CORPUS),
  family('trigonometry', trigonometry, RECORDED, FUZZ, CORPUS),
];

/** Every function but ours, which the workbook brings along, and the language's own (IF, LET and their kind). */
export const sheetFunctions: readonly SheetFunction[] = families.flatMap(({ functions }) => functions);
