import type { Definition } from '../../core/define';
import { cutBallDia } from './ballDia';
import { cutBend } from './bend';
import { cutChip } from './chip';
import { cutChipFeed } from './chipFeed';
import { cutFeed } from './feed';
import { cutForce } from './force';
import { cutMeanChip } from './meanChip';
import { cutPower } from './power';
import { cutPull } from './pull';
import { cutReach } from './reach';
import { cutRpm } from './rpm';
import { cutScallop } from './scallop';
import { cutSpeed } from './speed';
import { cutStepover } from './stepover';
import { cutTime } from './time';
import { cutWallStep } from './wallStep';

/** Cutters: speeds, chips, scallops, deflection and reach. */
export const cut: readonly Definition[] = [
  cutSpeed,
  cutRpm,
  cutFeed,
  cutChip,
  cutMeanChip,
  cutChipFeed,
  cutBallDia,
  cutScallop,
  cutStepover,
  cutWallStep,
  cutBend,
  cutPull,
  cutForce,
  cutPower,
  cutTime,
  cutReach,
];
