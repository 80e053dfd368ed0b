import { input, type Step } from '../../core/define';
import { WAVE_FACTORS } from '../../tables/springs';

/** What the two functions of a wave spring share. */

const FEWEST = Math.min(...WAVE_FACTORS.map(([from]) => from));

export const wavesPerTurn = input('wavesPerTurn', 'N', 'ratio', {
  min: FEWEST,
  usual: [2, 15],
  says: 'Waves in one turn, in halves for crest to crest',
});

export const waveRing = {
  D_m: { gives: 'length', expr: '(D_e + D_i)/2', says: 'Mean diameter' },
  b: { gives: 'length', expr: '(D_e - D_i)/2', says: 'Radial width of the strip' },
} as const satisfies Record<string, Step>;

/** The table's factor as a conditional: `N <= 4 ? 3.88 : N <= 6.5 ? 2.9 : …`. */
export const WAVE_FACTOR = WAVE_FACTORS.map(([, upTo, factor], i) =>
  i === WAVE_FACTORS.length - 1 ? String(factor) : `N <= ${upTo} ? ${factor} : `,
).join('');

export const waveIsUsual = [
  {
    holds: '2*N <= floor(2*N)',
    says: 'Waves per turn come in halves (2.5, 3, 3.5 …): between them crest does not meet crest.',
  },
  {
    holds: 'b >= 3*t and b <= 10*t',
    says: 'The strip is not 3 to 10 times as wide as thick: it twists, or does not bend as a beam.',
  },
] as const;
