import { choice, input, procedure } from '../../core/define';
import { DRILL_SOURCES, drillSteps } from '../../tables/drills';
import { drillSeries, LARGE_DRILLS_CHANGE, nearestIn } from '../drills';

export const drillNearest = procedure({
  name: 'DRILL.NEAREST',
  summary: 'Name of the standard drill nearest a diameter.',
  inputs: [
    input('diameter', 'D', 'length', {
      above: '0 mm',
      usual: ['0.2 mm', '52 mm'],
      says: 'Diameter wanted',
    }),
    drillSeries,
    choice('round', ['nearest', 'up', 'down'], {
      default: 'nearest',
      says: 'Nearest, or next larger (up) or smaller (down)',
    }),
  ],
  gives: 'text',
  method: 'The drill of the series with the least difference; of two alike the smaller.',
  steps: {
    d: { gives: 'length', says: 'Diameter of that drill', equation: 'of the series' },
    delta: { gives: 'length', says: 'Its difference from what is wanted', equation: 'd - D' },
  },
  run: ({ diameter, series, round }, show) => {
    const drill = nearestIn(series, diameter, round);
    show('d', drill.diameter);
    show('delta', drill.diameter - diameter);
    return drill.name;
  },
  native: ({ diameter, series, round }, write) => {
    const { steps, end } = drillSteps(series.fixed(), round.fixed());
    write.refuse(`${diameter.text}<${steps[0]?.[0] ?? 0}`, 'no drill so small');
    write.refuse(`${diameter.text}>${end}`, 'no drill so large');
    return write.stepped(
      `Drills, ${series.fixed()}, ${round.fixed()}`,
      ['from (m)', 'drill'],
      steps.map(([from, { name }]) => [from, name]),
      diameter.text,
    );
  },
  changes: [LARGE_DRILLS_CHANGE],
  sources: [DRILL_SOURCES.number, DRILL_SOURCES.metric],
  notes: ['Drills of equal size (E and 1/4) take the fraction’s name where both series are asked.'],
  related: ['DRILL.SIZE', 'TAP.DRILLNAME'],
});
