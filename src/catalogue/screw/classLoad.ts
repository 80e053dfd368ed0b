import { commonPractice, input, procedure } from '../../core/define';
import { strengthOf } from '../../tables/fasteners';
import { stressArea } from '../../tables/threads';
import { thread } from '../threads';
import { CLASS_SOURCES, classOfItsSystem, nativeProof, strengthClass, stressed } from './inputs';

export const screwClassLoad = procedure({
  name: 'SCREW.CLASSLOAD',
  summary: 'Preload of a screw at a fraction of the proof load of its strength class.',
  inputs: [
    thread,
    strengthClass,
    input('fraction', 'f', 'ratio', {
      above: 0,
      max: 1,
      default: 0.75,
      usual: [0.4, 0.95],
      says: 'Fraction of the proof load: 0.75 for screws that are taken out again, 0.9 for ones that stay; above 1 the screw stays stretched',
    }),
  ],
  gives: 'force',
  method: 'Fraction of the class’s proof stress on the tensile stress area: f S_p A_s.',
  steps: {
    S_p: {
      gives: 'pressure',
      says: 'Proof stress of the class for this size',
      equation: 'table of the standard',
    },
    A_s: stressed,
  },
  run: ({ thread: t, strengthClass: of, fraction }, show) => {
    const { proof } = strengthOf(of, t.major);
    const area = stressArea(t);
    show('S_p', proof);
    show('A_s', area);
    return fraction * proof * area;
  },
  native: ({ thread: t, strengthClass: of, fraction }) => {
    const { d, area } = t.look({
      d: { head: 'Basic major diameter (m)', from: ({ major }) => major },
      area: { head: 'Tensile stress area (m²)', from: stressArea },
    });
    return `${fraction.text}*${nativeProof(of, d)}*${area}`;
  },
  valid: [classOfItsSystem],
  sources: [...CLASS_SOURCES, commonPractice('0.75 of the proof load for screws that are taken out again')],
  notes: [
    'A capacity where the screw is loaded straight: for a margin divide by your load.',
    'The standards’ load tables round the stress area to three digits and the loads with it, by up to 0.7 %.',
  ],
  cautions: [
    {
      says: 'The screw’s load, not the plate’s: in aluminum the tapped hole often strips first, see SCREW.MAXTORQUE.',
    },
    {
      says: 'Only for screws that carry the mark of their class. Hard screws (12.9, A574) do not forgive bending or plating.',
    },
  ],
  related: ['SCREW.TORQUE', 'SCREW.BREAK', 'SCREW.MAXTORQUE', 'THREAD.STRIP'],
});
