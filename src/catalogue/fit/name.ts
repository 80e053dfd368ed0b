import { input, procedure } from '../../core/define';
import { quantityText } from '../../core/format';
import { notInTable, refuse } from '../../core/refusal';
import { fitClasses, PREFERRED_FITS, PREFERRED_FITS_SOURCE } from '../../tables/iso286';
import { AT_20, gapsAt, ISO_286, size } from './inputs';

const ROUNDING = 1e-10;

export const fitName = procedure({
  name: 'FIT.NAME',
  summary: 'The preferred fit whose clearances stay within two limits, the tightest that does.',
  inputs: [
    size,
    input('minGap', 'g_1', 'length', { says: 'Least clearance allowed; negative is interference' }),
    input('maxGap', 'g_2', 'length', { says: 'Largest clearance allowed' }),
  ],
  gives: 'text',
  method: `Among the preferred hole-basis fits ${PREFERRED_FITS.join(', ')}: those whose least and largest clearance lie within the two, and of them the tightest.`,
  steps: {
    min: { gives: 'length', says: 'Least clearance of the fit', equation: 'EI(hole) − es(shaft)' },
    max: { gives: 'length', says: 'Largest clearance of the fit', equation: 'ES(hole) − ei(shaft)' },
  },
  run: ({ size: diameter, minGap, maxGap }, show, system) => {
    if (minGap > maxGap) refuse('minGap', 'must be at most {maxGap}');
    const fits = PREFERRED_FITS.map((name) => ({ name, ...gapsAt('size', diameter, fitClasses(name)) })).sort(
      (a, b) => a.max - b.max,
    );
    const found = fits.find(({ min, max }) => min >= minGap - ROUNDING && max <= maxGap + ROUNDING);
    if (!found) {
      const gap = (si: number): string => quantityText(si, 'length', system);
      const [nearest] = [...fits].sort((a, b) => miss(a, minGap, maxGap) - miss(b, minGap, maxGap));
      return notInTable(
        'maxGap',
        nearest
          ? `leaves no preferred fit; ${nearest.name} has ${gap(nearest.min)} to ${gap(nearest.max)}`
          : 'leaves no preferred fit',
      );
    }
    show('min', found.min);
    show('max', found.max);
    return found.name;
  },
  sources: [ISO_286, PREFERRED_FITS_SOURCE, AT_20],
  related: ['FIT.GAP', 'FIT.LIMITS'],
  checks: [
    {
      given: { size: '8 mm', minGap: '0.005 mm', maxGap: '0.029 mm' },
      expect: 'H7/g6',
      from: 'ISO 286-2: 8 H7/g6 has 5 to 29 µm',
    },
    {
      given: { size: '0.5 in', minGap: '-0.0012 in', maxGap: '0.0001 in' },
      expect: 'H7/p6',
      from: 'ISO 286-2: 12.7 H7 +18/0, p6 +29/+18: −29 to 0 µm, within −30.5 to 2.5',
    },
    {
      given: { size: '20 mm', minGap: '-1 mm', maxGap: '1 mm' },
      expect: 'H7/u6',
      from: 'with room for all the tightest of the list',
      limit: true,
    },
  ],
});

/** By how much a fit's clearances leave the two limits. */
const miss = (fit: { min: number; max: number }, low: number, high: number): number =>
  Math.max(0, low - fit.min) + Math.max(0, fit.max - high);
