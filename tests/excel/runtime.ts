import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import vm from 'node:vm';

const DIST = resolve('dist/excel');

/** True where `npm run build` has made the add-in. */
export const isBuilt = existsSync(join(DIST, 'functions.js'));

export const readBuilt = (name: string): string => readFileSync(join(DIST, name), 'utf8');

type ExcelCall = (...given: unknown[]) => unknown;

export interface ExcelError {
  readonly code: string;
  readonly message?: string;
}

interface CustomFunctionsOfTheRuntime {
  readonly _association: { readonly mappings: Readonly<Record<string, ExcelCall>> };
  readonly Error: new (code: string, message?: string) => ExcelError;
}

export interface Runtime {
  readonly mappings: Readonly<Record<string, ExcelCall>>;
  /** An error value as Excel hands it to a function. */
  readonly error: (code: string) => ExcelError;
  /** What would go back to Excel: the answer of a call as the runtime serialises it. */
  readonly sent: (answer: unknown) => unknown;
}

/**
 * Microsoft's own functions runtime, unmodified, in a window of just what it asks for, with our built script loaded
 * into it as the add-in's page would.
 */
export const startRuntime = (): Runtime => {
  const script = createRequire(import.meta.url).resolve(
    '@microsoft/office-js/dist/custom-functions-runtime.debug.js',
  );
  // The runtime finds its own tag by the name of its file.
  const tagOf = (src: string) => ({ src, getAttribute: () => null });
  const element = () => ({ setAttribute: () => undefined, appendChild: () => undefined, style: {} });
  const window: Record<string, unknown> = {
    document: {
      getElementsByTagName: (tag: string) => (tag === 'script' ? [tagOf(script)] : []),
      createElement: element,
      addEventListener: () => undefined,
      head: element(),
      readyState: 'loading',
    },
    addEventListener: () => undefined,
    localStorage: { getItem: () => null, setItem: () => undefined },
    location: { href: 'https://localhost/', search: '', hash: '', host: 'localhost' },
    navigator: { userAgent: 'test' },
    XMLHttpRequest: class {},
    setTimeout: () => 0,
    setInterval: () => 0,
    console,
  };
  window['window'] = window;
  window['self'] = window;
  const context = vm.createContext(window);
  vm.runInContext(readFileSync(script, 'utf8'), context, { filename: 'custom-functions-runtime.debug.js' });
  vm.runInContext(readBuilt('functions.js'), context, { filename: 'functions.js' });
  const functions = window['CustomFunctions'] as CustomFunctionsOfTheRuntime;
  return {
    mappings: functions._association.mappings,
    error: (code) => new functions.Error(code),
    sent: (answer) => JSON.parse(JSON.stringify(answer)) as unknown,
  };
};
