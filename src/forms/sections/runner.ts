import { spare, calls, worked, type Section } from './section';

export const runner: Section = {
  id: 'runner',
  title: 'Runner, gate and vents',
  decide: 'how large the ways of melt and air must be.',
  danger:
    'A mold that is vented badly burns the part and can spit: stand aside on the first shots, face shield on.',
  inputs: {
    resin: { first: 'PP' },
    partMass: { first: '6 g', label: 'Mass of the part' },
    runnerLength: { first: '40 mm' },
    wall: { first: '1.5 mm', label: 'Wall of the part' },
    gateFraction: { first: 0.6, label: 'Gate, part of the wall' },
    cavityVolume: { first: '8 cm³', label: 'Volume to fill' },
    fillTime: { first: '1.5 s' },
    consistency: {
      first: '1000 Pa·s^n',
      label: 'Consistency of the melt',
      note: 'From the resin’s flow curve at its melt temperature.',
    },
    powerIndex: { first: 0.35, note: 'From the same curve.' },
    meltPressure: { first: '20 MPa', note: 'What the press makes.', like: ['PRESS.AIRBORE', 'meltPressure'] },
    ventLand: { first: '1.5 mm', label: 'Land of a vent' },
    overpressure: { first: '0.02 MPa', label: 'Pressure of the air driven out' },
    ventTotal: {
      first: '80 mm',
      label: 'Vents cut, all widths together',
      note: 'All that lead out of the cavity.',
      like: ['FILL.VENTFLOW', 'width'],
    },
  },
  parts: [
    calls('FILL.RUNNER', 'runnerDia', 'Runner diameter', 'Start here: a runner is opened, never closed.', {
      length: 'runnerLength',
    }),
    calls('FILL.GATE', 'gateDepth', 'Gate depth', 'Start thin: steel that is still there can be cut.', {
      fraction: 'gateFraction',
    }),
    worked('fillFlow', 'Flow while it fills', 'Volume over time.', 'cavity_volume/fill_time', 'flow'),
    worked('runnerRadius', 'Radius of the runner', 'Half of it.', 'runner_dia/2', 'length'),
    calls('FILL.TUBEDROP', 'runnerDrop', 'Pressure that the runner takes', 'Of what the press makes.', {
      flow: 'fillFlow',
      radius: 'runnerRadius',
      length: 'runnerLength',
    }),
    spare(
      'Runner: half the pressure is left',
      '0.5*melt_pressure/runner_drop',
      'If it does not hold: a larger or shorter runner.',
    ),
    calls('FILL.VENT', 'ventDepth', 'Vent depth', 'Deeper ones flash.'),
    calls('FILL.VENTWIDTH', 'ventNeeded', 'Width of vents needed', 'All together.', {
      airVolume: 'cavityVolume',
      depth: 'ventDepth',
      land: 'ventLand',
    }),
    spare(
      'Vents',
      'vent_total/vent_needed',
      'If it does not hold: more vents, or a slower fill; trapped air burns the part.',
    ),
  ],
};
