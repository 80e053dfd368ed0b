import type { FamilyWords } from '../core/familyWords';
import { clampWords } from './clamp/words';
import { coolWords } from './cool/words';
import { costWords } from './cost/words';
import { cutWords } from './cut/words';
import { dowelWords } from './dowel/words';
import { drillWords } from './drill/words';
import { edgeWords } from './edge/words';
import { ejectWords } from './eject/words';
import { fillWords } from './fill/words';
import { fitWords } from './fit/words';
import { flushWords } from './flush/words';
import { heatWords } from './heat/words';
import { metalWords } from './metal/words';
import { pinWords } from './pin/words';
import { plateWords } from './plate/words';
import { pressWords } from './press/words';
import { resinWords } from './resin/words';
import { screwWords } from './screw/words';
import { seatWords } from './seat/words';
import { shoulderWords } from './shoulder/words';
import { shrinkWords } from './shrink/words';
import { springWords } from './spring/words';
import { stackWords } from './stack/words';
import { tapWords } from './tap/words';
import { threadWords } from './thread/words';

/**
 * What each family is for, by the part of the name before the dot, in the order in which a job asks. Apart from the
 * definitions: only lists and the search need it.
 */
export const familyWords: Readonly<Record<string, FamilyWords>> = {
  PRESS: pressWords,
  FILL: fillWords,
  CLAMP: clampWords,
  RESIN: resinWords,
  COOL: coolWords,
  SHRINK: shrinkWords,
  EJECT: ejectWords,
  PIN: pinWords,
  SEAT: seatWords,
  SPRING: springWords,
  SHOULDER: shoulderWords,
  FLUSH: flushWords,
  STACK: stackWords,
  HEAT: heatWords,
  PLATE: plateWords,
  METAL: metalWords,
  SCREW: screwWords,
  THREAD: threadWords,
  TAP: tapWords,
  DRILL: drillWords,
  DOWEL: dowelWords,
  FIT: fitWords,
  CUT: cutWords,
  EDGE: edgeWords,
  COST: costWords,
};
