import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { families, functionSearch } from '../../src/call/search';
import type { FamilyWords } from '../../src/core/familyWords';
import { searchDocuments, searchOf } from '../../src/derive/search';
import { familyOf, type FunctionWords } from '../../src/derive/words';

const fn = (id: string, summary: string, parameters: string[] = []): FunctionWords => ({
  id,
  family: familyOf(id),
  summary,
  parameters: parameters.map((name) => ({ name, says: '', optional: false, repeating: false })),
});
const FEW = [
  fn('SEAT.FORCE', 'Summed normal force between a tapered insert and its seat.', ['push', 'seatRadius']),
  fn('SEAT.SINK', 'Axial sink of a round insert.', ['push']),
  fn('SPRING.FORCE', 'Force of a spring at a length.', ['rate']),
  fn('SPRING.PRELOAD', 'Force at the installed length.'),
];
const SPRING: FamilyWords = {
  title: 'Springs',
  question: 'Which spring holds?',
  also: 'coil',
  functions: { 'SPRING.FORCE': 'how hard it pushes' },
};
const few = searchOf(searchDocuments(FEW, { SPRING }));
const search = functionSearch(worksheetFunctions);
const found = (text: string): string[] => search(text).map(({ id }) => id);

describe('searching the functions', () => {
  it('lists all of them in their order without a word', () => {
    expect(few('  ')).toEqual(FEW.map(({ id }) => id));
    expect(few('=MOLD.')).toEqual(FEW.map(({ id }) => id));
  });

  it('takes what a person copies from a cell, and the beginning of a name', () => {
    expect(few('=MOLD.SEAT.SINK(')[0]).toBe('SEAT.SINK');
    expect(few('mold.spring.p')[0]).toBe('SPRING.PRELOAD');
  });

  it('finds a function by an argument, a family’s word and what the shop calls it', () => {
    expect(few('radius')).toEqual(['SEAT.FORCE']);
    expect(few('coil')).toEqual(['SPRING.FORCE', 'SPRING.PRELOAD']);
    expect(few('how hard does it push')[0]).toBe('SPRING.FORCE');
  });

  it('reads endings, spellings and small slips alike', () => {
    expect(found('moulds clamping')).toEqual(found('mold clamp'));
    expect(found('edge finding the centre')).toEqual(found('edge find center'));
    expect(found('scallopp')[0]).toBe('CUT.SCALLOP');
  });

  it('gives nothing for words that nobody uses here, and leaves chance hits out', () => {
    expect(found('zeppelin')).toEqual([]);
    expect(found('tap drill size').length).toBeLessThan(worksheetFunctions.length / 4);
  });

  it.each([
    ['how much stock to leave', 'FLUSH.STOCK'],
    ['press fit', 'DOWEL.PRESS'],
    ['bolt', 'SCREW.'],
    ['allen head', 'SCREW.HEAD'],
    ['stripped thread', 'THREAD.STRIP'],
    ['roll tap', 'TAP.DRILL'],
    ['sprue', 'FILL.RUNNER'],
    ['6061', 'METAL.VALUE'],
    ['thermal expansion', 'HEAT.GROWTH'],
  ])('answers "%s" with %s… among the first three', (text, id) => {
    expect(found(text).slice(0, 3)).toContainEqual(expect.stringMatching(new RegExp(`^${id}`)));
  });
});

describe('the words of the families', () => {
  it('stand for every family of the functions, and for no other', () => {
    const used = new Set(worksheetFunctions.map(({ id }) => familyOf(id)));
    expect(Object.keys(families).sort()).toEqual([...used].sort());
  });

  it('are of functions of the family', () => {
    for (const [family, { functions }] of Object.entries(families))
      expect(Object.keys(functions).filter((id) => familyOf(id) !== family)).toEqual([]);
  });

  it('ask a question', () => {
    for (const { question } of Object.values(families)) expect(question).toMatch(/^[A-Z].*\?$/);
  });
});

interface Question {
  readonly asks: string;
  /** Any of them answers it. */
  readonly finds: string | readonly string[];
}

describe('the questions of somebody who knew the jobs and not the functions', () => {
  const questions = JSON.parse(
    readFileSync(new URL('questions.json', import.meta.url), 'utf8'),
  ) as readonly Question[];
  const known = new Set(worksheetFunctions.map(({ id }) => id));
  const wanted = ({ finds }: Question): string[] => [finds].flat().map((id) => id.replace(/^MOLD\./, ''));
  const answerable = questions.filter((question) => wanted(question).some((id) => known.has(id)));

  it('are many, and nearly all of them ask for functions that there are', () => {
    expect(questions.length).toBeGreaterThanOrEqual(120);
    expect(answerable.length).toBeGreaterThanOrEqual(0.9 * questions.length);
  });

  it('find the function meant among the first three, 95 of a hundred', () => {
    const missed = answerable.filter((question) => {
      const first = found(question.asks).slice(0, 3);
      return !wanted(question).some((id) => first.includes(id));
    });
    const listed = missed.map((question) => `${question.asks}: ${wanted(question).join(' or ')}`);
    expect(1 - missed.length / answerable.length, listed.join('\n')).toBeGreaterThanOrEqual(0.95);
  });
});
