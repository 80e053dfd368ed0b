import { describe, expect, it } from 'vitest';
import { newWorkbook } from '../../src/package';
import { refusalOf } from '../../src/page/limits';

const plain = newWorkbook();
const named = { ...plain, names: [{ name: 'draft', formula: 'Sheet1!$A$1', hidden: false }] };
const command = (name: string) => ({ id: `sheet.command.${name}`, params: undefined });

describe('commands that a file would not bear', () => {
  it('are changes of names that came with it', () => {
    expect(refusalOf(command('remove-defined-name'), named)).toContain('Names that came with the file');
    expect(refusalOf(command('remove-defined-name'), plain)).toBeUndefined();
    expect(refusalOf(command('set-bold'), named)).toBeUndefined();
  });
});
