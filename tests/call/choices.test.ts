import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { readerOf } from '../../src/call/readArgument';
import { inputsOf } from '../../src/core/define';

const choices = catalogue.flatMap((definition) =>
  inputsOf(definition).flatMap((input) =>
    input.reading.as === 'choice'
      ? [{ called: `${definition.name} ${input.name}`, input, words: input.reading.words }]
      : [],
  ),
);

/** How the words of the other side of the ocean are written here, and there. */
const SPELLINGS = [
  ['center', 'centre'],
  ['aluminum', 'aluminium'],
  ['mold', 'mould'],
  ['fiber', 'fibre'],
] as const;

describe('an argument that takes one of a few words', () => {
  it('takes them in any case, with spaces or hyphens, and in both spellings', () => {
    expect(choices.length).toBeGreaterThan(20);
    for (const { called, input, words } of choices) {
      const read = readerOf(input);
      for (const word of words) {
        const british = SPELLINGS.reduce((text, [own, other]) => text.replaceAll(own, other), word);
        const typed = [
          word.toUpperCase(),
          ` ${word} `,
          word.replaceAll(' ', '-'),
          british,
          british.toUpperCase(),
        ];
        for (const text of typed) expect(read(text, 'in'), `${called}: ${text}`).toBe(word);
      }
    }
  });

  it('has no two words that are one when their spelling is left aside', () => {
    for (const { input, words } of choices) {
      const read = readerOf(input);
      expect(words.map((word) => read(word, 'mm'))).toEqual(words);
    }
  });
});
