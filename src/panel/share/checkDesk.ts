import { worksheetFunctions } from '../../call/functions';
import type { CheckReport } from '../../workbook/check';
import type { Workbook } from '../../package/model';
import { cellText, readCell } from '../../whatif/plan';
import { idle } from '../idle';
import { Store } from '../store';
import type { WorkbookFiles } from './files';
import { messageOf } from '../messageOf';

export interface CheckState {
  readonly busy: boolean;
  /** The file that was looked at. */
  readonly fileName: string;
  /** It was looked at as it was opened, whatever was changed since. */
  readonly asOpened: boolean;
  readonly report?: CheckReport | undefined;
  readonly problem?: string | undefined;
  /** The person wants no more of it for this file. */
  readonly dismissed: boolean;
}

const NOTHING: CheckState = {
  busy: false,
  fileName: '',
  asOpened: false,
  report: undefined,
  problem: undefined,
  dismissed: false,
};

/** Whether a workbook's numbers still hold under the present functions. */
export class CheckDesk extends Store<CheckState> {
  private turn = 0;

  constructor(private readonly files: WorkbookFiles) {
    super(NOTHING);
  }

  /** Looks at a workbook with the results that its file holds; without one, at the open workbook as it stands. */
  async look(stored?: Workbook): Promise<void> {
    const turn = ++this.turn;
    this.set({ ...NOTHING, busy: true, fileName: this.files.name(), asOpened: stored !== undefined });
    // A file that was just opened is looked at when it stands.
    if (stored) await idle();
    if (turn !== this.turn) return;
    const found = await this.report(stored);
    // Another file was opened meanwhile.
    if (turn === this.turn) this.set({ ...found, busy: false });
  }

  dismiss(): void {
    this.set({ dismissed: true });
  }

  private async report(stored?: Workbook): Promise<Pick<CheckState, 'report' | 'problem'>> {
    try {
      const [{ checkWorkbook }, workbook] = await Promise.all([
        import('./library'),
        stored ?? this.files.read(),
      ]);
      return { report: checkWorkbook(workbook, worksheetFunctions) };
    } catch (error) {
      return { problem: messageOf(error) };
    }
  }
}

const desks = new WeakMap<WorkbookFiles, CheckDesk>();

export function checkDeskOf(files: WorkbookFiles): CheckDesk {
  const desk = desks.get(files) ?? new CheckDesk(files);
  desks.set(files, desk);
  return desk;
}

/**
 * What asks for a look before the file is saved, in one line; empty where nothing does. Cautions, and values outside the
 * range of an equation, are the sheet's own business: they stand in the Share tab and where the work is shown.
 */
export function alarm({ changed, unknown, otherUnits, outside, cautions, blank }: CheckReport): string {
  const since = changed.filter(({ because }) => because.length > 0).length;
  const others = changed.length - since;
  const parts = [
    since > 0 &&
      counted(
        since,
        'result is another one since a function answers otherwise',
        'results are others since functions answer otherwise',
      ),
    others > 0 &&
      counted(others, 'result differs from the stored one', 'results differ from the stored ones'),
    unknown.length > 0 && counted(unknown.length, 'unknown function', 'unknown functions'),
    blank.length > 0 &&
      `${counted(blank.length, 'needed input is blank', 'needed inputs are blank')} (${blankNames(blank)})`,
    otherUnits.length > 0 &&
      counted(otherUnits.length, 'number looks like another unit', 'numbers look like another unit'),
  ].filter((part) => part !== false);
  if (parts.length === 0) return '';
  const also = [
    outside.length > 0 &&
      counted(outside.length, 'value outside its equation’s range', 'values outside their equations’ ranges'),
    cautions.length > 0 && counted(cautions.length, 'caution', 'cautions'),
  ].filter((part) => part !== false);
  return [...parts, ...also].join('; ');
}

/** The first few in words; the others stand in the Share tab. */
function blankNames(blank: CheckReport['blank']): string {
  const some = blank
    .slice(0, 3)
    .map(({ sheet, cell, says }) => `${sheet}!${cell}: ${says.replace(/\.$/, '')}`);
  return some.join('; ') + (blank.length > some.length ? ' …' : '');
}

export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** What is said of many cells stands once, with all of them. */
export function saidOnce(
  found: readonly { readonly sheet: string; readonly cell: string; readonly says: string }[],
): { says: string; cells: string }[] {
  const cells = new Map<string, string[]>();
  for (const { sheet, cell, says } of found)
    cells.set(says, [...(cells.get(says) ?? []), cellText(readCell(cell, sheet))]);
  return [...cells].map(([says, own]) => ({ says, cells: own.join(', ') }));
}
