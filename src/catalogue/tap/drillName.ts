import { procedure } from '../../core/define';
import { chooseTapDrill, nativeTapDrill, tapDrillParts } from './hole';

export const tapDrillName = procedure({
  name: 'TAP.DRILLNAME',
  summary: 'Name of the standard drill for a tapped hole, such as #21, F, 7/32 or 5.0 mm.',
  ...tapDrillParts,
  gives: 'text',
  run: (x, show) => chooseTapDrill(x, show).name,
  native: (x, write) => nativeTapDrill(x, write, { head: 'name', of: ({ name }) => name }),
  related: ['TAP.DRILL', 'TAP.PERCENT', 'DRILL.SIZE'],
});
