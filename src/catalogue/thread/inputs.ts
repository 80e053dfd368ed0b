import { input, type Step, secondHand } from '../../core/define';
import { B1_1, ISO_965 } from '../../tables/threadLimits';
import { ofThread } from '../threads';

/** What the functions of strength of threads share. */

export const engagement = input('engagement', 'L', 'length', {
  above: '0 mm',
  usual: ['1 mm', '80 mm'],
  says: 'Length of full thread engaged, without chamfers and runout',
});
export const screwStrength = input('screwStrength', 'R_s', 'pressure', {
  above: '0 MPa',
  usual: ['300 MPa', '1400 MPa'],
  says: 'Tensile strength of the screw',
});
export const nutStrength = input('nutStrength', 'R_n', 'pressure', {
  above: '0 MPa',
  usual: ['50 MPa', '1400 MPa'],
  says: 'Tensile strength of the plate or nut with the tapped hole',
});

const { P, d_min, d_2min, D_1max, D_2max } = ofThread;
export const stripping = { P, d_min, d_2min, D_1max, D_2max } as const;

/** Areas in shear where both threads are as small as their classes allow. */
export const shearAreas = {
  a_n: {
    gives: 'length',
    expr: 'pi*d_min*(1/2 + (d_min - D_2max)/(sqrt(3)*P))',
    says: 'Area in shear of the hole’s thread per length engaged, at the smallest screw',
  },
  a_s: {
    gives: 'length',
    expr: 'pi*D_1max*(1/2 + (d_2min - D_1max)/(sqrt(3)*P))',
    says: 'Area in shear of the screw’s thread per length engaged, at the largest hole',
  },
} as const satisfies Record<string, Step>;

export const STRIPPING_SOURCES = [
  secondHand(
    'FED-STD-H28/2B, Table II.B.1: shear areas of threads at minimum material (as coded in denavit/ScrewThreadLib)',
  ),
  B1_1,
  ISO_965,
] as const;
/** Beyond this the far threads hardly carry. */
export const sharedEngagement = {
  holds: 'L <= 2.5*d',
  says: 'Engaged longer than 2.5 diameters: the first threads carry most, the far ones hardly more. Take a thread insert or more screws.',
} as const;
export const oneTurn = {
  holds: 'L >= P',
  says: 'Less than one pitch is engaged: no full turn of thread carries.',
} as const;

export const FULL_THREAD_ONLY =
  'Count full thread only: the screw’s length in the hole less the chamfers of hole and screw and a pitch of runout. ' +
  'The areas hold for holes within class 2B or 6H; see TAP.PERCENT for a larger drill.';
