import { cost } from './cost';
import { seat } from './seat';
import type { Section, SectionInput, Shots } from './section';
import { spring } from './spring';

const inputsOf = ({ id, inputs }: Section, ...keys: readonly string[]): Record<string, SectionInput> =>
  Object.fromEntries(
    keys.map((key) => {
      const input = inputs[key];
      if (!input) throw new Error(`The section ${id} has no input ${key}`);
      return [key, input];
    }),
  );

const release: Shots = {
  type: 'shots',
  fits: 'releaseFriction',
  label: 'Friction coming out',
  title: 'Shots for the friction of the seat',
  fn: 'SEAT.RELEASE',
  argument: 'releaseFriction',
  varied: 'push',
  set: 'Push going in',
  measured: 'Push that broke it loose',
  with: { seatFriction: 'friction' },
  look: [0.09, 0.8],
  shots: [
    ['Shot 1', '3 kN', '1.29 kN', 'Seat blued and dry, mold at 40 °C'],
    ['Shot 2', '4.5 kN', '1.98 kN', 'As shot 1'],
    ['Shot 3', '6 kN', '2.61 kN', 'As shot 1'],
  ],
};

const rate: Shots = {
  type: 'shots',
  fits: 'springRate',
  label: 'Rate of the spring',
  title: 'Measured rate of the spring',
  fn: 'SPRING.FORCE',
  argument: 'rate',
  varied: 'length',
  set: 'Length held at',
  measured: 'Force',
  with: {},
  look: ['1 N/mm', '100 N/mm'],
  shots: [
    ['Reading 1', '27 mm', '12.5 N', 'On the bench, by a force gauge'],
    ['Reading 2', '25 mm', '25.9 N', 'As reading 1'],
    ['Reading 3', '22 mm', '45.2 N', 'As reading 1'],
  ],
};

const diffusivity: Shots = {
  type: 'shots',
  fits: 'diffusivity',
  label: 'Diffusivity of the resin',
  title: 'Shots for the cooling time',
  fn: 'COOL.TIME',
  argument: 'resin',
  varied: 'moldTemp',
  set: 'Mold',
  measured: 'Shortest cooling that kept it flat',
  with: {},
  look: ['0.02 mm²/s', '1 mm²/s'],
  shots: [
    ['Shot 4', '30 °C', '7.2 s', 'Melt 220 °C, hold 4 s'],
    ['Shot 5', '40 °C', '8.6 s', 'As shot 4'],
    ['Shot 6', '45 °C', '9.3 s', 'As shot 4'],
  ],
};

/** Of its logs a design gets those whose value it has; alone it has all of them. */
export const shots: Section = {
  id: 'shots',
  title: 'Shot log',
  decide: 'which numbers of the design are better taken from trials than from tables.',
  danger:
    'Trial shots run with settings that nobody has proven: stand clear of the parting line and nozzle, raise pressure in small steps, and keep to the manual of the machine.',
  inputs: {
    ...inputsOf(seat, 'draft', 'friction'),
    ...inputsOf(spring, 'freeLength'),
    ...inputsOf(cost, 'wall', 'meltTemp', 'ejectTemp'),
  },
  parts: [release, rate, diffusivity],
};
