import { input, type Input } from '../../core/define';

export const length = input('length', 'L', 'length', {
  above: '0 mm',
  usual: ['1 mm', '1 m'],
  says: 'Length at room temperature',
});

/** How much warmer something is than the room in which it was measured; it may be colder. */
export const rise = <const N extends string>(name: N, symbol: string, of: string): Input<N, number> =>
  input(name, symbol, 'rise', {
    usual: ['-40 °C', '300 °C'],
    says: `Rise of ${of} above room temperature`,
  });

export const EXPANSION = 'Linear expansion: the definition of the coefficient of expansion';
