import type { StandInRange } from './range';
import { Refused } from './typed';

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
}

class StandInChart {
  readonly title = { text: '' };
  readonly legend = { visible: true };
  readonly axes = { categoryAxis: { title: { text: '' } }, valueAxis: { title: { text: '' } } };
  readonly all: StandInSeries[];
  readonly series = {
    getItemAt: (index: number) => this.all[index],
    add: (name: string): StandInSeries => {
      const one = new StandInSeries();
      one.name = name;
      this.all.push(one);
      return one;
    },
  };
  place: readonly StandInRange[] = [];

  constructor(
    readonly type: string,
    values: StandInRange,
  ) {
    this.all = [new StandInSeries(values)];
  }

  setPosition(...corners: StandInRange[]): void {
    this.place = corners;
  }
}

export class StandInCharts {
  readonly all: StandInChart[] = [];

  add(type: string, values: StandInRange): StandInChart {
    const chart = new StandInChart(type, values);
    this.all.push(chart);
    return chart;
  }
}

export class StandInTables {
  readonly all: StandInRange[] = [];

  add(range: StandInRange, hasHeaders: boolean): StandInRange {
    const [head = []] = range.values;
    if (!hasHeaders || new Set(head).size < head.length || head.includes('')) {
      throw new Refused('InvalidArgument', 'Every column of a table has a name of its own.');
    }
    this.all.push(range);
    return range;
  }
}
