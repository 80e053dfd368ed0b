import { choice, fromMemory, named, procedure, secondHand } from '../../core/define';
import { answer } from '../../core/answer';
import { Refusal, refuse } from '../../core/refusal';
import { namesOf } from '../../tables/names';
import { findWire, wireRange, WIRES, wireStrength, type Wire } from '../../tables/springs';
import { CURVATURE_FACTORS, FACTOR_SAYS, force, meanDia, STORED_ENERGY, wire } from './inputs';
import { nativeWireStrength } from './materials';
import { springStress } from './stress';

/** A wire by its name; a modulus in its place tells nothing of strength. */
function strongWire(text: string): Wire {
  try {
    return findWire(text);
  } catch (error) {
    if (!(error instanceof Refusal) || !Number.isFinite(Number.parseFloat(text))) throw error;
    throw new Refusal(
      `is ${text}; of a number the strength is not known, so it takes the name of a wire such as "music wire"`,
      undefined,
      '#N/A',
    );
  }
}

export const springMargin = procedure({
  name: 'SPRING.MARGIN',
  summary: 'Margin of a helical spring against yield in torsion: yield over SPRING.STRESS; 1 yields.',
  inputs: [
    force,
    wire,
    meanDia,
    named<'material', Wire>(
      'material',
      'material',
      {
        what: 'the name of a spring wire such as "music wire" or "302 stainless"',
        read: strongWire,
        names: () => namesOf(WIRES),
      },
      { default: 'music wire', says: 'Material of the wire' },
    ),
    choice('factor', CURVATURE_FACTORS, { default: 'bergstrasser', says: FACTOR_SAYS }),
  ],
  gives: 'ratio',
  method:
    'Minimum tensile strength of the wire, of which a part is the yield in torsion, over SPRING.STRESS.',
  steps: {
    tau: {
      gives: 'pressure',
      says: 'Shear stress in the wire, SPRING.STRESS',
      equation: 'tau = K*8*F*D/(pi*d^3)',
    },
    S_ut: { gives: 'pressure', says: 'Minimum tensile strength, SPRING.STRENGTH', equation: 'S_ut = A/d^m' },
    q: {
      gives: 'ratio',
      says: 'Yield in torsion over tensile strength, by the kind of wire',
      equation: 'of the wire',
    },
    S_sy: { gives: 'pressure', says: 'Yield in torsion, static and not preset', equation: 'S_sy = q*S_ut' },
    n_y: { gives: 'ratio', says: 'How many times the stress the wire bears', equation: 'n_y = S_sy/tau' },
  },
  run: ({ force: F, wire: d, meanDia: D, material, factor }, show, system) => {
    const tau = answer(springStress, [F, d, D, factor], system) as number;
    if (tau === 0)
      refuse('force', 'must be above 0: without a load there is no stress, and no margin to tell');
    const strength = wireStrength(material, d, system);
    if (!(strength > 0)) refuse('wire', `must be a size that ${material.name} is made in`);
    const torsion = material.shearYield * strength;
    show('tau', tau);
    show('S_ut', strength);
    show('q', material.shearYield);
    show('S_sy', torsion);
    show('n_y', torsion / tau);
    return torsion / tau;
  },
  native: ({ force: F, wire: d, meanDia: D, material, factor }, write) => {
    write.refuse(`${D.text}<=${d.text}`, 'meanDia must be larger than wire');
    write.refuse(`${F.text}=0`, 'force must be above 0');
    const strength = nativeWireStrength(material, d.text, write);
    const C = write.step('C', `${D.text}/${d.text}`);
    const K = {
      bergstrasser: `(4*${C}+2)/(4*${C}-3)`,
      wahl: `((4*${C}-1)/(4*${C}-4)+0.615/${C})`,
      direct: `(1+0.5/${C})`,
    }[factor.fixed()];
    const tau = write.step('tau', `${K}*8*${F.text}*${D.text}/(PI()*${d.text}^3)`);
    const { q } = material.look({
      q: { head: 'Yield in torsion over strength', from: ({ shearYield }) => shearYield },
    });
    return `${q}*${strength}/${tau}`;
  },
  valid: [
    {
      holds: ({ wire: d, meanDia: D }) => D / d >= 4 && D / d <= 12,
      says: 'The spring index D/d is not between 4 and 12: below it the wire is hard to coil and the factors differ, above it the spring tangles and buckles.',
    },
    {
      holds: ({ material, wire: d }) => {
        const [from, upTo] = wireRange(material);
        return d >= from * (1 - 1e-9) && d <= upTo * (1 + 1e-9);
      },
      says: 'The wire is outside the diameters that the constants of its strength were fitted for.',
    },
    {
      holds: (_, margin) => (margin as number) >= 1,
      says: 'Does not hold: the wire yields in torsion, and the spring sets.',
    },
  ],
  sources: [
    secondHand(
      'Shigley’s Mechanical Engineering Design, 10th edition, solution 10-3: 0.45 of the tensile strength of music wire',
    ),
    fromMemory(
      'Shigley’s Mechanical Engineering Design, Table 10-6: 0.45 music and hard-drawn wire, 0.50 hardened and tempered, 0.35 stainless and non-ferrous; 0.56 of EN 10270-1 wire from EN 13906-1',
    ),
  ],
  notes: [
    'Take the force at the shortest length that the spring ever has, solid where it may be pressed solid: a spring that bears that sets no further.',
    'Static load. For many cycles keep well above: 1.5 and more (common practice). Warm springs relax: above 120 °C take chrome-silicon.',
  ],
  cautions: [
    {
      when: (_, margin) => (margin as number) >= 1 && (margin as number) < 1.2,
      says: 'Little to spare: close to yield in torsion.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.STRESS', 'SPRING.STRENGTH', 'SPRING.OVERRUN', 'METAL.MARGIN'],
});
