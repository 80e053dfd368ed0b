import { input } from '../../core/define';
import { rise } from '../heat/inputs';
import { expandingMetal } from '../metals';

/** An ejector pin in its stack of plates, as the functions of its length take it. */

export const stack = input('stack', 'S', 'length', {
  above: '0 mm',
  usual: ['5 mm', '1 m'],
  says: 'Stack from the seat of the pin’s head to the face of the mold, at room temperature',
});

export const warmStack = [
  expandingMetal('plateMetal', 'pl', 'Metal of the plates'),
  rise('plateRise', 'DT_pl', 'the plates'),
  expandingMetal('pinMetal', 'pin', 'Metal of the pin'),
  rise('pinRise', 'DT_pin', 'the pin'),
] as const;

export const EXPANDING_STACK = 'Linear expansion of pin and plates, each by its own rise';
