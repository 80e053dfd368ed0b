import { derived, formula, input } from '../../core/define';
import { blockHoldsSeat, LAME, push, roundSeat, roundStiffness } from './inputs';

export const seatSink = formula({
  name: 'SEAT.SINK',
  summary: 'Axial elastic sink of a round tapered insert under a push, with or without an axial stop.',
  inputs: [
    push,
    ...roundSeat,
    input('stopGap', 'g', 'length', {
      min: '0 mm',
      optional: true,
      says: 'Gap that the insert sinks before it meets an axial stop; left out: there is no stop',
    }),
    input('stopStiffness', 'K_s', 'stiffness', {
      above: '0 N/mm',
      optional: true,
      says: 'Stiffness of the stop; left out: a rigid stop',
    }),
  ],
  refuse: [blockHoldsSeat],
  steps: {
    ...roundStiffness,
    z_0: { gives: 'length', expr: 'F/K', says: 'Sink of the seat alone' },
    z: {
      gives: 'length',
      expr: 'given(g) and z_0 > g ? (given(K_s) ? (F + K_s*g)/(K + K_s) : g) : z_0',
      says: 'Sink, shared with the stop once it is met',
    },
  },
  result: 'z',
  valid: [
    {
      holds: 'z <= 0.1*L',
      says: 'The sink is more than a tenth of the contact length: the small-sink equation does not hold.',
    },
    {
      holds: 'L >= 0.25*r',
      says: 'The contact is shorter than a quarter of its radius: it bears on its edges, not evenly.',
    },
  ],
  sources: [derived(LAME)],
  notes: [
    'The sink is elastic: it is the witness step that injection pressure leaves at the face, and it grows as 1/(tan α · tan(α+φ)).',
    'Expect ± 40 %: real seats bed in by 2 to 5 µm in the first cycles (common practice), and an angle error bears at one end.',
  ],
  cautions: [
    { when: 'mu >= tan(alpha)', says: 'Self-locking: the insert stays sunk when the push is gone.' },
    { says: 'The push presses the block apart: see SEAT.SPREAD and PLATE.RING for what the wall bears.' },
  ],
  related: ['SEAT.STEP', 'SEAT.STIFFNESS', 'SEAT.MILLPUSH', 'SEAT.WEDGESINK'],
  checks: [
    {
      given: {
        push: '3 kN',
        draft: '5 deg',
        friction: 0.15,
        seatRadius: '10 mm',
        seatLength: '12 mm',
        blockRadius: '25 mm',
        insertMetal: 'P20',
        blockMetal: '7075-T6',
      },
      expect: '0.0516423 mm',
      within: 1e-5,
      from: 'by hand from Lamé: C = (725/525 + 0.33)/71700 + 0.71/205000 = 2.732575e-5 mm²/N, K = 24π tan 5° tan 13.5308°/C',
    },
    {
      given: {
        push: '3 kN',
        draft: '10 deg',
        friction: 0,
        seatRadius: '10 mm',
        seatLength: '12 mm',
        blockRadius: '25 mm',
        insertMetal: 'P20',
        blockMetal: '7075-T6',
      },
      expect: '0.03497033 mm',
      within: 1e-5,
      from: 'without friction z = F C/(2π L tan²α)',
      limit: true,
    },
    {
      given: {
        push: '5 kN',
        draft: '5 deg',
        friction: 0.15,
        seatRadius: '10 mm',
        seatLength: '12 mm',
        blockRadius: '25 mm',
        insertMetal: 'P20',
        blockMetal: '7075-T6',
        stopGap: '0.01 mm',
      },
      expect: '0.01 mm',
      within: 1e-12,
      from: 'a rigid stop ends the sink at its gap',
      limit: true,
    },
    {
      given: {
        push: '5 kN',
        draft: '5 deg',
        friction: 0.15,
        seatRadius: '10 mm',
        seatLength: '12 mm',
        blockRadius: '25 mm',
        insertMetal: 'P20',
        blockMetal: '7075-T6',
        stopGap: '0.01 mm',
        stopStiffness: '2050 kN/mm',
      },
      expect: '0.01209625 mm',
      within: 1e-5,
      from: 'springs side by side: (5000 + 2.05e6 × 0.01)/(58091 + 2.05e6)',
    },
  ],
});
