import { makeStyles, tokens } from '@fluentui/react-components';
import * as Plot from '@observablehq/plot';
import { useEffect, useMemo, useRef } from 'react';
import { numberText } from '../../core/format';
import type { Outcome } from '../../whatif/run';
import { chartsOf, type Chart } from './chartData';

const useStyles = makeStyles({
  // The library wraps a chart with a legend into a figure of its own.
  chart: { margin: 0, '& figure': { margin: 0 } },
  caption: {
    marginBottom: '2px',
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: 'anywhere',
  },
});

const HEIGHT = 190;
const LEAST_WIDTH = 240;

/** A line chart of every result that is a number. */
export function Charts({ outcome }: { readonly outcome: Outcome }) {
  const styles = useStyles();
  const charts = useMemo(() => chartsOf(outcome), [outcome]);
  return charts.map((chart) => (
    <figure key={chart.title} className={styles.chart}>
      <figcaption className={styles.caption}>{chart.title}</figcaption>
      <Lines chart={chart} />
    </figure>
  ));
}

function Lines({ chart }: { readonly chart: Chart }) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const draw = () => {
      element.replaceChildren(drawn(chart, Math.max(LEAST_WIDTH, element.clientWidth)));
    };
    draw();
    const watch = new ResizeObserver(draw);
    watch.observe(element);
    return () => {
      watch.disconnect();
    };
  }, [chart]);
  // The table says to a reader of the screen what the lines say to the eye.
  return (
    <div role="img" aria-label={`Line chart: ${chart.title}`}>
      <div ref={frame} aria-hidden />
    </div>
  );
}

function drawn(chart: Chart, width: number): Element {
  const { points, xLabel, yLabel, series, isOrdinal } = chart;
  const lines = { x: 'x', y: 'y', ...(series !== undefined && { stroke: 'series', z: 'series' }) };
  return Plot.plot({
    width,
    height: HEIGHT,
    marginLeft: 56,
    marginBottom: 38,
    style: { background: 'transparent', color: 'inherit', fontSize: '12px', overflow: 'visible' },
    x: { label: xLabel, ...(isOrdinal && { type: 'point' as const, domain: points.map(({ x }) => x) }) },
    y: { label: yLabel, grid: true, nice: true },
    ...(series !== undefined && { color: { ...colors(chart), legend: true, label: series } }),
    marks: [
      Plot.line(points, { ...lines, strokeWidth: 1.8 }),
      Plot.dot(points, {
        ...lines,
        r: 2.2,
        fill: series === undefined ? 'currentColor' : 'series',
        tip: TIP,
      }),
    ],
  });
}

const readable = (value: unknown): string => (typeof value === 'number' ? numberText(value) : String(value));

/** In the colors of the panel, since its own would be white in the dark, and with the digits of the table. */
const TIP = {
  fill: tokens.colorNeutralBackground1,
  stroke: tokens.colorNeutralStroke1,
  format: { x: readable, y: readable, stroke: readable, fill: false, z: false },
} as const;

/** Both kinds keep away from what is too light or too dark for the page. */
const colors = ({ isShaded }: Chart): Plot.ScaleOptions =>
  isShaded
    ? { type: 'linear', scheme: 'turbo', range: [0.1, 0.9] }
    : { type: 'ordinal', scheme: 'Tableau10' };
