import { resins } from './choices';
import { either, entry, result, says, spare, type Design } from './description';
import { verdictFormula } from '../src/forms/scale';
import { rowsOf } from './rowsOf';
import { press } from '../src/forms/sections/press';
import { runner } from '../src/forms/sections/runner';
import { cost } from '../src/forms/sections/cost';

const pressRows = rowsOf(press);
const runnerRows = rowsOf(runner);
const costRows = rowsOf(cost);

export const pressFitUp: Design = {
  file: 'press-fit-up',
  title: 'Can this press mold this part?',
  scenario:
    'A small clip box in PP, one cavity, on a bench press with an air-driven plunger and two hand screws for a clamp, in a mold without cooling. Numbers of an invented shop.',
  danger:
    'Melt under pressure, compressed air and a hand-screwed clamp can hurt you. Read the cautions at the foot of this sheet first.',
  sheet: 'Press',
  sections: [
    {
      title: 'Answer',
      decide: 'go on, change the part, or find a larger press.',
      rows: [
        says(
          'This part on this press',
          'IF(AND(least >= 1, daylight >= 0), "It fills, packs, stays shut and comes out; the scarcest of them has "&TEXT(least, "0.00")&" times what it needs.", "It asks too much of: "&TEXTJOIN(", ", TRUE, IF(shotVolume < meltVolume, "shot size", ""), IF(meltPressure < usual, "packing pressure (it gets "&TEXT(meltPressure/usual, "0%")&" of the usual)", ""), IF(reachAll < flow, "flow length", ""), IF(clampSpare < 1, "clamp force", ""), IF(daylight < 0, "daylight", ""))&".")',
          verdictFormula({ margin: 'IF(daylight >= 0, least, 0)' }),
        ),
        result(
          'least',
          'Least of what it has over what it needs',
          'MIN(shotVolume/meltVolume, meltPressure/usual, reachAll/flow, clampSpare)',
          'Of shot, packing, flow and clamp. Little to spare below 1.2.',
          { kind: 'ratio' },
        ),
      ],
    },
    {
      title: '1  Part',
      decide: 'what is to be filled.',
      rows: [
        pressRows.entry('resin', 'PP', '', 'A name from the resin table.', { choices: resins }),
        costRows.entry('cavities', 1, '', 'Parts in a shot.', { format: '0' }),
        entry(
          'partVolume',
          'Volume of the part',
          0.25,
          'in³',
          'Solid, from the model or by weighing a like one.',
        ),
        entry('runner', 'Volume of sprue and runner', 0.05, 'in³', 'Solid.'),
        pressRows.entry('projectedArea', 1.1, 'in²', 'Seen along the opening direction.', {
          label: 'Projected area, all cavities and runner',
        }),
        runnerRows.entry('wall', 0.08, 'in', 'The thinnest that melt has to pass.', { label: 'Wall' }),
        entry('thickest', 'Thickest wall', 0.1, 'in', 'It cools last.'),
        entry('flow', 'Flow length', 2.5, 'in', 'From the gate to the farthest corner.'),
        pressRows.entry('partDepth', 0.75, 'in', 'In the opening direction.'),
        result(
          'density',
          'Density of the resin',
          'MOLD.RESIN.VALUE(resin, "density", units)',
          'At room temperature.',
          { kind: 'density', format: '0.000' },
        ),
        result(
          'solidVolume',
          'Solid volume of a shot',
          'cavities*partVolume + runner',
          'All cavities and the runner.',
          { kind: 'volume', format: '0.000' },
        ),
        result(
          'shotMass',
          'Mass of a shot',
          'solidVolume*density*IF(units="mm", 1, 16.387064/28.349523125)',
          'Volume times density.',
          { kind: 'mass' },
        ),
      ],
    },
    {
      title: '2  Shot',
      decide: 'whether the plunger holds enough melt.',
      rows: [
        pressRows.entry('plungerDia', 0.5, 'in', 'The part that pushes the melt.'),
        pressRows.entry('stroke', 3, 'in', 'Full stroke.'),
        entry(
          'usable',
          'Usable share of the stroke',
          0.7,
          '',
          'Pellets pack loosely and a cushion must stay.',
          { format: '0.00' },
        ),
        pressRows.result('shotVolume', {
          label: 'Shot the press can make',
          note: 'Volume of melt.',
          with: { usable: 'usable' },
          format: '0.000',
        }),
        pressRows.result('meltVolume', {
          label: 'Melt that the shot takes',
          note: 'Melt is less dense than the solid.',
          format: '0.000',
        }),
        result(
          'strokeNeeded',
          'Plunger stroke for it',
          'MOLD.PRESS.STROKE(meltVolume, plungerDia, 0, units)',
          'Without a cushion.',
        ),
        pressRows.verdict('Shot', {
          note: 'If it does not hold: the part stays short however hard you push.',
        }),
      ],
    },
    {
      title: '3  Pressure',
      decide: 'what cavity pressure to design for.',
      rows: [
        pressRows.entry('airPressure', 90, 'psi', 'At the cylinder while it moves.'),
        pressRows.entry('airBore', 4, 'in', 'Bore of the injection cylinder.'),
        pressRows.entry('efficiency', 0.85, '', 'Seal and plunger drag take the rest.', { format: '0.00' }),
        pressRows.result('meltPressure', { note: 'At the plunger; the nozzle takes some of it.' }),
        result(
          'usual',
          'Usual cavity pressure of the resin',
          'MOLD.RESIN.VALUE(resin, "cavity pressure", units)',
          'Middle of the range for machines with a screw (from memory).',
          { kind: 'pressure' },
        ),
        pressRows.result('cavityPressure', { note: 'The lower of the two.' }),
        result(
          'boreNeeded',
          'Air bore for the usual pressure',
          'MOLD.PRESS.AIRBORE(usual, airPressure, plungerDia, efficiency, units)',
          'Compare with the bore above.',
        ),
        spare(
          'Packing: what the press can make over the usual',
          'meltPressure/usual',
          'Little to spare is common on such presses: thick walls, short flow, large gates, a hot mold. If it does not hold: it fills at best, packs poorly and shrinks most.',
        ),
      ],
    },
    {
      title: '4  Fill',
      decide: 'whether the melt gets to the end, and what stops it first: pressure or freezing.',
      rows: [
        entry(
          'speed',
          'Speed of the melt front',
          4,
          'in/s',
          'Flow length over the time to fill that you see.',
        ),
        runnerRows.entry(
          'consistency',
          6000,
          'Pa·s^n',
          'Power law, at melt temperature: PP 4000 to 10000 (from memory).',
          { format: '#,##0' },
        ),
        costRows.entry('meltTemp', 430, '°F', 'Of the melt, not of the heater.'),
        costRows.entry('moldTemp', 120, '°F', 'At the cavity, before the shot.'),
        entry('noFlow', 'No-flow temperature', 290, '°F', 'PP about 290 °F (from memory).'),
        runnerRows.entry('powerIndex', 0.35, '', '1 is a Newtonian liquid; PP 0.3 to 0.4 (from memory).', {
          format: '0.00',
        }),
        entry(
          'stopShare',
          'Share of the wall frozen that stops it',
          0.5,
          '',
          'Beyond half the pressure needed climbs steeply: an estimate to learn from, not a limit of nature.',
          { format: '0.00' },
        ),
        result(
          'reach',
          'Reach by pressure',
          'MOLD.FILL.REACH(meltPressure, wall, speed, consistency, powerIndex, units)',
          'Where the pressure of the press is used up, walls still open.',
          { format: '0.0' },
        ),
        result('timeToCorner', 'Time to the farthest corner', 'flow/speed', 'At that speed.', {
          kind: 'time',
          format: '0.00',
        }),
        result(
          'frozen',
          'Frozen layer per side by then',
          'MOLD.FILL.FROZEN(resin, meltTemp, moldTemp, noFlow, timeToCorner, units)',
          'At the gate, where it has had longest.',
          { format: '0.0000' },
        ),
        result(
          'freezeReach',
          'Reach by freezing',
          'flow*(stopShare*wall/2/frozen)^2',
          'The layer grows with the root of time: where its share of the wall stops the flow.',
          { kind: 'length', format: '0.0' },
        ),
        result('reachAll', 'Reach', 'MIN(reach, freezeReach)', 'The shorter of the two.', {
          kind: 'length',
          format: '0.0',
        }),
        either(
          'What gives out first',
          'reach < freezeReach',
          'pressure',
          'freezing',
          'Pressure: slower, hotter melt, thicker wall. Freezing: faster, hotter mold, thicker wall.',
        ),
        spare(
          'Flow',
          'reachAll/flow',
          'If it does not hold: it stops short, and the part is not filled, whatever the clamp can hold.',
        ),
      ],
    },
    {
      title: '5  Clamp',
      decide: 'whether the hand screws hold the mold shut.',
      rows: [
        entry('torque', 'Torque on a screw', 40, 'lbf·ft', 'With the wrench you really use.'),
        entry('lead', 'Lead of the screw', 0.125, 'in', 'Travel in one turn.'),
        entry('screwDia', 'Mean diameter of its thread', 0.69, 'in', 'Between root and crest.'),
        entry('collarDia', 'Mean diameter of the collar', 1, 'in', 'Where head or pad rubs.'),
        entry('screwFriction', 'Friction in the thread', 0.15, '', 'Greased; dry 0.2 and more.', {
          format: '0.00',
        }),
        entry(
          'collarFriction',
          'Friction of the collar',
          0.15,
          '',
          'As the thread, greased; 0 only where a thrust bearing carries the screw.',
          { format: '0.00' },
        ),
        entry('screws', 'Clamp screws', 2, '', 'Evenly tightened.', { format: '0' }),
        result(
          'clampForce',
          'Clamp force',
          'screws*MOLD.PRESS.SCREWCLAMP(torque, lead, screwDia, screwFriction, 14.5, collarFriction, collarDia, units)',
          'All screws together. Friction scatters by a third either way, and the force with it: measure it once.',
          { kind: 'force' },
        ),
        result(
          'collarShare',
          'Share of the torque that the collar takes',
          '1 - MOLD.PRESS.SCREWCLAMP(torque, lead, screwDia, screwFriction, 14.5, collarFriction, collarDia, units)/MOLD.PRESS.SCREWCLAMP(torque, lead, screwDia, screwFriction, 14.5, 0, collarDia, units)',
          'Torque that only rubs where the screw ends. Reckoned without its collar, the screw would seem to clamp as if none of it were lost.',
          { kind: 'ratio', format: '0%' },
        ),
        result(
          'clampNeeded',
          'Clamp force needed',
          'MOLD.CLAMP.FORCE(projectedArea, cavityPressure, 1.2, units)',
          'Cavity pressure on the projected area, margin 1.2.',
        ),
        pressRows.result('clampSpare', {
          label: 'Clamp over opening force',
          note: 'Below 1 the mold opens.',
        }),
        result(
          'maxArea',
          'Largest area it holds',
          'MOLD.CLAMP.MAXAREA(clampForce, cavityPressure, 1.2, units)',
          'With the margin.',
        ),
        pressRows.verdict('Clamp', {
          note: 'If it does not hold: flash, and melt that sprays from the parting line.',
        }),
      ],
    },
    {
      title: '6  Daylight',
      decide: 'whether the part comes out between the open halves.',
      rows: [
        pressRows.entry('opening', 6, 'in', 'Platen to platen.'),
        pressRows.entry('stackHeight', 3.5, 'in', 'All plates.'),
        pressRows.entry('lift', 0.75, 'in', 'What pins or insert push.', { label: 'Lift off the core' }),
        pressRows.entry('hand', 0.75, 'in', 'To take the part; tongs need less.'),
        pressRows.result('daylight', {
          label: 'Room left',
          note: 'Negative: by so much it does not come out.',
        }),
        pressRows.verdict('Daylight', {
          note: 'If it does not hold: no room. A thinner stack, a mold that leaves the press to be opened, or a larger press.',
        }),
      ],
    },
    {
      title: '7  Cooling and cycle',
      decide:
        'how long a cycle takes: the wall must set, and an uncooled mold must lose the heat of every shot.',
      rows: [
        costRows.entry('ejectTemp', 185, '°F', 'In the middle of the thickest wall.'),
        entry('airTemp', 'Air around the mold', 70, '°F', 'In the shop.'),
        entry(
          'heat',
          'Heat a gram gives off',
          480,
          'J/g',
          'PP from melt to ejection, with its heat of fusion: about 480 J/g (from memory).',
        ),
        entry('surface', 'Outer surface of the mold', 90, 'in²', 'What air can reach.', {
          format: '[<100]0.0;#,##0',
        }),
        entry(
          'film',
          'Film coefficient',
          12,
          'W/(m²·K)',
          'Still air with radiation about 10; a fan 25 to 50 (common practice).',
        ),
        entry('moldMass', 'Mass of the mold', 3.5, 'kg', 'Both halves.', { format: '#,##0' }),
        entry('specificHeat', 'Specific heat of the mold', 0.896, 'J/(g·K)', 'Aluminum 0.896, steel 0.46.', {
          format: '0.000',
        }),
        runnerRows.entry('fillTime', 1.5, 's', 'As timed.', { label: 'Fill' }),
        costRows.entry('hold', 4, 's', 'Until the gate freezes.', { label: 'Hold' }),
        costRows.entry('handling', 45, 's', 'By hand: time it.', { label: 'Open, take out, close, load' }),
        costRows.result('coolTime', {
          label: 'Time until the wall has set',
          note: 'Full series, to the middle of the wall.',
          with: { wall: 'thickest', resin: 'resin', at: '"centre"' },
        }),
        result(
          'coolCycle',
          'Cycle that keeps the mold as warm',
          'MOLD.COOL.CYCLE(shotMass, heat, moldTemp, surface, film, airTemp, units)',
          'Shorter, and the mold gets hotter than planned.',
          { format: '0' },
        ),
        result(
          'wait',
          'Wait for the mold',
          'MAX(0, coolCycle - fillTime - hold - handling)',
          'What is left of it when all else is done.',
          { kind: 'time', format: '0' },
        ),
        costRows.result('cycle', {
          note: 'Fill, hold, handling and the longer of wall and wait.',
          with: { moldWait: 'wait' },
          format: '0',
        }),
        result(
          'rise',
          'Mold warmer after a shot by',
          'MOLD.COOL.RISE(shotMass, heat, moldMass, specificHeat, units)',
          'Before it loses it again.',
          { format: '0.0' },
        ),
        result(
          'settles',
          'Mold settles at',
          'MOLD.COOL.MOLDTEMP(shotMass, heat, cycle, surface, film, airTemp, units)',
          'At that cycle, after many shots.',
        ),
        either(
          'What rules the cycle',
          'wait > coolTime',
          'heat of the mold',
          'wall of the part',
          'Heat of the mold: a fan, a heavier mold or a pause. Wall: a thinner one.',
        ),
      ],
    },
    {
      title: '8  Cost',
      decide: 'whether it pays, and from which quantity a dearer mold does.',
      rows: [
        costRows.entry('hourRate', 55, '/h', 'In your money.', { format: '0.00' }),
        costRows.entry('priceByMass', 1.6, '/lb', 'In your money.', { format: '0.00' }),
        costRows.entry('moldCost', 900, '', 'Metal and hours.', { format: '#,##0' }),
        costRows.entry('quantity', 500, '', 'Good ones.', { format: '#,##0' }),
        entry('scrap', 'Scrap', 0.08, '', 'Share of shots thrown away.', { format: '0%' }),
        entry('otherMold', 'Cost of another mold', 2600, '', 'Say two cavities with cooling.', {
          format: '#,##0',
        }),
        entry('otherPart', 'Cost of a part from it, without mold', 0.55, '', 'By the same sheet.', {
          format: '0.00',
        }),
        costRows.result('partCost', {
          label: 'Cost of a good part',
          note: 'With its share of the mold.',
          with: { scrap: 'scrap' },
        }),
        result(
          'running',
          'Of that without the mold',
          'partCost - moldCost/quantity',
          'Press, person and resin.',
          { kind: 'money' },
        ),
        result(
          'even',
          'Quantity at which both cost the same',
          'MOLD.COST.BREAKEVEN(moldCost, running, otherMold, otherPart, units)',
          'Above it the dearer mold pays.',
          { format: '#,##0' },
        ),
      ],
    },
  ],
  whatIf: [
    {
      title: 'Reach by pressure',
      unitOf: 'reach',
      says: 'A thicker wall reaches farther, a faster front less far for the same pressure.',
      down: {
        label: 'Wall',
        unitOf: 'wall',
        values: ['0.5*wall', '0.75*wall', 'wall', '1.25*wall', '1.5*wall', '2*wall'],
        format: '0.000',
      },
      across: {
        label: 'Speed of the front',
        unitOf: 'speed',
        values: ['0.25*speed', '0.5*speed', 'speed', '1.5*speed', '2*speed', '4*speed'],
        format: '0.0',
      },
      formula: 'MOLD.FILL.REACH(meltPressure, down, across, consistency, powerIndex, units)',
      format: '0.0',
      mark: { when: 'answer < flow', says: 'Shaded: less than the flow length.' },
    },
    {
      title: 'Reach by freezing',
      unitOf: 'freezeReach',
      says: 'The same walls and speeds: here a faster front gets farther. The shorter of the two tables ends the flow.',
      down: {
        label: 'Wall',
        unitOf: 'wall',
        values: ['0.5*wall', '0.75*wall', 'wall', '1.25*wall', '1.5*wall', '2*wall'],
        format: '0.000',
      },
      across: {
        label: 'Speed of the front',
        unitOf: 'speed',
        values: ['0.25*speed', '0.5*speed', 'speed', '1.5*speed', '2*speed', '4*speed'],
        format: '0.0',
      },
      formula: 'across*(stopShare*down/2/MOLD.FILL.FROZEN(resin, meltTemp, moldTemp, noFlow, 1, units))^2',
      format: '0.0',
      mark: { when: 'answer < flow', says: 'Shaded: less than the flow length.' },
    },
    {
      title: 'Cost of a good part',
      says: 'The mold is shared by the quantity; the cycle is paid every time.',
      down: { label: 'Parts wanted', values: [100, 250, 500, 1000, 2000, 5000], format: '#,##0' },
      across: {
        label: 'Cycle, s',
        values: ['0.5*cycle', '0.75*cycle', 'cycle', '1.25*cycle', '1.5*cycle', '2*cycle'],
        format: '0',
      },
      formula:
        'MOLD.COST.PART(moldCost, down, across, hourRate, cavities, shotMass, priceByMass, scrap, units)',
      format: '0.00',
    },
  ],
  cautions: [
    'Clamp: two hand screws that are not even let the mold gape on one side and spray melt. Tighten by turns with a torque wrench, and stand aside from the parting line.',
    'Compressed air: shut it off and bleed it before reaching in. An air cylinder moves on what is left in its line. Follow the manual of the machine and local codes.',
    'Melt: it burns deep and sticks. Wear gloves and a face shield, never look into a nozzle, and let no resin stand in a hot barrel: some give off gas and pressure.',
    'Screws: torque that clamps can also break a screw or strip a thread in a soft plate. See the hole schedule for what a thread bears.',
    'Ventilation: work with an extract, most of all with PVC and acetal, and keep below the highest melt temperature of the data sheet.',
    'The numbers: a press of this kind differs from machine to machine. Measure pressure, clamp and mold temperature once, put them in, and have what people depend on checked by a licensed engineer.',
  ],
};
