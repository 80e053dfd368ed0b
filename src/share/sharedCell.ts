/** What became of one of our formulas. */
export interface SharedCell {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly how: 'native' | 'looked up' | 'frozen' | 'refused' | 'value';
  /** Why it is frozen; what was settled when the copy was made. */
  readonly why: string;
}
