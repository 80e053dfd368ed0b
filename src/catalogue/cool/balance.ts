import { commonPractice, constant, derived, fromMemory, input } from '../../core/define';

/** An uncooled mold as one lump: what each shot brings, and what its surface gives to the air. */
export const shotMass = input('shotMass', 'm', 'mass', {
  above: '0 g',
  usual: ['0.1 g', '500 g'],
  says: 'Mass of the shot',
});
export const heatContent = input('heatContent', 'h', 'heatContent', {
  above: '0 J/g',
  usual: ['100 J/g', '900 J/g'],
  says: 'Heat that the resin gives up from melt to ejection',
});
export const area = input('area', 'A', 'area', {
  above: '0 mm²',
  usual: ['20 cm²', '2 m²'],
  says: 'Surface of the mold that meets the air',
});
export const film = input('film', 'alpha', 'film', {
  above: '0 W/(m²·K)',
  usual: ['3 W/(m²·K)', '200 W/(m²·K)'],
  says: 'Film coefficient: about 8 to 15 W/(m²·K) in still air, 25 to 60 before a fan',
});
export const airTemp = input('airTemp', 'T_a', 'temperature', {
  above: '-273.15 °C',
  usual: ['0 °C', '50 °C'],
  says: 'Temperature of the air',
});

export const LUMP = derived('Heat balance of the mold as one lump: m h each cycle in, α A (T − T_a) out');
export const FILM = commonPractice(
  'Film coefficients of 8 to 15 W/(m²·K) in still air and 25 to 60 before a fan; contact with the platens comes on top',
);
export const HEAT_CONTENTS = fromMemory(
  'Heat contents from melt to ejection, J/g: PS 300, ABS 330, PC 400, POM 420, PP 480, HDPE 560, PA66 560',
);
export const HEAT_NOTES = [
  'Heat contents from melt to ejection, from memory: PS 300, ABS 330, PC 400, POM 420, PP 480, HDPE 560, PA66 560 J/g.',
] as const;
/** A caution on the symbol of the mold's temperature. */
export const hotMold = <S extends string>(symbol: S) =>
  ({
    when: `${symbol} > T_b`,
    says: 'An uncooled mold runs hot enough to burn: gloves, and measure before touching.',
  }) as const;
export const burns = {
  T_b: constant('temperature', '45 °C', 'Above it metal is too hot to hold'),
} as const;
