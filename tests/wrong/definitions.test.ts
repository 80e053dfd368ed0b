import { describe, expect, it } from 'vitest';
import { dimensionFault } from '../support/dimensions';
import { WRONG } from './definitions';

describe('a definition that', () => {
  it.each(WRONG)('%s is refused', (_fault, definition, says) => {
    expect(dimensionFault(definition, [2, 3])).toBe(says);
  });
});
