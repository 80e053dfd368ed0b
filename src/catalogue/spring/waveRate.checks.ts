import { checks } from '../../core/checks';
import { springWaveRate } from './waveRate';

export default checks(springWaveRate, [
  {
    given: {
      outsideDia: '25 mm',
      insideDia: '19 mm',
      thickness: '0.35 mm',
      wavesPerTurn: 3,
      turns: 4,
    },
    expect: '17.088513 N/mm',
    within: 1e-7,
    from: 'by hand: 206000 × 3 × 0.042875 × 81/(3.88 × 10648 × 4) × 25/19',
  },
  {
    given: {
      outsideDia: '1 in',
      insideDia: '0.75 in',
      thickness: '0.02 in',
      wavesPerTurn: 3.5,
      turns: 6,
      modulus: '30 Mpsi',
    },
    expect: '384.879725 lbf/in',
    within: 1e-8,
    from: 'by hand: 30e6 × 0.125 × 8e-6 × 150.0625/(3.88 × 0.669921875 × 6) × 4/3',
  },
  {
    given: {
      outsideDia: '60 mm',
      insideDia: '50 mm',
      thickness: '0.8 mm',
      wavesPerTurn: 6.5,
      turns: 3,
      modulus: '200 GPa',
    },
    expect: '757.700044 N/mm',
    within: 1e-7,
    from: 'by hand with the factor 2.9 of 4.5 to 6.5 waves: 200000 × 5 × 0.512 × 1785.0625/(2.9 × 166375 × 3) × 1.2',
  },
  {
    given: {
      outsideDia: '25 mm',
      insideDia: '19 mm',
      thickness: '0.35 mm',
      wavesPerTurn: 3,
      turns: 8,
    },
    expect: '8.5442565 N/mm',
    within: 1e-7,
    from: 'twice the turns in series have half the rate',
    limit: true,
  },
]);
