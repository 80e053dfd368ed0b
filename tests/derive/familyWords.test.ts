import { expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { families } from '../../src/call/search';
import { catalogue } from '../../src/catalogue';
import { isListed } from '../../src/derive/words';

it('words of the shop stand beside functions that there are, each under its family', () => {
  const listed = worksheetFunctions.filter(isListed).map(({ id }) => id);
  const spoken = Object.entries(families).flatMap(([family, { functions }]) =>
    Object.keys(functions).map((id) => [family, id] as const),
  );
  expect(spoken.filter(([, id]) => !listed.includes(id))).toEqual([]);
  expect(spoken.filter(([family, id]) => !id.startsWith(`${family}.`))).toEqual([]);
  expect(spoken.length).toBeGreaterThanOrEqual(catalogue.length);
});
