import {
  constant,
  derived,
  formula,
  input,
  type Definition,
  type Formula,
  type Step,
} from '../../src/core/define';

const F = input('push', 'F', 'force', { says: 'A force' });
const L = input('arm', 'L', 'length', { says: 'A length' });

type Conditions = Pick<
  Formula<readonly [typeof F, typeof L]>,
  'refuse' | 'inWords' | 'valid' | 'cautions' | 'constants'
>;

const of = (steps: Record<string, Step>, conditions: Conditions = {}): Definition =>
  formula({
    ...conditions,
    name: 'WRONG.ONE',
    summary: 'A definition with a fault.',
    inputs: [F, L],
    steps,
    result: Object.keys(steps).at(-1) ?? '',
    sources: [derived('a fault made on purpose')],
  });

const MOMENT = { M: { gives: 'torque', expr: 'F*L', says: '' } } as const;

/** Definitions with one fault each, and what the tests of the catalogue say of it. */
export const WRONG: readonly (readonly [fault: string, definition: Definition, says: string])[] = [
  ['adds a force to a length', of({ M: { gives: 'torque', expr: 'F + L', says: '' } }), '"F + L" adds or compares unlike quantities (m kg s^-2, m)'],
  ['compares a force with a length', of({ M: { gives: 'torque', expr: 'F > L ? F*L : 0', says: '' } }), '"F > L" adds or compares unlike quantities (m kg s^-2, m)'],
  ['takes the sine of a length', of({ M: { gives: 'ratio', expr: 'sin(L)', says: '' } }), '"sin(L)" takes a ratio or an angle, not a quantity with a unit (m)'],
  ['has branches of two kinds', of({ M: { gives: 'force', expr: 'L > 0 ? F : L', says: '' } }), 'the branches of "(L > 0 ? F : L)" are m kg s^-2 and m'],
  ['raises a length to a length', of({ M: { gives: 'ratio', expr: '2^L', says: '' } }), '"2^L" has an exponent with a unit (1, m)'],
  ['raises a length to a computed power', of({ M: { gives: 'ratio', expr: 'L^(F/F)', says: '' } }), '"L^(F/F)" raises a quantity with a unit to a power that is not a number (m, 1)'],
  ['declares another kind than it has', of({ M: { gives: 'force', expr: 'F*L', says: '' } }), 'M is m^2 kg s^-2, declared m kg s^-2'],
  ['asks for an unknown symbol', of({ M: { gives: 'torque', expr: 'F*l', says: '' } }), 'unknown symbol l in "F*l"'],
  ['uses a step before it is known', of({ M: { gives: 'torque', expr: 'F*x', says: '' }, x: { gives: 'length', expr: 'L', says: '' } }), 'unknown symbol x in "F*x"'],
  ['leaves a sign out', of({ M: { gives: 'torque', expr: '2 F*L', says: '' } }), 'multiplication without a sign is not allowed in "2 F*L"'],
  ['has hidden units of no such kind', of({ M: { gives: 'torque', expr: 'F*L', says: '', fitted: { units: { F: 'mm' }, out: 'N·m' } } }), 'no unit mm for a force'],
  ['refuses by a bare number', of(MOMENT, { refuse: [{ when: 'L > 0.006', argument: 'arm', says: '' }] }), '"L > 0.006" adds or compares unlike quantities (m, 1)'],
  ['is valid below a bare number', of(MOMENT, { valid: [{ holds: 'F <= 9.7e8*L', says: '' }] }), '"F <= 970000000*L" adds or compares unlike quantities (m kg s^-2, m)'],
  ['cautions between two bare numbers', of(MOMENT, { cautions: [{ when: 'L >= 2e-5 and L <= 1e-3', says: '' }] }), '"L >= 0.00002" adds or compares unlike quantities (m, 1)'],
  ['answers in words by an unlike step', of(MOMENT, { inWords: { when: 'M > F', says: '' } }), '"M > F" adds or compares unlike quantities (m^2 kg s^-2, m kg s^-2)'],
  ['takes a force for a truth', of(MOMENT, { valid: [{ holds: 'F', says: '' }] }), 'the condition "F" is m kg s^-2, and neither true nor false'],
  ['joins a length with a truth', of(MOMENT, { valid: [{ holds: 'L and F > 0', says: '' }] }), '"L and F > 0" takes a ratio or an angle, not a quantity with a unit (m, 1)'],
  ['asks a condition of an unknown symbol', of(MOMENT, { cautions: [{ when: 'T > 0', says: '' }] }), 'unknown symbol T in "T > 0"'],
  ['compares with a constant of another kind', of(MOMENT, { constants: { t: constant('time', '1 s', '') }, valid: [{ holds: 'L < t', says: '' }] }), '"L < t" adds or compares unlike quantities (m, s)'],
  ['has a constant without its unit', of(MOMENT, { constants: { l: constant('length', 6, '') }, valid: [{ holds: 'L < l', says: '' }] }), '6 needs a unit, as it is a length'],
  ['has a constant of another kind than it says', of(MOMENT, { constants: { l: constant('length', '6 s', '') }, valid: [{ holds: 'L < l', says: '' }] }), '"6 s" is not a length'],
]; // prettier-ignore
