import { spare, calls, type Section } from './section';

export const cost: Section = {
  id: 'cost',
  title: 'Cost',
  decide: 'what a part costs at this quantity, and when a better mold pays.',
  inputs: {
    resin: { first: 'PP' },
    wall: { first: '1.5 mm', label: 'Wall of the part' },
    meltTemp: { first: '220 °C', label: 'Melt temperature' },
    moldTemp: { first: '40 °C', label: 'Mold temperature' },
    ejectTemp: { first: '60 °C', label: 'Temperature when pushed' },
    fillTime: { first: '1.5 s' },
    hold: { first: '4 s', label: 'Holding pressure' },
    handling: { first: '25 s', label: 'Opening, taking out, closing' },
    moldCost: { first: 1800, label: 'Cost of this mold' },
    quantity: { first: 500, label: 'Parts wanted' },
    hourRate: { first: '45/h', label: 'Rate for press and person' },
    cavities: { first: 1 },
    shotMass: { first: '8 g' },
    priceByMass: { first: '3.2/kg', label: 'Price of the resin' },
    targetCost: {
      first: 6,
      label: 'What a part may cost',
      note: 'By the offer.',
      like: ['COST.BREAKEVEN', 'partCostA'],
    },
  },
  parts: [
    calls(
      'RESIN.VALUE',
      'diffusivity',
      'Diffusivity of the resin',
      'As the cooling of molded parts shows it.',
      {
        property: '"diffusivity"',
      },
    ),
    calls('COOL.TIME', 'coolTime', 'Cooling time', 'Until the middle of the wall can be ejected.', {
      resin: 'diffusivity',
    }),
    calls('COST.CYCLE', 'cycle', 'Cycle', 'By hand, one shot after another.', {
      fill: 'fillTime',
      cool: 'coolTime',
    }),
    calls('COST.PART', 'partCost', 'Cost of a part', 'Mold, press and resin.'),
    spare(
      'Cost',
      'target_cost/part_cost',
      'If it does not hold: more parts, more cavities or a simpler mold.',
    ),
  ],
};
