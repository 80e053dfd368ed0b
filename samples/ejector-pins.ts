import { metals, resins } from './choices';
import { entry, holds, result, spare, type Design } from './description';
import { rowsOf } from './rowsOf';
import { eject } from '../src/forms/sections/eject';

const ejectRows = rowsOf(eject);

export const ejectorPins: Design = {
  file: 'ejector-pins',
  title: 'Ejector pins',
  scenario:
    'A round cover in ABS on a core one inch tall, pushed off by straight pins from a hand-driven ejector plate in aluminum plates. Numbers of an invented shop.',
  danger:
    'An ejector plate crushes fingers, and a pin that buckles under load can shatter. Read the cautions at the foot of this sheet first.',
  sheet: 'Pins',
  sections: [
    {
      title: '1  Force to strip the part',
      decide: 'how hard the cooled part holds its core, and what the ejector plate must push.',
      rows: [
        ejectRows.entry(
          'partModulus',
          1500,
          'MPa',
          'At the temperature of the part then: about two thirds of the book value for ABS (from memory).',
        ),
        ejectRows.entry('expansion', 90e-6, '1/°C', 'ABS about 90 millionths per °C (published table).', {
          format: '0.0000000',
        }),
        ejectRows.entry(
          'solidifyTemp',
          112,
          '°C',
          'No-flow temperature: from there on it shrinks onto the core.',
        ),
        ejectRows.entry('ejectTemp', 85, '°C', 'Mean through the wall. Colder grips harder.'),
        ejectRows.entry('wall', 0.08, 'in', 'Around the core.'),
        ejectRows.entry('coreRadius', 0.6, 'in', 'Mean, where the part grips.'),
        entry('coreLength', 'Length of the core', 1, 'in', 'What the part covers.'),
        ejectRows.entry('coreDraft', 1, 'deg', 'Half a degree takes noticeably more push.'),
        ejectRows.entry(
          'ejectFriction',
          0.4,
          '',
          'ABS on a polished core 0.3 to 0.5 (from memory of handbook ranges).',
          { format: '0.00' },
        ),
        ejectRows.entry('ejectMargin', 1.5, '', '1.5 to 2 (common practice).', {
          label: 'Margin',
          format: '0.0',
        }),
        ejectRows.result('shrinkStrain', { format: '0.00%' }),
        ejectRows.result('grip', { with: { poisson: '0' } }),
        ejectRows.result('stripForce', { with: { contactArea: '2*PI()*coreRadius*coreLength' } }),
        ejectRows.result('vacuumForce', {
          label: 'Suction under a closed core',
          note: 'Full vacuum: a vent or a poppet in the core saves it.',
          with: { coreArea: 'PI()*coreRadius^2' },
        }),
        ejectRows.result('ejectForce'),
        entry(
          'handPush',
          'Push you have',
          300,
          'lbf',
          'At the ejector plate, from lever or screw, measured.',
        ),
        spare(
          'Ejector plate',
          'handPush/ejectForce',
          'If it does not hold: more draft, a polished core drawn in the direction of push, a vent, or an earlier push.',
        ),
      ],
    },
    {
      title: '2  Number of pins',
      decide: 'how many pins, so that none marks or pierces the part.',
      rows: [
        ejectRows.entry('pinDia', 0.125, 'in', 'Of the straight shank.'),
        ejectRows.entry(
          'allowPressure',
          3000,
          'psi',
          'Under the pin face; roughly half the yield stress at that temperature (common practice).',
        ),
        ejectRows.entry(
          'allowShear',
          1500,
          'psi',
          'Around the rim of a pin; roughly a quarter of the yield stress (common practice).',
        ),
        ejectRows.entry('pins', 6, '', 'Even around the part, near ribs and corners.', {
          label: 'Pins fitted',
          format: '0',
        }),
        ejectRows.result('pinCount', { note: 'The next whole number for both limits.' }),
        ejectRows.verdict('Pins', {
          note: 'If it does not hold: white marks or pins through the wall. More or larger pins, or a stripper ring.',
        }),
        result(
          'pressure',
          'Pressure under the pins',
          'MOLD.EJECT.PINPRESSURE(ejectForce, pins, pinDia, units)',
          'All pins sharing evenly.',
        ),
        result(
          'shear',
          'Shear at the pin rims',
          'MOLD.EJECT.PINSHEAR(ejectForce, pins, pinDia, wall, units)',
          'Through the whole wall.',
        ),
      ],
    },
    {
      title: '3  Buckling',
      decide: 'whether a pin stays straight over the length that nothing guides.',
      rows: [
        ejectRows.entry(
          'unguidedLength',
          2.25,
          'in',
          'From the ejector plate to the first guiding hole, plate back.',
        ),
        entry(
          'fixity',
          'End fixity',
          1.2,
          '',
          'One end held in its head, the other in a close hole: 1.2 (common practice).',
          { format: '0.0' },
        ),
        ejectRows.entry('bucklingReserve', 3, '', 'Pins are never evenly loaded.', { format: '0.0' }),
        ejectRows.result('pinLoad', {
          note: 'Hardened steel, the lower of Euler and Johnson.',
          with: { fixity: 'fixity' },
        }),
        ejectRows.result('perPin'),
        ejectRows.verdict('Pins in buckling', {
          label: 'Pin, straight',
          note: 'If it does not hold: a stepped pin, a guide bush, or more pins.',
        }),
      ],
    },
    {
      title: '4  Length to grind',
      decide: 'the length at room temperature that leaves the pin where you want it when the mold runs.',
      rows: [
        entry('plateMetal', 'Metal of the plates', '6061-T6', '', 'What the pin passes through.', {
          choices: metals,
        }),
        entry('pinMetal', 'Metal of the pin', 'H13 48 HRC', '', 'A name from the metal table.', {
          choices: metals,
        }),
        entry(
          'stack',
          'Stack, head seat to face',
          3.35,
          'in',
          'Measured at room temperature, plates clamped.',
        ),
        entry(
          'proud',
          'Pin proud of the face, warm',
          0.001,
          'in',
          'A little proud leaves a shallow dimple, never a boss.',
          { format: '0.0000' },
        ),
        entry('room', 'Room temperature', 70, '°F', 'Where stack and pin are measured.'),
        entry('plateTemp', 'Plates when running', 140, '°F', 'Mean through the stack.'),
        entry('pinTemp', 'Pin when running', 125, '°F', 'A pin lags behind its plates.'),
        entry('ground', 'Pin as ground', 3.353, 'in', 'Measured, at room temperature.', {
          format: '0.0000',
        }),
        entry('tolerance', 'Tolerance on how it stands', 0.001, 'in', 'What the part may show.', {
          format: '0.0000',
        }),
        result(
          'length',
          'Length to grind',
          'MOLD.PIN.LENGTH(stack, proud, plateMetal, plateTemp - room, pinMetal, pinTemp - room, units)',
          'At room temperature.',
          { format: '0.0000' },
        ),
        result(
          'stand',
          'How the ground pin stands, warm',
          'MOLD.PIN.STAND(ground, stack, plateMetal, plateTemp - room, pinMetal, pinTemp - room, units)',
          'Positive: proud of the face. Negative: a boss on the part.',
          { format: '0.0000' },
        ),
        result(
          'flushStand',
          'A pin ground flush cold would stand',
          'MOLD.PIN.STAND(stack, stack, plateMetal, plateTemp - room, pinMetal, pinTemp - room, units)',
          'Aluminum plates outgrow a steel pin.',
          { format: '0.0000' },
        ),
        holds(
          'Pin when warm',
          'ABS(stand - proud) <= tolerance',
          'If it does not hold: grind again, or shim the head: by the length above.',
        ),
      ],
    },
    {
      title: '5  Flash around the pins',
      decide: 'whether the melt enters the gap around a pin.',
      rows: [
        ejectRows.entry('resin', 'ABS', '', 'A name from the resin table.', { choices: resins }),
        entry('hole', 'Hole as reamed', 0.1262, 'in', 'Measured with a gauge pin, warm if you can.', {
          format: '0.0000',
        }),
        entry('pinActual', 'Pin as measured', 0.1248, 'in', 'With a micrometer.', { format: '0.0000' }),
        result(
          'radialGap',
          'Gap per side',
          '(hole - pinActual)/2',
          'Half the clearance, pin in the middle.',
          {
            kind: 'length',
            format: '0.0000',
          },
        ),
        ejectRows.result('pinFlash', {
          label: 'Gap left before it flashes',
          note: 'Vent depth of the resin less the gap.',
          format: '0.0000',
        }),
        ejectRows.verdict('Pins without flash', {
          label: 'Gap',
          note: 'If it does not hold: a larger pin, or a new bush. A pin pushed to one side doubles its gap.',
        }),
      ],
    },
  ],
  whatIf: [
    {
      title: 'Pressure under the pins',
      unitOf: 'pressure',
      says: 'More pins or larger ones: both spread the push.',
      down: { label: 'Pins', values: [2, 3, 4, 6, 8, 12], format: '0' },
      across: {
        label: 'Pin diameter',
        unitOf: 'pinDia',
        values: ['0.5*pinDia', '0.75*pinDia', 'pinDia', '1.25*pinDia', '1.5*pinDia', '2*pinDia'],
        format: '0.000',
      },
      formula: 'MOLD.EJECT.PINPRESSURE(ejectForce, down, across, units)',
      format: '[<50]0.00;[<1000]0;#,##0',
      mark: { when: 'answer > allowPressure', says: 'Shaded: more than the warm part bears.' },
    },
    {
      title: 'Load at which a pin buckles',
      unitOf: 'pinLoad',
      says: 'Thin pins lose their strength with the square of the unguided length.',
      down: {
        label: 'Unguided length',
        unitOf: 'unguidedLength',
        values: [
          '0.5*unguidedLength',
          '0.75*unguidedLength',
          'unguidedLength',
          '1.25*unguidedLength',
          '1.5*unguidedLength',
          '2*unguidedLength',
        ],
        format: '0.00',
      },
      across: {
        label: 'Pin diameter',
        unitOf: 'pinDia',
        values: ['0.5*pinDia', '0.75*pinDia', 'pinDia', '1.25*pinDia', '1.5*pinDia', '2*pinDia'],
        format: '0.000',
      },
      formula: 'MOLD.PIN.BUCKLE(across, down, fixity, , , units)',
      format: '#,##0',
      mark: {
        when: 'answer < bucklingReserve*perPin',
        says: 'Shaded: less than the load on a pin times the margin.',
      },
    },
    {
      title: 'How the ground pin stands, warm',
      unitOf: 'stand',
      says: 'The first shots run cold, the hundredth warm. Positive: proud of the face.',
      down: {
        label: 'Plates warmer by',
        unitOf: 'room',
        values: [
          '0*(plateTemp - room)',
          '0.25*(plateTemp - room)',
          '0.5*(plateTemp - room)',
          '0.75*(plateTemp - room)',
          'plateTemp - room',
          '1.5*(plateTemp - room)',
        ],
        format: '0',
      },
      across: {
        label: 'Pin warmer by',
        unitOf: 'room',
        values: [
          '0*(pinTemp - room)',
          '0.25*(pinTemp - room)',
          '0.5*(pinTemp - room)',
          '0.75*(pinTemp - room)',
          'pinTemp - room',
          '1.5*(pinTemp - room)',
        ],
        format: '0',
      },
      formula: 'MOLD.PIN.STAND(ground, stack, plateMetal, down, pinMetal, across, units)',
      format: '0.0000',
      mark: { when: 'ABS(answer - proud) > tolerance', says: 'Shaded: out of tolerance.' },
    },
  ],
  cautions: [
    'Ejector plate: it closes on fingers, by spring or by hand. Block it, and keep the clamp and the air locked out while you work on pins. Follow the manual of the machine and local codes.',
    'Force: never help a stuck part with a hammer on the pins. Find what holds it: an undercut, a vacuum, a part that has grown cold.',
    'Grinding: hold short pins in a fixture, wear eye protection, and leave no burr that cuts a hand or scores its hole.',
    'Broken pins: a pin that buckles can throw pieces. Stand aside and keep the guard shut on the first strokes.',
    'Hot parts and melt burn: wear gloves, and wait for the melt in the sprue to set before opening.',
    'The numbers: a thin ring on a stiff core, even friction, even pins. Take the margin seriously, test with a few shots, and ask a licensed engineer where people depend on it.',
  ],
};
