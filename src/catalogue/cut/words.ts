import type { FamilyWords } from '../../core/familyWords';

export const cutWords: FamilyWords = {
  title: 'Cutting',
  question: 'What speed, feed, stepover and reach does a cutter take?',
  also: 'milling machining end mill endmill cutter speeds and feeds CNC tool router mill',
  functions: {
    'CUT.SPEED':
      'surface speed; SFM; surface feet; sfpm; cutting speed chart; carbide in steel; meters per minute; how fast to cut',
    'CUT.RPM': 'spindle speed; how fast to spin; revolutions; rpm from surface speed; S word',
    'CUT.FEED': 'feed rate; IPM; inches per minute; table feed; F word; feed from chip load; mm per minute',
    'CUT.CHIP':
      'chip thinning; true chip load; actual chip; light radial cut; too thin chip; rubbing; maximum chip thickness',
    'CUT.MEANCHIP': 'average chip thickness; mean chip; hm; chip for power; over the arc',
    'CUT.CHIPFEED':
      'chip thinning compensation; feed adjustment; high speed machining feed; trochoidal; adaptive; chip load for light cut',
    'CUT.BALLDIA':
      'effective diameter of a ball mill; ball nose speed; ball end mill at shallow depth; true cutting diameter',
    'CUT.SCALLOP':
      'cusp height; scallop height; surface finish with a ball mill; ridges; tool marks; roughness; peaks',
    'CUT.STEPOVER':
      'step over for a finish; stepover from scallop; stepover from cusp; ball nose spacing; pass spacing; surface finish wanted',
    'CUT.WALLSTEP':
      'stair steps on a draft wall; z step; waterline; step down on a tapered wall; z level; terraces; contour steps',
    'CUT.BEND':
      'tool deflection; cutter deflects; end mill bends; stick out; long reach; chatter; overhang; push off; tapered wall',
    'CUT.PULL':
      'side force for an allowed deflection; how hard may I push; load that bends; light finishing cut',
    'CUT.FORCE': 'cutting force; specific cutting force; kc; tooth load; load on the edge; push on the work',
    'CUT.POWER':
      'horsepower; spindle power; kW; can my machine take it; motor; spindle stalls; material removal rate',
    'CUT.TIME':
      'machining time; how long will it take; run time; minutes of cut; cycle time of the mill; estimate',
    'CUT.REACH':
      'holder collision; shank rubs; neck clearance; deep cavity; tool holder hits the wall; long reach; reduced neck; deep pocket',
  },
};
