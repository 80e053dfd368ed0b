import type { SheetDescription } from '../../src/package/description';

/** Push over draft with a verdict; friction and limit are inputs of their own. */
export const SEAT_CELLS: SheetDescription['cells'] = {
  A1: 'Draft per side',
  B1: 5,
  C1: 'deg',
  A2: 'Push',
  B2: 400,
  C2: 'lbf',
  A3: 'Friction',
  B3: 0.15,
  A4: 'Force on the seat',
  B4: { formula: 'MOLD.SEAT.FORCE(B2,B1,B3)' },
  C4: 'lbf',
  A5: 'Seat',
  B5: { formula: 'IF(B4<B6,"✓ holds","✗ does not hold")' },
  A6: 'Allowed',
  B6: 1500,
  C6: 'lbf',
  A7: 'Steel',
  B7: '1.2344',
  A9: 'Remark',
};
