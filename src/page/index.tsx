import { createRoot } from 'react-dom/client';
import { worksheetFunctions } from '../call/functions';
import { App } from './App';
import { CellNote } from './CellNote';
import { readDecimalSign } from './decimalSign';
import { Grid, type SheetPlace } from './grid';
import { GridFocus } from './gridFocus';
import { loadLocalFonts } from './fonts';
import { GridHost } from './host';
import './page.css';
import { FIRST_SAMPLE, sampleNames } from './samples';
import { Session } from './session';
import { Newer } from './offline/newer';
import { SheetDesk } from './sheetTab/desk';
import { onDarkChange, prefersDark } from './theme';

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
  onRefusal: (...about) => session.askAboutEntry(...about),
  onOutside: (cells) => {
    session.tellOutside(cells);
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

const newer = new Newer();
const noteOf = ({ sheet, row, column }: SheetPlace) =>
  session.workbook.sheets
    .find(({ name }) => name === sheet)
    ?.notes.find((one) => one.row === row && one.column === column)?.text;

const root = document.getElementById('page');
if (root) {
  void start(root);
}

async function start(element: HTMLElement): Promise<void> {
  const [samples] = await Promise.all([sampleNames().catch((): string[] => []), loadLocalFonts()]);
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
  // Behind the first sheet: the files of a whole version are many.
  await newer.watch(() => {
    void session.keepNow().finally(() => {
      location.reload();
    });
  });
}
