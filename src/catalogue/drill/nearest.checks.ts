import { checks } from '../../core/checks';
import { drillNearest } from './nearest';

export default checks(drillNearest, [
  {
    given: { diameter: '0.15955379439820333 in', series: 'inch' },
    expect: '#21',
    from: 'ASME B94.11M, by hand: #21 is 0.1590, #20 0.1610',
    kind: 'secondhand',
  },
  {
    given: { diameter: '0.2 in', series: 'number', round: 'down' },
    expect: '#8',
    from: 'ASME B94.11M: #8 is 0.1990, #7 0.2010',
    kind: 'secondhand',
  },
  {
    given: { diameter: '5.02 mm', series: 'metric', round: 'up' },
    expect: '5.1 mm',
    from: 'ISO 235 (from memory): steps of 0.1 mm from 3 to 14 mm',
    kind: 'memory',
  },
  {
    given: { diameter: '0.27 in', series: 'letter' },
    expect: 'I',
    from: 'ASME B94.11M: H is 0.266, I 0.272',
    kind: 'secondhand',
  },
  {
    given: { diameter: '0.25 in', round: 'up' },
    expect: '1/4',
    from: 'the size of a drill is the drill itself',
    limit: true,
  },
]);
