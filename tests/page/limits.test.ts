import { describe, expect, it } from 'vitest';
import { refusalOf, unkeptBy } from '../../src/page/limits';
import type { Sheet, Workbook } from '../../src/package/model';
import { newWorkbook } from '../../src/package';

const plain = newWorkbook();
const withSheet = (change: Partial<Sheet>): Workbook => ({
  ...plain,
  sheets: plain.sheets.map((sheet) => ({ ...sheet, ...change })),
});
const command = (name: string) => ({ id: `sheet.command.${name}`, openedSheet: 0 });

describe('commands that a file would not bear', () => {
  it('are let through where nothing in the file is in the way', () => {
    for (const name of ['insert-row', 'remove-col-confirm', 'set-bold', 'insert-sheet', 'set-range-values']) {
      expect(refusalOf(command(name), plain)).toBeUndefined();
    }
  });

  it('are rows and columns of a sheet with things that would not move along', () => {
    const merged = withSheet({ merges: [{ top: 0, left: 0, bottom: 0, right: 1 }] });
    for (const name of ['insert-row-before', 'insert-multi-cols-right', 'remove-row', 'move-rows']) {
      expect(refusalOf(command(name), merged)).toContain('merged cells');
    }
    expect(refusalOf(command('set-bold'), merged)).toBeUndefined();
    const noted = withSheet({ notes: [{ row: 1, column: 1, text: 'Per side.' }] });
    expect(refusalOf(command('delete-range-move-up'), noted)).toContain('notes');
  });

  it('are taking away a sheet that came with the file, and renaming one that more than cells may name', () => {
    expect(refusalOf(command('remove-sheet'), plain)).toContain('came with the file');
    expect(refusalOf({ id: 'sheet.command.remove-sheet', openedSheet: undefined }, plain)).toBeUndefined();
    expect(refusalOf(command('set-worksheet-name'), plain)).toBeUndefined();
    const named = { ...plain, names: [{ name: 'pitch', formula: 'Sheet1!$A$1', hidden: false }] };
    expect(refusalOf(command('set-worksheet-name'), named)).toContain('renamed');
  });

  it('are changes of names that came with the file', () => {
    const named = { ...plain, names: [{ name: 'pitch', formula: 'Sheet1!$A$1', hidden: false }] };
    expect(refusalOf(command('set-defined-name'), named)).toContain('Names');
    expect(refusalOf(command('insert-defined-name'), named)).toBeUndefined();
    expect(refusalOf(command('insert-row'), named)).toContain('named cells');
  });
});

describe('changes that are not saved', () => {
  it('are named, on sheets that came with the file', () => {
    const id = 'sheet.mutation.set-worksheet-col-width';
    expect(unkeptBy({ id, openedSheet: 0 })).toBe('column widths');
    expect(unkeptBy({ id, openedSheet: undefined })).toBeUndefined();
    expect(unkeptBy({ id: 'sheet.mutation.set-range-values', openedSheet: 0 })).toBeUndefined();
  });
});
