import { entry, even, result, typed, holds, type Design } from './description';

/** A value of the shop's own table in the row of the name that was chosen. */
const own = (column: string, names: string, chosen: string): string =>
  `INDEX(${column}, MATCH(${chosen}, ${names}, 0))`;
/** The same from the unit of the table to that of the sheet. */
const converted = (value: string, from: string, inch: string, metric: string): string =>
  `MOLD.UNIT.CONVERT(${value}, "${from}", IF(units="in", "${inch}", "${metric}"))`;
const ofGrade = (column: string): string => own(column, 'grades', 'grade');
const ofSteel = (column: string): string => own(column, 'steels', 'steel');

const GRADES = ['House PP natural', 'House PP talc', 'House ABS', 'House PC dried'];
const STEELS = ['Plate stock A', 'Plate stock B', 'Insert stock'];

export const shopTables: Design = {
  file: 'shop-tables',
  title: 'Shop tables',
  scenario:
    'Tables of an invented shop: its own grades of resin, the drills in its drawer, its own steels. Every value in them is invented. Look-ups of the spreadsheet itself take the values, and hand them to the functions as numbers.',
  danger:
    'A number of your own is as good as the test it came from. Read the cautions at the foot of this sheet first.',
  sheet: 'Tables',
  layout: {
    widths: { A: 30, B: 13, C: 13, D: 13, E: 13, F: 13, ...even('G', 'U', 10) },
    note: ['G', 'L'],
    formula: ['M', 'U'],
  },
  sections: [
    {
      title: '1  Grades of resin of your own',
      decide:
        'the values of your data sheets and trials, a grade a row. Type over them; add rows inside the list.',
      rows: [],
      list: {
        columns: [
          typed('grades', 'Grade', GRADES, 'Its name, as the choice below takes it.'),
          typed(
            'gradeAlpha',
            'Diffusivity, mm²/s',
            [0.065, 0.08, 0.075, 0.095],
            'Effective diffusivity for cooling, best from a trial of your own.',
          ),
          typed('gradeMelt', 'Melt, °C', [220, 225, 235, 295], 'Temperature of the melt.'),
          typed('gradeMold', 'Mold, °C', [40, 40, 55, 90], 'Temperature of the mold.'),
          typed(
            'gradeEject',
            'Eject, °C',
            [85, 90, 88, 125],
            'Temperature in the middle at which the part comes out.',
          ),
          typed('gradeShrink', 'Shrinkage, %', [1.6, 1.1, 0.5, 0.6], 'Of the cavity, as your parts have it.'),
        ],
      },
    },
    {
      title: '2  A part in a grade of your own',
      decide: 'how long it cools, and how large the cavity is.',
      rows: [
        entry('grade', 'Grade', 'House PP talc', '', 'One of the list above.', { choices: GRADES }),
        entry('wall', 'Wall of the part', 0.08, 'in', 'The thickest.'),
        entry('partSize', 'Size of the part', 2.5, 'in', 'Of the part as it is wanted, cold.'),
        result(
          'alpha',
          'Diffusivity',
          converted(ofGrade('gradeAlpha'), 'mm²/s', 'in²/s', 'mm²/s'),
          'From the list.',
          {
            kind: 'diffusivity',
            format: '0.000000',
          },
        ),
        result(
          'melt',
          'Melt temperature',
          converted(ofGrade('gradeMelt'), '°C', '°F', '°C'),
          'From the list.',
          { kind: 'temperature' },
        ),
        result(
          'mold',
          'Mold temperature',
          converted(ofGrade('gradeMold'), '°C', '°F', '°C'),
          'From the list.',
          { kind: 'temperature' },
        ),
        result(
          'eject',
          'Temperature to eject',
          converted(ofGrade('gradeEject'), '°C', '°F', '°C'),
          'From the list.',
          { kind: 'temperature' },
        ),
        result('shrink', 'Shrinkage', `${ofGrade('gradeShrink')}/100`, 'From the list, as a fraction.', {
          kind: 'ratio',
          format: '0.0000',
        }),
        result(
          'cool',
          'Cooling time',
          'MOLD.COOL.TIME(wall, alpha, melt, mold, eject, , units)',
          'Until the middle is at the temperature to eject.',
        ),
        result('cavity', 'Size of the cavity', 'MOLD.SHRINK.CAVITY(partSize, shrink, units)', 'Cut to this.'),
      ],
    },
    {
      title: '3  The drills in your drawer',
      decide: 'which drills there are. Leave a cell blank where one is broken.',
      rows: [],
      list: {
        columns: [
          typed(
            'drawer',
            'Drill',
            [
              '#50',
              '#43',
              '#36',
              '#29',
              '#25',
              '#21',
              '#16',
              '#7',
              '#3',
              'F',
              'Q',
              '1/8',
              '5/32',
              '3/16',
              '7/32',
              '1/4',
              '5/16',
              '3/8',
              '2.5 mm',
              '3.3 mm',
              '4.2 mm',
              '5.0 mm',
              '6.8 mm',
              '8.5 mm',
            ],
            'Its name, or its diameter with the unit.',
          ),
          typed(
            'place',
            'Place',
            Array.from({ length: 24 }, (_, i) => i + 1),
            'Where it lies in the drawer.',
          ),
        ],
      },
    },
    {
      title: '4  A thread with a drill that is there',
      decide: 'which drill of the drawer to take, and what it leaves of the thread.',
      rows: [
        entry('thread', 'Thread', '10-32', '', 'Any designation: 10-32, 1/4-20, M6.'),
        entry(
          'percent',
          'Percent of thread wanted',
          70,
          '',
          '60 to 75 in steel, 65 to 75 in aluminum (common practice).',
          { format: '0' },
        ),
        result(
          'ideal',
          'Drill of the chart',
          'MOLD.TAP.DRILL(thread, percent, , , units)',
          'The nearest standard drill.',
          { format: '0.0000' },
        ),
        result(
          'mine',
          'Drill of the drawer',
          'MOLD.DRILL.FROMSET(ideal, drawer, "nearest", units)',
          'The nearest that you have.',
          { kind: 'text' },
        ),
        result(
          'left',
          'Percent of thread that it leaves',
          'MOLD.TAP.PERCENT(thread, mine, , units)',
          'Of full thread.',
        ),
        holds(
          'Drill for the thread',
          'AND(left>=55, left<=80)',
          'Between 55 and 80 % of thread. If it does not hold: get the right drill.',
        ),
      ],
    },
    {
      title: '5  Steels of your own',
      decide: 'the values of your certificates, a steel a row.',
      rows: [],
      list: {
        columns: [
          typed('steels', 'Steel', STEELS, 'Its name, as the choice below takes it.'),
          typed('steelE', 'Modulus, GPa', [205, 207, 210], 'Young’s modulus.'),
          typed(
            'steelExpansion',
            'Expansion, µm/(m·K)',
            [12.2, 12.6, 11.5],
            'Coefficient of linear expansion.',
          ),
        ],
      },
    },
    {
      title: '6  Pillars and heat in a steel of your own',
      decide: 'how far support pillars shorten, and how far a plate grows.',
      rows: [
        entry('steel', 'Steel', 'Plate stock B', '', 'One of the list above.', { choices: STEELS }),
        entry(
          'force',
          'Force on the pillars',
          4000,
          'lbf',
          'Of the melt on the plate, less what the rails carry.',
          { format: '#,##0' },
        ),
        entry('pillars', 'Pillars', 4, '', 'How many.', { format: '0' }),
        entry('pillarDia', 'Diameter of a pillar', 1, 'in', 'All alike.'),
        entry('pillarLength', 'Length of a pillar', 2, 'in', 'As long as the rails are high.'),
        entry('room', 'Room temperature', 70, '°F', 'Where the plate was measured.', { format: '0' }),
        entry('warm', 'Plate when running', 130, '°F', 'Measured after ten shots or so.', { format: '0' }),
        entry('plate', 'Length of the plate', 6, 'in', 'Between the dowels.'),
        result('modulus', 'Modulus', converted(ofSteel('steelE'), 'GPa', 'psi', 'MPa'), 'From the list.', {
          kind: 'pressure',
          format: '#,##0',
        }),
        result(
          'expansion',
          'Expansion',
          `${ofSteel('steelExpansion')}/1000000*IF(units="in", 5/9, 1)`,
          'From the list.',
          { kind: 'expansion', format: '0.00E+00' },
        ),
        result(
          'shortening',
          'Shortening of the pillars',
          'MOLD.PLATE.PILLAR(force, pillars, pillarDia, pillarLength, modulus, units)',
          'Make them longer by this.',
          { format: '0.00000' },
        ),
        result('rise', 'Rise of the plate', 'warm - room', 'From the room to the warm mold.', {
          kind: 'rise',
          format: '0',
        }),
        result(
          'growth',
          'Growth of the plate',
          'MOLD.HEAT.GROWTH(plate, expansion, rise, units)',
          'Over its length.',
          { format: '0.00000' },
        ),
      ],
    },
  ],
  cautions: [
    'The values in the lists are invented: put your own there before you rely on an answer, and write beside them where they come from.',
    'A cooling time is as good as the diffusivity: compare it with a part that you have molded.',
    'A tap that is driven into a hole too small breaks and throws pieces: wear eye protection.',
    'What a press may do, and how it is guarded, stands in its manual and in your local codes; a loaded plate or pillar is to be judged by somebody licensed for it.',
  ],
  whatIf: [],
};
