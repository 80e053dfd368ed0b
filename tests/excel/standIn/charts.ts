import type { ChartDescription } from '../../../src/package/drawings/writeChart';
import { areaAddress } from '../../../src/cells/address';
import { absolute, type StandInRange } from './range';
import { Refused } from './typed';

const KINDS: Readonly<Record<string, ChartDescription['kind']>> = {
  XYScatterLines: 'scatter',
  LineMarkers: 'line',
  ColumnClustered: 'column',
  BarClustered: 'bar',
};

class StandInSeries {
  name = '';
  x: StandInRange | undefined;

  constructor(public values?: StandInRange) {}

  setValues(range: StandInRange): void {
    this.values = range;
  }

  setXAxisValues(range: StandInRange): void {
    this.x = range;
  }

  getDimensionDataSourceString(dimension: string): string {
    const range = dimension === 'Values' ? this.values : this.x;
    if (!range) throw new Refused('InvalidArgument', `The series has no ${dimension}.`);
    return absolute(range);
  }
}

class StandInAxis {
  readonly title = { text: '' };
  tickLabelPosition = 'NextToAxis';
}

class StandInChart {
  name = '';
  readonly title = { text: '' };
  readonly legend = { visible: true, position: 'Right' };
  readonly axes = { categoryAxis: new StandInAxis(), valueAxis: new StandInAxis() };
  readonly all: StandInSeries[];
  readonly series;
  place: readonly StandInRange[] = [];

  constructor(
    readonly type: string,
    values: StandInRange,
  ) {
    if (!(type in KINDS)) throw new Refused('InvalidArgument', `There is no chart ${type}.`);
    const all = (this.all = [new StandInSeries(values)]);
    this.series = {
      items: all,
      getItemAt: (index: number) => all[index],
      add: (name: string): StandInSeries => {
        const one = new StandInSeries();
        one.name = name;
        all.push(one);
        return one;
      },
    };
  }

  setPosition(...corners: StandInRange[]): void {
    this.place = corners;
  }

  /** As a file would have it; a line is named by its text. */
  describe(): ChartDescription {
    const [first, last] = this.place;
    if (!first || !last) throw new Error('the chart has no place');
    const { categoryAxis, valueAxis } = this.axes;
    return {
      kind: KINDS[this.type] ?? 'line',
      title: this.title.text,
      alongTitle: categoryAxis.title.text,
      valuesTitle: valueAxis.title.text,
      over: areaAddress({
        top: first.rowIndex,
        left: first.columnIndex,
        bottom: last.rowIndex,
        right: last.columnIndex,
      }),
      series: this.all.map(({ name, x, values }) => ({
        name,
        along: x ? absolute(x) : '',
        values: values ? absolute(values) : '',
      })),
    };
  }
}

export class StandInCharts {
  readonly all: StandInChart[] = [];

  get items(): readonly StandInChart[] {
    return this.all;
  }

  add(type: string, values: StandInRange): StandInChart {
    const chart = new StandInChart(type, values);
    this.all.push(chart);
    return chart;
  }
}
