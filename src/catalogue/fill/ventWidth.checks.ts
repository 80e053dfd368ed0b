import { checks } from '../../core/checks';
import { fillVentWidth } from './ventWidth';

export default checks(fillVentWidth, [
  {
    given: { airVolume: '20 cm³', fillTime: '1 s', depth: '0.02 mm', land: '1.5 mm', overpressure: '10 kPa' },
    expect: '81 mm',
    within: 1e-9,
    from: 'by hand: 2e-5 × 12 × 1.8e-5 × 0.0015/((2e-5)³ × 10000) = 0.081 m',
  },
  {
    given: { airVolume: '8 cm³', fillTime: '1 s', depth: '0.01 mm', land: '1.5 mm', overpressure: '10 kPa' },
    expect: '259.2 mm',
    within: 1e-9,
    from: 'by hand: 8e-6 × 12 × 1.8e-5 × 0.0015/((1e-5)³ × 10000) = 0.2592 m',
  },
  {
    given: { airVolume: '0 cm³', fillTime: '1 s', depth: '0.02 mm', land: '1.5 mm', overpressure: '10 kPa' },
    expect: '0 mm',
    from: 'no air asks for no vent',
    limit: true,
  },
]);
