import type { Workbook } from '../package/model';

/** What a command of the grid is about, as far as it says. */
export interface GridCommand {
  readonly id: string;
  readonly params: object | undefined;
}

const NAME = /^sheet\.command\.(set-defined-name|remove-defined-name)$/;

/** Why a command is not let through: what it changes would not reach the file. Undefined where nothing is against it. */
export function refusalOf({ id }: GridCommand, workbook: Workbook): string | undefined {
  return NAME.test(id) && workbook.names.length > 0
    ? 'Names that came with the file cannot be changed here yet; new ones can be added.'
    : undefined;
}
