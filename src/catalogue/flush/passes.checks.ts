import { checks } from '../../core/checks';
import { flushPasses } from './passes';

export default checks(flushPasses, [
  {
    given: { stock: '0.5 mm', roughDepth: '0.2 mm', finishDepth: '0.05 mm' },
    expect: 4,
    from: 'by hand: 0.2 + 0.2 + 0.05 + 0.05 mm',
  },
  {
    given: { stock: '0.25 mm', roughDepth: '0.1 mm', finishDepth: '0.05 mm' },
    expect: 3,
    from: 'by hand: 0.1 + 0.1 + 0.05 mm come out even',
  },
  {
    given: { stock: '0.03 in', roughDepth: '0.01 in', finishDepth: '0.002 in' },
    expect: 4,
    from: 'by hand: 0.01 + 0.01 + 0.008 + 0.002 in',
  },
  {
    given: { stock: '0.02 mm', roughDepth: '0.2 mm', finishDepth: '0.05 mm' },
    expect: 1,
    from: 'stock within the finish cut takes one pass',
    limit: true,
  },
  {
    given: { stock: '0 mm', roughDepth: '0.2 mm', finishDepth: '0.05 mm' },
    expect: 0,
    from: 'no stock, no pass',
    limit: true,
  },
]);
