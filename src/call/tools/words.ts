import type { FamilyWords } from '../../core/familyWords';

/** What the families of functions about functions are for. */
export const toolWords: Readonly<Record<string, FamilyWords>> = {
  TRY: {
    title: 'What if',
    question: 'What happens when an input changes?',
    also: 'what if vary study sensitivity function about functions',
    functions: {
      'TRY.TABLE': 'data table; two way table; matrix of results; sweep; chart of values; list of results',
      'TRY.SOLVE':
        'goal seek; back solve; work backwards; find the input; solve for; target value; inverse; reverse',
      'TRY.SWING': 'tornado; sensitivity; which input matters most; biggest influence; rank the inputs',
      'TRY.SPREAD': 'Monte Carlo; spread of a result; uncertainty; variation; scatter; random',
      'TRY.MATCH':
        'fit to measurements; calibrate; least squares; match trial data; curve fit; tune friction to what I measured; back out a value',
    },
  },
  SHOW: {
    title: 'Show the work',
    question: 'How was it worked out, from what source, and does it hold?',
    also: 'explain documentation audit check function about functions',
    functions: {
      'SHOW.WORK':
        'steps of the calculation; formula used; show the equation; how is it calculated; derivation',
      'SHOW.SOURCE': 'reference; where does it come from; standard; handbook; citation; origin of a number',
      'SHOW.CAUTION': 'warning; hazard; what to watch; safety; limits',
      'SHOW.CHECK': 'valid range; is it valid; out of range; sanity check; plausible',
      'SHOW.BASIS': 'version; which edition; revision; stamp on the sheet',
      'SHOW.MARGIN': 'safety factor; strength against load; will it yield; factor of safety; strong enough',
      'SHOW.STEP': 'intermediate value; one line of the work; partial result; inner value',
      'SHOW.UNIT': 'unit of the result; what unit is this; unit label; unit column',
    },
  },
  UNIT: {
    title: 'Units',
    question: 'What is it in another unit, and does an equation of my own fit?',
    also: 'convert conversion metric imperial inch mm',
    functions: {
      'UNIT.CONVERT':
        'inch to mm; psi to bar; psi to MPa; metric conversion; Fahrenheit to Celsius; pounds to newtons; grams to ounces; convert; gallons; liters; thou; thousandths',
      'UNIT.FORMULA':
        'own equation; custom formula; my own calculation; shop formula; unit check; dimensional analysis; type an equation',
    },
  },
};
