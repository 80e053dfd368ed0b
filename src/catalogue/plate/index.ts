import type { Definition } from '../../core/define';
import { plateFloor } from './floor';
import { platePillar } from './pillar';
import { plateRing } from './ring';
import { plateRound } from './round';
import { plateSag } from './sag';
import { plateThickness } from './thickness';
import { plateWall } from './wall';

/** Stiffness under cavity pressure. */
export const plate: readonly Definition[] = [
  plateSag,
  plateThickness,
  platePillar,
  plateWall,
  plateRound,
  plateFloor,
  plateRing,
];
