import { useEffect, useState } from 'react';
import { CellError } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host } from './host';
import type { SelectedCell } from './useSelectedCell';
import { callsIn } from '../work/calls';
import { refusalIn } from './work/refusal';

/** Why a cell is in error: what the host tells, or what the functions of its formula say; empty while it is not known. */
export function useRefusal(
  cell: SelectedCell | undefined,
  host: Host,
  functions: readonly WorksheetFunction[],
): string {
  const [found, setFound] = useState<{ readonly cell: SelectedCell; readonly says: string }>();
  const told = cell?.value instanceof CellError ? cell.value.message : undefined;
  useEffect(() => {
    if (!cell || told !== '') return;
    let isWanted = true;
    const around = {
      sheet: cell.range.sheet,
      read: async (range: Parameters<Host['read']>[0]) =>
        (await host.read(range)).map((row) => row.map(({ value }) => value)),
      functions,
    };
    refusalIn(callsIn(cell.formula), around).then(
      (refused) => {
        if (isWanted) setFound({ cell, says: refused?.message ?? '' });
      },
      // The sheet may be gone by now.
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [cell, told, host, functions]);
  if (told === undefined || told !== '') return told ?? '';
  return found && found.cell === cell ? found.says : '';
}
