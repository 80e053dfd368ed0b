import { named, type Input, type NamedColumn, type NativeInput, type NativeWriter } from '../../core/define';
import { systemUnit, type System } from '../../core/quantity';
import { namesOf } from '../../tables/names';
import { findWire, wireModuli, WIRES, wireSteps, wireStrength, type Wire } from '../../tables/springs';

const WHAT = 'the name of a spring wire such as "music wire" or "302 stainless"';

/** What the elastic functions need to know of a spring wire. */
interface ElasticWire {
  /** Shear modulus of a wire of this diameter; cold drawing makes thin wire a little stiffer. */
  readonly shearAt: (wire: number) => number;
  /** The same as steps: from a diameter on, m, the modulus. */
  readonly shearSteps: readonly (readonly [from: number, shear: number])[];
  /** Shear modulus over Young’s modulus, at the size where it is largest: that spring buckles first. */
  readonly modulusRatio: number;
}

/** Young’s modulus of spring steel beside a shear modulus that is given as a number, Pa (EN 10270-1). */
const STEEL_E = 206e9;
/** Shear modulus of spring steel, EN 10270-1. */
export const STEEL_G = '81500 MPa';

const elasticWire = (wire: Wire): ElasticWire => ({
  shearAt: (diameter) => wireModuli(wire, diameter).shear,
  shearSteps: wireSteps(wire).map((from) => [from, wireModuli(wire, from).shear] as const),
  modulusRatio: Math.max(...wire.moduli.map(([, shear, elastic]) => shear / elastic)),
});

/** A spring wire by name, or its shear modulus as a number. Gives the symbol `gamma`, G/E. */
export const elasticMaterial = (standard: string, says: string): Input<'material', ElasticWire> =>
  named<'material', ElasticWire>(
    'material',
    'material',
    {
      what: WHAT,
      read: (text) => elasticWire(findWire(text)),
      names: () => namesOf(WIRES),
      number: {
        kind: 'pressure',
        says: 'shear modulus',
        above: '0 MPa',
        // A modulus of shear is below Young’s.
        below: '206000 MPa',
        means: (shear) => ({ shearAt: () => shear, shearSteps: [[0, shear]], modulusRatio: shear / STEEL_E }),
      },
      binds: {
        gamma: {
          gives: 'ratio',
          says: 'Shear modulus over Young’s modulus',
          from: (wire) => wire.modulusRatio,
        },
      },
    },
    { default: standard, says },
  );

const MOST_STEPS = Math.max(...WIRES.map((wire) => wireSteps(wire).length));
/** Where a wire has no further step, m. */
const NEVER = 1000;

/** Shear modulus as worksheet text, of a wire whose diameter is the text `d`. */
export function nativeShear(material: NativeInput<ElasticWire>, d: string): string {
  const places = Array.from({ length: MOST_STEPS }, (_, at) => at);
  const columns = places.flatMap((at): [string, NamedColumn<ElasticWire>][] => [
    [`d_${at}`, { head: `Step ${at + 1} from (m)`, from: ({ shearSteps: own }) => own[at]?.[0] ?? NEVER }],
    [
      `G_${at}`,
      { head: `Shear modulus ${at + 1} (Pa)`, from: ({ shearSteps: own }) => (own[at] ?? own[0])?.[1] ?? 0 },
    ],
  ]);
  const found: Readonly<Record<string, string>> = material.look(Object.fromEntries(columns));
  const of = (symbol: string): string => found[symbol] ?? '';
  return places
    .slice(1)
    .reduce((text, at) => `IF(${d}<${of(`d_${at}`)},${text},${of(`G_${at}`)})`, of('G_0'));
}

/** A spring wire by name. */
export const wireMaterial = named<'material', Wire>(
  'material',
  'material',
  { what: WHAT, read: findWire, names: () => namesOf(WIRES) },
  { says: 'Material of the wire' },
);

/** Minimum tensile strength as worksheet text, of a wire whose diameter is the text `d`. */
export function nativeWireStrength(material: NativeInput<Wire>, d: string, write: NativeWriter): string {
  const law = (wire: Wire, at: number): Wire['laws'][number] =>
    wire.laws[Math.min(at, wire.laws.length - 1)] as Wire['laws'][number];
  // At a diameter of one unit A/d^m is A, and a - b log d is a.
  const atOne = (wire: Wire, at: number, system: System): number =>
    wireStrength({ ...wire, laws: [law(wire, at)] }, systemUnit('length', system).factor, system);
  const columns = (at: number, thicker: string): Record<string, NamedColumn<Wire>> => ({
    [`A_in${at}`]: { head: `A at 1 in (Pa)${thicker}`, from: (own) => atOne(own, at, 'in') },
    [`A${at}`]: { head: `A or a at 1 mm (Pa)${thicker}`, from: (own) => atOne(own, at, 'mm') },
    [`m${at}`]: { head: `m${thicker}`, from: (own) => pick(law(own, at), 'm') },
    [`b${at}`]: { head: `b (Pa)${thicker}`, from: (own) => pick(law(own, at), 'b') * 1e6 },
  });
  const found: Readonly<Record<string, string>> = material.look({
    upTo: { head: 'First law up to (m)', from: (own) => law(own, 0).upTo / 1000 },
    ...columns(0, ''),
    ...columns(1, ', thicker wire'),
  });
  const of = (symbol: string): string => found[symbol] ?? '';
  const unitOf = (system: System): string => String(systemUnit('length', system).factor);
  const unit = write.bySystem(unitOf('in'), unitOf('mm'));
  const only = (at: number): string => {
    const A = write.bySystem(of(`A_in${at}`), of(`A${at}`));
    const [metric, m, b] = [of(`A${at}`), of(`m${at}`), of(`b${at}`)];
    return `IF(${b}>0,${metric}-${b}*LOG10(${d}/${unitOf('mm')}),${A}/(${d}/${unit})^${m})`;
  };
  const strength = write.step('S_ut', `IF(${d}<=${of('upTo')},${only(0)},${only(1)})`);
  write.refuse(`${strength}<=0`, 'wire must be a size that the material is made in');
  return strength;
}

const pick = (law: Wire['laws'][number], of: 'm' | 'b'): number =>
  (law as Partial<Record<typeof of, number>>)[of] ?? 0;
