/// <reference types="office-js" />
import { createRoot } from 'react-dom/client';
import { worksheetFunctions } from '../call/functions';
import { darkTheme, lightTheme } from '../panel/theme';
import { App } from './App';
import { associateCommands } from './commands';
import { ExcelHost } from './host';
import './taskpane.css';

const start = (): void => {
  // At once, not in onReady: a click on the ribbon may be what starts this page.
  associateCommands();
  void Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) showPanel();
    else say('This page is the panel of the Moldsheet add-in. Open it in Excel, from the Home tab.');
  });
};

const showPanel = (): void => {
  const place = document.getElementById('panel');
  if (!place) return;
  const theme = prefersDark() ? darkTheme : lightTheme;
  createRoot(place).render(<App host={new ExcelHost()} functions={worksheetFunctions} theme={theme} />);
};

/** Excel's own theme where it tells, otherwise that of the system. */
const prefersDark = (): boolean =>
  (Office.context.officeTheme as Office.OfficeTheme | undefined)?.isDarkTheme ??
  window.matchMedia('(prefers-color-scheme: dark)').matches;

const say = (text: string): void => {
  const paragraph = document.createElement('p');
  paragraph.className = 'message';
  paragraph.textContent = text;
  document.getElementById('panel')?.replaceChildren(paragraph);
};

if ('Office' in window) start();
else
  say(
    'Excel’s connection to add-ins (office.js) could not be loaded. Check the network, then open the panel again.',
  );
