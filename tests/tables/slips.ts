import fc from 'fast-check';

/** What a slip of the hand makes of a word: a sign dropped, doubled, changed, swapped or put in. */
const SIGNS = Array.from('0123456789/.,-x#"MmHhGgFfNnUC ØIi½¼*+');
export const slips = (word: string): fc.Arbitrary<string> =>
  fc
    .record({
      how: fc.constantFrom('drop', 'double', 'change', 'swap', 'put'),
      at: fc.nat({ max: word.length - 1 }),
      sign: fc.constantFrom(...SIGNS),
    })
    .map(({ how, at, sign }) => {
      const [before, here, after] = [word.slice(0, at), word.charAt(at), word.slice(at + 1)];
      switch (how) {
        case 'drop':
          return before + after;
        case 'double':
          return before + here + here + after;
        case 'change':
          return before + sign + after;
        case 'swap':
          return before + after.slice(0, 1) + here + after.slice(1);
        default:
          return before + sign + here + after;
      }
    });
