import { commonPractice, derived, formula, input, secondHand } from '../../core/define';
import { resinWith } from '../resins';

export const pinFlash = formula({
  name: 'PIN.FLASH',
  summary:
    'How much narrower the gap around an ejector pin is than what the resin flashes into; negative: it will flash.',
  inputs: [
    input('radialGap', 'g', 'length', {
      min: '0 mm',
      usual: ['0 mm', '0.2 mm'],
      says: 'Gap on one side of the warm pin: half the clearance, or all of it for a pin that leans',
    }),
    resinWith(
      'resin',
      'h_v',
      'vent depth',
      { above: '0 mm' },
      'Resin, or the gap that it does not flash into',
    ),
  ],
  steps: {
    s: { gives: 'length', expr: 'h_v - g', says: 'Vent depth of the resin less the gap' },
  },
  result: 's',
  sources: [
    derived('A gap flashes where it is deeper than the vent that the resin is given'),
    secondHand('Vent depths by resin: viewmold.com, venting standards; the shallow end of each range'),
    commonPractice('Allowable gap at pins and parting lines equals the vent depth of the resin'),
  ],
  notes: [
    'A pin leaned to one side opens the whole clearance on the other: use the diametral clearance for a careful answer.',
    'A little gap is wanted: pins vent what they stand in.',
  ],
  cautions: [{ when: 's < 0', says: 'The gap is deeper than the vent depth of the resin: it will flash.' }],
  related: ['FIT.GAP', 'FILL.VENT', 'PIN.STAND'],
});
