import { derived, formula, input } from '../../core/define';

export const seatPush = formula({
  name: 'SEAT.PUSH',
  summary: 'Push of the melt on a face, less what holds it back.',
  inputs: [
    input('pressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0.5 MPa', '200 MPa'],
      says: 'Pressure of the melt on the face',
    }),
    input('faceArea', 'A', 'area', {
      above: '0 mm²',
      usual: ['1 mm²', '0.1 m²'],
      says: 'Area of the face, projected along the push',
    }),
    input('holdBack', 'F_h', 'force', {
      min: '0 N',
      default: '0 N',
      usual: ['0 N', '20 kN'],
      says: 'Force that holds the insert back, such as a spring under it',
    }),
  ],
  steps: {
    F: { gives: 'force', expr: 'max(0, p*A - F_h)', says: 'Pressure times area, less the hold-back' },
  },
  result: 'F',
  sources: [derived('Force is pressure times projected area')],
  notes: [
    'Take the pressure that the press can make, PRESS.INJECTION, where it is lower than what the resin would ask for.',
    'Not below zero: what holds more than the melt pushes leaves no push on the seat.',
  ],
  cautions: [
    {
      when: 'p*A < F_h',
      says: 'The hold-back is stronger than the melt: the insert is not driven home, and melt may get behind it.',
    },
    {
      says: 'The largest push counts for the seat and for the strength: pressure peaks at the end of filling.',
    },
  ],
  related: ['SEAT.FORCE', 'SEAT.SINK', 'SEAT.STEP', 'PRESS.INJECTION'],
});
