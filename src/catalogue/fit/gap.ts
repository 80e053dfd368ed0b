import { choice, procedure } from '../../core/define';
import { AT_20, fit, gapsAt, nativeGap, refuseOtherSize, size } from './inputs';
import { ISO_286, ISO_286_RECALLED } from '../../tables/iso286';

export const fitGap = procedure({
  name: 'FIT.GAP',
  summary: 'Clearance of a fit; negative is interference.',
  inputs: [
    size,
    fit,
    choice('which', ['min', 'max', 'mean'], {
      default: 'min',
      says: 'Clearance wanted: least, largest, or their mean',
    }),
  ],
  gives: 'length',
  method:
    'Limit deviations of hole and shaft after ISO 286; least clearance is the smallest hole less the largest shaft.',
  steps: {
    min: { gives: 'length', says: 'Least clearance', equation: 'EI(hole) − es(shaft)' },
    max: { gives: 'length', says: 'Largest clearance', equation: 'ES(hole) − ei(shaft)' },
  },
  run: (x, show) => {
    refuseOtherSize('fit', x.size, x.fit);
    const { min, max } = gapsAt('fit', x.size, x.fit);
    show('min', min);
    show('max', max);
    return x.which === 'min' ? min : x.which === 'max' ? max : (min + max) / 2;
  },
  native: ({ size: D, fit: of, which }, write) => {
    const text = (least: 'min' | 'max'): string => nativeGap(least, D.text, of, write);
    const wanted = which.fixed();
    return wanted === 'mean' ? `(${text('min')}+${text('max')})/2` : text(wanted);
  },
  sources: [ISO_286, ISO_286_RECALLED, AT_20],
  notes: [
    'For guide pins, dowels and inserts in a warm mold take the growth of both into account: HEAT.MISMATCH.',
  ],
  related: ['FIT.NAME', 'FIT.LIMITS', 'DOWEL.PRESS'],
});
