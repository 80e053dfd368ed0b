import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { readWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';

export const hasOffice = spawnSync('soffice', ['--version']).status === 0;
/** A Python that knows openpyxl: Debian's package belongs to Debian's own Python. */
const python = ['python3', '/usr/bin/python3'].find(
  (one) => spawnSync(one, ['-c', 'import openpyxl']).status === 0,
);
export const hasOpenpyxl = python !== undefined;

/** Without this LibreOffice shows the values stored in the file instead of its own. */
const RECALCULATES = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** The workbook as LibreOffice calculates and saves it. */
export const recalculatedByOffice = (bytes: Uint8Array): Workbook =>
  readWorkbook(byOffice(bytes, 'xlsx', 'Calc MS Excel 2007 XML', RECALCULATES), []);

/** The workbook as LibreOffice prints it, with its own settings: a person's. */
export const printedByOffice = (bytes: Uint8Array): Uint8Array => byOffice(bytes, 'pdf', 'calc_pdf_Export');

function byOffice(bytes: Uint8Array, type: string, filter: string, settings?: string): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-office-'));
  try {
    const profile = join(folder, 'profile');
    mkdirSync(join(profile, 'user'), { recursive: true });
    if (settings !== undefined) writeFileSync(join(profile, 'user', 'registrymodifications.xcu'), settings);
    const input = join(folder, 'in.xlsx');
    writeFileSync(input, bytes);
    const { status, stderr } = spawnSync(
      'soffice',
      [
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        '--headless',
        '--norestore',
        '--convert-to',
        `${type}:${filter}`,
        '--outdir',
        join(folder, 'out'),
        input,
      ],
      { encoding: 'utf8', timeout: 240_000 },
    );
    if (status !== 0) throw new Error(`LibreOffice ended with ${String(status)}: ${stderr}`);
    return readFileSync(join(folder, 'out', `in.${type}`));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What openpyxl says of each file: the number of its sheets, or its complaint. It is started once for all. */
export function openedByOpenpyxl(...files: readonly Uint8Array[]): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-openpyxl-'));
  try {
    const names = files.map((bytes, i) => {
      const name = join(folder, `${i}.xlsx`);
      writeFileSync(name, bytes);
      return name;
    });
    const program =
      'import sys, openpyxl\nfor name in sys.argv[1:]: print(len(openpyxl.load_workbook(name).sheetnames))';
    const { status, stdout, stderr } = spawnSync(python ?? 'python3', ['-c', program, ...names], {
      encoding: 'utf8',
    });
    const counts = stdout.trim().split(/\s+/);
    return status === 0 ? counts : [...counts, stderr.trim()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
