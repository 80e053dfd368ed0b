import { fromMemory, input, procedure, secondHand } from '../../core/define';
import { refuse } from '../../core/refusal';
import { meanDia, STORED_ENERGY, wire } from './inputs';
import { elasticMaterial, nativeShear } from './materials';

export const springRate = procedure({
  name: 'SPRING.RATE',
  summary: 'Rate of a helical compression spring of round wire.',
  inputs: [
    wire,
    meanDia,
    input('activeCoils', 'N_a', 'ratio', {
      above: 0,
      usual: [1, 40],
      says: 'Active coils: closed ends have two dead ones, open ground ends one; parts of a coil count',
    }),
    elasticMaterial('music wire', 'Material of the wire'),
  ],
  gives: 'stiffness',
  method: 'The shear modulus is looked up for the wire and its size; then the torsion of the coiled wire.',
  steps: {
    C: { gives: 'ratio', says: 'Spring index', equation: 'C = D/d' },
    G: {
      gives: 'pressure',
      says: 'Shear modulus of this wire at this size',
      equation: 'G from the table of wires',
    },
    k: {
      gives: 'stiffness',
      says: 'Torsion of the wire over all active coils',
      equation: 'k = G*d^4/(8*D^3*N_a)',
    },
  },
  run: ({ wire: d, meanDia: D, activeCoils, material }, show) => {
    if (D <= d) refuse('meanDia', 'must be larger than {wire}');
    const G = material.shearAt(d);
    const k = (G * d ** 4) / (8 * D ** 3 * activeCoils);
    show('C', D / d);
    show('G', G);
    show('k', k);
    return k;
  },
  native: ({ wire: d, meanDia: D, activeCoils, material }, write) => {
    write.refuse(`${D.text}<=${d.text}`, 'meanDia must be larger than wire');
    const G = write.step('G', nativeShear(material, d.text));
    return `(${G}*${d.text}^4)/(8*${D.text}^3*${activeCoils.text})`;
  },
  valid: [
    {
      holds: (x) => x.meanDia >= 4 * x.wire && x.meanDia <= 12 * x.wire,
      says: 'The spring index D/d is not between 4 and 12: below it the wire is hard to coil, above it the spring tangles and buckles.',
    },
    {
      holds: (x) => x.activeCoils >= 3 && x.activeCoils <= 15,
      says: 'Active coils are not between 3 and 15: with fewer the ends blur the rate, with more the spring wants a guide.',
    },
  ],
  sources: [
    secondHand(
      'Shigley’s Mechanical Engineering Design, by the solution of problem 10-3 read at a public page',
    ),
    fromMemory('Shigley’s Mechanical Engineering Design, Table 10-5: moduli of spring wires by size'),
  ],
  notes: [
    'The rate goes with the fourth power of the wire: measure the wire, a hundredth counts. Springs as bought hold their rate within some 10 %.',
    'Near a hot plate the modulus falls by about 3 % per 100 °C, and music wire takes a set above some 120 °C: use chrome-silicon there (common practice).',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.FORCE', 'SPRING.PRELOAD', 'SPRING.STRESS', 'SPRING.SOLID'],
});
