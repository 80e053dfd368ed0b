import { worksheetFunctions } from '../../src/call/functions';
import { functionsJson } from '../../src/excel/functionsJson';
import { helpPage } from '../../src/call/helpPage';

/** The text of functions.json for an add-in served from `origin`. */
export const functionsJsonFor = (origin: string): string =>
  JSON.stringify(functionsJson(worksheetFunctions, (id) => `${origin}/${helpPage(id)}`));
