import { named, type Input, type NativeWriter } from '../../core/define';
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

/** A spring wire by name. */
export const wireMaterial = named<'material', Wire>(
  'material',
  'material',
  { what: WHAT, read: findWire, names: () => namesOf(WIRES) },
  { says: 'Material of the wire' },
);

/** Minimum tensile strength as worksheet text, of a wire whose diameter is the text `d`. */
export function nativeWireStrength(wire: Wire, d: string, write: NativeWriter): string {
  const unit = write.system() === 'in' ? 0.0254 : 0.001;
  const pieces = wire.laws.map((law) => {
    const alone = { ...wire, laws: [law] };
    const text =
      'a' in law
        ? `(${wireStrength(alone, 0.001, 'mm')}-${law.b * 1e6}*LOG10(${d}/0.001))`
        : `(${wireStrength(alone, unit, write.system())}/(${d}/${unit})^${law.m})`;
    return { text, upTo: law.upTo / 1000 };
  });
  const strength = write.step(
    'S_ut',
    pieces.reduceRight(
      (rest, { text, upTo }) => (rest === '' ? text : `IF(${d}<=${upTo},${text},${rest})`),
      '',
    ),
  );
  write.refuse(`${strength}<=0`, `wire must be a size that ${wire.name} is made in`);
  return strength;
}
