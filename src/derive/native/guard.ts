/** A condition in which the native form refuses; `code` as the function itself would. */
export interface Guard {
  readonly when: string;
  readonly code: '#VALUE!' | '#N/A';
  readonly says: string;
}
