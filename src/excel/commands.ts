/// <reference types="office-js" />
import { messageOf, setPanelState } from './panelState';
import { reenterFormulas } from './reenter';

/** The commands of the ribbon and the context menu, by the names that the manifest gives them. */
export const commands = {
  showWork: () => showPanel('work'),
  startWhatIf: () => showPanel('whatif'),
  insertDesignSheet: () => showPanel('sheets'),
  prepareForSharing: () => showPanel('share'),

  async reenterFormulas(): Promise<void> {
    const { count, locked } = await reenterFormulas();
    const entered = `${count} ${count === 1 ? 'formula' : 'formulas'} entered again.`;
    if (locked.length > 0) {
      await say('warning', `${entered} Unprotect ${locked.join(', ')} and try again for the rest.`);
    } else if (count > 0) await say('success', entered);
    else
      await say(
        'success',
        'Every MOLD formula of this workbook is bound to the add-in: nothing to enter again.',
      );
  },

  recalculateAll: () =>
    Excel.run(async (context) => {
      context.workbook.application.calculate(Excel.CalculationType.full);
      await context.sync();
    }),
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
  setPanelState({ page, notice: undefined });
  await Office.addin.showAsTaskpane();
};

const say = async (intent: 'success' | 'warning' | 'error', text: string): Promise<void> => {
  setPanelState({ notice: { intent, text } });
  await Office.addin.showAsTaskpane();
};
