import { commonPractice, derived, input } from '../../core/define';

export const projectedArea = input('projectedArea', 'A', 'area', {
  above: '0 mm²',
  usual: ['10 mm²', '0.5 m²'],
  says: 'Projected area of part, runner and gate',
});
export const cavityPressure = input('cavityPressure', 'p', 'pressure', {
  min: '0 MPa',
  usual: ['1 MPa', '150 MPa'],
  says: 'Mean pressure in the cavity',
});
export const margin = input('margin', 'S', 'ratio', {
  min: 1,
  default: 1.2,
  usual: [1, 3],
  says: 'Clamp force over opening force',
});
export const clampForceInput = input('clampForce', 'F', 'force', {
  above: '0 N',
  usual: ['100 N', '2000 kN'],
  says: 'Clamp force that the press holds',
});

export const OPENING = derived('Force is pressure times projected area');
export const MARGIN = commonPractice('Margin of 1.1 to 1.25 over the opening force');

export const openingForce = {
  F_o: { gives: 'force', expr: 'p*A', says: 'Force that opens the mold' },
} as const;

export const CLAMP_CAUTION =
  'Clamping can crush, and a mold that opens under pressure sprays hot melt: stay within the press maker’s manual, keep guards shut, and let no one stand in the parting line.';
