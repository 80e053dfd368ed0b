import type { FamilyWords } from '../../core/familyWords';

export const springWords: FamilyWords = {
  title: 'Springs',
  question: 'Which spring holds and returns it, and does the spring last?',
  also: 'coil helical compression die spring return',
  functions: {
    'SPRING.RATE':
      'spring constant; stiffness; k; pounds per inch; newton per millimeter; coil count and wire size',
    'SPRING.FORCE': 'load at a length; how hard it pushes; compressed force',
    'SPRING.PRELOAD':
      'force when installed; initial load; force with the mold closed; pocket depth; seated force',
    'SPRING.SHIM': 'washer under the spring; spacer thickness; raise the preload; adjust the tension; packer',
    'SPRING.LENGTH': 'compressed height; height under load; how short it gets; deflection',
    'SPRING.HOLD':
      'keep an insert in place; spring strong enough; hold up the weight; weight of the slide; return the ejector plate; shaking; seal drag',
    'SPRING.SOLID': 'coil bind; fully compressed; bottomed out; block length; shut height; closed height',
    'SPRING.TRAVEL':
      'usable stroke; how far can it move; before it bottoms; available deflection; maximum compression',
    'SPRING.OVERRUN': 'travel left before solid; coil bind clearance; reserve of deflection; overtravel',
    'SPRING.STRESS':
      'shear stress in the coil; Wahl factor; will it take a set; overstressed; torsion; fatigue; break',
    'SPRING.STRENGTH': 'tensile strength of wire; music wire strength; piano wire; minimum tensile; ultimate',
    'SPRING.MARGIN': 'safety factor of a spring; will the spring set; yield in torsion; strong enough wire',
    'SPRING.BUCKLE': 'bows sideways; unstable; long thin spring; needs a guide rod; slenderness',
    'SPRING.FREELIMIT': 'longest spring without a guide rod; maximum free length; stability; will not bow',
    'SPRING.SERIES': 'stacked end to end; one after another; springs in a row; combined rate',
    'SPRING.PARALLEL':
      'several springs side by side; four springs together; total rate; combined stiffness; nested',
    'SPRING.WAVERATE': 'wave washer stiffness; wavy spring; flat wire; crest to crest constant',
    'SPRING.WAVESTRESS': 'wave washer stress; flat wire bending',
    'SPRING.DISCFORCE': 'Belleville washer load; cone washer; coned disk; conical washer force',
    'SPRING.DISCSTRESS': 'Belleville washer stress; cone washer stress; cracks; coned disk',
    'SPRING.DISCSTACK':
      'stack of Belleville washers; cone washers nested or opposed; series and parallel disks',
  },
};
