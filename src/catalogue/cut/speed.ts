import { choice, named, procedure } from '../../core/define';
import {
  cuttingSpeed,
  findWorkMaterial,
  OPERATIONS,
  SPEED_SOURCES,
  TOOLS,
  WORK_MATERIALS,
} from '../../tables/cutting';
import { notesOfWork, WORK_MATERIAL } from '../workMaterials';
import { namesOf } from '../../tables/names';

export const cutSpeed = procedure({
  name: 'CUT.SPEED',
  summary: 'Cutting speed to start with, from the tables.',
  inputs: [
    named(
      'metal',
      'metal',
      {
        ...WORK_MATERIAL,
        read: (text) => findWorkMaterial(text),
        names: () => namesOf(WORK_MATERIALS),
        notes: notesOfWork,
      },
      { says: 'Metal that is cut; where its state matters, with its state, such as "H13 annealed"' },
    ),
    choice('tool', TOOLS, { says: 'What the cutter is made of' }),
    choice('operation', OPERATIONS, { says: 'What is done' }),
  ],
  gives: 'cuttingSpeed',
  method: 'Read from the table of the operation; of a range the low end.',
  steps: { row: { gives: 'text', says: 'Row of the table', equation: 'by metal, tool and operation' } },
  run: ({ metal, tool, operation }, show) => {
    const { speed, row } = cuttingSpeed(metal, tool, operation);
    show('row', `${row}: ${operation} with ${tool}`);
    return speed;
  },
  sources: [SPEED_SOURCES.handbook, SPEED_SOURCES.practice],
  notes: [
    'Drilling and reaming of mold steels are handbook values; the rest are ranges of common practice, of which the low end is given. ' +
      'Coatings, coolant and a stiff setup allow more.',
  ],
  cautions: [
    {
      says: 'A starting value only: a long reach, a small cutter or a light machine wants less. Listen, look at the chips, and keep to the cutter maker’s figures where you have them.',
    },
  ],
  related: ['CUT.RPM', 'CUT.FEED'],
});
