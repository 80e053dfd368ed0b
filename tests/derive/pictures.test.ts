import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { pinStand } from '../../src/catalogue/pin/stand';
import { seatRelease } from '../../src/catalogue/seat/release';
import { seatSink } from '../../src/catalogue/seat/sink';
import { seatStep } from '../../src/catalogue/seat/step';
import { tapDepth } from '../../src/catalogue/tap/depth';
import type { Check } from '../../src/core/checks';
import type { Definition } from '../../src/core/define';
import { SYSTEMS, type System } from '../../src/core/quantity';
import { chartOf, pictureOf, PICTURES } from '../../src/derive/pictures';
import { WIDTH } from '../../src/derive/pictures/drawing';
import { seatChartPicture } from '../../src/derive/pictures/seatChart';
import { exaggeration } from '../../src/derive/pictures/subject';
import { workOf } from '../../src/derive/work';
import { checksOf } from '../support/checks';
import { valuesOf } from '../support/runCheck';

const drawn = (definition: Definition, check: Check, system: System = 'mm'): string | undefined =>
  pictureOf(
    definition.name,
    workOf(definition, valuesOf(definition, check, system), system, () => '').lines,
    system,
  );

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** The elements of an SVG; throws where it is no well-formed XML. */
function elementsOf(svg: string): Element[] {
  const elements: Element[] = [];
  const open: Element[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const element = { name, attributes: attributes as Record<string, string>, text: '' };
    elements.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    for (const element of open) element.text += text;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(svg).close();
  return elements;
}

/** Coordinates outside of the picture by more than a text may be misjudged. */
function outside(elements: readonly Element[]): string[] {
  const height = Number(elements[0]?.attributes['viewBox']?.split(' ')[3]);
  return elements.flatMap(({ name, attributes, text }) => {
    const points =
      name === 'path'
        ? [...(attributes['d'] ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
            Number(x),
            Number(y),
          ])
        : name === 'text'
          ? [[Number(attributes['x']), Number(attributes['y'])]]
          : [];
    return points
      .filter(([x = NaN, y = NaN]) => !(x >= -1 && x <= WIDTH + 1 && y >= -1 && y <= height + 1))
      .map(([x, y]) => `${name} ${text} at ${x},${y} of ${WIDTH} × ${height}`);
  });
}

const pictured = catalogue.filter(({ name }) => PICTURES[name]);

describe('pictures', () => {
  it('belong to functions of the catalogue', () => {
    expect(pictured.map(({ name }) => name).sort()).toEqual(Object.keys(PICTURES).sort());
  });

  it.each(pictured.map((definition) => [definition.name, definition] as const))(
    'of %s are well formed, said in words, and inside of their frame for every check',
    (_name, definition) => {
      let count = 0;
      for (const check of checksOf(definition)) {
        for (const system of SYSTEMS) {
          const svg = drawn(definition, check, system);
          if (svg === undefined) continue;
          count++;
          expect(svg).not.toMatch(/NaN|undefined|Infinity/);
          const elements = elementsOf(svg);
          expect(elements[0]?.attributes).toMatchObject({ role: 'img' });
          expect(elements.find(({ name }) => name === 'title')?.text).toMatch(/^[A-Z]/);
          expect(elements.find(({ name }) => name === 'desc')?.text.length).toBeGreaterThan(30);
          expect(outside(elements)).toEqual([]);
          // Colours are those of the text around it, for light and dark alike.
          expect(svg).not.toMatch(/#[0-9a-f]{3,6}\b(?!;)|rgb\(|style=/i);
        }
      }
      expect(count).toBeGreaterThan(0);
    },
  );

  it('draw the chart of the seat from its rows', () => {
    const elements = elementsOf(seatChartPicture());
    expect(outside(elements)).toEqual([]);
    expect(elements.filter(({ attributes }) => attributes['class'] === 'picture-accent')).toHaveLength(3);
  });

  it('chart what a draft decides for the values of a seat, within the frame', () => {
    for (const definition of [seatSink, seatStep, seatRelease]) {
      for (const check of checksOf(definition)) {
        for (const system of SYSTEMS) {
          const { lines } = workOf(definition, valuesOf(definition, check, system), system, () => '');
          const svg = chartOf(definition.name, lines, system);
          expect(svg).toBeDefined();
          expect(svg).not.toMatch(/NaN|undefined|Infinity/);
          expect(outside(elementsOf(svg ?? ''))).toEqual([]);
        }
      }
    }
    expect(chartOf('SEAT.CLEAR', [], 'mm')).toBeUndefined();
  });

  it('say how much larger a sink is drawn than the rest', () => {
    expect(drawn(seatSink, checksOf(seatSink)[0] as Check)).toMatch(/Sink z = 0\.0516423 mm, drawn × \d+/);
  });

  it('draw a pin above its face where it stands proud, below where it does not', () => {
    const [low] = checksOf(pinStand);
    const high = checksOf(pinStand).find(({ expect: answer }) => answer === '0.02 mm');
    expect(drawn(pinStand, low as Check)).toContain('below the face');
    expect(drawn(pinStand, high as Check)).toContain('proud of the face');
  });

  it('draw nothing for an answer in words or a missing value', () => {
    expect(pictureOf('SEAT.SINK', [], 'mm')).toBeUndefined();
    expect(pictureOf('COST.PART', [], 'mm')).toBeUndefined();
  });

  it('keep sizes to scale: the thread, the chamfer and the point of a blind hole', () => {
    const svg = drawn(tapDepth, checksOf(tapDepth)[0] as Check) ?? '';
    const ends = [
      ...svg.matchAll(
        /<path d="M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)" fill="none" stroke="currentColor" stroke-width="0.8"\/>/g,
      ),
    ]
      .map(([, x1, y1, x2, y2]) => [Number(x1), Number(y1), Number(x2), Number(y2)] as const)
      .filter(([x1, y1, x2, y2]) => x1 === x2 && y2 > y1)
      .map(([, y1, , y2]) => y2 - y1);
    // Full thread 12 mm, chamfer 4 mm and the whole hole, 17.5021515476 mm by hand.
    const full = ends.find((length) =>
      ends.some((other) => Math.abs(other / length - 17.5021515476 / 12) < 1e-3),
    );
    expect(full).toBeDefined();
  });
});

describe('the factor of an exaggeration', () => {
  it('is a round one that stays below what is wanted', () => {
    expect(exaggeration(0.1, 12)).toBe(100);
    expect(exaggeration(0.2, 12)).toBe(50);
    expect(exaggeration(5, 12)).toBe(2);
    expect(exaggeration(20, 12)).toBe(1);
    expect(exaggeration(0, 12)).toBe(1);
  });
});
