/** What a person is told where a script or a style sheet has not come. */
export const MISSING =
  'A part of Moldsheet could not be loaded: the network may be down, or the server may have a newer version.';

/** By its bundler's name for it; what did not come can be asked for again. */
export const isMissing = (error: unknown): boolean =>
  error instanceof Error && error.name === 'ChunkLoadError';
