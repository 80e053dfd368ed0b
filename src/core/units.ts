/**
 * Units of measurement with their exact factors to SI.
 *
 * Sources: inch, pound, pound-force by definition (international yard and pound agreement, 1959; standard gravity
 * 9.80665 m/s², 3rd CGPM 1901); the US gallon is 231 in³ (from memory); Btu is the International Table value;
 * 1 hp = 550 ft·lbf/s.
 */
export interface Unit {
  readonly symbol: string;
  /** SI value of one unit. */
  readonly factor: number;
  /** SI value at zero of the unit's scale: only temperatures have one. */
  readonly offset: number;
  /** Other spellings that a person may type. */
  readonly aliases: readonly string[];
}

const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const FAHRENHEIT = 5 / 9;
const BTU = 1055.05585262;
const LITER = 1e-3;
const GALLON = 231 * INCH ** 3;

const unit = (symbol: string, factor: number, ...aliases: string[]): Unit => ({
  symbol,
  factor,
  offset: 0,
  aliases,
});
const scale = (symbol: string, factor: number, offset: number, ...aliases: string[]): Unit => ({
  symbol,
  factor,
  offset,
  aliases,
});

const INCHES = unit('in', INCH, '"', '″', '”', "''", 'in.', 'inch', 'inches');
const SECONDS = unit('s', 1, 'sec');

const PER_SECOND = unit('1/s', 1, '/s');

const VOLUMES = [
  unit('in³', INCH ** 3, 'in3', 'in^3', 'cu in'),
  unit('cm³', 1e-6, 'cm3', 'cm^3', 'cc', 'ml', 'mL'),
  unit('mm³', 1e-9, 'mm3', 'mm^3'),
  unit('m³', 1, 'm3', 'm^3'),
  unit('ft³', FOOT ** 3, 'ft3', 'ft^3', 'cu ft'),
  unit('L', LITER, 'l', 'liter', 'liters'),
  unit('gal', GALLON, 'US gal', 'gallon', 'gallons'),
] as const;
const SPEEDS = [
  unit('ft/min', FOOT / 60, 'sfm', 'fpm'),
  unit('m/min', 1 / 60),
  unit('in/min', INCH / 60, 'ipm'),
  unit('mm/min', 1e-3 / 60),
  unit('in/s', INCH),
  unit('mm/s', 1e-3),
  unit('m/s', 1),
  unit('ft/s', FOOT),
] as const;

/** Grouped by kind of quantity; `quantity.ts` says which of a group a system takes. */
export const UNITS = {
  length: [
    INCHES,
    unit('mm', 1e-3, 'millimeter', 'millimeters'),
    unit('m', 1, 'meter', 'meters'),
    unit('cm', 1e-2, 'centimeter', 'centimeters'),
    unit('µm', 1e-6, 'um', 'μm', 'micron', 'microns'),
    unit('thou', 1e-3 * INCH, 'mil', 'mils'),
    unit('ft', FOOT, 'foot', 'feet'),
  ],
  area: [
    unit('in²', INCH ** 2, 'in2', 'in^2', 'sq in'),
    unit('mm²', 1e-6, 'mm2', 'mm^2'),
    unit('cm²', 1e-4, 'cm2', 'cm^2'),
    unit('m²', 1, 'm2', 'm^2'),
  ],
  volume: VOLUMES,
  gasVolume: VOLUMES,
  force: [
    unit('lbf', POUND_FORCE, 'lb', 'lbs', 'pounds'),
    unit('N', 1),
    unit('kN', 1e3),
    unit('kgf', GRAVITY),
    unit('ozf', POUND_FORCE / 16),
    unit('tonf', 2000 * POUND_FORCE, 'ton', 'tons'),
    unit('tf', 1000 * GRAVITY, 'tonne', 'tonnes'),
  ],
  pressure: [
    unit('psi', POUND_FORCE / INCH ** 2, 'lbf/in²', 'lbf/in2'),
    unit('MPa', 1e6, 'N/mm²', 'N/mm2'),
    unit('Pa', 1),
    unit('kPa', 1e3),
    unit('GPa', 1e9),
    unit('bar', 1e5),
    unit('ksi', (1e3 * POUND_FORCE) / INCH ** 2),
    unit('Mpsi', (1e6 * POUND_FORCE) / INCH ** 2),
    unit('atm', 101325),
    unit('kgf/cm²', GRAVITY / 1e-4, 'kgf/cm2', 'kgf/cm^2', 'kg/cm²', 'kg/cm2'),
  ],
  reciprocalPressure: [unit('1/psi', INCH ** 2 / POUND_FORCE), unit('1/MPa', 1e-6, 'mm²/N'), unit('1/Pa', 1)],
  torque: [
    unit(
      'lbf·in',
      POUND_FORCE * INCH,
      'lbf*in',
      'lbf in',
      'lbf-in',
      'in-lb',
      'in lb',
      'in·lbf',
      'in-lbf',
      'lb-in',
      'lb in',
    ),
    unit('N·m', 1, 'N*m', 'N m', 'Nm', 'N-m'),
    unit(
      'lbf·ft',
      POUND_FORCE * FOOT,
      'lbf*ft',
      'lbf ft',
      'lbf-ft',
      'ft-lb',
      'ft lb',
      'ft·lbf',
      'ft-lbf',
      'lb-ft',
      'lb ft',
    ),
    unit('N·mm', 1e-3, 'N*mm', 'N mm', 'Nmm'),
    unit('ozf·in', (POUND_FORCE / 16) * INCH, 'ozf in', 'oz-in', 'oz in'),
  ],
  stiffness: [
    unit('lbf/in', POUND_FORCE / INCH, 'lb/in'),
    unit('N/mm', 1e3),
    unit('N/m', 1),
    unit('kN/mm', 1e6),
    unit('N/µm', 1e6, 'N/um', 'N/μm'),
  ],
  mass: [unit('oz', POUND / 16), unit('g', 1e-3), unit('kg', 1), unit('lb', POUND, 'lbs', 'pounds')],
  density: [
    unit('g/cm³', 1e3, 'g/cm3', 'g/cc'),
    unit('kg/m³', 1, 'kg/m3'),
    unit('lb/in³', POUND / INCH ** 3, 'lb/in3'),
  ],
  temperature: [
    scale('°F', FAHRENHEIT, 459.67 * FAHRENHEIT, 'F', 'degF', 'deg F'),
    scale('°C', 1, 273.15, 'C', 'degC', 'deg C'),
    scale('K', 1, 0),
  ],
  absoluteTemperature: [
    scale('K', 1, 0),
    scale('°C', 1, 273.15, 'C', 'degC', 'deg C'),
    scale('°F', FAHRENHEIT, 459.67 * FAHRENHEIT, 'F', 'degF', 'deg F'),
  ],
  // With Δ where it stands by itself: °F alone is a point on the scale.
  rise: [
    unit('°F', FAHRENHEIT, 'F', 'degF', 'deg F', 'Δ°F'),
    unit('°C', 1, 'C', 'degC', 'deg C', 'Δ°C'),
    unit('K', 1, 'ΔK'),
  ],
  expansion: [
    unit('1/°F', 1 / FAHRENHEIT, '/°F', '1/F', '/F'),
    unit('1/°C', 1, '/°C', '1/C', '/C', '1/K', '/K'),
    unit('µm/(m·K)', 1e-6, 'µm/(m·°C)', 'µm/(m K)', 'um/(m K)', 'µm/m·K', 'µm/m/K', 'ppm/K', 'ppm/°C'),
    unit('µin/(in·°F)', 1e-6 / FAHRENHEIT, 'uin/(in F)', 'ppm/°F'),
  ],
  diffusivity: [unit('in²/s', INCH ** 2, 'in2/s'), unit('mm²/s', 1e-6, 'mm2/s'), unit('m²/s', 1, 'm2/s')],
  conductivity: [
    unit('W/(m·K)', 1, 'W/mK', 'W/m·K', 'W/(m K)'),
    unit('Btu/(h·ft·°F)', BTU / (3600 * FOOT * FAHRENHEIT), 'Btu/(h ft F)'),
  ],
  cuttingSpeed: SPEEDS,
  feedRate: SPEEDS,
  speed: SPEEDS,
  acceleration: [unit('ft/s²', FOOT, 'ft/s2'), unit('m/s²', 1, 'm/s2')],
  // Turns, not radians: 60 rpm is 1/s.
  rotation: [unit('rpm', 1 / 60, 'rev/min', '1/min'), PER_SECOND],
  shearRate: [PER_SECOND],
  flow: [
    unit('in³/s', INCH ** 3, 'in3/s'),
    unit('cm³/s', 1e-6, 'cm3/s', 'cc/s', 'ml/s'),
    unit('L/min', LITER / 60, 'l/min'),
    unit('L/s', LITER, 'l/s'),
    unit('mm³/s', 1e-9, 'mm3/s'),
    unit('ft³/min', FOOT ** 3 / 60, 'ft3/min', 'cfm'),
    unit('gal/min', GALLON / 60, 'gpm'),
  ],
  sonicConductance: [unit('L/(s·bar)', 1e-8, 'L/s/bar', 'L/(s*bar)', 'dm³/(s·bar)')],
  power: [unit('hp', 550 * FOOT * POUND_FORCE, 'HP'), unit('kW', 1e3), unit('W', 1)],
  energy: [unit('J', 1), unit('kJ', 1e3), unit('ft·lbf', FOOT * POUND_FORCE)],
  heatContent: [unit('J/g', 1e3, 'kJ/kg'), unit('Btu/lb', BTU / POUND)],
  specificHeat: [
    unit('J/(g·K)', 1e3, 'J/gK', 'J/(g K)', 'kJ/(kg·K)', 'J/(g·°C)'),
    unit('J/(kg·K)', 1, 'J/kgK', 'J/(kg K)'),
  ],
  film: [
    unit('Btu/(h·ft²·°F)', BTU / (3600 * FOOT ** 2 * FAHRENHEIT), 'Btu/(h ft2 F)', 'Btu/h/ft2/F'),
    unit('W/(m²·K)', 1, 'W/m2K', 'W/(m2 K)', 'W/m²K'),
  ],
  viscosity: [unit('Pa·s', 1, 'Pa s', 'Pa*s', 'Pas')],
  consistency: [unit('Pa·s^n', 1, 'Pa s^n', 'Pa*s^n')],
  time: [SECONDS, unit('min', 60), unit('h', 3600, 'hr'), unit('ms', 1e-3)],
  angle: [
    unit('deg', Math.PI / 180, '°', 'degree', 'degrees'),
    unit('rad', 1),
    unit('arcmin', Math.PI / 10800, "'"),
  ],
  ratio: [unit('', 1), unit('%', 0.01)],
  percent: [unit('%', 0.01)],
  count: [unit('', 1)],
  perInch: [unit('1/in', 1 / INCH, '/in', 'tpi', 'TPI')],
  money: [unit('', 1)],
  moneyRate: [unit('/h', 1 / 3600, 'per h', '/hr', 'per hour')],
  massPrice: [unit('/lb', 1 / POUND, 'per lb'), unit('/kg', 1, 'per kg')],
} as const satisfies Record<string, readonly Unit[]>;
