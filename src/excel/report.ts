/// <reference types="office-js" />
import { BASIS_TEXT } from '../call/version';
import { CellError } from '../cells/value';
import type { Host } from '../panel/host';
import { cellText } from '../whatif/plan';

/** A text that tells of a fault, for a person to complete, look over and send wherever they wish. */
export async function reportText(host: Host): Promise<string> {
  const { platform, version, host: program } = Office.context.diagnostics;
  return [
    'What I did:',
    'What I expected:',
    'What I saw:',
    '',
    `Moldsheet ${BASIS_TEXT}`,
    `${program} ${version}, ${platform}, language ${Office.context.displayLanguage}`,
    ...(await cellLines(host)),
  ].join('\n');
}

/** The selected cell; nothing where none is selected or Excel is busy. */
async function cellLines(host: Host): Promise<string[]> {
  try {
    const range = await host.readSelection();
    const [[view] = []] = range ? await host.read({ ...range, rows: 1, columns: 1 }) : [];
    if (!range || !view) return [];
    const { value, formula } = view;
    const shown =
      value instanceof CellError ? `${value.code} ${value.message}`.trim() : String(value ?? 'blank');
    return [`${cellText(range)}: ${formula === '' ? '' : `${formula} shows `}${shown}`];
  } catch {
    return [];
  }
}
