import type { Checks } from '../core/checks';

/** Where a command writes, and what it says of itself; a test reads it there. */
export interface Output {
  out(text: string): void;
  err(text: string): void;
  /** Shows one line in the place of the one before; only where a person watches. */
  readonly progress?: (text: string) => void;
  /** What stands beside the definitions: the examples of the help. */
  readonly checks: () => Promise<readonly Checks[]>;
}

export interface Option {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
  /** May be given more than once. */
  readonly multiple?: true;
  /** What stands for the value in the help; for options that take one. */
  readonly value?: string;
  readonly says: string;
}

export interface Arguments {
  readonly positionals: readonly string[];
  text(option: string): string | undefined;
  /** Every value of an option that may be given more than once. */
  texts(option: string): readonly string[];
  flag(option: string): boolean;
}

export interface Command {
  /** What follows its name, as the help shows it. */
  readonly usage: readonly string[];
  /** One line for the list of commands. */
  readonly summary: string;
  /** What else a person should know, line by line. */
  readonly details: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** The least and the most arguments beside options. */
  readonly takes: readonly [least: number, most: number];
  /** The exit status: 0 all well, 1 an error in the calculation. Throws `Failure` where it cannot do its work. */
  run(args: Arguments, output: Output): Promise<number>;
}

/** The work cannot be done: one sentence for the person who asked, exit status 2. */
export class Failure extends Error {
  override readonly name = 'Failure';
}
