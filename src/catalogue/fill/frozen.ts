import { derived, fromMemory, input, procedure } from '../../core/define';
import { erfInverse } from '../../core/erf';
import { refuse } from '../../core/refusal';
import { resinWith } from '../resins';

export const fillFrozen = procedure({
  name: 'FILL.FROZEN',
  summary: 'Thickness of the layer that has frozen on each wall after a time.',
  inputs: [
    resinWith(
      'resin',
      'a',
      'diffusivity',
      { above: '0 mm²/s' },
      'Resin, or its effective thermal diffusivity',
    ),
    input('meltTemp', 'T_m', 'temperature', {
      above: '0 K',
      usual: ['100 °C', '420 °C'],
      says: 'Temperature of the melt as it meets the wall',
    }),
    input('moldTemp', 'T_w', 'temperature', {
      above: '0 K',
      usual: ['0 °C', '200 °C'],
      says: 'Temperature of the cavity’s wall',
    }),
    input('noFlowTemp', 'T_f', 'temperature', {
      above: '0 K',
      usual: ['40 °C', '350 °C'],
      says: 'Temperature below which the resin no longer flows',
    }),
    input('time', 't', 'time', {
      min: '0 s',
      usual: ['0 s', '5 min'],
      says: 'Time since the melt met the wall',
    }),
  ],
  gives: 'length',
  method:
    'Heat flow into a half-space: the depth 2 λ √(a t) at which its profile, an error function, has the no-flow temperature.',
  steps: {
    a: {
      gives: 'diffusivity',
      says: 'Effective thermal diffusivity of the resin',
      equation: 'of the table, or as given',
    },
    theta: {
      gives: 'ratio',
      says: 'How far the no-flow temperature lies from wall to melt',
      equation: 'theta = (T_f - T_w)/(T_m - T_w)',
    },
    lambda: { gives: 'ratio', says: 'Where the profile has that value', equation: 'erf(lambda) = theta' },
  },
  run: ({ resin: { value: diffusivity }, meltTemp, moldTemp, noFlowTemp, time }, show) => {
    if (noFlowTemp <= moldTemp)
      refuse('noFlowTemp', 'must be above {moldTemp}: on a warmer wall nothing freezes');
    if (noFlowTemp >= meltTemp)
      refuse('noFlowTemp', 'must be below {meltTemp}: a colder melt does not flow at all');
    const theta = (noFlowTemp - moldTemp) / (meltTemp - moldTemp);
    const lambda = erfInverse(theta);
    show('a', diffusivity);
    show('theta', theta);
    show('lambda', lambda);
    return 2 * lambda * Math.sqrt(diffusivity * time);
  },
  native: ({ resin: a, meltTemp, moldTemp, noFlowTemp, time }, write) => {
    write.refuse(`${noFlowTemp.text}<=${moldTemp.text}`, 'noFlowTemp must be above moldTemp');
    write.refuse(`${noFlowTemp.text}>=${meltTemp.text}`, 'noFlowTemp must be below meltTemp');
    const theta = `(${noFlowTemp.text}-${moldTemp.text})/(${meltTemp.text}-${moldTemp.text})`;
    // erf(lambda) = theta by the normal distribution, which every spreadsheet program can turn round.
    const lambda = write.step('lambda', `NORMSINV((1+${theta})/2)/SQRT(2)`);
    return `2*${lambda}*SQRT(${a.bound('a')}*${time.text})`;
  },
  sources: [
    derived(
      'Conduction into a half-space with a wall of constant temperature (Carslaw and Jaeger): T = T_w + (T_m − T_w) erf(x/(2√(a t)))',
    ),
    fromMemory(
      'No-flow temperatures of resins lie between freezing and ejection; RESIN.VALUE has one for each',
    ),
  ],
  notes: [
    'Per side: the gap left open is the wall less twice this. Where that nears nothing the flow ends, whatever the pressure; ' +
      'FILL.REACH says where the pressure ends it. The smaller of the two flow lengths counts.',
    'Melt that keeps flowing brings heat with it, so the real layer near the gate is thinner. The equation holds while the two layers do not feel each other: ' +
      'up to about half the gap.',
  ],
  related: ['FILL.REACH', 'COOL.TIME', 'RESIN.VALUE'],
});
