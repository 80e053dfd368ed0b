/** What a family of functions is for, in the shop's words: for lists of functions and for their search. */
export interface FamilyWords {
  readonly title: string;
  /** The question of the job that the family answers, in one line. */
  readonly question: string;
  /** Other words by which the whole family is looked for. */
  readonly also: string;
  /** What people call the thing that a function gives, or the trouble it helps with, by id. */
  readonly functions: Readonly<Record<string, string>>;
}
