import { choice, named, procedure, type Input } from '../../core/define';
import { naming, refuse } from '../../core/refusal';
import {
  PIPE_KINDS,
  PIPE_SOURCES,
  pipeDrill,
  type PipeKind,
  pipeSizes,
  type PipeSize,
  readPipe,
} from '../../tables/pipeThreads';

/** As people write them: with the kind, and the size alone. */
const pipeNames = (): string[] => [
  ...new Set(
    PIPE_KINDS.flatMap((kind) =>
      pipeSizes(kind).flatMap((own) => [own, kind === 'G' ? `G ${own}` : `${own} ${kind}`]),
    ),
  ),
];

const size: Input<'size', PipeSize> = named<'size', PipeSize>(
  'size',
  'size',
  { what: 'a pipe thread such as "1/4", "1/4 NPT" or "G 1/4"', read: readPipe, names: pipeNames },
  { says: 'Nominal size of the pipe thread, with or without its kind' },
);

const kind = choice('kind', PIPE_KINDS, {
  optional: true,
  says: 'NPT (taper, 60°) or G (parallel, 55°, also called BSPP); left out: as the size says, else NPT',
});

/** A size that names its kind has the last word only where nothing else is said. */
function kindOf(written: PipeSize, given: PipeKind | undefined): PipeKind {
  if (written.kind !== undefined && given !== undefined && written.kind !== given)
    return refuse('kind', `is "${given}", but the size is a ${written.kind} thread`);
  return given ?? written.kind ?? 'NPT';
}

const drillOf = (written: PipeSize, given: PipeKind | undefined): number => {
  const of = kindOf(written, given);
  return naming('size', () => pipeDrill(written.size, of));
};

export const tapPipe = procedure({
  name: 'TAP.PIPE',
  summary: 'Diameter to drill for a pipe thread, for air and water fittings.',
  inputs: [size, kind],
  gives: 'length',
  method: 'Table of tap drills by nominal size; NPT drilled straight and tapped without reaming.',
  steps: {
    kind: { gives: 'text', says: 'Kind of thread', equation: 'as given, as the size says, else NPT' },
  },
  run: (x, show) => {
    show('kind', kindOf(x.size, x.kind));
    return drillOf(x.size, x.kind);
  },
  sources: [PIPE_SOURCES.NPT, PIPE_SOURCES.smallerNPT, PIPE_SOURCES.G],
  notes: [
    'The nominal size is that of a pipe, not of the thread: 1/4 NPT is 0.540 in across.',
    `Sizes: NPT ${pipeSizes('NPT').join(', ')}; G ${pipeSizes('G').join(', ')}.`,
    'A taper thread may be drilled smaller and reamed 1:16 first; the drills of ANSI/ASME B94.9 for tapping without reaming are smaller too (1/4: 7/16, 1/2: 45/64, 3/4: 29/32).',
    'NPT and G do not fit each other, though 1/2 and 3/4 start: the flank angles differ, and the joint leaks.',
  ],
  cautions: [
    {
      says:
        'A fitting in a mold carries air or water under pressure: seal it as its thread asks (taper thread with sealant, G with a washer or O-ring), ' +
        'test it away from the press, and let the pressure off before you open it. A taper fitting driven too hard cracks an aluminum plate.',
    },
  ],
  related: ['TAP.DRILL', 'TAP.DEPTH', 'DRILL.NEAREST'],
});
