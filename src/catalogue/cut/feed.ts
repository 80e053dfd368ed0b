import { derived, formula, input } from '../../core/define';

export const cutFeed = formula({
  name: 'CUT.FEED',
  summary: 'Feed rate from spindle speed, flutes and feed per tooth.',
  inputs: [
    input('rpm', 'n', 'rotation', { above: '0 rpm', usual: ['50 rpm', '60000 rpm'], says: 'Spindle speed' }),
    input('flutes', 'z', 'count', { min: 1, usual: [1, 12], says: 'Number of cutting edges' }),
    input('chip', 'f_z', 'length', {
      above: '0 mm',
      usual: ['0.001 mm', '0.5 mm'],
      says: 'Feed per tooth',
    }),
  ],
  steps: { v_f: { gives: 'feedRate', expr: 'n*z*f_z', says: 'Every edge takes one chip a turn' } },
  result: 'v_f',
  sources: [derived('Feed in a turn is feed per tooth times edges')],
  notes: [
    'For shallow side cuts take the feed per tooth from CUT.CHIPFEED: fed by the table’s chip load the edge only rubs.',
  ],
  related: ['CUT.RPM', 'CUT.CHIPFEED', 'CUT.TIME'],
});
