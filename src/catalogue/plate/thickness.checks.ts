import { checks } from '../../core/checks';
import { plateThickness } from './thickness';

export default checks(plateThickness, [
  {
    given: {
      span: '90 mm',
      width: '110 mm',
      allowSag: '0.01 mm',
      pressure: '12 MPa',
      loadLength: '50 mm',
      loadWidth: '60 mm',
      metal: 'P20',
    },
    expect: '32.2655342842 mm',
    within: 1e-9,
    from: 'the cubic 0.01 t³ − 0.08031752 t² − 252.289357 = 0 (bending and shear of PLATE.SAG by hand), its root by Newton’s iteration in 40 digits',
  },
  {
    given: {
      span: '1 m',
      width: '20 mm',
      allowSag: '60.9756098 mm',
      pressure: '0.01 MPa',
      loadLength: '1 m',
      loadWidth: '20 mm',
      metal: '205 GPa',
    },
    expect: '5 mm',
    within: 1e-4,
    from: 'a slender beam loaded all over: t³ = 5 p L⁴/(32 E z), shear no longer counts',
    limit: true,
  },
  {
    given: {
      span: '90 mm',
      width: '110 mm',
      allowSag: '0.014361255923 mm',
      pressure: '12 MPa',
      loadLength: '50 mm',
      loadWidth: '60 mm',
      metal: 'P20',
    },
    expect: '28 mm',
    within: 1e-9,
    from: 'inverse of PLATE.SAG: 28 mm sags 0.014361255923 mm, by hand',
    limit: true,
  },
]);
