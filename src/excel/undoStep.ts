/// <reference types="office-js" />

/** Whether this Excel takes back what an add-in wrote, in one step; one that does not forgets all earlier steps as well. */
export const canUndo = (): boolean => Office.context.requirements.isSetSupported('ExcelApi', '1.20');

/** Several syncs are one step to undo where Excel knows of such groups. */
export const inOneStep = <T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  canUndo() ? Excel.run({ mergeUndoGroup: true } as Excel.RunOptions, batch) : Excel.run(batch);
