import { commonPractice, formula, fromMemory, input, secondHand } from '../../core/define';
import { pinDia } from '../eject/inputs';

export const MOTT =
  'Mott, Machine Elements in Mechanical Design, columns, as worked at a question-and-answer page';

export const pinBuckle = formula({
  name: 'PIN.BUCKLE',
  summary: 'Load at which a round ejector pin buckles.',
  inputs: [
    pinDia,
    input('unguidedLength', 'L', 'length', {
      min: '0 mm',
      usual: ['1 mm', '500 mm'],
      says: 'Longest length without a guide during the stroke, not the length of the pin',
    }),
    input('fixity', 'C', 'ratio', {
      usual: [0.25, 2],
      min: 0.25,
      max: 4,
      default: 1.2,
      says: 'End fixity: 1 for ends that pivot, 1.2 for a held head, 0.25 for a free tip that can lean aside',
    }),
    input('modulus', 'E', 'pressure', {
      above: '0 MPa',
      default: '207 GPa',
      usual: ['60 GPa', '650 GPa'],
      says: 'Young’s modulus of the pin',
    }),
    input('yield', 'S_y', 'pressure', {
      above: '0 MPa',
      default: '1400 MPa',
      usual: ['150 MPa', '3000 MPa'],
      says: 'Yield stress of the pin in compression',
    }),
  ],
  steps: {
    A: { gives: 'area', expr: 'pi*d^2/4', says: 'Section of the pin' },
    lambda: { gives: 'ratio', expr: 'L/(d/4)', says: 'Slenderness: length over the radius of gyration d/4' },
    lambda_1: {
      gives: 'ratio',
      expr: 'sqrt(2*pi^2*C*E/S_y)',
      says: 'Slenderness from which the pin buckles elastically, at half its yield stress',
    },
    sigma: {
      gives: 'pressure',
      expr: 'lambda > lambda_1 ? C*pi^2*E/lambda^2 : S_y - (S_y*lambda/(2*pi))^2/(C*E)',
      says: 'Critical stress: Euler’s for a slender pin, Johnson’s parabola for a stout one',
    },
    P: { gives: 'force', expr: 'A*sigma', says: 'Load at which it buckles' },
  },
  result: 'P',
  sources: [
    secondHand(`${MOTT}: Euler and Johnson formulas`),
    fromMemory(
      'Shigley, Mechanical Engineering Design, columns: fixity 1 pivoting ends, 1.2 recommended for fixed ends, 1/4 free end',
    ),
    commonPractice('207 GPa and 1400 MPa for a hardened ejector pin'),
  ],
  notes: [
    'The unguided length is what stands free at the worst moment of the stroke: from the ejector plate to the first guide with the mold closed, less what the stroke takes.',
    'The load is the one at which the pin fails. Keep the force on one pin to a half or a third of it: no pin is straight, and none is pushed square (common practice).',
    'For a stepped pin take PIN.STEPBUCKLE: its thin part alone, with its own length, is unsafe by a sixth to a third.',
    'A load that the pin bears: for a margin divide it by yours.',
  ],
  cautions: [
    {
      says: 'A pin that buckles jams or snaps: stay well below, keep the guard shut, and never push a stuck ejector harder.',
    },
  ],
  related: ['PIN.STEPBUCKLE', 'EJECT.TOTAL', 'EJECT.PINCOUNT', 'EJECT.PINPRESSURE'],
});
