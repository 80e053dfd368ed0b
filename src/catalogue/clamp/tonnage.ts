import { commonPractice, derived, formula, input } from '../../core/define';

export const clampTonnage = formula({
  name: 'CLAMP.TONNAGE',
  summary: 'Clamp force that holds the mold shut, in tons of the system.',
  inputs: [
    input('projectedArea', 'A', 'area', {
      above: '0 mm²',
      usual: ['10 mm²', '0.5 m²'],
      says: 'Projected area of part, runner and gate',
    }),
    input('cavityPressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['1 MPa', '150 MPa'],
      says: 'Mean pressure in the cavity',
    }),
    input('margin', 'S', 'ratio', {
      min: 1,
      default: 1.2,
      usual: [1, 3],
      says: 'Clamp force over opening force',
    }),
  ],
  steps: {
    F_o: { gives: 'force', expr: 'p*A', says: 'Force that opens the mold' },
    F: { gives: 'tonnage', expr: 'S*F_o', says: 'With the margin' },
  },
  result: 'F',
  sources: [
    derived('Force is pressure times projected area'),
    commonPractice('Margin of 1.1 to 1.25 over the opening force'),
  ],
  notes: ['In inch units a ton is 2000 lbf, in metric units a tonne-force of 9806.65 N.'],
  cautions: [
    {
      says: 'Clamping can crush and a mold that opens under pressure sprays hot melt: stay within the press maker’s manual, keep guards shut, and let no one stand in the parting line.',
    },
  ],
  related: ['CLAMP.FORCE', 'CLAMP.PRESSURE', 'CLAMP.SPARE', 'PRESS.INJECTION'],
  checks: [
    {
      given: { projectedArea: '2 in²', cavityPressure: '1500 psi', margin: 1.25 },
      expect: '1.875 tonf',
      within: 1e-9,
      from: 'by hand: 2 × 1500 × 1.25/2000',
    },
    {
      given: { projectedArea: '1200 mm²', cavityPressure: '10 MPa' },
      expect: '1.46839134669 tf',
      within: 1e-9,
      from: 'by hand: 1200 × 10 × 1.2/9806.65',
    },
    {
      given: { projectedArea: '1200 mm²', cavityPressure: '0 MPa' },
      expect: '0 tf',
      from: 'no pressure, no force',
      limit: true,
    },
  ],
});
