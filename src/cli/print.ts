import { basename } from 'node:path';
import type { Command } from './command';
import { Failure } from './command';
import { writeBytes } from './files';
import { LIMITS } from './limits';
import { openWorkbook, refuseWorkbookName } from './workbookFile';

const PAPERS = ['Letter', 'A4'] as const;

const NO_WORK = { workToPrint: () => Promise.resolve<string[]>([]) };

export const print: Command = {
  usage: ['IN.xlsx -o OUT.html [--sheet NAME …] [--paper A4]'],
  summary: 'Write the sheets as one HTML file that a browser prints.',
  details: [
    'The sheets are calculated first and fitted to the width of the paper, with file, sheet, date and page on each page. Open the file in a browser and print it, or save it as PDF there.',
    'The exit status is 2 if the workbook cannot be read or the file cannot be written.',
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'OUT.html', says: 'The file to write.' },
    sheet: {
      type: 'string',
      multiple: true,
      value: 'NAME',
      says: 'A sheet to print; may be given more than once. All that can be seen unless told.',
    },
    area: { type: 'string', value: 'A1:F40', says: 'The part of the one sheet to print.' },
    paper: {
      type: 'string',
      value: 'PAPER',
      says: 'Letter, unless told or the sheet says otherwise, or A4.',
    },
    work: {
      type: 'string',
      multiple: true,
      value: 'CELLS',
      says: 'Cells such as Insert!D31 or Insert!D20:D40 whose work is printed behind the sheets: equations, inputs, steps, pictures, sources.',
    },
    revision: { type: 'string', value: 'TEXT', says: 'A revision for the title block.' },
    gridlines: { type: 'boolean', says: 'Draw the lines between cells.' },
    decimal: {
      type: 'string',
      value: 'SIGN',
      says: 'The decimal sign of numbers: a point, unless told, or a comma.',
    },
    headings: { type: 'boolean', says: 'Print the letters of columns and the numbers of rows.' },
  },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    if (target === undefined) throw new Failure('Name the file to write: -o OUT.html.');
    refuseWorkbookName(target, 'What is printed');
    const paper = PAPERS.find((one) => one.toLowerCase() === (args.text('paper') ?? one).toLowerCase());
    if (!paper) throw new Failure(`The paper is Letter or A4, not "${args.text('paper') ?? ''}".`);
    const sign = args.text('decimal') ?? '.';
    if (!/^[.,]$/.test(sign)) throw new Failure(`The decimal sign is a point or a comma, not "${sign}".`);
    const workbook = await openWorkbook(input);
    const sheets = args.texts('sheet');
    for (const name of sheets)
      if (!workbook.sheets.some((sheet) => sheet.name === name))
        throw new Failure(`The workbook has no sheet "${name}".`);
    const { parseArea } = await import('../cells/address');
    const area = parseArea(args.text('area') ?? '');
    if (args.text('area') !== undefined && !area)
      throw new Failure(`"${args.text('area') ?? ''}" is no area such as A1:F40.`);
    if (area && sheets.length !== 1 && workbook.sheets.length !== 1)
      throw new Failure('An area belongs to one sheet: name it with --sheet.');
    const [{ printHtml }, { lookWith }, { CalculatedWorkbook }, { ruleLooks }, { worksheetFunctions }] =
      await Promise.all([
        import('../render/printPage'),
        import('../render/drawings/look'),
        import('../workbook/calculated'),
        import('../workbook/looks'),
        import('../call/functions'),
      ]);
    const book = CalculatedWorkbook.of(workbook, worksheetFunctions, LIMITS);
    const overlays = ruleLooks(book, workbook.sheets);
    const revision = args.text('revision');
    const wanted = args.texts('work');
    const { workToPrint } = wanted.length > 0 ? await import('../work/workToPrint') : NO_WORK;
    const work = await workToPrint(
      book,
      worksheetFunctions,
      wanted.map((text) => {
        const [, quoted, plain, cells = ''] = /^(?:'(.+)'|([^!]+))!(.+)$/.exec(text) ?? [];
        const name = quoted ?? plain;
        const sheet = workbook.sheets.find((one) => one.name === name);
        const chosen = parseArea(cells);
        if (!sheet || !chosen)
          throw new Failure(`"${text}" names no cells of the workbook, as Insert!D31 does.`);
        return { sheet, area: chosen };
      }),
    );
    if (wanted.length > 0 && work.length === 0)
      throw new Failure(`No cell of ${wanted.join(', ')} has a MOLD function: there is no work to show.`);
    const html = printHtml(workbook, {
      file: basename(input),
      date: new Date().toISOString().slice(0, 10),
      value: (sheet, row, column) => book.at(sheet, row, column),
      overlays,
      look: lookWith((formula) => book.evaluate(formula)),
      ...(args.text('paper') !== undefined && { paper }),
      ...(revision !== undefined && { revision }),
      ...(args.flag('gridlines') && { gridlines: true }),
      ...(sign === ',' && { decimalComma: true }),
      ...(work.length > 0 && { work: [work.join('\n')] }),
      headings: args.flag('headings'),
      ...(sheets.length > 0 && { sheets }),
      ...(area && { area }),
    });
    await writeBytes(target, new TextEncoder().encode(html));
    output.out(`Written to ${target}. Open it in a browser to print it.`);
    return 0;
  },
};
