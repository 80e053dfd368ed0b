import { input } from '../../core/define';

export const rate = input('rate', 'k', 'stiffness', {
  above: '0 N/mm',
  usual: ['0.05 N/mm', '2000 N/mm'],
  says: 'Spring rate',
});
export const freeLength = input('freeLength', 'L_0', 'length', {
  above: '0 mm',
  usual: ['3 mm', '400 mm'],
  says: 'Free length of the spring',
});
export const pocketLength = input('pocketLength', 'L_p', 'length', {
  above: '0 mm',
  usual: ['2 mm', '400 mm'],
  says: 'Length of the pocket that the closed spring stands in',
});

export const STORED_ENERGY =
  'A compressed spring stores energy: let it down under control, and keep it captive when the mold is taken apart.';
