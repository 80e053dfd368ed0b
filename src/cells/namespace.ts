/** The prefix under which every function is typed: `=MOLD.SEAT.FORCE(…)`. Stored in workbooks, so never changed. */
export const NAMESPACE = 'MOLD';
