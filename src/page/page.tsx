import { createRoot } from 'react-dom/client';
import { worksheetFunctions } from '../call/functions';
import { readDecimalSign } from '../panel/decimalSign';
import { idle } from '../panel/idle';
import { messageOf } from '../panel/messageOf';
import { isMissing, MISSING } from '../panel/missing';
import { App } from './App';
import { CellNote } from './CellNote';
import { Grid } from './grid';
import type { SheetPlace } from './heldEntries';
import { GridFocus } from './gridFocus';
import { loadLocalFonts } from './fonts';
import { GridHost } from './host';
import './page.css';
import { painted } from './painted';
import { FIRST_SAMPLE, sampleNames } from './samples';
import { Session } from './session';
import { Newer } from './offline/newer';
import { SheetDesk } from './sheetTab/desk';
import { onDarkChange, prefersDark } from './theme';

/** Puts the page in place of the shell, with the workbook to go on with. */
export async function openPage(element: HTMLElement): Promise<void> {
  const fetched = Promise.all([sampleNames().catch((): string[] => []), loadLocalFonts()]);
  readDecimalSign();

  const cellsElement = document.createElement('div');
  cellsElement.style.height = '100%';
  const gridElement = document.createElement('div');
  gridElement.style.height = '100%';

  // Before the grid, which hears keys as early.
  const focus = new GridFocus(gridElement, () => {
    grid.focus();
  });

  const grid: Grid = new Grid(cellsElement, {
    functions: worksheetFunctions,
    note: () => <CellNote host={host} functions={worksheetFunctions} noteOf={noteOf} />,
    dark: prefersDark(),
    onBusy: (is) => {
      session.setCalculating(is);
    },
    onKept: (cells) => {
      session.setKept(cells);
    },
    holdKeys: () => focus.hold(),
    onRefusal: (...about) => session.askAboutEntry(...about),
    onOutside: (cells) => {
      session.tellOutside(cells);
    },
    onMissing: (error) => {
      session.warn(`Charts and pictures are not drawn. ${messageOf(error)}`);
    },
    onRefusedPaste: (why) => {
      session.warn(why);
    },
  });
  onDarkChange((dark) => {
    grid.setDark(dark);
  });
  gridElement.append(cellsElement, grid.drawings.list);
  const session: Session = new Session(grid, worksheetFunctions, focus);
  const host = new GridHost(grid, worksheetFunctions, session);
  const noteOf = ({ sheet, row, column }: SheetPlace) =>
    session.workbook.sheets
      .find(({ name }) => name === sheet)
      ?.notes.find((one) => one.row === row && one.column === column)?.text;
  window.addEventListener('unhandledrejection', ({ reason }) => {
    if (isMissing(reason)) session.warn(`${MISSING} Nothing was changed: do the same again.`);
  });

  const newer = new Newer();
  const [samples] = await fetched;
  createRoot(element).render(
    <App
      session={session}
      host={host}
      sheetDesk={new SheetDesk(session, grid)}
      functions={worksheetFunctions}
      samples={samples}
      gridElement={gridElement}
      newer={newer}
    />,
  );
  await session.start(samples.includes(FIRST_SAMPLE) ? FIRST_SAMPLE : undefined);
  await painted();
  performance.mark('moldsheet calculated');
  // Behind the first sheet: the files of a whole version are many.
  await idle();
  await newer.watch(() => {
    void session.keepNow().finally(() => {
      location.reload();
    });
  });
}
