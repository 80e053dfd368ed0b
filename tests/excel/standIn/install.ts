/* A stand-in for Office.js, as strict about load and sync as the real one. */

/** One step of a batch; objects are known by number, 0 is the request's workbook. */
export type Step =
  | { readonly op: 'get'; readonly from: number; readonly to: number; readonly name: string }
  | {
      readonly op: 'call';
      readonly from: number;
      readonly to: number;
      readonly name: string;
      readonly given: unknown[];
    }
  | { readonly op: 'set'; readonly from: number; readonly name: string; readonly value: unknown }
  | { readonly op: 'load'; readonly from: number; readonly names: readonly string[] };

export interface Reply {
  /** What was loaded, by object and name; `items` are numbers of objects. */
  readonly loaded: readonly { readonly from: number; readonly name: string; readonly value: unknown }[];
  readonly error?: { readonly code: string; readonly message: string };
}

export interface StandIn {
  /** Tells the add-in of an event of the workbook: `onSelectionChanged`, `onCalculated`, `onChanged`. */
  readonly fire: (event: string) => void;
  /** Runs a command as a click on the ribbon does, until it says that it is completed. */
  readonly click: (command: string) => Promise<void>;
}

/**
 * Puts `Office`, `Excel` and `CustomFunctions` into a window. Written to need nothing from outside, because its text
 * is sent into a browser.
 */
export const installStandIn = (
  target: Record<string, unknown>,
  send: (steps: readonly Step[]) => Promise<Reply>,
  host: 'Excel' | null = 'Excel',
): StandIn => {
  const OBJECTS = [
    'workbook',
    'worksheets',
    'worksheet',
    'application',
    'protection',
    'format',
    'fill',
    'font',
  ];
  OBJECTS.push('charts', 'series', 'axes', 'title', 'tables');
  const METHODS = /^(get[A-Z]|add$|insert|activate$|calculate$|delete$|clear$|select$|autofit|set[A-Z])/;
  const listeners: Record<string, Set<() => unknown>> = {};
  let next = 1;

  class NotLoaded extends Error {
    readonly code = 'PropertyNotLoaded';
  }

  class Context {
    steps: Step[] = [];
    readonly values = new Map<string, unknown>();
    readonly workbook = this.object(0);

    object(id: number): unknown {
      return new Proxy(
        {},
        {
          get: (_, name) => (typeof name === 'string' ? this.read(id, name) : undefined),
          set: (_, name, value: unknown) => {
            this.steps.push({ op: 'set', from: id, name: String(name), value });
            return true;
          },
        },
      );
    }

    read(id: number, name: string): unknown {
      if (name === 'then' || name === 'toJSON') return undefined;
      if (name === 'context') return this;
      if (name === 'load') {
        return (names: string) => this.steps.push({ op: 'load', from: id, names: names.split(',') });
      }
      if (/^on[A-Z]/.test(name)) return this.event(name);
      const key = `${id} ${name}`;
      if (this.values.has(key)) return this.values.get(key);
      if (OBJECTS.includes(name)) {
        const child = this.object(next);
        this.steps.push({ op: 'get', from: id, to: next++, name });
        this.values.set(key, child);
        return child;
      }
      if (!METHODS.test(name))
        throw new NotLoaded(`The property '${name}' is not available: load it, then sync.`);
      return (...given: unknown[]) => {
        this.steps.push({ op: 'call', from: id, to: next, name, given });
        return this.object(next++);
      };
    }

    event(name: string) {
      const all = (listeners[name] ??= new Set());
      return {
        add: (listener: () => unknown) => {
          all.add(listener);
          return { context: this, remove: () => all.delete(listener) };
        },
      };
    }

    async sync(): Promise<void> {
      const { steps } = this;
      this.steps = [];
      const { loaded, error } = await send(steps);
      for (const { from, name, value } of loaded) {
        const objects = name === 'items' ? (value as number[]).map((id) => this.object(id)) : value;
        this.values.set(`${from} ${name}`, objects);
      }
      if (error) throw Object.assign(new Error(error.message), { code: error.code });
    }
  }

  const commands: Record<string, (event: { completed: () => void }) => void> = {};
  target['CustomFunctions'] = { associate: () => undefined, Error };
  target['Office'] = {
    HostType: { Excel: 'Excel' },
    onReady: (ready?: (info: unknown) => void) =>
      Promise.resolve({ host, platform: 'PC' }).then((info) => {
        ready?.(info);
        return info;
      }),
    actions: {
      associate: (name: string, run: (event: { completed: () => void }) => void) => {
        commands[name] = run;
      },
    },
    addin: {
      showAsTaskpane: () => Promise.resolve(),
    },
    context: { requirements: { isSetSupported: () => true } },
  };
  target['Excel'] = {
    run: async (first: unknown, second?: (context: Context) => Promise<unknown>) => {
      const body = second ?? (first as (context: Context) => Promise<unknown>);
      const context = new Context();
      const result = await body(context);
      if (context.steps.length > 0) await context.sync();
      return result;
    },
    CalculationMode: { automatic: 'Automatic', manual: 'Manual' },
    CalculationType: { recalculate: 'Recalculate', full: 'Full' },
    CalculationState: { done: 'Done', pending: 'Pending' },
    WorksheetPositionType: { end: 'End' },
  };

  return {
    fire: (event) => {
      for (const listener of listeners[event] ?? []) listener();
    },
    click: (command) =>
      new Promise((completed, failed) => {
        const run = commands[command];
        if (run) run({ completed });
        else failed(new Error(`no command ${command} is associated`));
      }),
  };
};
