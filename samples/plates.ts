import { metals, resins } from './choices';
import { check, entry, result, results, spare, strength, type Design } from './description';
import { rowsOf } from './rowsOf';
import { plate } from '../src/forms/sections/plate';

const plateRows = rowsOf(plate);

const YIELD =
  'At 20 °C by typical yield; 1 yields. Divide by what your shop asks for: 1.5 to 2 on a static load (common practice).';

export const plates: Design = {
  file: 'plates',
  title: 'Plates, pillars and walls',
  scenario:
    'A two-plate mold in 6061-T6 on a hand-clamped bench press: cavity plate on two rails, one row of pillars, a rectangular pocket and a round insert floor. Numbers of an invented shop.',
  danger:
    'A plate that bends lets melt out; a plate that breaks throws pieces. Read the cautions at the foot of this sheet first.',
  sheet: 'Plates',
  sections: [
    {
      title: '1  Load',
      decide: 'what presses on the plates, and how far they may give way before they flash.',
      rows: [
        entry('resin', 'Resin', 'PP', '', 'A name from the resin table.', { choices: resins }),
        plateRows.entry('plateMetal', '6061-T6', '', 'A name from the metal table.', { choices: metals }),
        plateRows.entry(
          'cavityPressure',
          1800,
          'psi',
          'What the press can really make in the cavity: see the press sheet.',
        ),
        plateRows.entry('loadLength', 1.6, 'in', 'Part and runner, between the rails.'),
        plateRows.entry('loadWidth', 1.2, 'in', 'Across the span.'),
        result(
          'plateForce',
          'Opening force',
          'cavityPressure*loadLength*loadWidth',
          'Pressure on the loaded rectangle.',
          { kind: 'force' },
        ),
        result(
          'allowSag',
          'Gap that does not flash yet',
          'MOLD.FILL.VENT(resin, units)',
          'The vent depth of the resin: more than this at the parting line and it flashes.',
          { format: '0.0000' },
        ),
      ],
    },
    {
      title: '2  Plate on two rails',
      decide: 'the thickness, with nothing but the rails under the plate.',
      rows: [
        plateRows.entry('span', 3.5, 'in', 'Clear distance.'),
        plateRows.entry('plateWidth', 4.5, 'in', 'Along the rails.'),
        plateRows.entry('thickness', 0.875, 'in', 'What is left below the pocket.'),
        plateRows.result('plateSag', {
          label: 'Sag in the middle',
          note: 'Bending and shear: on a short thick plate shear is a good quarter of it.',
          format: '0.0000',
        }),
        plateRows.result('thicknessNeeded', { label: 'Thickness that does not flash' }),
        spare(
          'Weak point to learn from: plate without pillars',
          'allowSag/plateSag',
          'The one weak point, left in on purpose. If it does not hold: pillars as below, a thicker plate, or rails closer together.',
        ),
        ...strength(
          'sagMargin',
          'Plate without pillars',
          plateRows.asked('SHOW.MARGIN', 'plateSag'),
          YIELD,
          'If it does not hold: the plate stays bent. Thicker, or rails closer together.',
        ),
        check('Range of that equation', plateRows.asked('SHOW.CHECK', 'plateSag')),
      ],
    },
    {
      title: '3  Support pillars',
      decide: 'how many pillars, and how much they shorten.',
      rows: [
        plateRows.entry('pillarMetal', 'P20 prehard', '', 'A name from the metal table.', {
          choices: metals,
        }),
        plateRows.entry('pillars', 2, '', 'Under the loaded area.', { format: '0' }),
        entry(
          'share',
          'Share of the load they take',
          0.7,
          '',
          'The rails take the rest; all of it is the safe guess.',
          { format: '0.00' },
        ),
        plateRows.entry('pillarDia', 0.75, 'in', 'All alike, faced in one setting.'),
        plateRows.entry('pillarLength', 1.5, 'in', 'Equal to the rails, or longer by half the shortening.'),
        plateRows.result('pillarGive', {
          label: 'Shortening under load',
          note: 'Elastic.',
          with: { force: 'share*plateForce' },
          format: '0.00000',
        }),
        plateRows.verdict('Pillars', {
          label: 'Pillars: stiffness',
          note: 'If it does not hold: thicker or more pillars.',
        }),
        ...strength(
          'pillarMargin',
          'Pillars',
          plateRows.asked('SHOW.MARGIN', 'pillarGive'),
          YIELD,
          'Under all of the load. If it does not hold: the pillars stay short.',
        ),
      ],
    },
    {
      title: '4  Walls and floors',
      decide: 'how much metal to leave beside and below the cavity.',
      rows: [
        entry('wallLength', 'Length of the cavity wall', 1.6, 'in', 'The longer side.'),
        entry('wallDepth', 'Depth of the cavity', 0.6, 'in', 'From the parting line.'),
        entry('wallThickness', 'Thickness of the wall', 0.75, 'in', 'To the nearest outside or hole.'),
        entry('floorRadius', 'Radius of the insert floor', 0.5, 'in', 'A round floor carried at its rim.'),
        entry('floorThickness', 'Thickness of the floor', 0.3125, 'in', 'Below the cavity.'),
        entry('ringInner', 'Inner radius of a round cavity', 0.5, 'in', 'In its own ring or bush.'),
        entry('ringOuter', 'Outer radius of the ring', 1, 'in', 'If nothing backs it up.'),
        entry(
          'bulgeAllowed',
          'Bulge allowed',
          0.0008,
          'in',
          'Less than the part shrinks away, or it stays in the cavity.',
          { format: '0.0000' },
        ),
        result(
          'bulge',
          'Bulge of the straight wall',
          'MOLD.PLATE.WALL(wallLength, wallDepth, wallThickness, cavityPressure, plateMetal, , units)',
          'The smaller of a cantilever and a wall held at both ends.',
          { format: '0.00000' },
        ),
        result(
          'floor',
          'Sag of the round floor',
          'MOLD.PLATE.ROUND(floorRadius, floorThickness, cavityPressure, plateMetal, "supported", units)',
          'Simply supported: a clamped rim sags about a quarter of it.',
          { format: '0.00000' },
        ),
        result(
          'ring',
          'Growth of the round cavity',
          'MOLD.PLATE.RING(ringInner, ringOuter, cavityPressure, plateMetal, units)',
          'On the radius.',
          { format: '0.00000' },
        ),
        spare(
          'Walls and floor: stiffness',
          'bulgeAllowed/MAX(bulge, floor, ring)',
          'If it does not hold: the part locks in the cavity when the pressure is gone.',
        ),
        ...strength(
          'wallMargin',
          'Straight wall',
          'MOLD.SHOW.MARGIN("PLATE.WALL", wallLength, wallDepth, wallThickness, cavityPressure, plateMetal, , units)',
          YIELD,
          'If it does not hold: a thicker wall. A sharp corner takes more away.',
        ),
        ...strength(
          'floorMargin',
          'Round floor',
          'MOLD.SHOW.MARGIN("PLATE.ROUND", floorRadius, floorThickness, cavityPressure, plateMetal, "supported", units)',
          YIELD,
          'If it does not hold: a thicker floor.',
        ),
        ...strength(
          'ringMargin',
          'Ring',
          'MOLD.SHOW.MARGIN("PLATE.RING", ringInner, ringOuter, cavityPressure, plateMetal, units)',
          YIELD,
          'If it does not hold: it splits or stays wide. A larger ring, or a block around it.',
        ),
      ],
    },
    {
      title: '5  Heat',
      decide: 'what grows, and what room it needs.',
      rows: [
        entry('insertMetal', 'Metal of the insert', 'P20 prehard', '', 'In the pocket of the plate.', {
          choices: metals,
        }),
        entry('plateLength', 'Length of the plate', 6, 'in', 'Between the dowels farthest apart.'),
        entry('insertWidth', 'Width of the insert', 1.5, 'in', 'In its pocket.'),
        entry('room', 'Room temperature', 70, '°F', 'Where it was fitted.'),
        entry('plateTemp', 'Plate when running', 130, '°F', 'Measured after ten shots or so.'),
        entry('insertTemp', 'Insert when running', 150, '°F', 'Hotter: the melt is all around it.'),
        result(
          'growth',
          'Growth of the plate',
          'MOLD.HEAT.GROWTH(plateLength, plateMetal, plateTemp - room, units)',
          'Over the whole length.',
          { format: '0.0000' },
        ),
        result(
          'mismatch',
          'Insert outgrows its pocket by',
          'MOLD.HEAT.MISMATCH(insertWidth, insertMetal, insertTemp - room, plateMetal, plateTemp - room, units)',
          'Negative: the pocket grows away and the insert is looser warm than cold.',
          { format: '0.0000' },
        ),
      ],
    },
    {
      title: '6  Height of the stack',
      decide: 'whether plates made to these tolerances shut to the height that clamp and nozzle need.',
      rows: [
        entry('tolTop', 'Tolerance of the top plate, ±', 0.001, 'in', 'As ground.', { format: '0.0000' }),
        entry('tolCavity', 'Tolerance of the cavity plate, ±', 0.001, 'in', 'As ground.', {
          format: '0.0000',
        }),
        entry('tolRail', 'Tolerance of the rails, ±', 0.0015, 'in', 'As milled, in pairs.', {
          format: '0.0000',
        }),
        entry('tolBottom', 'Tolerance of the bottom plate, ±', 0.002, 'in', 'As fly cut.', {
          format: '0.0000',
        }),
        entry(
          'heightTol',
          'Tolerance of the closed height, ±',
          0.0045,
          'in',
          'What clamp and nozzle seat can take up.',
          { format: '0.0000' },
        ),
        result(
          'worst',
          'Worst case, ±',
          'MOLD.STACK.WORST(tolTop:tolBottom, , units)',
          'All the same way at once.',
          { format: '0.0000' },
        ),
        result(
          'rss',
          'Root sum square, ±',
          'MOLD.STACK.RSS(tolTop:tolBottom, , units)',
          'Independent and centered, tolerances taken as three sigma.',
          { format: '0.0000' },
        ),
        result(
          'bender',
          'Root sum square times 1.5, ±',
          'MOLD.STACK.BENDER(tolTop:tolBottom, , units)',
          'A shop of few parts is rarely centered.',
          { format: '0.0000' },
        ),
        results(
          [
            { key: 'mean', label: 'Trials: mean', note: 'Ten thousand seeded trials: the same every time.' },
            { key: 'sigma', label: 'Trials: sigma', note: 'Standard deviation.' },
            {
              key: 'low',
              label: 'Trials: 0.135 % are below',
              note: 'Three sigma below for a normal spread.',
            },
            { key: 'median', label: 'Trials: half are below', note: 'The middle.' },
            {
              key: 'high',
              label: 'Trials: 99.865 % are below',
              note: 'Three sigma above for a normal spread.',
            },
          ],
          'TRANSPOSE(MOLD.STACK.TRIALS(tolTop:tolBottom, , "normal", 10000, 1, units))',
          { kind: 'length', format: '0.0000' },
        ),
        result(
          'yield',
          'Share of stacks inside',
          'MOLD.STACK.YIELD(0, sigma, -heightTol, heightTol, units)',
          'Of a normal spread with that sigma.',
          { kind: 'ratio', format: '0.00%' },
        ),
        spare(
          'Height',
          'heightTol/bender',
          'If it does not hold: measure the stack and grind rails or a shim to size.',
        ),
      ],
    },
  ],
  whatIf: [
    {
      title: 'Sag of the plate on two rails',
      unitOf: 'plateSag',
      says: 'Thickness counts to the third power, until shear takes over.',
      down: {
        label: 'Thickness',
        unitOf: 'thickness',
        values: [
          '0.5*thickness',
          '0.75*thickness',
          'thickness',
          '1.25*thickness',
          '1.5*thickness',
          '2*thickness',
        ],
        format: '0.000',
      },
      across: {
        label: 'Cavity pressure',
        unitOf: 'cavityPressure',
        values: [
          '0.5*cavityPressure',
          '0.75*cavityPressure',
          'cavityPressure',
          '1.5*cavityPressure',
          '2*cavityPressure',
          '3*cavityPressure',
        ],
        format: '[<50]0.00;[<1000]0;#,##0',
      },
      formula: 'MOLD.PLATE.SAG(span, plateWidth, down, across, loadLength, loadWidth, plateMetal, units)',
      format: '0.0000',
      mark: { when: 'answer > allowSag', says: 'Shaded: more than the resin bridges; it flashes.' },
    },
    {
      title: 'Bulge of the straight wall',
      unitOf: 'bulge',
      says: 'Shallow cavities forgive thin walls, deep ones do not.',
      down: {
        label: 'Thickness of the wall',
        unitOf: 'wallThickness',
        values: [
          '0.33*wallThickness',
          '0.5*wallThickness',
          '0.75*wallThickness',
          'wallThickness',
          '1.5*wallThickness',
          '2*wallThickness',
        ],
        format: '0.000',
      },
      across: {
        label: 'Depth of the cavity',
        unitOf: 'wallDepth',
        values: [
          '0.5*wallDepth',
          '0.75*wallDepth',
          'wallDepth',
          '1.25*wallDepth',
          '1.5*wallDepth',
          '2*wallDepth',
        ],
        format: '0.000',
      },
      formula: 'MOLD.PLATE.WALL(wallLength, across, down, cavityPressure, plateMetal, , units)',
      format: '0.00000',
      mark: { when: 'answer > bulgeAllowed', says: 'Shaded: more than the bulge allowed.' },
    },
  ],
  cautions: [
    'Pressure: a plate that bends opens the parting line and can spray melt. Keep the guard shut and stand aside on the first shots at a new pressure.',
    'Overload: the margins are of whole metal at 20 °C. A sharp corner or a screw hole raises the stress, and aluminum loses strength when hot: keep well above 1.',
    'Clamping: seat the mold on its whole area. A clamp that bears on a corner bends plates that are strong enough on paper. Follow the manual of the machine and local codes.',
    'Lifting: plates are heavy and their edges cut. Break the edges, use an eye bolt, keep hands out from under.',
    'The numbers: even pressure, elastic plates, no help from neighbors. For anything people depend on, ask a licensed engineer.',
  ],
};
