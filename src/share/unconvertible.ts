/** Why a formula has no native form; a sentence without its end. */
export class Unconvertible extends Error {}

/** The function itself refuses what it is given now. */
export class RefusedNow extends Unconvertible {
  constructor(
    reason: string,
    readonly code: '#VALUE!' | '#N/A',
  ) {
    super(reason);
  }
}
