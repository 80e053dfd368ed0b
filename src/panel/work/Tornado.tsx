import { makeStyles, tokens } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import { numberText, withUnit } from '../../core/format';
import type { Call } from '../../work/calls';
import type { Surroundings } from '../../work/givenArguments';
import { swingOf, type Swing } from './swing';

const useStyles = makeStyles({
  figure: { margin: '14px 0 0' },
  caption: { fontSize: tokens.fontSizeBase200, fontWeight: tokens.fontWeightSemibold },
  picture: { width: '100%', height: 'auto', overflow: 'visible' },
  // Twelve pixels and more on the narrowest panel, which shrinks the picture.
  text: { fill: tokens.colorNeutralForeground1, fontSize: '13px' },
  quiet: { fill: tokens.colorNeutralForeground2, fontSize: '13px' },
  low: { fill: tokens.colorPaletteBlueBorderActive },
  high: { fill: tokens.colorPaletteMarigoldBorderActive },
  base: { stroke: tokens.colorNeutralStroke1 },
});

const WIDTH = 300;
const ROW = 34;
const BAR = 12;
/** Room for a number at each end. */
const SIDE = 54;
/** Widths of a letter. */
const LETTER = 6.6;

/** The swings of TRY.SWING as bars from the result at an argument's low to that at its high, the longest on top. */
export function Tornado({ call, around }: { readonly call: Call; readonly around: Surroundings }) {
  const styles = useStyles();
  const swing = useSwing(call, around);
  if (!swing) return null;
  const { base, lines, unit } = swing;
  const ends = lines.flatMap(({ low, high }) => [low, high]);
  const [least, most] = [Math.min(base, ...ends), Math.max(base, ...ends)];
  const x = (value: number): number => SIDE + ((value - least) / (most - least || 1)) * (WIDTH - 2 * SIDE);
  const height = lines.length * ROW + 20;
  const says = lines.map(
    ({ argument, low, high }) =>
      `${argument}: ${numberText(low)} at its low, ${numberText(high)} at its high`,
  );
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.caption}>
        The result at each argument’s low and high{unit === '' ? '' : `, ${unit}`}
      </figcaption>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${WIDTH} ${height}`}
        role="img"
        aria-label={`Tornado chart. ${says.join('. ')}.`}
      >
        {lines.map(({ argument, low, high }, at) => {
          const top = at * ROW;
          const bar = (value: number, className: string) => (
            <rect
              className={className}
              x={Math.min(x(base), x(value))}
              y={top + 15}
              width={Math.abs(x(value) - x(base))}
              height={BAR}
            />
          );
          const end = (value: number, other: number) => {
            const isLeft = value < other;
            return (
              <text
                className={styles.quiet}
                x={x(value) + (isLeft ? -3 : 3)}
                y={top + 25}
                textAnchor={isLeft ? 'end' : 'start'}
              >
                {numberText(Number(value.toPrecision(4)))}
              </text>
            );
          };
          return (
            <g key={argument}>
              <text
                className={styles.text}
                x={Math.max(0, x(base) - argument.length * LETTER * 0.5)}
                y={top + 11}
              >
                {argument}
              </text>
              {bar(low, styles.low)}
              {bar(high, styles.high)}
              {end(low, high)}
              {end(high, low)}
            </g>
          );
        })}
        <line className={styles.base} x1={x(base)} x2={x(base)} y1={13} y2={lines.length * ROW} />
        <text className={styles.quiet} x={x(base)} y={height - 6} textAnchor="middle">
          {withUnit(numberText(base), unit)} as it is
        </text>
      </svg>
    </figure>
  );
}

function useSwing(call: Call, around: Surroundings): Swing | undefined {
  const [swing, setSwing] = useState<Swing>();
  useEffect(() => {
    let isWanted = true;
    void swingOf(call, around).then((found) => {
      if (isWanted) setSwing(found);
    });
    return () => {
      isWanted = false;
    };
  }, [call, around]);
  return swing;
}
