import { derived, formula, input } from '../../core/define';

export const ejectVacuum = formula({
  name: 'EJECT.VACUUM',
  summary: 'Force with which the air holds a part on a closed core.',
  inputs: [
    input('coreArea', 'A', 'area', {
      min: '0 mm²',
      usual: ['5 mm²', '0.3 m²'],
      says: 'Projected area of the closed core, across the direction of ejection',
    }),
    input('vacuum', 'Dp', 'pressure', {
      min: '0 MPa',
      max: '1.1 atm',
      default: '1 atm',
      usual: ['0 atm', '1 atm'],
      says: 'Pressure missing under the part',
    }),
  ],
  steps: { F: { gives: 'force', expr: 'Dp*A', says: 'The air presses on the core’s projected area' } },
  result: 'F',
  sources: [
    derived('Force is pressure times projected area; standard atmosphere 101 325 Pa (10th CGPM 1954)'),
  ],
  notes: [
    'It holds the part only while nothing gets in: count it for the first moment of the stroke, added to the stripping force.',
    'A vented core, an air poppet or a pin that lets air in early makes it 0. A thin cup stripped fast without one may collapse.',
  ],
  related: ['EJECT.FORCE', 'EJECT.TOTAL'],
});
