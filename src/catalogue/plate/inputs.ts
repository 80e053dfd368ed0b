import { input } from '../../core/define';
import { metal } from '../metals';

/** What the functions of plates and walls under cavity pressure share. */

export const pressure = input('pressure', 'p', 'pressure', {
  min: '0 MPa',
  usual: ['0.5 MPa', '200 MPa'],
  says: 'Cavity pressure',
});
export const plateMetal = metal('metal', '', 'Metal of the plate');

export const span = input('span', 'L', 'length', {
  above: '0 mm',
  usual: ['5 mm', '1 m'],
  says: 'Clear span between the rails',
});
export const width = input('width', 'b', 'length', {
  above: '0 mm',
  usual: ['5 mm', '1 m'],
  says: 'Width of the plate along the rails',
});
export const loadLength = input('loadLength', 'c', 'length', {
  above: '0 mm',
  usual: ['1 mm', '1 m'],
  says: 'Length of the pressed patch along the span, in the middle',
});
export const loadWidth = input('loadWidth', 'w', 'length', {
  above: '0 mm',
  usual: ['1 mm', '1 m'],
  says: 'Width of the pressed patch across the span',
});

export const patchOnPlate = [
  { when: 'c > L', argument: 'loadLength', says: 'must not be longer than {span}' },
  { when: 'w > b', argument: 'loadWidth', says: 'must not be wider than {width}' },
] as const;

export const PRESSED_PLATE =
  'An overloaded plate or wall opens the mold under pressure and sprays hot melt: keep its stress well below the yield of the metal, and guards shut.';
