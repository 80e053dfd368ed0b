import { input, procedure } from '../../core/define';
import { quantityText } from '../../core/format';
import { notInTable, refuse } from '../../core/refusal';
import { readFit } from '../../tables/fitName';
import {
  ISO_286,
  ISO_286_RECALLED,
  PREFERRED_FITS,
  PREFERRED_FITS_SOURCE,
  SIZE_STEPS,
} from '../../tables/iso286';
import { AT_20, gapsAt, size } from './inputs';

const ROUNDING = 1e-10;

/** The preferred fits at a size, the tightest first. */
const fitsAt = (diameter: number): { name: string; min: number; max: number }[] =>
  PREFERRED_FITS.map((name) => ({ name, ...gapsAt('size', diameter, readFit(name)) })).sort(
    (a, b) => a.max - b.max,
  );

export const fitName = procedure({
  name: 'FIT.NAME',
  summary: 'The preferred fit whose clearances stay within two limits, the tightest that does.',
  inputs: [
    size,
    input('minGap', 'g_1', 'length', {
      usual: ['-0.5 mm', '1 mm'],
      says: 'Least clearance allowed; negative is interference',
    }),
    input('maxGap', 'g_2', 'length', { usual: ['-0.5 mm', '2 mm'], says: 'Largest clearance allowed' }),
  ],
  gives: 'text',
  method: `Among the preferred hole-basis fits ${PREFERRED_FITS.join(', ')}: those whose least and largest clearance lie within the two, and of them the tightest.`,
  steps: {
    min: { gives: 'length', says: 'Least clearance of the fit', equation: 'EI(hole) − es(shaft)' },
    max: { gives: 'length', says: 'Largest clearance of the fit', equation: 'ES(hole) − ei(shaft)' },
  },
  run: ({ size: diameter, minGap, maxGap }, show, system) => {
    if (minGap > maxGap) refuse('minGap', 'must be at most {maxGap}');
    const fits = fitsAt(diameter);
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
  native: ({ size: diameter, minGap, maxGap }, write) => {
    write.refuse(`${minGap.text}>${maxGap.text}`, 'minGap must be at most maxGap');
    const column = write.columns(
      'Preferred fits, the tightest first',
      ['over (m)', ...PREFERRED_FITS.flatMap((_, i) => [`fit ${i + 1}`, 'least gap (m)', 'largest gap (m)'])],
      SIZE_STEPS.map((upTo, i) => {
        const over = (SIZE_STEPS[i - 1] ?? 0) / 1000;
        const fits = fitsAt((over + upTo / 1000) / 2);
        // A step begins just above the one before.
        return [over * (1 + 1e-12), ...fits.flatMap(({ name, min, max }) => [name, min, max])];
      }),
    );
    const row = write.step('row', `MATCH(${diameter.text},${column(0)},1)`);
    const cell = (at: number): string => `INDEX(${column(at)},${row})`;
    return PREFERRED_FITS.reduceRight((rest, _, i) => {
      const [name, min, max] = [1, 2, 3].map((part) => cell(3 * i + part));
      const fits = `AND(${min ?? ''}>=${minGap.text}-${ROUNDING},${max ?? ''}<=${maxGap.text}+${ROUNDING})`;
      return `IF(${fits},${name ?? ''},${rest})`;
    }, 'NA()');
  },
  sources: [ISO_286, ISO_286_RECALLED, PREFERRED_FITS_SOURCE, AT_20],
  related: ['FIT.GAP', 'FIT.LIMITS'],
});

/** By how much a fit's clearances leave the two limits. */
const miss = (fit: { min: number; max: number }, low: number, high: number): number =>
  Math.max(0, low - fit.min) + Math.max(0, fit.max - high);
