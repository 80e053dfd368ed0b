import type { FamilyWords } from '../../core/familyWords';

export const fillWords: FamilyWords = {
  title: 'Filling',
  question: 'How far does the melt run, what pressure does it take, and how does the air get out?',
  also: 'flow melt runner gate sprue nozzle vent short shot',
  functions: {
    'FILL.SLITRATE': 'shear rate in a thin wall; gate shear; rectangular channel; burning from shear',
    'FILL.TUBERATE': 'shear rate in a runner; nozzle shear; round gate; pin gate; pinpoint',
    'FILL.SLITDROP':
      'pressure loss in the wall; pressure drop along a strip; thin section; fan gate; flat channel',
    'FILL.TUBEDROP': 'pressure loss in the runner; sprue pressure drop; nozzle pressure loss; round channel',
    'FILL.DISCDROP': 'pressure to fill a disk; center gated lid; round part; radial flow',
    'FILL.BURN': 'diesel burn; burn marks; trapped air; air gets hot; scorch; blocked vent; dieseling; char',
    'FILL.REACH':
      'will it fill; flow length; how far can it flow; short shot; flow distance; thin wall filling; L/t',
    'FILL.FROZEN': 'frozen skin; freeze off; layer; gate freeze; solid layer; hesitation',
    'FILL.VISCOSITY': 'how thick is the melt; melt flow; Cross WLF; thinning; temperature and shear',
    'FILL.RUNNER': 'runner size; runner diameter; sprue diameter; feed channel; sprue size; how big a runner',
    'FILL.GATE': 'gate size; gate depth; gate thickness; edge gate; tab gate; how thick a gate',
    'FILL.VENT':
      'vent depth; how deep to grind a vent; parting line vent; air relief; vent groove; flash limit; shim for venting',
    'FILL.VENTFLOW': 'air flow through a vent; how much air gets out; vent capacity; enough venting',
    'FILL.VENTWIDTH':
      'how wide a vent; how many vents; total vent length; venting needed; let the air out in time',
  },
};
