import { input } from '../../core/define';

export const pinDia = input('pinDia', 'd', 'length', {
  above: '0 mm',
  usual: ['0.5 mm', '60 mm'],
  says: 'Diameter of the pin',
});
