import { describe, expect, it } from 'vitest';
import { AmbiguousName, nameFinder, UnknownName } from '../../src/tables/names';

const find = nameFinder('color', [
  { name: 'sky blue', aliases: ['azure', 'blue'] },
  { name: 'navy-blue', aliases: ['blue'] },
  { name: 'red' },
]);

const thrown = (run: () => unknown): unknown => {
  try {
    return run();
  } catch (error) {
    return error;
  }
};

describe('a name of a table', () => {
  it('is found whatever its case, spaces and hyphens', () => {
    for (const text of ['sky blue', 'SKY BLUE', 'skyblue', 'sky-blue', ' Sky  Blue ', 'azure']) {
      expect(find(text).name).toBe('sky blue');
    }
  });

  it('is answered with the nearest three when it stands in no table', () => {
    const error = thrown(() => find('nayv blue'));
    expect(error).toBeInstanceOf(UnknownName);
    expect(error).toMatchObject({ given: 'nayv blue', code: '#N/A' });
    expect((error as UnknownName).nearest[0]).toBe('navy-blue');
    expect((error as UnknownName).message).toContain('navy-blue');
  });

  it('is refused by naming the choices when several rows share it', () => {
    const error = thrown(() => find('Blue'));
    expect(error).toBeInstanceOf(AmbiguousName);
    expect(error).toMatchObject({ choices: ['sky blue', 'navy-blue'], code: '#VALUE!' });
  });
});
