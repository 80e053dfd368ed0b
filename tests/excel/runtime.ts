import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import vm from 'node:vm';

const DIST = resolve('dist/excel');

/** True where `npm run build` has made the add-in. */
export const isBuilt = existsSync(join(DIST, 'functions.js'));

export const readBuilt = (name: string): string => readFileSync(join(DIST, name), 'utf8');

/** A call as Excel sends it: one value for each parameter, `null` where it was left out. */
export interface ExcelCall {
  readonly id: string;
  readonly given: readonly unknown[];
}

/** What the runtime sends back: the value, or that the call failed. */
export interface ExcelResult {
  readonly succeeded: boolean;
  readonly value: unknown;
}

/** An error value as Excel sends it in an argument. */
export const errorArgument = (code: string) => ({ type: 'CustomFunctionError', code });

export interface Runtime {
  /** The ids that our script has associated. */
  readonly ids: readonly string[];
  /** Sends calls to the runtime as Excel does and waits for all results. */
  readonly call: (calls: readonly ExcelCall[]) => Promise<ExcelResult[]>;
}

interface NativeBridge {
  sendMessageToHost: (message: string) => void;
  onMessageFromHost?: (message: string) => void;
}

/** A script that the loader of the build adds to the page. */
interface LateScript {
  readonly src: string;
  readonly onload: (event: object) => void;
  readonly onerror: (event: object) => void;
}

interface HostRequest {
  readonly id: number;
  readonly message: { readonly body: { readonly Actions: readonly { readonly ArgumentInfo?: Arguments }[] } };
}

interface Arguments {
  readonly Arguments: readonly [readonly (readonly [id: number, succeeded: boolean, value: unknown])[]];
}

/** Numbers of the runtime's own protocol: its messages carry no names. */
const FROM_HOST = 3;
const CUSTOM_FUNCTIONS = 1;
const INVOKE = 1000;
/** Errors among the arguments are handed over, as `allowErrorForDataTypeAny` asks. */
const ALLOW_ERRORS = 4;

/**
 * Microsoft's functions runtime, unmodified, in a window of just what it asks for, with our built script loaded after
 * it as the page does. Calls and results pass through its own bridge to Excel, as text. What a function fetches later is
 * loaded as a browser would, unless the server is not to be reached.
 */
export const startRuntime = ({ loads = true }: { readonly loads?: boolean } = {}): Runtime => {
  const results = new Map<number, ExcelResult>();
  const bridge: NativeBridge = {
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as HostRequest;
      for (const { ArgumentInfo } of message.body.Actions) {
        for (const [call, succeeded, value] of ArgumentInfo?.Arguments[0] ?? [])
          results.set(call, { succeeded, value });
      }
      // Excel's answer comes later, and the runtime holds back further results until then.
      setImmediate(() => {
        bridge.onMessageFromHost?.(
          JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body: { Results: [] } } }),
        );
      });
    },
  };
  const window = windowFor(bridge);
  const context = vm.createContext(window);
  const append = (script: LateScript): void => {
    setImmediate(() => {
      if (!loads) {
        script.onerror({ type: 'error' });
        return;
      }
      vm.runInContext(readBuilt(script.src), context, { filename: script.src });
      script.onload({ type: 'load' });
    });
  };
  (window['document'] as Record<string, unknown>)['head'] = { appendChild: append };
  vm.runInContext(readFileSync(RUNTIME, 'utf8'), context, { filename: RUNTIME });
  vm.runInContext(readBuilt('functions.js'), context, { filename: 'functions.js' });
  const { _association } = window['CustomFunctions'] as {
    _association: { mappings: Record<string, unknown> };
  };

  let sent = 0;
  return {
    ids: Object.keys(_association.mappings),
    async call(calls) {
      const first = sent;
      const entries = calls.map(({ id, given }) => ({
        messageCategory: CUSTOM_FUNCTIONS,
        messageType: INVOKE,
        message: JSON.stringify([sent++, id, given, 'Sheet1!A1', ALLOW_ERRORS]),
      }));
      bridge.onMessageFromHost?.(JSON.stringify({ type: FROM_HOST, message: { entries } }));
      const deadline = Date.now() + 20_000;
      while (calls.some((_, i) => !results.has(first + i))) {
        if (Date.now() > deadline) throw new Error('the runtime did not send all results');
        await new Promise((resolve) => setTimeout(resolve, 2));
      }
      return calls.map((_, i) => results.get(first + i) as ExcelResult);
    },
  };
};

const RUNTIME = createRequire(import.meta.url).resolve(
  '@microsoft/office-js/dist/custom-functions-runtime.debug.js',
);

const windowFor = (bridge: NativeBridge): Record<string, unknown> => {
  const element = () => ({ setAttribute: () => undefined, appendChild: () => undefined, style: {} });
  const window: Record<string, unknown> = {
    _richApiNativeBridge: bridge,
    document: {
      // The runtime finds its own tag by the name of its file.
      getElementsByTagName: (tag: string) =>
        tag === 'script' ? [{ src: RUNTIME, getAttribute: () => null }] : [element()],
      createElement: element,
      addEventListener: () => undefined,
      readyState: 'loading',
    },
    addEventListener: () => undefined,
    localStorage: { getItem: () => null, setItem: () => undefined },
    location: { href: 'https://localhost/', search: '', hash: '', host: 'localhost' },
    history: {},
    navigator: { userAgent: 'test' },
    XMLHttpRequest: () => undefined,
    // The runtime spaces its messages by up to 2 s; what waits longer is for scripts that a browser would load.
    setTimeout: (run: () => void, ms = 0, ...given: unknown[]) =>
      ms > 2000 ? undefined : setTimeout(run, ms / 50, ...given),
    clearTimeout,
    setInterval: () => 0,
    console,
  };
  window['window'] = window;
  window['self'] = window;
  return window;
};
