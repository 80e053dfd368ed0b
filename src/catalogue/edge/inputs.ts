/** Of the readings of a machine’s scale. */
export const ANY_ZERO = 'A scale counts from any zero';
