import { spare, calls, worked, type Section } from './section';

export const spring: Section = {
  id: 'spring',
  title: 'Spring and shim',
  decide: 'the spring, its pocket and the shim under it: home at rest, whole at full lift.',
  danger:
    'A compressed spring stores energy: relieve it under control, wear eye protection, and never look along its axis.',
  inputs: {
    movingMass: { first: '120 g', label: 'Mass that moves' },
    drag: {
      first: '5 N',
      label: 'Drag of seals and guides',
      note: 'What holds the insert back on its way home.',
    },
    springMaterial: { first: 'music wire', label: 'Wire' },
    wire: { first: '1.4 mm', label: 'Wire diameter' },
    meanDia: { first: '10 mm', label: 'Mean diameter of the coils' },
    activeCoils: { first: 6 },
    totalCoils: { first: 8, label: 'Total coils' },
    freeLength: { first: '29 mm' },
    pocketLength: { first: '26 mm', label: 'Pocket length, mold closed' },
    shim: { first: '0.5 mm', label: 'Shim fitted' },
    lift: { first: '5 mm', label: 'Lift of pins or insert', like: ['SEAT.CLEAR', 'lift'] },
  },
  parts: [
    calls('SPRING.RATE', 'springRate', 'Rate', 'Of the wire and the coils that work.', {
      material: 'springMaterial',
    }),
    calls(
      'SPRING.HOLD',
      'springHold',
      'Preload that keeps the insert home',
      'Its weight and the drag, with a margin.',
    ),
    calls('SPRING.PRELOAD', 'springPreload', 'Preload in the pocket', 'A thicker shim gives more.', {
      rate: 'springRate',
      shim: 'shim',
    }),
    spare(
      'Keeps the insert home',
      'spring_preload/spring_hold',
      'If it does not hold: a thicker shim or a stronger spring.',
    ),
    calls(
      'SPRING.SHIM',
      'shimNeeded',
      'Shim for just that preload',
      'Negative: the pocket may be deeper by so much.',
      {
        rate: 'springRate',
        preload: 'springHold',
      },
    ),
    worked(
      'seatedLength',
      'Length with the insert home',
      'Pocket less shim.',
      'pocket_length - shim',
      'length',
    ),
    worked('liftedLength', 'Length at full lift', 'Less by the lift.', 'seated_length - lift', 'length'),
    calls('SPRING.FORCE', 'liftedForce', 'Force at full lift', 'The ejection works against it.', {
      rate: 'springRate',
      length: 'liftedLength',
    }),
    calls('SPRING.SOLID', 'solidLength', 'Solid length', 'Coil on coil.'),
    calls(
      'SPRING.TRAVEL',
      'springTravel',
      'Lift that it allows',
      'Over the shim and before it is solid, a tenth kept in reserve.',
      { pocketLength: 'seatedLength' },
    ),
    spare(
      'Lift',
      'spring_travel/lift',
      'If it does not hold: the spring goes solid before the insert is up.',
    ),
    calls('SPRING.MARGIN', 'springMargin', 'Yield over stress at full lift', 'Below 1 it sets.', {
      force: 'liftedForce',
      material: 'springMaterial',
    }),
    spare('Spring strength', 'spring_margin', 'If it does not hold: thicker wire, more coils or less lift.'),
  ],
};
