import axe from 'axe-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WITHOUT_ADD_IN } from '../../src/derive/excelWords';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { ExcelDesk } from './excelDesk';

/** A design sheet of the test's own: the force on a seat for two drafts, from a push in B1. */
const designSheet = (): Buffer =>
  Buffer.from(
    saveWorkbook(
      newWorkbook({
        sheets: [
          {
            name: 'Seat',
            cells: {
              A1: { value: 'Push, lbf' },
              B1: { value: 100 },
              A2: { value: 5 },
              A3: { value: 10 },
              B2: { formula: 'MOLD.SEAT.FORCE(B1,A2:A3,0.15)', fills: 'B2:B3', value: 0 },
            },
          },
        ],
      }),
      [],
    ),
  );

/** What a checker of accessibility finds wrong. */
const faultsIn = async (desk: ExcelDesk, without: readonly string[] = []): Promise<string[]> => {
  await desk.page.evaluate(axe.source);
  // The dummies are the control library's way of keeping the focus in a list.
  return desk.page.evaluate(async (off) => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const { violations } = await checker.run(
      { exclude: [['[data-tabster-dummy]']] },
      { rules: Object.fromEntries(off.map((rule) => [rule, { enabled: false }])) },
    );
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  }, without);
};

/** The narrowest that Excel makes a panel, and a comfortable one. */
describe.each([320, 450])('the panel in Excel, %i pixels wide', (width) => {
  let desk: ExcelDesk;
  beforeAll(async () => {
    desk = await ExcelDesk.open(width, { 'seat-force.xlsx': designSheet() });
  });
  afterAll(async () => {
    await desk.close();
  });
  const button = (name: string | RegExp) => desk.page.getByRole('button', { name });

  it('lists the functions and finds one by words', async () => {
    await desk.page.getByRole('searchbox').fill('smallest draft');
    await button(/^SEAT\.FREEDRAFT/).click();
    expect(await desk.page.getByRole('article').textContent()).toContain('MOLD.SEAT.FREEDRAFT');
    await desk.page.screenshot({ path: `reports/excel-help-${width}.png` });
  });

  it('enters the function into the selected cell and says what is missing', async () => {
    await desk.select('Sheet1', 'B2');
    await button('Insert at the selected cell').click();
    await desk.page.getByRole('alert').waitFor();
    expect(await desk.page.getByRole('region', { name: 'Selected cell' }).textContent()).toContain('#VALUE!');
    expect(desk.workbook.sheet('Sheet1').cells.get('1 1')?.formula).toBe('MOLD.SEAT.FREEDRAFT()');
    await desk.page.getByText('press F2').waitFor();
    await desk.page.screenshot({ path: `reports/excel-cell-${width}.png` });
  });

  it('opens at the design sheets from the ribbon', async () => {
    await desk.click('insertDesignSheet');
    await desk.page.getByRole('region', { name: 'Design sheets' }).waitFor();
    await desk.page.screenshot({ path: `reports/excel-sheets-${width}.png` });
  });

  it('inserts a design sheet that is calculated and follows its inputs', async () => {
    await button('Insert Seat force').click();
    await desk.page.getByText('Inserted: Seat.').waitFor();
    expect(desk.workbook.active.name).toBe('Seat');
    await desk.page.screenshot({ path: `reports/excel-inserted-${width}.png` });
    // F/(sin a + µ cos a) by hand: 100/(0.0871557 + 0.15 × 0.9961947)
    expect(await desk.show('Seat', 'B2')).toBeCloseTo(422.681, 3);
    await desk.type('Seat', 'B1', 200);
    expect(await desk.show('Seat', 'B2')).toBeCloseTo(845.362, 3);
  });

  it('shows the work of the selected cell from the ribbon', async () => {
    await desk.select('Seat', 'B2');
    await desk.click('showWork');
    const work = desk.page.getByRole('region', { name: 'Work', exact: true });
    await work.getByRole('heading', { name: /SEAT\.FORCE/ }).waitFor();
    await desk.page.screenshot({ path: `reports/excel-work-${width}.png` });
    expect(await work.textContent()).toMatch(/845\.36/);
  });

  it('runs a what-if from the ribbon on a copy, leaving the input as it was', async () => {
    await desk.click('startWhatIf');
    const whatIf = desk.page.getByRole('region', { name: 'What if' });
    await whatIf.getByLabel('Cell to vary').fill('Seat!B1');
    await whatIf.getByLabel('Values').fill('100, 200, 300');
    await whatIf.getByLabel('Cells to read').fill('Seat!B2');
    await whatIf.getByRole('button', { name: /^Run/ }).click();
    const outcome = whatIf.getByRole('region', { name: 'Outcome', exact: true });
    await outcome.waitFor();
    await desk.page.screenshot({ path: `reports/excel-whatif-${width}.png` });
    expect(await whatIf.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0);
    await outcome.getByRole('img', { name: /Line chart/ }).waitFor();
    expect(await smallTexts(desk)).toEqual([]);
    expect(await faultsIn(desk)).toEqual([]);
    // Three times the force by hand for a push of 100.
    expect(await outcome.getByRole('table').textContent()).toMatch(/422\.681.*845\.362.*1268\.04/);
    expect(await desk.show('Seat', 'B1')).toBe(200);
  });

  it('writes the outcome as a sheet that stays, with a chart, and runs it again for other values', async () => {
    await button('Write to a new sheet').click();
    await desk.page.getByText('Written to the sheet What if, with a chart.').waitFor();
    const sheet = desk.workbook.sheet('What if');
    expect(sheet.charts.all.map((chart) => chart.describe().series[0]?.values)).toEqual([
      "'What if'!$B$8:$B$10",
    ]);
    expect(await desk.show('What if', 'B10')).toBeCloseTo(3 * 422.681, 2);
    const kept = desk.page.getByRole('region', { name: 'In this workbook' });
    await kept.getByText('made for the design as it stands').waitFor();
    // Another value to try, and another draft in the design.
    await desk.type('What if', 'A8', 50);
    await desk.type('Seat', 'A2', 10);
    await kept.getByText('made for other values').waitFor();
    expect(await desk.show('What if', 'A2')).toBe('Made for other values: run again.');
    await desk.page.screenshot({ path: `reports/excel-kept-${width}.png` });
    expect(await faultsIn(desk)).toEqual([]);
    await kept.getByRole('button', { name: 'Run again: What if' }).click();
    await desk.page.getByText('What if: 3 variations run again.').waitFor();
    await kept.getByText('made for the design as it stands').waitFor();
    // 50/(sin 10° + 0.15 cos 10°) by hand.
    expect(await desk.show('What if', 'B8')).toBeCloseTo(155.584, 3);
    expect(await desk.show('What if', 'A2')).toBe('Made for the design as it stands.');
    await desk.type('Seat', 'A2', 5);
  });

  it('makes a native copy from Excel’s own file and opens it as a new workbook', async () => {
    await desk.click('prepareForSharing');
    await button('Make the copy').click();
    const report = desk.page.getByRole('region', { name: 'Report of the copy' });
    await report.waitFor();
    expect(await report.getByRole('heading', { level: 3 }).textContent()).toBe('seat native.xlsx');
    expect(await report.getByRole('heading', { level: 4 }).allTextContents()).toEqual([
      expect.stringMatching(/^1 refused/) as string,
      expect.stringMatching(/^1 native/) as string,
    ]);
    await desk.page.screenshot({ path: `reports/excel-share-${width}.png` });
    expect(await faultsIn(desk)).toEqual([]);
    await report.getByRole('button', { name: 'Open as a new workbook' }).click();
    await expect.poll(() => desk.workbook.created.length).toBe(1);
    const copy = readWorkbook(desk.workbook.created[0] ?? new Uint8Array(), []);
    const seat = copy.sheets.find(({ name }) => name === 'Seat');
    expect(seat?.cells.some(({ formula }) => formula?.includes('MOLD'))).toBe(false);
    // The cell reads its line of the working, which has the worksheet's own functions.
    expect(seat?.cells.find(({ row, column }) => row === 1 && column === 1)?.formula).toMatch(
      /'How it is calculated'!/,
    );
    const working = copy.sheets.find(({ name }) => name === 'How it is calculated');
    expect(working?.cells.some(({ formula }) => formula?.includes('SIN('))).toBe(true);
  });

  it('leads from a cell of the sheet to the help of its function', async () => {
    await desk.page.getByRole('tab', { name: 'Functions' }).click();
    await desk.select('Seat', 'B2');
    await button('MOLD.SEAT.FORCE').click();
    expect(await desk.page.getByRole('article').textContent()).toContain('Summed normal force');
  });

  it('recalculates everything from the ribbon', async () => {
    await desk.click('recalculateAll');
    expect(desk.workbook.fullCalculations).toBe(1);
  });

  it('has no fault that a checker of accessibility finds', async () => {
    expect(await faultsIn(desk)).toEqual([]);
  });

  it('needs no sideways scrolling', async () => {
    expect(await desk.page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });

  it('asks nobody but its own server and Microsoft for anything, and makes no error', () => {
    expect(desk.troubles).toEqual([]);
  });
});

const TABS = ['Functions', 'Work', 'What if', 'Equation', 'Share', 'Check', 'Sheets', 'Help'];

/** Texts smaller than 12 px, outside of formulas, whose indices are. */
const smallTexts = (desk: ExcelDesk): Promise<string[]> =>
  desk.page.evaluate(() => {
    const small: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (!element || node.textContent?.trim() === '' || element.closest('.katex, script, style, tspan'))
        continue;
      if (parseFloat(getComputedStyle(element).fontSize) < 12) small.push(node.textContent ?? '');
    }
    return small;
  });

/** What can be worked by the mouse, and by Tab from the tabs on is not come by. */
const beyondKeys = async ({ page }: ExcelDesk, tab: string): Promise<string[]> => {
  await page.getByRole('tab', { name: tab }).focus();
  let isBack = false;
  for (let presses = 0; presses < 100 && !isBack; presses++) {
    await page.keyboard.press('Tab');
    isBack = await page.evaluate(() => {
      const now = document.activeElement;
      const isOnTabs = document.querySelector('[role=tablist]')?.contains(now);
      if (!now || now === document.body || isOnTabs) return true;
      now.setAttribute('data-reached', '');
      return false;
    });
  }
  return page.evaluate(() => {
    const all = document.querySelectorAll<HTMLElement>('button, a[href], input, textarea, select, summary');
    // Among tabs, choices and functions the arrows move.
    const byArrows = '[role=tab], [type=radio], [tabindex="-1"], [data-tabster-dummy], :disabled';
    return [...all]
      .filter((one) => one.offsetParent !== null && !one.matches(byArrows) && !one.matches('[data-reached]'))
      .map(({ outerHTML }) => outerHTML.slice(0, 200));
  });
};

describe('the panel at the first time', () => {
  it('shows what can be done, once, and starts with the first design sheet', async () => {
    const desk = await ExcelDesk.open(320, { 'push-out-insert.xlsx': designSheet() }, 'first run in Excel');
    const cards = desk.page.getByRole('region', { name: 'First steps' });
    await cards.waitFor();
    expect(await cards.getByRole('heading', { level: 3 }).allTextContents()).toEqual([
      'Type a function',
      'Write a form',
      'Share a copy',
    ]);
    expect(await faultsIn(desk)).toEqual([]);
    await desk.page.screenshot({ path: 'reports/excel-first-320.png' });
    await cards.getByRole('button', { name: 'Insert the first design sheet' }).click();
    await desk.page.getByText('Inserted: Seat.').waitFor();
    await desk.page.reload();
    await desk.page.getByRole('searchbox').waitFor();
    expect(await cards.count()).toBe(0);
    await desk.close();
  });
});

describe('the panel in every theme of Excel', () => {
  let desk: ExcelDesk;
  beforeAll(async () => {
    desk = await ExcelDesk.open(320, { 'seat-force.xlsx': designSheet() });
    await desk.page.getByRole('searchbox').waitFor();
    await desk.type('Sheet1', 'A1', 100);
    desk.workbook.sheet('Sheet1').type(0, 1, '=MOLD.SEAT.FORCE(A1,5,0.15)');
    await desk.select('Sheet1', 'B1');
  });
  afterAll(async () => {
    await desk.close();
  });
  const isScheme = (scheme: string) =>
    desk.page.waitForFunction((wanted) => document.documentElement.style.colorScheme === wanted, scheme);
  const open = async (tab: string) => {
    await desk.page.getByRole('tab', { name: tab }).click();
    await desk.page.getByRole('tab', { name: tab, selected: true }).waitFor();
    // A tab is loaded when it is opened first.
    await expect.poll(() => desk.page.getByRole('progressbar').count(), { timeout: 60_000 }).toBe(0);
  };

  it('follows Excel that is dark where the system is light, with contrast and size in every tab', async () => {
    await desk.setTheme(true);
    await isScheme('dark');
    for (const tab of TABS) {
      await open(tab);
      expect([tab, ...(await faultsIn(desk)), ...(await smallTexts(desk))]).toEqual([tab]);
      await desk.page.screenshot({ path: `reports/excel-dark-${tab.replace(' ', '')}-320.png` });
    }
  }, 180_000);

  it('leaves the colors to the system in a theme of high contrast', async () => {
    await desk.page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
    for (const tab of TABS) {
      await open(tab);
      expect([tab, ...(await faultsIn(desk, ['color-contrast']))]).toEqual([tab]);
      await desk.page.screenshot({ path: `reports/excel-contrast-${tab.replace(' ', '')}-320.png` });
    }
    await desk.page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
    await desk.setTheme(false);
    await isScheme('light');
  }, 180_000);

  it('is worked by keyboard alone: the arrows choose the tab, Tab comes by all that is on it', async () => {
    await desk.page.getByRole('tab', { name: 'Functions' }).focus();
    for (const tab of TABS) {
      await desk.page.keyboard.press('Enter');
      await desk.page.getByRole('tab', { name: tab, selected: true }).waitFor();
      expect([tab, ...(await faultsIn(desk))]).toEqual([tab]);
      // What a tab fetches may come while the keys go by.
      await expect.poll(() => beyondKeys(desk, tab), { timeout: 60_000 }).toEqual([]);
      await desk.page.getByRole('tab', { name: tab }).focus();
      await desk.page.keyboard.press('ArrowRight');
    }
    expect(desk.troubles).toEqual([]);
  }, 180_000);
});

describe('the tabs of Excel alone', () => {
  let desk: ExcelDesk;
  beforeAll(async () => {
    desk = await ExcelDesk.open(320, {});
    await desk.page.getByRole('searchbox').waitFor();
  });
  afterAll(async () => {
    await desk.close();
  });
  const button = (name: string | RegExp) => desk.page.getByRole('button', { name });

  it('put a list of words and a format of text on the cells that a formula reads', async () => {
    const sheet = desk.workbook.sheet('Sheet1');
    sheet.type(0, 1, '=MOLD.TAP.DRILL(A1,A2)');
    sheet.type(0, 0, '10-24');
    await desk.select('Sheet1', 'B1');
    await desk.page.getByText(/was 10-24 typed/).waitFor();
    await button('Text for A1, thread').click();
    await desk.page.getByText('A1 now keeps').waitFor();
    expect(sheet.looks.get('0 0')?.numberFormat).toBe('@');
    await desk.page.screenshot({ path: 'reports/excel-lists-320.png' });
    sheet.type(1, 1, '=MOLD.SEAT.FORCE(100,5,0.15,C3)');
    await desk.select('Sheet1', 'B2');
    await button('List for C3, units').click();
    await desk.page.getByText('C3 now offers in, mm.').waitFor();
    expect(sheet.validations.get('C3')?.choices).toEqual(['in', 'mm']);
  });

  it('check the workbook by keyboard alone and mend what they find', async () => {
    const sheet = desk.workbook.sheet('Sheet1');
    desk.workbook.mode = 'Manual';
    sheet.type(0, 0, '10-24');
    sheet.looks.delete('0 0');
    sheet.type(0, 0, '10-24');
    await desk.workbook.execute([]);
    await desk.page.getByRole('tab', { name: 'Check' }).press('Enter');
    await button('Check cells and settings').press('Enter');
    const mode = button('Calculate automatically');
    await mode.waitFor();
    await desk.page.screenshot({ path: 'reports/excel-check-320.png', fullPage: true });
    expect(await faultsIn(desk)).toEqual([]);
    await mode.press('Enter');
    await desk.page.getByText('Excel calculates automatically now.').waitFor();
    await button('Write 10-24 as text into A1').press('Enter');
    await desk.page.getByText('A1 holds 10-24 as text now.').waitFor();
    expect(sheet.cells.get('0 0')?.value).toBe('10-24');
  });

  it('show what any formula reads, what reads a cell, and where an error began', async () => {
    const sheet = desk.workbook.addSheet('Steps');
    for (const [row, content] of [5, '=A1*2', '=1/0', '=A2+A3'].entries()) sheet.type(row, 0, content);
    await desk.workbook.execute([]);
    await desk.page.getByRole('tab', { name: 'Work' }).click();
    await desk.select('Steps', 'A4');
    const part = (name: string) => desk.page.getByRole('region', { name, exact: true });
    await part('Where #DIV/0! began').getByRole('button', { name: 'Steps!A3' }).waitFor();
    expect(await part('Reads').getByRole('button').allTextContents()).toEqual(['Steps!A2', 'Steps!A3']);
    expect(await faultsIn(desk)).toEqual([]);
    await desk.page.screenshot({ path: 'reports/excel-trace-320.png' });
    await part('Reads').getByRole('button', { name: 'Steps!A2' }).click();
    await expect.poll(() => desk.workbook.selection.row, { timeout: 30_000 }).toBe(1);
    await desk.select('Steps', 'A1');
    await part('What depends on it').getByRole('button', { name: 'Steps!A2' }).waitFor();
    await desk.select('Sheet1', 'B2');
  });

  it('keep variants in cells of a sheet, and put one into the design', async () => {
    const sheet = desk.workbook.addSheet('Part');
    for (const [row, content] of [5, 400, '=MOLD.SEAT.FORCE(B2,B1,0.15)'].entries())
      sheet.type(row, 1, content);
    for (const [row, label] of ['Draft', 'Push', 'Force'].entries()) sheet.type(row, 0, label);
    await desk.workbook.execute([]);
    await desk.page.getByRole('tab', { name: 'What if' }).click();
    await desk.page.getByRole('tab', { name: 'Variants' }).click();
    await desk.page.getByLabel('Inputs that differ', { exact: true }).fill('Part!B1, Part!B2');
    await desk.page.getByLabel('Results to compare', { exact: true }).fill('Part!B3');
    await button('Begin with these cells').click();
    const name = desk.page.getByRole('textbox', { name: 'Name of a variant' });
    await name.fill('A 5°');
    await button('Add').click();
    await button('Apply A 5°').waitFor();
    await desk.type('Part', 'B1', 12);
    await name.fill('B 12°');
    await button('Add').click();
    await button('Apply B 12°').waitFor();
    await button('Apply A 5°').click();
    await desk.page.getByText('A 5° is in the design now. One step of undo takes it back.').waitFor();
    expect(await desk.show('Part', 'B1')).toBe(5);
    // The buttons take their colors again little by little.
    await expect.poll(() => faultsIn(desk), { timeout: 60_000 }).toEqual([]);
    await desk.page.screenshot({ path: 'reports/excel-variants-320.png' });
    await desk.page.getByRole('tab', { name: 'Table' }).click();
  });

  it('write a report to copy, with the selected cell, and send nothing', async () => {
    await desk.page.getByRole('tab', { name: 'Help' }).click();
    await desk.page.getByRole('searchbox').fill('smallest draft');
    await desk.page.getByRole('link', { name: 'SEAT.FREEDRAFT' }).waitFor();
    await button('Write a report').click();
    const report = desk.page.getByRole('textbox', { name: 'Report' });
    await report.waitFor();
    expect(await report.inputValue()).toMatch(
      /Moldsheet basis 2.*\nExcel 16\.0, PC.*\nSheet1!B2: =MOLD\.SEAT\.FORCE/,
    );
    await desk.page.screenshot({ path: 'reports/excel-help-tab-320.png' });
    expect(await faultsIn(desk)).toEqual([]);
    expect(desk.troubles).toEqual([]);
  });

  it('write a function as a form at the selected cell, and ask where its cells are filled', async () => {
    await desk.page.getByRole('tab', { name: 'Functions' }).click();
    await desk.page.getByRole('searchbox').fill('SEAT.FORCE');
    await button(/^SEAT\.FORCE/).click();
    await desk.select('Sheet1', 'F3');
    await button('Write a form at the selected cell').click();
    await desk.page.getByText(/The form stands at F3:L\d+ of Sheet1\. One step of undo/).waitFor();
    expect(desk.workbook.names.has('seat_force')).toBe(true);
    await button('Write a form at the selected cell').click();
    await desk.page.getByText(/is not empty\. It fits at F\d+/).waitFor();
    await desk.page.screenshot({ path: 'reports/excel-form-320.png' });
    expect(await faultsIn(desk)).toEqual([]);
    await button(/^Write it at F/).click();
    await desk.page.getByText(/The workbook has .* already\. Shared, one cell serves all/).waitFor();
    await button('Cells of its own').click();
    await desk.page.getByText(/The form stands at F/).waitFor();
    expect(desk.workbook.names.has('seat_force_2')).toBe(true);
    await button('← All functions').click();
  });

  it('make a design of sections on new sheets, and another at the selected cell', async () => {
    await desk.page.getByRole('tab', { name: 'Sheets' }).click();
    await desk.page.getByRole('checkbox', { name: 'Hole schedule' }).check();
    await desk.page.getByRole('radio', { name: 'mm' }).check();
    await button('Make the design sheet').click();
    await desk.page
      .getByText('Made: Design, Hand on. One step of undo takes them back.')
      .waitFor({ timeout: 60_000 });
    expect(desk.workbook.active.name).toBe('Design');
    // Of M6 at 70 % of a full thread: 6 - 0.7 * 1.299 = 5.09, and the next drill.
    const sheet = desk.workbook.sheet('Design');
    const drills = [...sheet.cells.values()].map(({ value }) => value);
    expect(drills).toContain(5.1);
    await desk.page.screenshot({ path: 'reports/excel-sections-320.png', fullPage: true });
    expect(await faultsIn(desk)).toEqual([]);
    await desk.select('Sheet1', 'A200');
    await button('Write a design sheet at the selected cell').click();
    await desk.page.getByText(/The design sheet stands at A200:G\d+ of Sheet1\./).waitFor();
    await button('Write a design sheet at the selected cell').click();
    await button(/^Write it at A/).waitFor();
  }, 180_000);

  it('say what becomes of a shared workbook, and what Goal Seek does', async () => {
    await desk.page.getByRole('tab', { name: 'Share' }).click();
    await desk.page.getByText('A colleague without the add-in').waitFor();
    await desk.page.getByRole('tab', { name: 'What if' }).click();
    await desk.page.getByText('Goal Seek gives wrong numbers').waitFor();
  });

  it('show the sign between arguments of an Excel of another country', async () => {
    desk.workbook.separator = ';';
    await desk.page.getByRole('tab', { name: 'Functions' }).click();
    await desk.page.getByRole('searchbox').fill('SEAT.FREEDRAFT');
    await button(/^SEAT\.FREEDRAFT/).click();
    await desk.page.getByText('=MOLD.SEAT.FREEDRAFT(friction; [units])').waitFor();
    await desk.page.getByText('Between arguments stands ; here').waitFor();
  });
});

describe('the panel beside a workbook that lies where others can open it', () => {
  it('says once what they will see, and leads to the native copy', async () => {
    const desk = await ExcelDesk.open(320, {}, 'a shared workbook in Excel');
    const words = desk.page.getByText(`This workbook lies where it can be shared. ${WITHOUT_ADD_IN}`);
    await words.waitFor({ timeout: 60_000 });
    expect(await faultsIn(desk)).toEqual([]);
    await desk.page.screenshot({ path: 'reports/excel-shared-320.png' });
    await desk.page.getByRole('button', { name: 'Make a native copy' }).click();
    await desk.page.getByText('So share the native copy beside it').waitFor();
    expect(await words.count()).toBe(0);
    await desk.page.getByRole('button', { name: 'Make the copy' }).waitFor();
    await desk.page.reload();
    await desk.page.getByRole('searchbox').waitFor({ timeout: 60_000 });
    expect(await words.count()).toBe(0);
    expect(desk.troubles).toEqual([]);
    await desk.close();
  }, 180_000);
});

describe('the panel page outside of Excel', () => {
  it('says where it belongs in a plain browser', async () => {
    const desk = await ExcelDesk.open(450, {}, 'plain browser');
    await desk.page.getByText('Open it in Excel').waitFor();
    await desk.close();
  });

  it('says that office.js is missing where the network keeps it away', async () => {
    const desk = await ExcelDesk.open(450, {}, 'no office.js');
    await desk.page.getByText('office.js) could not be loaded').waitFor();
    await desk.close();
  });
});
