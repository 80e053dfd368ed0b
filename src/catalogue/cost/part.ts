import { derived, formula, input } from '../../core/define';
import { NO_USUAL_MONEY } from './inputs';

export const costPart = formula({
  name: 'COST.PART',
  summary: 'Cost of one good part: its share of the mold, press time and resin.',
  inputs: [
    input('moldCost', 'M', 'money', {
      noUsual: NO_USUAL_MONEY,
      min: 0,
      says: 'Cost of the mold, tryout included',
    }),
    input('quantity', 'N', 'count', {
      noUsual: 'From one good part to millions',
      min: 1,
      says: 'Good parts to be made with it',
    }),
    input('cycle', 't', 'time', { min: '0 s', usual: ['5 s', '30 min'], says: 'Time of one cycle' }),
    input('hourRate', 'r', 'moneyRate', {
      noUsual: NO_USUAL_MONEY,
      min: '0 /h',
      says: 'Cost of press and operator an hour',
    }),
    input('cavities', 'z', 'count', { min: 1, usual: [1, 32], says: 'Parts a shot' }),
    input('shotMass', 'm', 'mass', {
      min: '0 g',
      usual: ['0.2 g', '1 kg'],
      says: 'Resin a shot, sprue and runner included',
    }),
    input('priceByMass', 'c', 'massPrice', {
      noUsual: NO_USUAL_MONEY,
      min: '0 /kg',
      says: 'Price of the resin',
    }),
    input('scrap', 's', 'ratio', {
      min: 0,
      below: 1,
      default: 0,
      usual: [0, 0.5],
      says: 'Share of parts that are thrown away',
    }),
  ],
  steps: {
    C_m: { gives: 'money', expr: 'M/N', says: 'Share of the mold' },
    C_t: { gives: 'money', expr: 't*r/z', says: 'Press time a part' },
    C_r: { gives: 'money', expr: 'm*c/z', says: 'Resin a part' },
    C: {
      gives: 'money',
      expr: 'C_m + (C_t + C_r)/(1 - s)',
      says: 'A good part also pays for the time and resin of those thrown away',
    },
  },
  result: 'C',
  sources: [derived('Cost of a shot shared by its good parts, and of the mold by all of them')],
  notes: [
    'The price of resin is a pound in inch units and a kilogram in metric units; text such as "4 /kg" says which.',
    'Reground sprues: take their mass off the shot, as far as they are used again.',
  ],
  related: ['COST.CYCLE', 'COST.BREAKEVEN'],
});
