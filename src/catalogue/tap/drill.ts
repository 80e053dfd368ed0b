import { procedure } from '../../core/define';
import { chooseTapDrill, nativeTapDrill, tapDrillParts } from './hole';

export const tapDrill = procedure({
  name: 'TAP.DRILL',
  summary: 'Diameter of the standard drill for a tapped hole.',
  ...tapDrillParts,
  gives: 'length',
  run: (x, show) => chooseTapDrill(x, show).diameter,
  native: (x, write) => nativeTapDrill(x, write, { head: 'diameter (m)', of: ({ diameter }) => diameter }),
  related: ['TAP.DRILLNAME', 'TAP.PERCENT', 'TAP.DEPTH'],
});
