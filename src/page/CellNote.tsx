import { CellError } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host, Range } from '../panel/host';
import { functionsIn } from '../panel/mentioned';
import { useSelectedCell } from '../panel/useSelectedCell';

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  /** The note on a cell of the file. */
  readonly noteOf: (place: Range) => string | undefined;
}

/** One line under the formula bar, always there: why the selected cell is in error, else what its function gives. */
export function CellNote({ host, functions, noteOf }: Props) {
  const cell = useSelectedCell(host);
  const error = cell?.value instanceof CellError ? cell.value : undefined;
  const note = cell && noteOf(cell.range);
  const text = error
    ? error.message || error.code
    : (keptText(cell?.kept) ?? note ?? functionsIn(cell?.formula ?? '', functions)[0]?.summary);
  return (
    <p className={error ? 'cell-note cell-note-error' : 'cell-note'} title={text}>
      {text}
    </p>
  );
}

const keptText = (reason: string | undefined): string | undefined =>
  reason === undefined ? undefined : `The value that came with the file, not calculated here: ${reason}`;
