import type { FamilyWords } from '../../core/familyWords';

export const pressWords: FamilyWords = {
  title: 'Press',
  question: 'What can the press make: pressure, shot, stroke, clamp?',
  also: 'machine injection molding benchtop hand plunger air cylinder pneumatic',
  functions: {
    'PRESS.INJECTION':
      'injection pressure from shop air; plunger pressure; how much pressure do I get; intensifier; barrel pressure; ram',
    'PRESS.AIRBORE': 'cylinder size; what bore do I need; size the air cylinder; piston diameter',
    'PRESS.SHOT':
      'shot size; barrel capacity; how much plastic per shot; maximum part size; volume of the barrel',
    'PRESS.STROKE': 'how far to move the plunger; ram travel; shot to stroke; cushion',
    'PRESS.PLUNGERSPEED':
      'injection speed; ram speed; how fast the plunger moves; valve flow; air flow limit; Cv',
    'PRESS.DAYLIGHT':
      'opening; does the mold fit between the platens; mold too tall; mold height; room to get the part out; platen distance; shut height; mold height; part removal space',
    'PRESS.SCREWCLAMP':
      'clamping with a screw; vise force; hand wheel; C-clamp; torque to clamp force; leadscrew; power screw; acme; jackscrew',
    'PRESS.SCREWRELEASE':
      'torque to loosen the clamp; undo the vise; self locking screw; back driving; unscrew',
    'PRESS.MELTVOLUME':
      'melt expands; volume hot versus cold; molten volume; swell; part volume to shot volume',
    'PRESS.RETURN': 'pull back force; retract; cylinder return; rod side; annulus',
    'PRESS.AIRUSE': 'compressed air consumption; compressor size; cfm; free air per cycle; tank',
    'PRESS.TOGGLE': 'toggle clamp; knee lever; linkage; mechanical advantage; lever force; arbor',
  },
};
