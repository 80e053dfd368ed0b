import type { Limits } from '../sheet/budget';

/** What one calculation may take before the command gives it up with a line. */
export const LIMITS: Limits = { time: 60_000 };
