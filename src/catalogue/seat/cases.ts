/** Seats of the worked examples, which the checks of the family share. */

/** A P20 plug of 20 mm in a 7075-T6 block. */
export const plug = {
  draft: '5 deg',
  friction: 0.15,
  seatRadius: '10 mm',
  seatLength: '12 mm',
  blockRadius: '25 mm',
  insertMetal: 'P20',
  blockMetal: '7075-T6',
} as const;
