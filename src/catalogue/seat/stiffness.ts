import { derived, formula } from '../../core/define';
import { blockHoldsSeat, evenContact, LAME, roundSeat, roundStiffness, SINK_SCATTER } from './inputs';

export const seatStiffness = formula({
  name: 'SEAT.STIFFNESS',
  summary: 'Axial stiffness of a round tapered seat while the insert is pushed in.',
  inputs: [...roundSeat],
  refuse: [blockHoldsSeat],
  steps: { ...roundStiffness },
  result: 'K',
  valid: [evenContact],
  sources: [derived(LAME)],
  notes: [
    'It does not depend on the radius while the block grows with it. On the way back friction turns round: the seat keeps its sink down to SEAT.SLIDEBACK, then follows a softer line.',
    SINK_SCATTER,
  ],
  cautions: [
    {
      says: 'Do not take a tapered seat for a rigid one: in an aluminium block it gives way by tens of micrometres under injection pressure.',
    },
  ],
  related: ['SEAT.SINK', 'SEAT.STEP', 'SEAT.MILLPUSH'],
  checks: [
    {
      given: {
        draft: '5 deg',
        friction: 0.15,
        seatRadius: '10 mm',
        seatLength: '12 mm',
        blockRadius: '25 mm',
        insertMetal: 'P20',
        blockMetal: '7075-T6',
      },
      expect: '58091.92 N/mm',
      within: 1e-6,
      from: 'by hand from Lamé: 24π × 0.08748866 × 0.24064674/((725/525 + 0.33)/71700 + 0.71/205000)',
    },
    {
      given: {
        draft: '44.99999999 deg',
        friction: 0,
        seatRadius: '10 mm',
        seatLength: '10 mm',
        blockRadius: '1000 m',
        insertMetal: '70000 MPa',
        blockMetal: '70000 MPa',
      },
      expect: '2199114.857512855 N/mm',
      within: 1e-8,
      from: 'a 45° frictionless cone in an endless block of its own metal: C = 2/E, so K = π L E',
      limit: true,
    },
  ],
});
