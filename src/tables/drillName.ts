import { type Drill, DRILLS } from './drills';
import { AmbiguousName, nearestNames, plainSigns, UnknownName } from './names';

const byName = new Map(DRILLS.map((drill) => [drill.name, drill]));

/** Diameters written in decimals of an inch are good to this, m. */
const SAME_SIZE = 0.00005 * 0.0254;

/**
 * The drill of a name as people write it: `#21`, `No. 7`, `number 7`, `F`, `letter F`, `7/32`, `1 1/4`, `5.0 mm`, `5mm`, `0.201 in`.
 * A bare whole number is refused: `7` is #7 or 7.0 mm.
 */
export function findDrill(given: string): Drill {
  const whole = /^(\d+)\s*(?:IN\b\.?|INCH|")$/i.exec(given.trim());
  const text = plainSigns(given)
    .toUpperCase()
    .replace(/^(?:NO\b\.?|NUMBER|WIRE|GAUGE|GAGE)\s*#?\s*/, '#')
    .replace(/^(?:LETTER|SIZE)\s+/, '')
    .replace(/\s*(?:DRILL|INCH(?:ES)?|\bIN\b\.?|")\s*$/, '')
    .trim();
  const name = whole ? `${whole[1] ?? ''} in` : spelled(text);
  const drill = name === undefined ? undefined : byName.get(name);
  if (drill) return drill;
  if (/^\d+$/.test(text) && !whole) {
    const choices = [`#${Number(text)}`, `${Number(text)}.0 mm`, `${Number(text)} in`].filter((it) =>
      byName.has(it),
    );
    if (choices.length > 1) throw new AmbiguousName('drill', given, choices);
    throw new UnknownName('drill', given, choices);
  }
  const wanted = inches(text) ?? metres(text);
  if (wanted === undefined) throw new UnknownName('drill', given, nearestNames(text, [...byName.keys()]));
  const series = metres(text) === undefined ? DRILLS : DRILLS.filter((d) => d.series === 'metric');
  const nearest = [...series].sort((a, b) => Math.abs(a.diameter - wanted) - Math.abs(b.diameter - wanted));
  const [first] = nearest;
  if (first && Math.abs(first.diameter - wanted) < SAME_SIZE) return first;
  throw new UnknownName(
    'drill',
    given,
    nearest.slice(0, 3).map((d) => d.name),
  );
}

/** The table's spelling of a name, where the text has the form of one. */
function spelled(text: string): string | undefined {
  const number = /^#\s*0*(\d+)$/.exec(text);
  if (number) return `#${number[1] ?? ''}`;
  if (/^[A-Z]$/.test(text)) return text;
  const fraction = /^(?:(\d+)[- ]+)?(\d+)\/(\d+)$/.exec(text);
  if (fraction) return [fraction[1], `${fraction[2] ?? ''}/${fraction[3] ?? ''}`].filter(Boolean).join('-');
  const mm = /^(\d*\.?\d+)\s*MM$/.exec(text);
  if (!mm) return undefined;
  const size = Number(mm[1]);
  return `${size.toFixed(Math.abs(size * 10 - Math.round(size * 10)) < 1e-9 ? 1 : 2)} mm`;
}

const inches = (text: string): number | undefined =>
  /^\d*\.\d+$/.test(text) ? Number(text) * 0.0254 : undefined;
const metres = (text: string): number | undefined => {
  const mm = /^(\d*\.?\d+)\s*MM$/.exec(text);
  return mm ? Number(mm[1]) / 1000 : undefined;
};
