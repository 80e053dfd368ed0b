import fc from 'fast-check';

/** Where CI starts its random tests. */
export const CI_SEED = 20261125;

// At home every run tries something new, and fast-check prints the seed of a failure; in CI a push is not to fail by
// chance on what it did not touch.
if (process.env['CI']) fc.configureGlobal({ seed: CI_SEED });
