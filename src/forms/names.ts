import { parseCell } from '../cells/address';

/** `seatRadius` and `SEAT.STEP` as names of cells are written: `seat_radius`, `seat_step`. */
export function cellName(text: string): string {
  const words = text
    .replaceAll('.', '_')
    .replace(/([a-z0-9])([A-Z])/g, '$1_$2')
    .toLowerCase();
  // `d1` is a cell, and r and c are a row and a column.
  const plain = parseCell(words) ? words.replace(/(\d+)$/, '_$1') : words;
  return /^[rc]$/.test(plain) ? `${plain}_` : plain;
}

/** A taken name gets a number. */
export function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  for (let n = 2, name = wanted; ; n++) {
    if (!isTaken(name)) return name;
    name = `${wanted}_${n}`;
  }
}

/** `seatRadius` as a person reads it: `Seat radius`. */
export function label(name: string): string {
  const words = name.replace(
    /([a-z0-9])([A-Z])/g,
    (_, before: string, letter: string) => `${before} ${letter.toLowerCase()}`,
  );
  return words.charAt(0).toUpperCase() + words.slice(1);
}
