/** The cells that the random formulas read: numbers, text, blanks; a sorted list to look up in D and E. */
export const CELLS: readonly (readonly (number | string | null)[])[] = [
  [5, 1, 'mold', 1, 10],
  [2.5, 2, 'Alpha', 3, 30.5],
  [-7, 3.25, 'a b c', 5, 'five'],
  [12.5, 4, 'M6 x 1', 12.5, 125],
  [0, -5, '2.50', 50, 500],
  [1e3, 0.125, null, 100, -1],
  [3, 100, 'm6', 150, 0],
  [5, 12.5, null, 1000, 7],
];
