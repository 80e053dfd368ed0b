import type { System } from '../../core/quantity';
import type { WorkLine } from '../work';
import { ballDepthPicture, scallopPicture } from './ballCutter';
import { clampGapPicture } from './clamping';
import { clearHolePicture } from './clearHole';
import { draftChart } from './draftChart';
import { pinInStackPicture } from './pin';
import { ballInTaperPicture, overPinsPicture, positionPicture } from './measuring';
import { corePinPicture, steppedPinPicture } from './slenderPin';
import {
  springFreePicture,
  springLengthPicture,
  springPocketPicture,
  springSolidPicture,
  springTravelPicture,
} from './spring';
import { NothingToDraw, Subject, type Picture } from './subject';
import { tappedHolePicture, tapTravelPicture } from './tappedHole';
import {
  seatHoopPicture,
  seatMillPushPicture,
  seatSinkPicture,
  seatStepPicture,
  seatStiffnessPicture,
  wedgeSinkPicture,
} from './taperedSeat';
import { seatClearPicture, seatForcesPicture, seatHeightPicture } from './taperFlank';

/** Which picture belongs to which function. */
export const PICTURES: Readonly<Record<string, Picture>> = {
  'SEAT.FORCE': seatForcesPicture,
  'SEAT.SPREAD': seatForcesPicture,
  'SEAT.PRESSURE': seatForcesPicture,
  'SEAT.RELEASE': seatForcesPicture,
  'SEAT.SLIDEBACK': seatForcesPicture,
  'SEAT.SINK': seatSinkPicture,
  'SEAT.WEDGESINK': wedgeSinkPicture,
  'SEAT.STIFFNESS': seatStiffnessPicture,
  'SEAT.STEP': seatStepPicture,
  'SEAT.MILLPUSH': seatMillPushPicture,
  'SEAT.CLEAR': seatClearPicture,
  'SEAT.LIFT': seatClearPicture,
  'SEAT.HEIGHT': seatHeightPicture,
  'SEAT.HEATDROP': seatHeightPicture,
  'SPRING.FORCE': springLengthPicture,
  'SPRING.LENGTH': springLengthPicture,
  'SPRING.PRELOAD': springPocketPicture,
  'SPRING.SHIM': springPocketPicture,
  'SPRING.TRAVEL': springTravelPicture,
  'SPRING.SOLID': springSolidPicture,
  'SPRING.BUCKLE': springFreePicture,
  'SPRING.FREELIMIT': springFreePicture,
  'TAP.DEPTH': tappedHolePicture,
  'TAP.TRAVEL': tapTravelPicture,
  'PIN.LENGTH': pinInStackPicture,
  'PIN.STAND': pinInStackPicture,
  'SEAT.HOOP': seatHoopPicture,
  'SEAT.BALLWIDTH': ballInTaperPicture,
  'SEAT.PINWIDTH': overPinsPicture,
  'PIN.STEPBUCKLE': steppedPinPicture,
  'PIN.SIDE': corePinPicture,
  'FIT.POSITION': positionPicture,
  'FIT.CLEARHOLE': clearHolePicture,
  'CLAMP.GAP': clampGapPicture,
  'CUT.SCALLOP': scallopPicture,
  'CUT.STEPOVER': scallopPicture,
  'CUT.BALLDIA': ballDepthPicture,
};

/** The picture of one calculation as SVG text; undefined for functions without one, and where nothing can be drawn. */
export const pictureOf = (name: string, lines: readonly WorkLine[], system: System): string | undefined =>
  ifDrawn(() => PICTURES[name]?.(new Subject(lines, system)));

/** The same of the chart that goes with it. */
export const chartOf = (name: string, lines: readonly WorkLine[], system: System): string | undefined =>
  ifDrawn(() => draftChart(name, new Subject(lines, system), system));

function ifDrawn(draw: () => string | undefined): string | undefined {
  try {
    return draw();
  } catch (error) {
    if (error instanceof NothingToDraw) return undefined;
    throw error;
  }
}
