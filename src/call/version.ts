import manifest from '../../package.json';

/** The numbers that sheets rely on have a basis; it changes only when a result may change. */
export const BASIS = 2;
export const BASIS_TEXT = `basis ${BASIS}, ${manifest.version}`;
