/// <reference types="office-js" />
import { messageOf } from '../panel/messageOf';
import { setPanelState } from './panelState';
import { reenterFormulas, type Reentered } from './reenter';

/** The commands of the ribbon and the context menu, by the names that the manifest gives them. */
export const commands = {
  showWork: () => showPanel('work'),
  startWhatIf: () => showPanel('whatif'),
  insertDesignSheet: () => showPanel('sheets'),
  prepareForSharing: () => showPanel('share'),

  async reenterFormulas(): Promise<void> {
    const entered = await reenterFormulas();
    if (entered.count + entered.locked.length > 0) await sayEntered(entered);
    else
      await say(
        'success',
        'Every MOLD formula of this workbook is bound to the add-in: nothing to enter again.',
      );
  },

  /** A full calculation leaves `#NAME?` as it is: what needs it is entered again first. */
  async recalculateAll(): Promise<void> {
    const entered = await reenterFormulas();
    await Excel.run(async (context) => {
      context.workbook.application.calculate(Excel.CalculationType.full);
      await context.sync();
    });
    if (entered.count + entered.locked.length > 0) await sayEntered(entered);
  },
} satisfies Record<string, () => Promise<void>>;

/** Makes the commands known to Excel. Further clicks queue behind an event that is not completed. */
export const associateCommands = (): void => {
  for (const [name, run] of Object.entries(commands)) {
    Office.actions.associate(name, (event: Office.AddinCommands.Event) => {
      void run()
        .catch((error: unknown) => say('error', messageOf(error)))
        .catch(() => undefined)
        .then(() => {
          event.completed();
        });
    });
  }
};

const showPanel = async (page: string): Promise<void> => {
  setPanelState({ page, notice: undefined, isFirstRun: false });
  await Office.addin.showAsTaskpane();
};

const sayEntered = ({ count, locked }: Reentered): Promise<void> => {
  const entered = `${count} ${count === 1 ? 'formula' : 'formulas'} entered again.`;
  return locked.length > 0
    ? say('warning', `${entered} Unprotect ${locked.join(', ')} and try again for the rest.`)
    : say('success', entered);
};

const say = async (intent: 'success' | 'warning' | 'error', text: string): Promise<void> => {
  setPanelState({ notice: { intent, text }, isFirstRun: false });
  await Office.addin.showAsTaskpane();
};
