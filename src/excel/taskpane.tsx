/// <reference types="office-js" />
import { createRoot } from 'react-dom/client';
import { worksheetFunctions } from '../call/functions';
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
  createRoot(place).render(<App host={new ExcelHost()} functions={worksheetFunctions} />);
};

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
