import { formula, fromMemory, input } from '../../core/define';
import { rateCeiling } from './inputs';

export const fillViscosity = formula({
  name: 'FILL.VISCOSITY',
  summary: 'Viscosity of a melt at a shear rate and temperature by the Cross-WLF model.',
  inputs: [
    input('shearRate', 'gamma', 'shearRate', {
      min: '0 1/s',
      usual: ['0 1/s', '1000000 1/s'],
      says: 'True shear rate; 0 gives the viscosity at rest',
    }),
    input('temp', 'T', 'temperature', {
      above: '0 K',
      usual: ['100 °C', '420 °C'],
      says: 'Temperature of the melt',
    }),
    input('D1', 'D_1', 'viscosity', {
      above: '0 Pa·s',
      usual: ['1e5 Pa·s', '1e25 Pa·s'],
      says: 'Viscosity at rest at the glass temperature D2',
    }),
    input('D2', 'D_2', 'absoluteTemperature', {
      above: '0 K',
      usual: ['150 K', '550 K'],
      says: 'Glass temperature of the model, in kelvin unless written with its unit',
    }),
    input('A1', 'A_1', 'ratio', { above: 0, usual: [5, 80], says: 'First constant of the WLF shift' }),
    input('A2', 'A_2', 'rise', {
      above: '0 K',
      usual: ['40 K', '250 K'],
      says: 'Second constant of the WLF shift, for most resins 51.6 K: write "51.6 K" where plain numbers are °F',
    }),
    input('tauStar', 'tau', 'pressure', {
      above: '0 Pa',
      usual: ['500 Pa', '1 MPa'],
      says: 'Shear stress at which thinning sets in: a plain number is in psi or MPa; data sheets print Pa, so write "25000 Pa"',
    }),
    input('powerIndex', 'n', 'ratio', {
      min: 0,
      below: 1,
      usual: [0.1, 0.6],
      says: 'Power-law index far above that stress',
    }),
  ],
  refuse: [
    {
      when: 'T - D_2 <= -A_2',
      argument: 'temp',
      says: 'is so far below {D2}, that the model has no viscosity there',
    },
  ],
  constants: rateCeiling,
  steps: {
    eta_0: {
      gives: 'viscosity',
      expr: 'D_1*exp(-A_1*(T - D_2)/(A_2 + T - D_2))',
      says: 'Viscosity at rest, shifted with temperature after Williams, Landel and Ferry',
    },
    x: {
      gives: 'ratio',
      expr: 'eta_0*gamma/tau',
      says: 'Stress that an unthinned melt would have, over that at which thinning sets in',
    },
    eta: {
      gives: 'viscosity',
      expr: 'eta_0/(1 + x^(1 - n))',
      says: 'Thinned by shear after Cross',
    },
  },
  result: 'eta',
  valid: [
    {
      holds: 'T >= D_2',
      says: 'The temperature is below the model’s glass temperature: there it is a solid, not a melt.',
    },
  ],
  sources: [
    fromMemory(
      'Cross, J. Colloid Sci. 20 (1965) 417, and Williams, Landel and Ferry, J. Am. Chem. Soc. 77 (1955) 3701, in the form in which grade data are usually printed',
    ),
  ],
  notes: [
    'The growth of viscosity with pressure (D3) is left out: on a press of low pressure it is small.',
    'Constants must all come from one fit of one grade: they do not mix. Data sheets print τ* in Pa, D1 in Pa·s and D2 and A2 in K: type each with its unit.',
  ],
  cautions: [
    {
      when: 'gamma > gamma_c',
      says: 'Above 40 000 1/s many resins degrade, and the melt heats itself: the temperature is no longer the one given.',
    },
  ],
  related: ['FILL.SLITRATE', 'FILL.TUBERATE', 'FILL.SLITDROP'],
});
