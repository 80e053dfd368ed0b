import { constant, derived, input, type Step } from '../../core/define';

/** What the flows of melt share: their inputs, the true rate at the wall and the power law's stress there. */

export const flow = input('flow', 'Q', 'flow', {
  min: '0 cm³/s',
  usual: ['0.05 cm³/s', '300 cm³/s'],
  says: 'Volume of melt that flows in a second',
});
export const width = input('width', 'W', 'length', {
  above: '0 mm',
  usual: ['0.5 mm', '400 mm'],
  says: 'Width of the slit, across the flow',
});
export const gap = input('gap', 'h', 'length', {
  above: '0 mm',
  usual: ['0.1 mm', '10 mm'],
  says: 'Height of the gap between the two walls',
});
export const radius = input('radius', 'R', 'length', {
  above: '0 mm',
  usual: ['0.3 mm', '10 mm'],
  says: 'Radius of the runner or nozzle',
});
export const length = input('length', 'L', 'length', {
  min: '0 mm',
  usual: ['0.3 mm', '600 mm'],
  says: 'Length along the flow',
});
export const consistency = input('consistency', 'K', 'consistency', {
  above: '0 Pa·s^n',
  usual: ['50 Pa·s^n', '100000 Pa·s^n'],
  says: 'Consistency of the power law at melt temperature',
});
const index = {
  above: 0,
  usual: [0.1, 1],
  says: 'Power-law index; 1 is a Newtonian melt',
} as const;
export const powerIndex = input('powerIndex', 'n', 'ratio', index);
export const powerIndexOrNewtonian = input('powerIndex', 'n', 'ratio', { ...index, default: 1 });

const TRUE_RATE = 'True rate at the wall: Rabinowitsch’s correction for the profile of a power law';

/** True wall rate of a slit, after the step `gamma_a`. */
export const slitWall = {
  gamma_w: { gives: 'shearRate', expr: 'gamma_a*(2*n + 1)/(3*n)', says: TRUE_RATE },
} as const satisfies Record<string, Step>;

export const slitShear = {
  gamma_a: {
    gives: 'shearRate',
    expr: '6*Q/(W*h^2)',
    says: 'Apparent rate at the wall, as if the melt were Newtonian',
  },
  ...slitWall,
} as const satisfies Record<string, Step>;

export const tubeShear = {
  gamma_a: {
    gives: 'shearRate',
    expr: '4*Q/(pi*R^3)',
    says: 'Apparent rate at the wall, as if the melt were Newtonian',
  },
  gamma_w: { gives: 'shearRate', expr: 'gamma_a*(3*n + 1)/(4*n)', says: TRUE_RATE },
} as const satisfies Record<string, Step>;

/** Stress of the power law at the wall, after the step `gamma_w`. */
export const wallStress = {
  tau_w: {
    gives: 'pressure',
    expr: 'K*gamma_w^n',
    fitted: { units: { K: 'Pa·s^n', gamma_w: '1/s' }, out: 'Pa' },
    says: 'Shear stress at the wall by the power law',
  },
} as const satisfies Record<string, Step>;

export const wideSlit = {
  holds: 'W >= 10*h',
  says: 'The slit is less than ten times as wide as high: its side walls add to the resistance, by 5 % and more.',
} as const;

export const RABINOWITSCH = derived(
  'Momentum balance with the power law τ = K γ̇ⁿ and no slip; Weissenberg–Rabinowitsch rate at the wall',
);

export const ISOTHERMAL =
  'Isothermal and fully developed: no frozen layer, no shear heating, no entrance loss. A frozen layer narrows the gap (FILL.FROZEN), ' +
  'and the drop grows fast with it, so take the gap that is left open.';
export const CONSTANTS =
  'Take consistency and index from a flow curve of the grade at the melt temperature and near this rate; the law holds for a decade or two of rate.';

export const rateCeiling = {
  gamma_c: constant('shearRate', '40000 1/s', 'Rate from which many resins degrade'),
} as const;
export const RATE_CEILING = {
  when: 'gamma_w > gamma_c',
  says: 'Above 40 000 1/s at the wall many resins degrade (from memory: PVC from 20 000, most from 40 000, PP from 100 000 1/s): open the gate or fill slower.',
} as const;
export const HOT_MELT = {
  says: 'Melt under pressure burns and sprays where a nozzle or parting line opens: stay inside the press maker’s limits, guards shut and face covered.',
} as const;
