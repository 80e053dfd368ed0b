import { worksheetFunctions } from '../../call/functions';
import { Store } from '../../panel/store';
import { cellText } from '../../whatif/plan';
import { messageOf } from '../../panel/messageOf';
import { carryOut } from './cures';
import { examine, type Cure, type Finding } from './examine';
import { readFacts } from './facts';

export interface FaultsState {
  readonly busy: boolean;
  /** Undefined before the first look. */
  readonly findings?: readonly Finding[] | undefined;
  /** What a cure has done, or why it could not. */
  readonly says: string;
  readonly problem?: string | undefined;
}

/** What keeps the open workbook from being right, and its cures. */
class FaultsDesk extends Store<FaultsState> {
  /** Cells whose formula was entered again, by their address. */
  private readonly entered = new Set<string>();

  constructor() {
    super({ busy: false, says: '' });
  }

  look(): Promise<void> {
    this.set({ says: '' });
    return this.working(() => this.examine());
  }

  cure(cure: Cure): Promise<void> {
    return this.working(async () => {
      if (cure.does === 're-enter') {
        const findings = this.state.findings ?? [];
        const isLocked = (sheet: string): boolean =>
          findings.some(({ cures }) => cures.some((one) => one.does === 'unprotect' && one.sheet === sheet));
        for (const { group, at } of findings)
          if (group === 'lost' && at && !isLocked(at.sheet)) this.entered.add(cellText(at));
      }
      this.set({ says: await carryOut(cure) });
      if (cure.does !== 'go') await this.examine();
    });
  }

  private async examine(): Promise<void> {
    this.set({ findings: await examine(await readFacts(), worksheetFunctions, this.entered) });
  }

  private async working(act: () => Promise<void>): Promise<void> {
    this.set({ busy: true, problem: undefined });
    try {
      await act();
    } catch (error) {
      this.set({ problem: messageOf(error) });
    } finally {
      this.set({ busy: false });
    }
  }
}

export const faultsDesk = new FaultsDesk();
