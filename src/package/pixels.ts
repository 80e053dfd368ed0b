/** Sizes of columns and rows: the file counts characters and points, screens count pixels of 1/96 inch. */

/** Pixels of a digit and of a cell's margins in the default font. */
const DIGIT = 7;
const MARGIN = 5;

export const columnPixels = (characters: number): number => Math.round(characters * DIGIT + MARGIN);

export const rowPixels = (points: number): number => Math.round((points * 96) / 72);

/** The way back from `columnPixels`. */
export const columnCharacters = (pixels: number): number => (pixels - MARGIN) / DIGIT;

/** The way back from `rowPixels`. */
export const rowPoints = (pixels: number): number => (pixels * 72) / 96;
