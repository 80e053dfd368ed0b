/**
 * Office.js takes widths in points (OfficeDev/office-js #187, #3036: 40 make 53 pixels). A file's width counts the digits
 * of the default font, 7 pixels of 1/96 inch each, the cell's margins among them (ECMA-376 part 1, 18.3.1.13).
 */
export const POINTS_PER_CHARACTER = (7 * 72) / 96;
export const POINTS_PER_INCH = 72;
