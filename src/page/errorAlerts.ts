/** The grid's own words for an error say no more than its code; the function that refused knows better. */
import type { Injector } from '@univerjs/core';
import { CellAlertManagerService } from '@univerjs/preset-sheets-core';
import { CellError, type CellValue } from '../cells/value';

export function explainErrors(
  injector: Injector,
  valueAt: (sheetId: string, row: number, column: number) => CellValue | undefined,
): void {
  const alerts = injector.get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { row, col, subUnitId } = alert.location;
    const value = valueAt(subUnitId, row, col);
    const why = value instanceof CellError ? value.message : '';
    show(
      value instanceof CellError && why ? { ...alert, title: value.code, message: why, width: 320 } : alert,
    );
  };
}
