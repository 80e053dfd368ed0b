import { checks } from '../../core/checks';
import { resinValueOf } from './value';

export default checks(resinValueOf, [
  {
    given: { resin: 'PP', property: 'diffusivity' },
    expect: '0.065 mm²/s',
    within: 1e-12,
    from: 'R. J. Crawford, Plastics Engineering, Table 1.8, read as a scan',
    kind: 'secondhand',
  },
  {
    given: { resin: 'ABS', property: 'shrinkage high' },
    expect: 0.009,
    within: 1e-12,
    from: 'general molding guide: ABS 0.5 to 0.9 %',
    kind: 'secondhand',
  },
  {
    given: { resin: 'acetal', property: 'eject temperature' },
    expect: '110 °C',
    within: 1e-12,
    from: 'handbook ranges (from memory)',
    kind: 'memory',
  },
  {
    given: { resin: 'HDPE', property: 'density' },
    expect: '0.95 g/cm³',
    within: 1e-12,
    from: 'R. J. Crawford, Plastics Engineering, Table 1.8, read as a scan',
    kind: 'secondhand',
  },
]);
