import { derived, formula, input, published } from '../../core/define';

export const ejectForce = formula({
  name: 'EJECT.FORCE',
  summary: 'Force that strips a part off its core, 0 where it falls off.',
  inputs: [
    input('grip', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0.01 MPa', '30 MPa'],
      says: 'Pressure of the part on the core, as from EJECT.GRIP',
    }),
    input('contactArea', 'A', 'area', {
      min: '0 mm²',
      usual: ['5 mm²', '0.5 m²'],
      says: 'Lateral area on which the part grips',
    }),
    input('draft', 'theta', 'angle', {
      min: '0 deg',
      below: '90 deg',
      usual: ['0 deg', '15 deg'],
      says: 'Draft of the core per side, from the direction of ejection',
    }),
    input('friction', 'mu', 'ratio', {
      min: 0,
      max: 2,
      usual: [0.1, 0.8],
      says: 'Coefficient of static friction between resin and core, sticking included',
    }),
  ],
  steps: {
    N: { gives: 'force', expr: 'p*A', says: 'Force of the part square to the core' },
    F: {
      gives: 'force',
      expr: 'max(0, N*(mu*cos(theta) - sin(theta)))',
      says: 'Friction, helped by the draft; nothing where the draft wins',
    },
  },
  result: 'F',
  sources: [
    derived('Balance along the core: friction µ N cos θ against the draft’s N sin θ'),
    published(
      'Static friction of resins on steel: ABS 0.3 to 0.5 and strongly dependent on roughness, by the introduction of J. Manuf. Mater. Process. 10 (2026) 45, which follows Pouzada, Ferreira, Pontes, Friction properties of moulding thermoplastics, Polymer Testing 25 (2006) 1017',
    ),
  ],
  notes: [
    'The force is never negative: where the draft is larger than the friction angle the part falls off, and 0 is given.',
    'Friction is the least certain number here. A polished core of a soft resin may hold harder than a lightly stoned one, because no air gets in.',
  ],
  cautions: [
    {
      when: 'mu <= tan(theta)',
      says: 'Falls off: on paper no force is needed. Count on sticking and vacuum all the same.',
    },
    { says: 'This is the grip alone: add the vacuum of a closed core, and a margin with EJECT.TOTAL.' },
    { says: 'Keep hands out of the mold while the ejector moves: a part that lets go at once jumps.' },
  ],
  related: ['EJECT.GRIP', 'EJECT.VACUUM', 'EJECT.TOTAL', 'EJECT.PINCOUNT'],
});
