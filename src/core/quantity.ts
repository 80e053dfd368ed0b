import { dimension, RATIO, type Dimension } from './dimension';
import { UNITS, type Unit } from './units';

/** The two systems a worksheet can ask for in its `units` argument. */
export type System = 'in' | 'mm';
export const SYSTEMS: readonly System[] = ['in', 'mm'];

/**
 * A kind of quantity: what may be added to what is a matter of dimension; what may be *typed* for what is a matter
 * of kind. Torque and energy share a dimension but not their units, and so do temperature and temperature rise.
 */
export type Kind = keyof typeof UNITS | 'tonnage';

interface KindFacts {
  readonly says: string;
  readonly dimension: Dimension;
  readonly units: readonly Unit[];
  /** Symbols of the unit in which plain numbers are read and results given. */
  readonly system: Readonly<Record<System, string>>;
}

const kind = (says: string, dim: Dimension, units: readonly Unit[], inch: string, mm = inch): KindFacts => ({
  says,
  dimension: dim,
  units,
  system: { in: inch, mm },
});

const LENGTH = dimension({ m: 1 });
const FORCE = dimension({ kg: 1, m: 1, s: -2 });
const PRESSURE = dimension({ kg: 1, m: -1, s: -2 });
const ENERGY = dimension({ kg: 1, m: 2, s: -2 });
const SPEED = dimension({ m: 1, s: -1 });
const VOLUME = dimension({ m: 3 });

export const KINDS: Readonly<Record<Kind, KindFacts>> = {
  length: kind('length', LENGTH, UNITS.length, 'in', 'mm'),
  area: kind('area', dimension({ m: 2 }), UNITS.area, 'in²', 'mm²'),
  volume: kind('volume', VOLUME, UNITS.volume, 'in³', 'cm³'),
  gasVolume: kind('volume of gas', VOLUME, UNITS.gasVolume, 'ft³', 'L'),
  force: kind('force', FORCE, UNITS.force, 'lbf', 'N'),
  tonnage: kind('force in tons', FORCE, UNITS.force, 'tonf', 'tf'),
  pressure: kind('pressure', PRESSURE, UNITS.pressure, 'psi', 'MPa'),
  reciprocalPressure: kind(
    'compliance to pressure',
    dimension({ kg: -1, m: 1, s: 2 }),
    UNITS.reciprocalPressure,
    '1/psi',
    '1/MPa',
  ),
  torque: kind('torque', ENERGY, UNITS.torque, 'lbf·in', 'N·m'),
  energy: kind('energy', ENERGY, UNITS.energy, 'ft·lbf', 'J'),
  stiffness: kind('stiffness', dimension({ kg: 1, s: -2 }), UNITS.stiffness, 'lbf/in', 'N/mm'),
  mass: kind('mass', dimension({ kg: 1 }), UNITS.mass, 'oz', 'g'),
  density: kind('density', dimension({ kg: 1, m: -3 }), UNITS.density, 'g/cm³'),
  temperature: kind('temperature', dimension({ K: 1 }), UNITS.temperature, '°F', '°C'),
  // For constants of the books that are printed in kelvin whatever the shop measures in.
  absoluteTemperature: kind('absolute temperature', dimension({ K: 1 }), UNITS.absoluteTemperature, 'K'),
  rise: kind('temperature rise', dimension({ K: 1 }), UNITS.rise, '°F', '°C'),
  expansion: kind('coefficient of expansion', dimension({ K: -1 }), UNITS.expansion, '1/°F', '1/°C'),
  diffusivity: kind('thermal diffusivity', dimension({ m: 2, s: -1 }), UNITS.diffusivity, 'in²/s', 'mm²/s'),
  conductivity: kind(
    'thermal conductivity',
    dimension({ kg: 1, m: 1, s: -3, K: -1 }),
    UNITS.conductivity,
    'W/(m·K)',
  ),
  cuttingSpeed: kind('cutting speed', SPEED, UNITS.cuttingSpeed, 'ft/min', 'm/min'),
  feedRate: kind('feed rate', SPEED, UNITS.feedRate, 'in/min', 'mm/min'),
  speed: kind('speed', SPEED, UNITS.speed, 'in/s', 'mm/s'),
  acceleration: kind('acceleration', dimension({ m: 1, s: -2 }), UNITS.acceleration, 'ft/s²', 'm/s²'),
  rotation: kind('speed of rotation', dimension({ s: -1 }), UNITS.rotation, 'rpm'),
  shearRate: kind('shear rate', dimension({ s: -1 }), UNITS.shearRate, '1/s'),
  flow: kind('flow', dimension({ m: 3, s: -1 }), UNITS.flow, 'in³/s', 'cm³/s'),
  sonicConductance: kind(
    'sonic conductance',
    dimension({ kg: -1, m: 4, s: 1 }),
    UNITS.sonicConductance,
    'L/(s·bar)',
  ),
  power: kind('power', dimension({ kg: 1, m: 2, s: -3 }), UNITS.power, 'hp', 'kW'),
  heatContent: kind('heat content', dimension({ m: 2, s: -2 }), UNITS.heatContent, 'J/g'),
  specificHeat: kind('specific heat', dimension({ m: 2, s: -2, K: -1 }), UNITS.specificHeat, 'J/(g·K)'),
  film: kind(
    'film coefficient',
    dimension({ kg: 1, s: -3, K: -1 }),
    UNITS.film,
    'Btu/(h·ft²·°F)',
    'W/(m²·K)',
  ),
  viscosity: kind('viscosity', dimension({ kg: 1, m: -1, s: -1 }), UNITS.viscosity, 'Pa·s'),
  // The true dimension depends on the power index; equations that use it are declared as fitted.
  consistency: kind('consistency', dimension({ kg: 1, m: -1, s: -1 }), UNITS.consistency, 'Pa·s^n'),
  time: kind('time', dimension({ s: 1 }), UNITS.time, 's'),
  angle: kind('angle', RATIO, UNITS.angle, 'deg'),
  ratio: kind('ratio', RATIO, UNITS.ratio, ''),
  percent: kind('percentage', RATIO, UNITS.percent, '%'),
  count: kind('whole number', RATIO, UNITS.count, ''),
  perInch: kind('number per length', dimension({ m: -1 }), UNITS.perInch, '1/in'),
  money: kind('sum of money', dimension({ money: 1 }), UNITS.money, ''),
  moneyRate: kind('rate per hour', dimension({ money: 1, s: -1 }), UNITS.moneyRate, '/h'),
  massPrice: kind('price by mass', dimension({ money: 1, kg: -1 }), UNITS.massPrice, '/lb', '/kg'),
};

const unitsOf = (system: System): Readonly<Record<Kind, Unit>> =>
  Object.fromEntries(
    Object.entries(KINDS).map(([name, facts]) => {
      const found = facts.units.find((u) => u.symbol === facts.system[system]);
      if (!found) throw new Error(`${name} has no unit ${facts.system[system]}`);
      return [name, found];
    }),
  ) as Record<Kind, Unit>;

const BY_SYSTEM: Readonly<Record<System, Readonly<Record<Kind, Unit>>>> = {
  in: unitsOf('in'),
  mm: unitsOf('mm'),
};

/** The unit in which a system reads and gives a kind of quantity. */
export const systemUnit = (k: Kind, system: System): Unit => BY_SYSTEM[system][k];

export const toSI = (value: number, u: Unit): number => value * u.factor + u.offset;

/** Some steps of a double's last digit: what multiplying by a unit's factor and dividing by another's can add. */
const NOISE = 4 * Number.EPSILON;
const PLACES = 1e10;

/** The decimal number that a conversion missed by its rounding alone: 4.2 mm, not 4.199999999999999, so that a look-up finds it. */
function settled(value: number, size: number): number {
  const places = value * PLACES;
  // Beyond, a double holds no such decimals, and dividing again would move its last digit.
  if (Math.abs(places) > Number.MAX_SAFE_INTEGER) return value;
  const near = Math.round(places) / PLACES;
  return Math.abs(near - value) <= NOISE * size ? near : value;
}

type Scale = Pick<Unit, 'factor' | 'offset'>;

export function fromSI(value: number, to: Scale): number {
  const size = Math.abs(value) + Math.abs(to.offset);
  return settled((value - to.offset) / to.factor, size / to.factor);
}

/** From one unit to another of the same kind, by the distance of their zero points: whole hundredths of a ninth of a kelvin. */
export function convert(value: number, from: Scale, to: Scale): number {
  if (from === to) return value;
  const shift = Math.round((from.offset - to.offset) * 900) / 900;
  const size = Math.abs(value) * from.factor + Math.abs(shift);
  return settled((value * from.factor + shift) / to.factor, size / to.factor);
}
