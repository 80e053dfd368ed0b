import { DRILL_CHOICES } from '../src/tables/drills';
import { metals, resins } from './choices';
import { check, either, entry, holds, result, results, spare, strength, type Design } from './description';
import { rowsOf } from './rowsOf';
import { press } from '../src/forms/sections/press';
import { seat } from '../src/forms/sections/seat';
import { spring } from '../src/forms/sections/spring';
import { eject } from '../src/forms/sections/eject';
import { screw } from '../src/forms/sections/screw';

const pressRows = rowsOf(press);
const seatRows = rowsOf(seat);
const springRows = rowsOf(spring);
const ejectRows = rowsOf(eject);
const screwRows = rowsOf(screw);

/** Nobody measures the friction of a seat that has been pressed home: it follows from what broke it loose. */
const MATCH =
  'MOLD.TRY.MATCH("SEAT.RELEASE", CHOOSE({1,2}, {"seatFriction";"draft"}, friction:draft), "releaseFriction", "push", trial1:trial3, loose1:loose3, 0.12, 0.6, units)';

export const pushOutInsert: Design = {
  file: 'push-out-insert',
  title: 'Tapered push-out insert',
  scenario:
    'A round core insert for a small cap in PP: it seats on a taper from the front, melt pressure drives it home, it is pushed out with the part on it and a spring pulls it back. Numbers of an invented shop.',
  danger:
    'Stored spring force, compressed air, hot melt and a seat that lets go at once can hurt you. Read the cautions at the foot of this sheet first.',
  sheet: 'Insert',
  sections: [
    {
      title: '1  Press and clamp',
      decide: 'how hard the melt pushes on the insert, and whether the clamp holds the mold shut.',
      rows: [
        pressRows.entry('resin', 'PP', '', 'A name from the resin table.', { choices: resins }),
        pressRows.entry('efficiency', 0.85, '', 'Seal and plunger drag take the rest.', { format: '0.00' }),
        pressRows.entry('airPressure', 110, 'psi', 'At the cylinder while it moves, not at the compressor.'),
        pressRows.entry('airBore', 4, 'in', 'Bore of the injection cylinder.'),
        pressRows.entry('plungerDia', 0.5, 'in', 'The part that pushes the melt.'),
        pressRows.entry('clampForce', 3.25, 'tonf', 'From the builder, or measured with a load cell.'),
        pressRows.entry('projectedArea', 0.95, 'in²', 'Seen along the opening direction.', {
          label: 'Projected area, part and runner',
        }),
        entry('face', 'Face diameter of the insert', 0.75, 'in', 'Where the melt presses on it.'),
        pressRows.result('meltPressure'),
        result(
          'usual',
          'Usual cavity pressure of the resin',
          'MOLD.RESIN.VALUE(resin, "cavity pressure", units)',
          'Middle of the range for machines with a screw (from memory).',
          { kind: 'pressure' },
        ),
        pressRows.result('cavityPressure', {
          note: 'The lower of what the resin usually gets and what the press can make.',
        }),
        spare(
          'Packing: what the press can make over the usual',
          'meltPressure/usual',
          'If it does not hold: the cavity never sees the usual pressure. Keep walls thick and flow short, and see the press sheet for how far it fills.',
        ),
        result(
          'clampNeeded',
          'Clamp force needed',
          'MOLD.CLAMP.FORCE(projectedArea, cavityPressure, 1.2, units)',
          'With a margin of 1.2 on the opening force.',
        ),
        spare(
          'Clamp',
          'clampForce/(cavityPressure*projectedArea)',
          'Clamp force over opening force; below 1.2 there is too little for scatter. If it does not hold: flash, and a mold that opens under pressure.',
        ),
        result(
          'seatPush',
          'Push of the melt on the insert',
          'cavityPressure*PI()/4*face^2',
          'Pressure on the face area. Everything below rests on it.',
          { kind: 'force' },
        ),
      ],
    },
    {
      title: '2  Taper seat',
      decide:
        'the draft: a steep one holds its height, sinks less and lets go better; a shallow one centers harder and locks.',
      rows: [
        seatRows.entry('insertMetal', 'P20 prehard', '', 'A name from the metal table.', { choices: metals }),
        seatRows.entry('blockMetal', '7075-T6', '', 'The block around the seat.', { choices: metals }),
        seatRows.entry(
          'friction',
          0.15,
          '',
          'Oiled steel on steel 0.10 to 0.16, dry steel on aluminum 0.3 and more (common practice).',
          { format: '0.00' },
        ),
        seatRows.entry('draft', 5, 'deg', 'From the direction of push. Try others in the what-if tables.'),
        seatRows.entry('seatRadius', 0.4, 'in', 'Half way up the contact.'),
        seatRows.entry(
          'seatLength',
          0.5,
          'in',
          'Along the axis, as blued: a cone a little off touches on less.',
        ),
        seatRows.entry(
          'blockRadius',
          1.25,
          'in',
          'To its nearest outside: half the width of a square block.',
        ),
        seatRows.result('seatForce'),
        result(
          'spread',
          'Force that spreads the block',
          'MOLD.SEAT.SPREAD(seatPush, draft, friction, units)',
          'Summed radial force: what the wall of the block must bear.',
        ),
        result(
          'seatPressure',
          'Pressure on the flank',
          'MOLD.SEAT.PRESSURE(seatPush, draft, friction, 2*PI()*seatRadius*seatLength/COS(RADIANS(draft)), units)',
          'Mean, over the whole contact.',
        ),
        ...[1, 2, 3].flatMap((n) => [
          entry(
            `trial${n}`,
            `Trial ${n}: pressed home with`,
            [800, 1400, 2000][n - 1] ?? 0,
            'lbf',
            'Invented number: type what your own press or screw made, over a load cell.',
          ),
        ]),
        ...[1, 2, 3].flatMap((n) => [
          entry(
            `loose${n}`,
            `Trial ${n}: broke loose at`,
            [372, 640, 922][n - 1] ?? 0,
            'lbf',
            'Invented number: type the push that you measured, the load of the trial taken off.',
          ),
        ]),
        result(
          'releaseFriction',
          'Friction coming out, from the trials',
          `INDEX(${MATCH}, 1, 1)`,
          'Fits the three measured pushes best: after a pressed and heated stay it is usually more than going in.',
          { kind: 'ratio' },
        ),
        result(
          'miss',
          'Largest miss of a trial',
          `INDEX(${MATCH}, 1, 3)`,
          'Measured less predicted: more than a tenth of the push means that the seat does not behave evenly.',
          { kind: 'force' },
        ),
        seatRows.result('freeDraft'),
        seatRows.result('seatRelease', { note: 'With the melt pressure gone and the seat still tight.' }),
        either(
          'After the shot the insert',
          'seatRelease = 0',
          'lets go by itself',
          'must be pushed out',
          'A locked seat keeps the insert down for milling; a free one needs its spring to stay home.',
        ),
        seatRows.result('seatSink', {
          note: 'Elastic. Expect this within 40 % on a well blued seat.',
          format: '0.0000',
        }),
        check('Range of that equation', seatRows.asked('SHOW.CHECK', 'seatSink')),
        ...strength(
          'seatMargin',
          'Seat under injection',
          seatRows.asked('SHOW.MARGIN', 'seatSink'),
          'The least of block at the bore and insert, at 20 °C by typical yield. 1 yields.',
          'If it does not hold: a longer or steeper seat, a thicker block, a stronger metal. Little to spare: below 1.2.',
        ),
      ],
    },
    {
      title: '3  Stop under the insert',
      decide: 'whether a solid stop takes the load before the taper has sunk too far.',
      rows: [
        entry(
          'gap',
          'Gap left above the stop',
          0.008,
          'in',
          'Insert seated by hand, measured with a stack of foil or an indicator.',
          { format: '0.0000' },
        ),
        entry(
          'stopStiffness',
          'Stiffness of the stop',
          2500000,
          'lbf/in',
          'Area times modulus over length of what carries it; less with every joint.',
        ),
        seatRows.result('seatSink', {
          key: 'stoppedSink',
          label: 'Sink with the stop',
          note: 'Seat alone up to the gap, then seat and stop together.',
          with: { stopGap: 'gap', stopStiffness: 'stopStiffness' },
          format: '0.0000',
        }),
        either(
          'Stop',
          'seatSink > gap',
          'takes load',
          'is not reached',
          'Not reached: the taper alone decides the height, and the stop only catches a push beyond all plans.',
        ),
      ],
    },
    {
      title: '4  Milling in place and witness step',
      decide:
        'the preload of the holding screw while the face is milled flush, so that injection leaves no step.',
      rows: [
        seatRows.entry('millingPush', 500, 'lbf', 'What the holding screw pulls with.', {
          label: 'Preload planned while milling',
        }),
        entry('stepAllowed', 'Witness step allowed', 0.0004, 'in', 'What the part may show as a line.', {
          format: '0.0000',
        }),
        screwRows.entry('thread', '1/4-28', '', 'As people write it: 10-32, 1/4-20, M5, M6x0.75.', {
          label: 'Thread of the holding screw',
        }),
        screwRows.entry('k', 0.2, '', 'About 0.2 plain, 0.15 oiled; the preload scatters by 30 %.', {
          format: '0.00',
        }),
        result(
          'witness',
          'Witness step in injection',
          'MOLD.SEAT.STEP(seatPush, millingPush, draft, friction, seatRadius, seatLength, blockRadius, insertMetal, blockMetal, units)',
          'Sink in injection less sink while milling. Positive: the insert ends below the face and the part shows a boss.',
          { format: '0.0000' },
        ),
        holds(
          'Weak point to learn from: step without seating push',
          'ABS(witness) <= stepAllowed',
          'The one weak point of this design, left in on purpose: milled under the screw alone, the insert is not as far down as the melt will push it. The seating push below mends it.',
        ),
        result(
          'seatingPush',
          'Seating push before milling',
          'seatPush',
          'Drive the insert home once with the push of injection: this seat locks, so it stays as far down as the melt will press it, and the last cut meets it there.',
          { kind: 'force' },
        ),
        seatRows.result('witness', {
          key: 'seatedStep',
          label: 'Witness step after it',
          note: 'Holds as long as the seat is not pushed out and seated with less before it is milled.',
          format: '0.0000',
        }),
        holds(
          'Witness step with seating push',
          'ABS(seatedStep) <= stepAllowed',
          'If it does not hold: the seat slides back at this draft and friction; hold it with the milling push below while it is cut.',
        ),
        ...strength(
          'seatingMargin',
          'Seat under the seating push',
          seatRows.asked('SHOW.MARGIN', 'witness'),
          'Under the largest of injection, milling and seating push.',
          'If it does not hold: seat with less, or the block splits or yields at the bore.',
        ),
        result(
          'stoppedStep',
          'Step without seating push, with the stop',
          'MOLD.SEAT.SINK(seatPush, draft, friction, seatRadius, seatLength, blockRadius, insertMetal, blockMetal, gap, stopStiffness, units) - MOLD.SEAT.SINK(millingPush, draft, friction, seatRadius, seatLength, blockRadius, insertMetal, blockMetal, gap, stopStiffness, units)',
          'Both sinks with the stop of section 3. Equal to the step without seating push where neither reaches it.',
          { kind: 'length', format: '0.0000' },
        ),
        result(
          'flushPush',
          'Milling push that leaves no step',
          'MOLD.SEAT.MILLPUSH(seatPush, 0, draft, friction, seatRadius, seatLength, blockRadius, insertMetal, blockMetal, units)',
          'Without a stop it is the push of the melt itself.',
        ),
        screwRows.result('screwTorque', {
          label: 'Torque of the holding screw for it',
          note: 'Compare with what its thread bears, in section 9.',
          with: { preload: 'flushPush' },
        }),
      ],
    },
    {
      title: '5  Heat',
      decide: 'how far the insert moves when the mold is warm, on top of the step.',
      rows: [
        entry('room', 'Temperature when milled', 70, '°F', 'Both parts at room temperature.'),
        entry(
          'insertTemp',
          'Insert when running',
          130,
          '°F',
          'The insert runs hotter than the block: no cooling, hot melt all around.',
        ),
        entry('blockTemp', 'Block when running', 105, '°F', 'Measured after ten shots or so.'),
        result(
          'heat',
          'Height change from heat',
          'MOLD.SEAT.HEATDROP(2*seatRadius, draft, insertMetal, insertTemp - room, blockMetal, blockTemp - room, units)',
          'Positive: it rises. An aluminum block that warms more than the insert lets it drop.',
          { format: '0.0000' },
        ),
        result('warmStep', 'Step in production', 'seatedStep - heat', 'Positive: insert below the face.', {
          kind: 'length',
          format: '0.0000',
        }),
        holds(
          'Step when warm',
          'ABS(warmStep) <= stepAllowed',
          'If it does not hold: mill the mold warm, or leave the step by choice with the milling push.',
        ),
      ],
    },
    {
      title: '6  Stock for milling flush',
      decide: 'how much to leave proud so that the last cut cleans up and still cuts.',
      rows: [
        seatRows.entry('seatWidthTol', 0.0004, 'in', 'Insert and pocket together, on the diameter.', {
          format: '0.0000',
        }),
        seatRows.entry('cutoffTol', 0.002, 'in', 'From the seat to the sawn or turned face.', {
          format: '0.0000',
        }),
        seatRows.entry('touchTol', 0.0005, 'in', 'Cutter length and face of the block.', {
          format: '0.0000',
        }),
        entry(
          'bedding',
          'Bedding in of a new seat',
          0.0002,
          'in',
          'Ground seats settle by this on the first full pushes.',
          { format: '0.0000' },
        ),
        entry('minimumCut', 'Least cut that still cuts', 0.002, 'in', 'A dull rub leaves a smeared face.', {
          format: '0.0000',
        }),
        entry(
          'roughDepth',
          'Depth of a roughing pass',
          0.005,
          'in',
          'Light: the insert hangs on its taper and one screw.',
          { format: '0.0000' },
        ),
        entry(
          'finishDepth',
          'Depth of the finish pass',
          0.002,
          'in',
          'The same as the least cut, or a little more.',
          { format: '0.0000' },
        ),
        result(
          'height',
          'Height error from the width',
          'MOLD.SEAT.HEIGHT(seatWidthTol, draft, units)',
          'The width error times 1/(2 tan draft).',
          { format: '0.0000' },
        ),
        result(
          'flushStock',
          'Stock to leave',
          'MOLD.FLUSH.STOCK(seatWidthTol, draft, cutoffTol, touchTol, bedding, minimumCut, "worst", units)',
          'All errors at once the wrong way, and the least cut on top.',
          { format: '0.0000' },
        ),
        result(
          'passes',
          'Passes to mill it',
          'MOLD.FLUSH.PASSES(flushStock, roughDepth, finishDepth, units)',
          'One finish pass, the rest roughing.',
          { kind: 'count' },
        ),
      ],
    },
    {
      title: '7  Return spring and shim',
      decide:
        'the shim under the spring: preload enough to keep the insert home, travel enough for the stroke.',
      rows: [
        springRows.entry('movingMass', 4, 'oz', 'Insert, screw and half the spring.'),
        springRows.entry('drag', 3, 'lbf', 'Measured with a spring scale.'),
        entry('springRate', 'Rate of the spring', 24, 'lbf/in', 'From its data sheet or from SPRING.RATE.'),
        springRows.entry('freeLength', 1.5, 'in', 'As measured, not as ordered.'),
        springRows.entry('pocketLength', 1.33, 'in', 'From the screw head to the bottom of the pocket.'),
        springRows.entry('wire', 0.072, 'in', 'For the solid length.', { format: '0.0000' }),
        springRows.entry('shim', 0.035, 'in', 'Whole shims from the drawer, near the one below.'),
        springRows.entry('lift', 0.4, 'in', 'How far the insert is pushed out.', {
          label: 'Stroke to free the part',
        }),
        springRows.entry('totalCoils', 8, '', 'With the dead ends, closed and ground.', { format: '0.0' }),
        springRows.result('springHold', {
          label: 'Preload wanted',
          note: 'Weight and drag, with a margin of 1.5.',
          with: { gLoad: '1', margin: '1.5' },
          format: '0.00',
        }),
        springRows.result('shimNeeded', {
          label: 'Shim that gives it',
          note: 'Negative: no shim, and the pocket may be deeper by that much.',
        }),
        springRows.result('springPreload', {
          label: 'Preload with the shim fitted',
          note: 'In the closed mold.',
          format: '0.00',
        }),
        spare(
          'Spring at home',
          '1.5*springPreload/springHold',
          'Preload over weight and drag. If it does not hold: the insert may stand open when resin comes. Fit a thicker shim.',
        ),
        springRows.result('solidLength', { with: { ends: '"closed ground"' } }),
        springRows.result('springTravel', {
          label: 'Stroke left before solid',
          note: 'Keeping 10 % in reserve.',
          with: { pocketLength: 'pocketLength - shim', reserve: '0.1' },
        }),
        springRows.verdict('Lift', {
          label: 'Stroke of the spring',
          note: 'If it does not hold: it goes solid, and the push then bends the screw instead of the spring.',
        }),
      ],
    },
    {
      title: '8  Push-out',
      decide:
        'whether the hand lever or jack screw moves the insert: at the first push and at the end of the stroke.',
      rows: [
        ejectRows.entry(
          'partModulus',
          75,
          'ksi',
          'At the temperature of the part then, far below the book value at room temperature.',
        ),
        ejectRows.entry('solidifyTemp', 285, '°F', 'From there on it shrinks onto the core.'),
        ejectRows.entry('ejectTemp', 180, '°F', 'Mean through the wall.'),
        ejectRows.entry('wall', 0.06, 'in', 'Around the core.'),
        ejectRows.entry('coreRadius', 0.3, 'in', 'Mean, where the part grips.'),
        entry('coreLength', 'Length of the core', 0.6, 'in', 'The length that the part covers.'),
        ejectRows.entry('coreDraft', 1, 'deg', 'Of the core under the part, not of the seat.'),
        ejectRows.entry('expansion', 0.00005, '1/°F', 'PP about 50 millionths per °F (published table).', {
          format: '0.0000000',
        }),
        entry('handPush', 'Push you have', 2000, 'lbf', 'Of the jack screw or lever, measured.'),
        ejectRows.entry(
          'ejectFriction',
          0.35,
          '',
          'PP on a polished core 0.2 to 0.5 (from memory of handbook ranges).',
          { format: '0.00' },
        ),
        ejectRows.result('shrinkStrain', { format: '0.00%' }),
        ejectRows.result('grip', { with: { poisson: '0' } }),
        ejectRows.result('stripForce', { with: { contactArea: '2*PI()*coreRadius*coreLength' } }),
        ejectRows.result('vacuumForce', {
          label: 'Suction under a closed cap',
          note: 'Full vacuum until air gets in: a vented core saves it.',
          with: { coreArea: 'PI()*coreRadius^2' },
        }),
        results(
          [
            {
              key: 'firstPush',
              label: 'First push',
              note: 'Seat, spring, part and suction together, with a margin of 1.5.',
            },
            {
              key: 'thenPush',
              label: 'Push once the seat has let go',
              note: 'At a twentieth of the stroke: a sudden drop here makes the insert jump.',
            },
            { key: 'lastPush', label: 'Push at full stroke', note: 'The part is loose: the spring alone.' },
          ],
          'MOLD.SEAT.PUSHOUT({0;0.05;1}*lift, seatRelease, springRate, springPreload, {1;1;0}*stripForce, {1;1;0}*vacuumForce, 1.5, units)',
        ),
        holds(
          'Push',
          'handPush >= MAX(firstPush, thenPush, lastPush)',
          'The margin of 1.5 is in the pushes. If it does not hold: more draft, less friction, a vent in the core, or a stronger jack screw.',
        ),
        result(
          'clear',
          'Gap per side at full stroke',
          'MOLD.SEAT.CLEAR(lift, draft, units)',
          'Room that the seat has opened: blow it clean before it goes home.',
        ),
      ],
    },
    {
      title: '9  Holding screw and its hole',
      decide: 'which drill the holding screw gets, and whether its thread bears the milling push.',
      rows: [
        screwRows.entry('engagement', 0.4, 'in', 'Without chamfer and last turn.', {
          label: 'Full thread in the block',
        }),
        screwRows.entry('screwStrength', 180, 'ksi', 'Socket head cap screw of alloy steel: 170 to 180 ksi.'),
        screwRows.entry(
          'nutStrength',
          83,
          'ksi',
          '7075-T6 about 83 ksi, 6061-T6 about 45 ksi (from memory).',
        ),
        entry('land', 'Land under the screw head', 0.375, 'in', 'What the screw passes through.'),
        entry(
          'series',
          'Drills to choose from',
          'inch',
          '',
          'inch: number, letter and fraction drills; all: metric ones too.',
          { choices: DRILL_CHOICES },
        ),
        entry(
          'percent',
          'Percent of thread',
          70,
          '',
          '65 to 75 in aluminum, 60 to 75 in steel (common practice).',
        ),
        screwRows.result('tapDrill', {
          note: 'The nearest of them.',
          with: { percent: 'percent', kind: '"cut"', series: 'series' },
          format: '0.0000',
        }),
        result(
          'drillName',
          'Its name',
          'MOLD.TAP.DRILLNAME(thread, percent, "cut", series, units)',
          'As marked on the shank.',
          { kind: 'text' },
        ),
        result(
          'tapDepth',
          'Depth to drill',
          'MOLD.TAP.DEPTH(engagement, thread, 4, 118, , units)',
          'To the tip of the point, for a plug tap.',
        ),
        screwRows.result('clearanceHole', { label: 'Clearance hole in the land', with: { fit: '"normal"' } }),
        result(
          'screwLength',
          'Length of screw under the head',
          'land + engagement',
          'The next stock length; not so long that it bottoms.',
          { kind: 'length' },
        ),
        screwRows.result('maxTorque', {
          label: 'Largest torque',
          note: 'Neither overloads the screw nor strips the block.',
          with: { margin: '1.5' },
        }),
        screwRows.verdict('Torque', {
          label: 'Holding screw',
          note: 'Largest torque over the one for the milling push. If it does not hold: a larger screw, two of them, or more engagement.',
        }),
      ],
    },
  ],
  whatIf: [
    {
      title: 'Sink under the push',
      unitOf: 'seatSink',
      says: 'Sink of the taper without a stop. It is the witness step of an insert that was milled without preload.',
      down: { label: 'Draft per side, deg', values: [2, 3, 5, 8, 10, 12, 15], format: '0.0' },
      across: {
        label: 'Push',
        unitOf: 'seatPush',
        values: ['0.5*seatPush', '0.75*seatPush', 'seatPush', '1.25*seatPush', '1.5*seatPush', '2*seatPush'],
        format: '#,##0',
      },
      formula:
        'MOLD.SEAT.SINK(across, down, friction, seatRadius, seatLength, blockRadius, insertMetal, blockMetal, , , units)',
      format: '0.0000',
      mark: {
        when: 'answer > stepAllowed',
        says: 'Shaded: more than the witness step allowed.',
      },
    },
    {
      title: 'Push that breaks the seat loose',
      unitOf: 'seatRelease',
      says: 'After the push above it is gone. Zero: it lets go by itself.',
      down: { label: 'Draft per side, deg', values: [2, 3, 5, 8, 10, 12, 15], format: '0.0' },
      across: {
        label: 'Push',
        unitOf: 'seatPush',
        values: ['0.5*seatPush', '0.75*seatPush', 'seatPush', '1.25*seatPush', '1.5*seatPush', '2*seatPush'],
        format: '#,##0',
      },
      formula: 'MOLD.SEAT.RELEASE(across, down, friction, releaseFriction, units)',
      format: '#,##0',
      mark: {
        when: 'answer > handPush',
        says: 'Shaded: more than the push you have, before spring and part.',
      },
    },
    {
      title: 'Height for an error in width',
      unitOf: 'height',
      says: 'How far the face moves for an error in the width of insert or pocket.',
      down: { label: 'Draft per side, deg', values: [2, 3, 5, 8, 10, 12, 15], format: '0.0' },
      across: {
        label: 'Error in width',
        unitOf: 'seatWidthTol',
        values: [
          '0.25*seatWidthTol',
          '0.5*seatWidthTol',
          'seatWidthTol',
          '1.5*seatWidthTol',
          '2*seatWidthTol',
          '3*seatWidthTol',
        ],
        format: '0.0000',
      },
      formula: 'MOLD.SEAT.HEIGHT(across, down, units)',
      format: '0.0000',
    },
  ],
  cautions: [
    'Pushing out: a locked seat lets go at once and the insert jumps. Push with a screw or against a stop, never with a blow, and keep face and fingers out of its way.',
    'The spring: it throws the insert home as soon as the push is gone. Block the insert open before reaching into the mold, and wear eye protection when you assemble a compressed spring.',
    'The press: hot melt and compressed air stay under pressure after a stop. Shut the air, bleed it and let the barrel empty before opening. Follow the manual of the machine and local codes.',
    'The clamp: a clamp that is too weak opens under pressure and can spray melt. Test with a short shot first, from behind the guard.',
    'The screw: torque and preload scatter by 30 %. See that the thread in a soft block bears the preload before you rely on it to hold an insert while it is milled.',
    'The numbers: elastic first-order equations of an even contact. They help to choose; they do not replace blueing the seat, measuring the step, or the judgement of a licensed engineer where people depend on it.',
  ],
};
