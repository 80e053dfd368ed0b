import { checks } from '../../core/checks';
import { drillSize } from './size';

export default checks(drillSize, [
  { given: { name: '#7' }, expect: '0.201 in', within: 1e-12, from: 'ASME B94.11M: #7' },
  { given: { name: 'F' }, expect: '0.257 in', within: 1e-12, from: 'ASME B94.11M: F' },
  { given: { name: '#80' }, expect: '0.0135 in', within: 1e-12, from: 'ASME B94.11M: #80' },
  { given: { name: '7/32' }, expect: '5.55625 mm', within: 1e-12, from: 'by hand: 7/32 × 25.4' },
]);
