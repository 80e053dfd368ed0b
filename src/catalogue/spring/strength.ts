import { fromMemory, procedure, secondHand } from '../../core/define';
import { refuse } from '../../core/refusal';
import { wireRange, wireStrength } from '../../tables/springs';
import { wire } from './inputs';
import { nativeWireStrength, wireMaterial } from './materials';

export const springStrength = procedure({
  name: 'SPRING.STRENGTH',
  summary: 'Minimum tensile strength of a spring wire of a diameter.',
  inputs: [wireMaterial, wire],
  gives: 'pressure',
  method:
    'The fit of the wire’s standard: A/d^m with the constants printed for the system of units, or a − b log₁₀ d for EN 10270-1.',
  steps: {
    S_ut: { gives: 'pressure', says: 'Minimum tensile strength', equation: 'S_ut = A/d^m' },
  },
  run: ({ material, wire: d }, show, system) => {
    const strength = wireStrength(material, d, system);
    if (!(strength > 0)) refuse('wire', `must be a size that ${material.name} is made in`);
    show('S_ut', strength);
    return strength;
  },
  native: ({ material, wire: d }, write) => nativeWireStrength(material, d.text, write),
  valid: [
    {
      holds: ({ material, wire: d }) => {
        const [from, upTo] = wireRange(material);
        return d >= from * (1 - 1e-9) && d <= upTo * (1 + 1e-9);
      },
      says: 'The wire is outside the diameters that the constants were fitted for.',
    },
  ],
  sources: [
    secondHand(
      'Shigley’s Mechanical Engineering Design, by the solutions of problems 10-2 and 10-3 read at a public page: A and m of music wire',
    ),
    fromMemory('Shigley’s Mechanical Engineering Design, Table 10-4: A and m of the other wires'),
    fromMemory('EN 10270-1: fits used with EN 13906-1; the tables of the standard govern'),
  ],
  notes: [
    'The printed inch and metric constants are separate fits, so the two systems differ by 0.2 %: each is given as printed.',
    'Torsional yield, static and not preset, is 0.45 of it for music and hard-drawn wire, 0.5 for oil-tempered and alloy wire, 0.35 for 302 stainless.',
  ],
  cautions: [
    {
      says: 'A minimum at room temperature: nicks, rust and plating take strength away, and heat relaxes the spring.',
    },
  ],
  related: ['SPRING.STRESS', 'SPRING.RATE'],
});
