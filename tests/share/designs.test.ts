import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { cellAddress } from '../../src/cells/address';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { cellFinder, type Workbook } from '../../src/package/model';
import { restoreWorkbook, shareWorkbook } from '../../src/share';
import { OTHER_INPUTS } from '../../src/share/frozen';
import { agrees } from '../../src/workbook/agrees';
import { recalculate } from '../../src/workbook/recalculate';
import { LibreOffice } from '../../scripts/libreoffice';
import { CI_SEED } from '../support/chance';
import { generatedDesign, type GeneratedDesign } from './designs';
import { basicOf } from './rearranged';
import { hasOffice } from './office';

/** It takes minutes: asked for by `FOLLOW=1`, or by `FOLLOW=sample` for a few of the designs. */
const asked = process.env['FOLLOW'];
const isWhole = asked === '1';
const COUNT = isWhole ? 20 : 4;
/** The sample is the same everywhere: a push is not to fail by chance on what it did not touch. */
const SEED = process.env['CI'] || !isWhole ? CI_SEED : Math.floor(Math.random() * 2 ** 31);

const ids = worksheetFunctions.map(({ id }) => id);

/** A cell that says in words that it has no value here. */
const saysSo = (cell: CellValue): boolean => cell instanceof CellError || cell === OTHER_INPUTS;

/** A text with the digits of its numbers that two programs have in common. */
const inWords = (cell: CellValue): CellValue =>
  typeof cell === 'string' ? cell.replace(/\d+\.\d{6,}/g, (digits) => Number(digits).toPrecision(9)) : cell;

const formulas = (book: Workbook): string[] =>
  book.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [`${sheet.name}!${cellAddress(row, column)} ${formula}`],
    ),
  );

describe.skipIf(!hasOffice || (!isWhole && asked !== 'sample'))(
  `copies of generated designs in LibreOffice, which is needed for this (seed ${SEED})`,
  () => {
    const lies: string[] = [];
    const dead: string[] = [];
    const faults: string[] = [];
    const lost: unknown[] = [];
    let right = 0;

    const compare = async (design: GeneratedDesign, round: number, saved: Workbook): Promise<void> => {
      const { says, changes } = design.rounds[round] ?? { says: '', changes: [] };
      await judge(says, readWorkbook(saveWorkbook(design.workbook, changes), ids), saved);
    };

    /** Compares what LibreOffice made of a copy with what the same cells give here. */
    async function judge(says: string, design: Workbook, saved: Workbook): Promise<void> {
      const wanted = await recalculate(design, worksheetFunctions, { anew: true });
      for (const { sheet, row, column, formula, value, spill = [[value]] } of wanted) {
        const own = saved.sheets.find(({ name }) => name === sheet);
        const find = own ? cellFinder(own) : () => undefined;
        spill.forEach((line, down) => {
          line.forEach((one, across) => {
            const got = find(row + down, column + across)?.value ?? null;
            const told = `${says}: ${sheet}!${cellAddress(row + down, column + across)} ${formula}: ${String(got)} for ${String(one)}`;
            if (one instanceof CellError ? saysSo(got) : agrees(inWords(one), inWords(got))) right += 1;
            else if (saysSo(got)) dead.push(told);
            else lies.push(told);
          });
        });
      }
    }

    async function comesBack(design: GeneratedDesign, round: number, saved: Uint8Array): Promise<void> {
      const back = await restoreWorkbook(readWorkbook(saved, ids), worksheetFunctions);
      const { changed = [], problems = ['nothing came back'], bytes = new Uint8Array() } = back ?? {};
      const again = formulas(readWorkbook(bytes, ids));
      const was = formulas(design.workbook);
      const gone = was.filter((one) => !again.includes(one));
      const isOwn = (cell: string): boolean =>
        design.rounds[round]?.changes.some(
          (one) => `${one.sheet}!${cellAddress(one.row, one.column)}` === cell,
        ) === true;
      const others = changed.filter(({ sheet, cell }) => !isOwn(`${sheet}!${cell}`));
      if (gone.length + problems.length + others.length > 0) lost.push({ gone, problems, others });
    }

    /** Does the same in LibreOffice to each design and its copy, where the design's own functions have no value. */
    async function rearrange(
      office: LibreOffice,
      folder: string,
      designs: readonly GeneratedDesign[],
      copies: readonly Workbook[],
    ): Promise<void> {
      const acts = designs.flatMap((design, n) =>
        design.rearranged
          .filter((_, i) => isWhole || i % COUNT === n)
          .map((act, i) => ({ design: n, act, name: `${n}-act${i}` })),
      );
      const kinds = { design: designs.map(({ workbook }) => workbook), copy: copies };
      const files = Object.entries(kinds).flatMap(([kind, books]) => {
        const from = books.map((book, n) => {
          const file = join(folder, `${n}-${kind}.xlsx`);
          writeFileSync(file, saveWorkbook(book, []));
          return file;
        });
        return acts.map(({ design, act, name }) => ({
          from: from[design] ?? '',
          to: join(folder, `${name}-${kind}.xlsx`),
          act,
        }));
      });
      await office.basic(basicOf(files), 1500);
      for (const { act, name } of acts) {
        const [design, copy] = ['design', 'copy'].map((kind) =>
          readFileSync(join(folder, `${name}-${kind}.xlsx`)),
        );
        if (design && copy) await judge(act.says, readWorkbook(design, ids), readWorkbook(copy, []));
      }
    }

    beforeAll(async () => {
      const folder = mkdtempSync(join(tmpdir(), 'moldsheet-designs-'));
      const office = new LibreOffice();
      try {
        const designs: GeneratedDesign[] = [];
        const copies: Workbook[] = [];
        const files: string[] = [];
        for (let n = 0; n < COUNT; n++) {
          const design = await generatedDesign(SEED + n);
          designs.push(design);
          const shape = n % 4 === 3 ? { oneCell: true } : {};
          const shared = await shareWorkbook(design.workbook, worksheetFunctions, { as: 'native', ...shape });
          for (const { formula, why } of shared.cells)
            if (why.includes('a fault in sharing')) faults.push(`${formula}: ${why}`);
          const copy = readWorkbook(shared.bytes, ids);
          copies.push(copy);
          design.rounds.forEach(({ changes }, round) => {
            const file = join(folder, `${n}-${round}.xlsx`);
            writeFileSync(file, saveWorkbook(copy, changes));
            files.push(file);
          });
        }
        expect(await office.recalculate(files, join(folder, 'out'), 1500)).toEqual([]);
        for (const [n, design] of designs.entries()) {
          for (const round of design.rounds.keys()) {
            const saved = readFileSync(join(folder, 'out', `${n}-${round}.xlsx`));
            await compare(design, round, readWorkbook(saved, []));
            if (round < 2 || isWhole) await comesBack(design, round, saved);
          }
        }
        await rearrange(office, folder, designs, copies);
      } finally {
        office.dispose();
        rmSync(folder, { recursive: true, force: true });
      }
    }, 2_400_000);

    it('give what the design gives after the same changes, or say that they cannot', () => {
      expect(faults).toEqual([]);
      expect(lies).toEqual([]);
      expect(right).toBeGreaterThan(100 * COUNT);
    });

    it('stay live for nearly all of them', () => {
      const share = right / (right + dead.length);
      expect(share, dead.slice(0, 60).join('\n')).toBeGreaterThanOrEqual(0.8);
    });

    it('come back with every formula after LibreOffice saved them', () => {
      expect(lost).toEqual([]);
    });
  },
);
