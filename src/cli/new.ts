import { SYSTEMS } from '../core/quantity';
import type { Section } from '../forms/sections/section';
import type { Command } from './command';
import { Failure } from './command';
import { refuseTaken } from './files';
import { table } from './table';
import { writeWorkbook } from './workbookFile';

export const newSheet: Command = {
  usage: ['OUT.xlsx [--units in|mm] [--sections NAME,…] [--title TEXT]', '--list'],
  summary:
    'Write a new design sheet of sections: inputs, results, verdicts with their sum at the top, a sheet to hand on.',
  details: [
    'Sections share their inputs: one draft is one cell. What is typed in at first is an invented design that holds.',
    'A file of that name is never written over. The exit status is 2 if the workbook cannot be written.',
  ],
  options: {
    units: { type: 'string', value: 'in|mm', says: 'Units of the sheet; in unless told.' },
    sections: {
      type: 'string',
      multiple: true,
      value: 'NAME,…',
      says: 'The sections, such as seat,spring; all of them unless told.',
    },
    title: { type: 'string', value: 'TEXT', says: 'What stands at its top.' },
    list: { type: 'boolean', says: 'List the sections there are.' },
  },
  takes: [0, 1],
  async run(args, output) {
    const [target] = args.positionals;
    const { sections } = await import('../forms/sections');
    if (args.flag('list')) {
      output.out(
        table(
          ['Section', 'Title', 'Decides'],
          sections.map(({ id, title, decide }) => [id, title, decide]),
        ),
      );
      return 0;
    }
    if (target === undefined) throw new Failure('Name the workbook to write, such as design.xlsx.');
    const system = SYSTEMS.find((one) => one === (args.text('units') ?? 'in'));
    if (!system) throw new Failure(`--units takes in or mm, not ${args.text('units') ?? ''}.`);
    const [{ newDesign }, { worksheetFunctions }] = await Promise.all([
      import('../forms/newDesign'),
      import('../call/functions'),
    ]);
    await refuseTaken(target);
    const chosen = chosenOf(args.texts('sections'), sections);
    const title = args.text('title');
    const workbook = await newDesign(
      { sections: chosen, system, ...(title !== undefined && { title }) },
      worksheetFunctions,
    );
    await writeWorkbook(target, workbook, []);
    output.out(`Written to ${target}: ${chosen.map(({ title: one }) => one).join(', ')}.`);
    return 0;
  },
};

/** In the order of the job, however they were named. */
function chosenOf(texts: readonly string[], all: readonly Section[]): readonly Section[] {
  const wanted = texts
    .flatMap((text) => text.split(',').map((one) => one.trim().toLowerCase()))
    .filter(Boolean);
  const unknown = wanted.find((one) => !all.some(({ id }) => id === one));
  if (unknown !== undefined)
    throw new Failure(`There is no section ${unknown}; there are ${all.map(({ id }) => id).join(', ')}.`);
  return wanted.length === 0 ? all : all.filter(({ id }) => wanted.includes(id));
}
