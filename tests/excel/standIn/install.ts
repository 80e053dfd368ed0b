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
  | { readonly op: 'load'; readonly from: number; readonly names: readonly string[] }
  /** The steps of this batch belong to one undo step with others of the same number. */
  | { readonly op: 'group'; readonly id: number }
  /** Asks for the file of the open workbook, in base 64. */
  | { readonly op: 'file' }
  /** Opens a file, in base 64, as a new workbook. */
  | { readonly op: 'create'; readonly file: string };

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
  /** Office is set to another theme, which no event tells. */
  readonly setTheme: (theme: {
    readonly isDarkTheme?: boolean;
    readonly bodyBackgroundColor?: string;
  }) => void;
  /** Settings of the document that were saved. */
  readonly settings: Record<string, unknown>;
  /** Requirement sets that this Excel has not: `ExcelApi 1.13`. */
  readonly lacks: Set<string>;
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
  OBJECTS.push('charts', 'series', 'axes', 'title', 'legend', 'categoryAxis', 'valueAxis');
  OBJECTS.push('iterativeCalculation', 'dataValidation', 'names', 'borders');
  OBJECTS.push('conditionalFormats', 'custom', 'rule');
  OBJECTS.push('ranges', 'freezePanes', 'pageLayout', 'headersFooters', 'defaultForAllPages');
  const METHODS =
    /^(get[A-Z]|add$|insert|activate$|calculate$|delete$|clear$|merge$|select$|autofit|freeze|set[A-Z]|unprotect$)/;
  const listeners: Record<string, Set<() => unknown>> = {};
  const lacks = new Set<string>();
  const settings: Record<string, unknown> = {};
  const unsaved: Record<string, unknown> = {};
  let next = 1;
  let groups = 0;

  class NotLoaded extends Error {
    readonly code = 'PropertyNotLoaded';
  }

  class Context {
    steps: Step[] = [];
    readonly values = new Map<string, unknown>();
    readonly ids = new WeakMap<object, number>();
    readonly workbook = this.object(0);

    constructor(private readonly group?: number) {}

    object(id: number): unknown {
      const object = new Proxy(
        {},
        {
          get: (_, name) => (typeof name === 'string' ? this.read(id, name) : undefined),
          set: (_, name, value: unknown) => {
            this.steps.push({ op: 'set', from: id, name: String(name), value });
            return true;
          },
        },
      );
      this.ids.set(object, id);
      return object;
    }

    /** Objects go to the workbook by their numbers. */
    argument(given: unknown): unknown {
      const id = typeof given === 'object' && given !== null ? this.ids.get(given) : undefined;
      return id === undefined ? given : { objectId: id };
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
        this.steps.push({
          ...{ op: 'call', from: id, to: next, name },
          given: given.map((one) => this.argument(one)),
        });
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
      if (this.group !== undefined) steps.unshift({ op: 'group', id: this.group });
      const { loaded, error } = await send(steps);
      for (const { from, name, value } of loaded) {
        const child = (value as { objectId?: number } | null)?.objectId;
        const objects =
          name === 'items'
            ? (value as number[]).map((id) => this.object(id))
            : child === undefined
              ? value
              : this.object(child);
        this.values.set(`${from} ${name}`, objects);
      }
      if (error) throw Object.assign(new Error(error.message), { code: error.code });
    }
  }

  const commands: Record<string, (event: { completed: () => void }) => void> = {};
  target['CustomFunctions'] = { associate: () => undefined, Error };
  const office = (target['Office'] = {
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
    FileType: { Compressed: 'compressed' },
    AsyncResultStatus: { Succeeded: 'succeeded' },
    context: {
      diagnostics: { host: 'Excel', platform: 'PC', version: '16.0' },
      displayLanguage: 'en-US',
      officeTheme: undefined as object | undefined,
      requirements: { isSetSupported: (name: string, version: string) => !lacks.has(`${name} ${version}`) },
      document: {
        url: 'C:\\Sheets\\seat.xlsx',
        settings: {
          get: (name: string) => unsaved[name] ?? null,
          set: (name: string, value: unknown) => {
            unsaved[name] = value;
          },
          saveAsync: (done: (result: unknown) => void) => {
            Object.assign(settings, unsaved);
            done({ status: 'succeeded' });
          },
        },
        getFileAsync: (
          _type: string,
          { sliceSize }: { sliceSize: number },
          done: (result: unknown) => void,
        ) => {
          void send([{ op: 'file' }]).then(({ loaded: [answer] }) => {
            const bytes = Uint8Array.from(atob(answer?.value as string), (letter) => letter.charCodeAt(0));
            const give = (value: unknown, then: (result: unknown) => void) => {
              then({ status: 'succeeded', value });
            };
            const file = {
              size: bytes.length,
              sliceCount: Math.ceil(bytes.length / sliceSize),
              getSliceAsync: (index: number, then: (result: unknown) => void) => {
                // Numbers in a plain list, as Excel gives them.
                give({ data: [...bytes.slice(index * sliceSize, (index + 1) * sliceSize)] }, then);
              },
              closeAsync: () => undefined,
            };
            give(file, done);
          });
        },
      },
    },
  });
  target['Excel'] = {
    run: async (first: unknown, second?: (context: Context) => Promise<unknown>) => {
      const body = second ?? (first as (context: Context) => Promise<unknown>);
      const isGrouped =
        second !== undefined && (first as { mergeUndoGroup?: boolean }).mergeUndoGroup === true;
      const context = new Context(isGrouped ? ++groups : undefined);
      const result = await body(context);
      if (context.steps.length > 0) await context.sync();
      return result;
    },
    createWorkbook: (file: string) => send([{ op: 'create', file }]),
    DataValidationType: { none: 'None', list: 'List' },
    DataValidationAlertStyle: { stop: 'Stop', warning: 'Warning', information: 'Information' },
    CalculationMode: { automatic: 'Automatic', manual: 'Manual' },
    CalculationType: { recalculate: 'Recalculate', full: 'Full' },
    CalculationState: { done: 'Done', pending: 'Pending' },
    WorksheetPositionType: { end: 'End' },
  };

  return {
    settings,
    lacks,
    setTheme: (theme) => {
      office.context.officeTheme = theme;
    },
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
