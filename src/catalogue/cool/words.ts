import type { FamilyWords } from '../../core/familyWords';

export const coolWords: FamilyWords = {
  title: 'Cooling',
  question: 'How long until the part can come out, and how warm does the mold get?',
  also: 'cycle heat temperature chill water',
  functions: {
    'COOL.TIME':
      'cooling time; wall thickness to cycle; how long before ejecting; freeze; when can I open; set up; solidify',
    'COOL.TIMEROUND': 'cooling time of a boss; round bar; thick post; sprue cooling; rod',
    'COOL.MOLDTEMP':
      'mold gets hot; steady mold temperature; heats up over the run; uncooled mold; equilibrium; warm up',
    'COOL.CYCLE':
      'fastest cycle without water; wait between shots; keep the mold cool; how often can I shoot',
    'COOL.RISE': 'heat per shot; temperature rise of the mold; one shot heats the mold',
  },
};
