import { constant, derived, fromMemory, input } from '../../core/define';

/** What the functions of air in vents share. */

export const depth = input('depth', 'h', 'length', {
  above: '0 mm',
  usual: ['0.002 mm', '0.2 mm'],
  says: 'Depth of the vent',
});
export const land = input('land', 'L', 'length', {
  above: '0 mm',
  usual: ['0.2 mm', '15 mm'],
  says: 'Length of its land, up to the relief',
});

export const AIR = {
  mu: constant('viscosity', '1.8e-5 Pa·s', 'Viscosity of air at room temperature'),
  p_n: constant('pressure', '1 atm', 'Standard atmosphere'),
  v_c: constant('speed', '100 m/s', 'Speed of air from which inertia counts'),
} as const;

export const airSpeed = {
  v: { gives: 'speed', expr: 'h^2*p/(12*mu*L)', says: 'Mean speed of viscous flow between two walls' },
} as const;

export const VENT_RANGE = [
  {
    holds: 'p <= 0.2*p_n',
    says: 'The overpressure is more than a fifth of an atmosphere: the air thins on its way out, and the flow is only a rough figure.',
  },
  {
    holds: 'v <= v_c',
    says: 'The air would be faster than 100 m/s: inertia counts, and the vent passes less than this.',
  },
  { holds: 'L >= 10*h', says: 'The land is shorter than ten depths: the flow is not viscous all through.' },
] as const;

export const VENT_SOURCES = [
  derived('Plane Poiseuille flow: Q = W h³ p/(12 µ L)'),
  fromMemory('Viscosity of air 1.8e-5 Pa·s at 20 °C; it grows by about a tenth to 60 °C'),
] as const;
