import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-print-cli-'));
let count = 0;

/** The page that is printed of a sample, or what is said instead. */
async function printed(sample: string, ...options: string[]): Promise<string> {
  const target = join(folder, `${++count}.html`);
  const { status, err } = await run('print', `samples/${sample}.xlsx`, '-o', target, ...options);
  return status === 0 ? readFileSync(target, 'utf8') : err;
}

it('prints numbers with the decimal sign that is asked for', async () => {
  const point = await printed('plates');
  const comma = await printed('plates', '--decimal', ',');
  expect(point).toMatch(/>\d+\.\d+</);
  expect(comma).not.toMatch(/>\d+\.\d{1,2}</);
  expect(comma.match(/>\d+,\d+</g)?.length).toBeGreaterThan(5);
  expect(await printed('plates', '--decimal', ';')).toContain('is a point or a comma, not ";"');
});

it('prints the work of chosen cells behind the sheets, with equations, picture and sources', async () => {
  const html = await printed('push-out-insert', '--sheet', 'Insert', '--work', 'Insert!D20:D40');
  const [sheets = '', work = ''] = html.split('<section class="work">');
  expect(sheets).not.toContain('<math');
  expect(work.match(/<article>/g)?.length).toBeGreaterThan(3);
  expect(work).toMatch(/<h2>Insert!D\d+ [A-Z][^<]+: [\d.]+/);
  for (const part of ['MOLD.SEAT.FORCE', '<math', '<svg', 'Sources']) expect(work).toContain(part);
  expect(work).not.toContain('class="refusal"');
  expect(await printed('push-out-insert', '--work', 'Nowhere!A1')).toContain(
    'names no cells of the workbook',
  );
  expect(await printed('push-out-insert', '--work', 'Insert!A1')).toContain('there is no work to show');
});
