export { newWorkbook } from './author';
export type { CellChange, Changes } from './changes';
export { readWorkbook } from './read';
export { fileEnding } from './open';
export { saveWorkbook } from './save';
export { UnreadableWorkbook } from './unreadable';
