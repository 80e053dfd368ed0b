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

/** What each family is for, by the part of the name before the dot. Apart from the definitions: only lists and the search need it. */
export const familyWords: Readonly<Record<string, FamilyWords>> = {
  SEAT: seatWords,
  FLUSH: flushWords,
  SPRING: springWords,
  EJECT: ejectWords,
  PIN: pinWords,
  PRESS: pressWords,
  CLAMP: clampWords,
  SHRINK: shrinkWords,
  RESIN: resinWords,
  METAL: metalWords,
  COOL: coolWords,
  FILL: fillWords,
  TAP: tapWords,
  THREAD: threadWords,
  SCREW: screwWords,
  SHOULDER: shoulderWords,
  DRILL: drillWords,
  DOWEL: dowelWords,
  FIT: fitWords,
  STACK: stackWords,
  HEAT: heatWords,
  PLATE: plateWords,
  CUT: cutWords,
  EDGE: edgeWords,
  COST: costWords,
};
