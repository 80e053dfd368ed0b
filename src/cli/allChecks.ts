import type { Checks } from '../core/checks';

declare global {
  interface ImportMeta {
    /** Webpack's: the modules of a folder. */
    webpackContext(
      folder: string,
      options: { readonly recursive: true; readonly regExp: RegExp },
    ): { keys(): readonly string[]; (key: string): unknown };
  }
}

const files = import.meta.webpackContext('../catalogue', { recursive: true, regExp: /\.checks\.ts$/ });

/** What stands beside the definitions. */
export const allChecks: readonly Checks[] = files
  .keys()
  .map((key) => (files(key) as { readonly default: Checks }).default);
