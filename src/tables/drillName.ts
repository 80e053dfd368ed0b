import { systemUnit, toSI, type System } from '../core/quantity';
import { readQuantity } from '../core/readQuantity';
import { type Drill, DRILLS } from './drills';
import { AmbiguousName, nearestNames, UnknownName } from './names';
import { plainMarks, refuseComma, SIGN_OF_BY, withoutDiameterSign } from './sizeText';

const byName = new Map(DRILLS.map((drill) => [drill.name, drill]));

/** Diameters written in four decimals of an inch are good to this, m. */
const SAME_SIZE = 0.000051 * 0.0254;

/** A drill as written: by the name of a numbered or lettered one, or by its diameter. */
type Written = { readonly name: string } | { readonly diameter: number; readonly metric: boolean };

const NUMBER = /^(?:(?:#|(?:no\b\.?|number\b|wire\b|gau?ge\b)\s*(?:gau?ge\s*)?#?)\s*0*)?([1-9]\d?)$/i;
const NUMBERED = 80;

/**
 * `#21`, `No. 7`, `21`, `F`, `letter F`, `7/32`, `1 1/4"`, `5.0 mm`, `Ø5`, `.201`. Whole digits from 1 to 80 are a numbered drill; any
 * other plain number is a diameter in the units of the call, a fraction always in inches.
 */
function read(given: string, system: System): Written | undefined {
  refuseComma(given);
  if (SIGN_OF_BY.test(given)) return undefined;
  const marked = plainMarks(given);
  const text = withoutDiameterSign(marked)
    .replace(/[\s-]*\b(?:drill|dia\.?)$/i, '')
    .replace(/\bin\.$/i, 'in');
  const number = NUMBER.exec(text)?.[1];
  // Behind a sign of diameter a number is a diameter.
  if (number !== undefined && Number(number) <= NUMBERED && withoutDiameterSign(marked) === marked)
    return { name: `#${number}` };
  const lettered = /^(?:(?:letter|ltr\.?|size)\s+)?([A-Z])$/i.exec(text);
  if (lettered) return { name: (lettered[1] ?? '').toUpperCase() };
  const reading = readQuantity(text, 'length');
  if (!reading.ok) return undefined;
  const unit = reading.unit ?? systemUnit('length', text.includes('/') ? 'in' : system);
  const diameter = reading.unit ? reading.si : toSI(reading.plain, unit);
  return { diameter, metric: unit.symbol === systemUnit('length', 'mm').symbol };
}

/** A drill of the tables. */
export function findDrill(given: string, system: System = 'in'): Drill {
  const written = read(given, system);
  const drill = written && drillOf(written);
  if (drill) return drill;
  throw new UnknownName('drill', given, nearest(given, written, system));
}

/** The drill of a number that is no text: a diameter in the units of the call, where it cannot be a numbered drill as well. */
export function drillOfNumber(given: string, system: System): Drill {
  const number = NUMBER.exec(given)?.[1];
  if (number === undefined || Number(number) > NUMBERED) return findDrill(given, system);
  const { symbol } = systemUnit('length', system);
  throw new AmbiguousName('drill', given, [`"#${number}"`, `"${given} ${symbol}"`]);
}

/** What was drilled: by a drill of the tables or, where a diameter is written, of no standard size. */
export function findDrilled(given: string, system: System): { readonly diameter: number } {
  const written = read(given, system);
  if (written && 'diameter' in written && written.diameter > 0) return written;
  const drill = written && drillOf(written);
  if (drill) return drill;
  throw new UnknownName('drill', given, nearest(given, written, system));
}

function drillOf(written: Written): Drill | undefined {
  if ('name' in written) return byName.get(written.name);
  const same = DRILLS.filter(({ diameter }) => Math.abs(diameter - written.diameter) < SAME_SIZE);
  // 12.7 mm and 1/2 are one size under two names.
  return same.find(({ series }) => (series === 'metric') === written.metric) ?? same[0];
}

const byDistance = (diameter: number): Drill[] =>
  [...DRILLS].sort((a, b) => Math.abs(a.diameter - diameter) - Math.abs(b.diameter - diameter));

function nearest(given: string, written: Written | undefined, system: System): string[] {
  if (!written || 'name' in written) return nearestNames(given, [...byName.keys()]);
  // "3.3" in a sheet of inches: perhaps the drill of 3.3 mm was meant.
  const other = read(given, system === 'in' ? 'mm' : 'in');
  const meant = other && drillOf(other);
  const drills = [...(meant ? [meant] : []), ...byDistance(written.diameter)];
  return [...new Set(drills.map(({ name }) => name))].slice(0, 3);
}
