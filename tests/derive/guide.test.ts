import { beforeAll, describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/help/guide/chapters';
import { sections } from '../../src/forms/sections';
import { guidePages } from '../../scripts/help/guide/pages';

let pages: ReadonlyMap<string, string>;
beforeAll(async () => {
  pages = new Map(await guidePages());
}, 60_000);

const page = (name: string) => pages.get(`help/guide/${name}`) ?? '';
const chapterPage = (i: number) => page(`${String(i + 1)}.html`);

describe('the guide', () => {
  it('has ten chapters, each reached from the first page and from its neighbors', () => {
    expect(chapters).toHaveLength(10);
    for (const [i] of chapters.entries()) {
      expect(page('index.html')).toContain(`href="${String(i + 1)}.html"`);
      if (i > 0) expect(chapterPage(i)).toContain(`href="${String(i)}.html">Before`);
      if (i < 9) expect(chapterPage(i)).toContain(`href="${String(i + 2)}.html">Next`);
    }
  });

  it('puts in every number that its text asks for', () => {
    for (const [i, { text }] of chapters.entries()) {
      const asked = text.join('').match(/\{.*?\}|\[\[.*?\]\]/g) ?? [];
      expect(chapterPage(i)).not.toMatch(/[{}]|\[\[|\]\]|undefined|NaN|#N\/A|#VALUE!/);
      expect(chapterPage(i).match(/<b>[^<]+<\/b>/g) ?? []).toHaveLength(asked.length);
    }
  });

  it('types no length, force or pressure that a sheet should say', () => {
    for (const { text } of chapters) {
      const own = text.join(' ').replace(/\{.*?\}|\[\[.*?\]\]|`.*?`/g, '');
      expect(own).not.toMatch(/\d\s?(?:mm|in|lbf|N|psi|MPa)\b/);
    }
  });

  it('opens with a design that holds', () => {
    expect(chapterPage(0)).toContain('the whole design says “<b>✓ holds</b>”');
  });

  it('shows the rows of its sections as pictures that are whole XML', () => {
    const shown = chapters.flatMap(({ sections }, i) => (sections.length > 0 ? [i] : []));
    expect(shown.length).toBeGreaterThan(8);
    for (const i of shown) {
      const picture = page(`${String(i + 1)}.svg`);
      const opened = picture.match(/<(?![/?])[a-z]/gi) ?? [];
      const closed = picture.match(/<\/|\/>/g) ?? [];
      expect(opened.length).toBe(closed.length);
      expect(chapterPage(i)).toContain(`src="${String(i + 1)}.svg"`);
    }
  });

  it('shows all rows of each of its sections, and of no other', () => {
    for (const [i, { sections: ids }] of chapters.entries()) {
      const drawn = page(`${String(i + 1)}.svg`);
      const about = ids.flatMap((id) => sections.filter((one) => one.id === id));
      expect(drawn.match(/Decide: /g) ?? []).toHaveLength(about.length);
      for (const { decide } of about) expect(drawn).toContain(decide);
    }
    expect(page('7.svg')).toContain('10-32');
    expect(page('9.svg')).toContain('Roughing');
    expect(page('10.svg')).toContain('Cost of a part');
  });

  it('warns wherever hands can get hurt at the machine', () => {
    const silent = chapters.filter(({ caution }) => caution === undefined).map(({ title }) => title);
    expect(silent).toEqual(['From a drawing to a sheet', 'What size to cut the cavity']);
  });
});
