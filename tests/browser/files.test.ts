import { zipSync, strToU8 } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newWorkbook, saveWorkbook } from '../../src/package';
import { cellOf, Desk, type Tab } from './desk';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

const seatSheet = saveWorkbook(
  newWorkbook({
    sheets: [
      {
        name: 'Seat',
        columns: { A: 24, B: 14 },
        cells: {
          A1: { value: 'Push', style: 'label' },
          B1: 2000,
          A2: { value: 'Draft', style: 'label' },
          B2: { value: 10, note: 'Per side.' },
          A3: { value: 'Force on the seat', style: 'label' },
          B3: { formula: 'MOLD.SEAT.FORCE(B1,B2,0.15)' },
          B5: { formula: 'SEQUENCE(3)*B2', fills: 'B5:B7' },
        },
      },
    ],
    styles: { label: { font: { bold: true }, fill: '#EEF3F4' } },
  }),
  [],
);

/** By hand: F / (sin a + mu cos a). */
const force = (push: number, degrees: number, friction: number) => {
  const a = (degrees * Math.PI) / 180;
  return push / (Math.sin(a) + friction * Math.cos(a));
};

const file = (name: string, bytes: Uint8Array) => ({ name, mimeType: XLSX, buffer: Buffer.from(bytes) });

let desk: Desk;

beforeAll(async () => {
  desk = await Desk.open();
});
afterAll(async () => {
  await desk.close();
});

describe('a workbook from disk', () => {
  let tab: Tab;

  beforeAll(async () => {
    tab = await desk.tab(await desk.newcomer());
    await tab.open(file('seat.xlsx', seatSheet));
    await tab.page.getByText('seat.xlsx', { exact: true }).waitFor();
    await tab.ready();
  });

  it('follows a change, and saves what follows', async () => {
    await tab.type('B2', '5');
    const { bytes, name } = await tab.save();
    expect(name).toBe('seat.xlsx');
    const workbook = await tab.savedWorkbook();
    expect(cellOf(workbook, 'Seat', 'B3')?.value).toBeCloseTo(force(2000, 5, 0.15), 8);
    expect(cellOf(workbook, 'Seat', 'B5')).toMatchObject({ value: 5, formula: 'SEQUENCE(3)*B2' });
    expect(cellOf(workbook, 'Seat', 'B7')?.value).toBe(15);
    expect(workbook.sheets[0]?.notes).toEqual([{ row: 1, column: 1, text: 'Per side.' }]);
    expect(workbook.styles[cellOf(workbook, 'Seat', 'A3')?.style ?? -1]?.font.bold).toBe(true);
    expect(bytes.length).toBeGreaterThan(1000);
  });

  it('is left alone by files that are no workbook, which one line explains', async () => {
    const whole = Buffer.from(seatSheet);
    const bad = {
      'text.xlsx': strToU8('Draft;5'),
      'cut.xlsx': whole.subarray(0, whole.length / 2),
      'zip.xlsx': zipSync({ 'a.txt': strToU8('a') }),
      'empty.xlsx': new Uint8Array(),
    };
    for (const [name, bytes] of Object.entries(bad)) {
      await tab.open(file(name, bytes));
      const line = tab.page.getByText(`${name} was not opened.`);
      await line.waitFor();
      expect(await line.textContent()).toMatch(/^\S+ was not opened\. [A-Z].*\.$/);
    }
    await tab.page.getByRole('button', { name: 'Dismiss' }).click();
    expect(cellOf(await tab.savedWorkbook(), 'Seat', 'B2')?.value).toBe(5);
  });

  it('can be dropped onto the page', async () => {
    const bytes = [...seatSheet];
    await tab.page.evaluate((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(content)], 'dropped.xlsx'));
      for (const type of ['dragover', 'drop']) {
        const event = new DragEvent(type, { dataTransfer: transfer, bubbles: true, cancelable: true });
        document.querySelector('canvas')?.dispatchEvent(event);
      }
    }, bytes);
    await tab.page.getByText('dropped.xlsx').first().waitFor();
    await tab.ready();
    expect(cellOf(await tab.savedWorkbook(), 'Seat', 'B2')?.value).toBe(10);
  });
});

describe('unsaved work', () => {
  it('is there again after the tab was closed, and after a reload', async () => {
    const person = await desk.newcomer();
    const first = await desk.tab(person);
    await first.open(file('seat.xlsx', seatSheet));
    await first.page.getByText('seat.xlsx', { exact: true }).waitFor();
    await first.ready();
    await first.type('B2', '7');
    await first.isAt('B3');
    await first.page.close();

    const second = await desk.tab(person);
    await second.page.getByText('seat.xlsx is as you left it.').waitFor();
    await second.type('B1', '1000');
    await second.isAt('B2');
    await second.page.reload();
    await second.ready();
    await second.page.getByText('seat.xlsx is as you left it.').waitFor();
    const workbook = await second.savedWorkbook();
    expect(cellOf(workbook, 'Seat', 'B3')?.value).toBeCloseTo(force(1000, 7, 0.15), 8);
    await second.page.close();

    const third = await desk.tab(person);
    expect(await third.page.getByText('as you left it').count()).toBe(0);
    await person.close();
  });

  it('waits under its name when another workbook takes its place', async () => {
    const person = await desk.newcomer();
    const tab = await desk.tab(person);
    await tab.open(file('seat.xlsx', seatSheet));
    await tab.page.getByText('seat.xlsx', { exact: true }).waitFor();
    await tab.ready();
    await tab.type('B2', '8');
    await tab.page.getByText('not saved to a file').waitFor();
    // Not entered yet.
    await tab.select('D9');
    await tab.page.keyboard.type('half');
    await tab.page.getByRole('button', { name: 'New' }).click();
    await tab.page.getByText('The unsaved changes of seat.xlsx are kept').waitFor();
    await tab.page.getByRole('button', { name: 'Unsaved work' }).click();
    await tab.page.getByRole('menuitem', { name: /^seat\.xlsx/ }).click();
    await tab.page.getByText('seat.xlsx is as you left it.').waitFor();
    await tab.ready();
    const saved = await tab.savedWorkbook();
    expect(cellOf(saved, 'Seat', 'B2')?.value).toBe(8);
    expect(cellOf(saved, 'Seat', 'D9')?.value).toBe('half');
    await person.close();
  });

  it('stays apart in two tabs', async () => {
    const person = await desk.newcomer();
    const one = await desk.tab(person);
    await one.page.getByRole('button', { name: 'New' }).click();
    await one.ready();
    await one.type('A1', '1');
    await one.kept();
    const two = await desk.tab(person);
    expect(await two.page.getByText('as you left it').count()).toBe(0);
    await person.close();
  });
});

it('leaves no trouble behind', () => {
  expect(desk.troubles).toEqual([]);
});
