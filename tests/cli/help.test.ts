import { describe, expect, it } from 'vitest';
import { helpEntries } from '../../scripts/help/entries';
import { worksheetFunctions } from '../../src/call/functions';
import { helpText } from '../../src/cli/helpText';
import { isListed } from '../../src/derive/words';
import { DEFERS } from '../../src/derive/help';
import { CHECKS } from '../support/checks';
import { run } from './run';

describe('help', () => {
  it('lists the commands', async () => {
    const { status, out } = await run('--help');
    expect(status).toBe(0);
    for (const command of ['calc', 'recalc', 'functions', 'help'])
      expect(out).toMatch(new RegExp(`^  ${command}\\b`, 'm'));
  });

  it('is shown for a command either way, the same', async () => {
    expect(await run('help', 'recalc')).toEqual(await run('recalc', '--help'));
    expect((await run('help', 'recalc')).out).toMatch(/^Usage: moldsheet recalc/);
  });

  it('is shown for itself', async () => {
    expect((await run('help', 'help')).out).toMatch(/^Usage: moldsheet help \[FUNCTION\]/);
  });

  it('says of every function what it gives, what it takes, an example and its sources', async () => {
    for (const entry of await helpEntries(CHECKS)) {
      const { id, summary, parameters } = entry;
      const out = helpText(entry);
      const text = out.replace(/\s+/g, ' ');
      expect(text).toContain(`=MOLD.${id}(`);
      expect(text).toContain(summary);
      for (const { name, says } of parameters) {
        expect(out).toMatch(new RegExp(`^  ${name}( \\(optional\\))?$`, 'm'));
        expect(text).toContain(says.replace(/\s+/g, ' '));
      }
      expect(text).toMatch(new RegExp(`Example =MOLD\\.${id.replace('.', '\\.')}\\(.*\\) gives \\S`));
      expect(text).toContain('Sources ');
      expect(text).toContain(DEFERS);
    }
  }, 60_000);

  it('takes the name as a person types it', async () => {
    const { out } = await run('help', 'SPRING.PRELOAD');
    for (const name of ['mold.spring.preload', '=MOLD.SPRING.PRELOAD'])
      expect((await run('help', name)).out).toBe(out);
    expect((await run('help', 'TRY.TABLE')).out).toContain('gives\n');
  });

  it('shows equations, cautions and the kind of each source', async () => {
    const { out } = await run('help', 'SEAT.RELEASE');
    expect(out).toContain('R = S · max(0, tan(φ_s - α))');
    expect(out).toMatch(/Cautions\n {2}Where µ_s >= tan\(α\)/);
    expect(out).toMatch(/Sources\n {2}Derived: /);
  });

  it('names the nearest functions for one that there is not', async () => {
    expect(await run('help', 'SEAT.FORZE')).toMatchObject({
      status: 2,
      err: expect.stringMatching(/MOLD\.SEAT\.FORCE/) as string,
    });
  });
});

describe('functions', () => {
  it('lists them all, or those that speak of every word', async () => {
    const { out } = await run('functions');
    for (const { id } of worksheetFunctions.filter(isListed)) expect(out).toContain(`MOLD.${id}`);
    const some = (await run('functions', 'Shim', 'preload')).out;
    expect(some).toContain('MOLD.SPRING.SHIM');
    expect(some).not.toContain('MOLD.TAP.DRILL');
  });

  it('says so where none does', async () => {
    expect(await run('functions', 'zeppelin')).toMatchObject({ status: 2, out: '' });
  });
});

it('an unknown command is refused in one line', async () => {
  expect(await run('recalculate')).toEqual({
    status: 2,
    out: '',
    err: 'moldsheet: There is no command recalculate; see moldsheet --help.',
  });
});
