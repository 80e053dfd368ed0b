import { parseArgs } from 'node:util';
import { calc } from './calc';
import { check } from './check';
import type { Arguments, Command, Output } from './command';
import { Failure } from './command';
import { form } from './form';
import { functionHelp, functions, nearestFunctions } from './functions';
import { newSheet } from './new';
import { print } from './print';
import { recalc } from './recalc';
import { serve } from './serve';
import { share } from './share';
import { Stopped } from '../sheet/budget';
import { solve } from './solve';
import { wrap } from './table';
import { variants } from './variants';
import { whatif } from './whatif';

/** Set by the build from package.json. */
declare const MOLDSHEET_VERSION: string;

const PROGRAM = 'moldsheet';

const help: Command = {
  name: 'help',
  usage: ['[FUNCTION]', '[COMMAND]'],
  summary: 'Say what a function gives and takes, with its equation and sources.',
  details: ['Of a command it says how it is used.'],
  options: {},
  takes: [0, 1],
  async run({ positionals: [topic] }, output) {
    output.out(topic === undefined ? overview() : await helpOn(topic, output));
    return 0;
  },
};

async function helpOn(topic: string, output: Output): Promise<string> {
  const command = commands.find(({ name }) => name === topic);
  if (command) return commandHelp(command);
  const text = await functionHelp(topic, output.checks());
  if (text !== undefined) return text;
  const nearest = await nearestFunctions(topic);
  throw new Failure(`There is no command and no function ${topic}; nearest: ${nearest.join(', ')}.`);
}

const commands: readonly Command[] = [
  calc,
  recalc,
  whatif,
  variants,
  solve,
  check,
  share,
  print,
  form,
  newSheet,
  functions,
  serve,
  help,
];

/** Runs the command line. Gives the exit status: 0 all well, 1 an error in the calculation, 2 the work cannot be done. */
export async function main(argv: readonly string[], output: Output): Promise<number> {
  try {
    return await dispatch(argv, output);
  } catch (error) {
    const isSaid = error instanceof Failure || error instanceof Stopped;
    output.err(isSaid ? `${PROGRAM}: ${error.message}` : faultLine(error));
    return 2;
  }
}

/** One line for what must not happen. */
export function faultLine(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  return `${PROGRAM}: this should not have happened, and is a fault of the program: ${said}`;
}

async function dispatch(argv: readonly string[], output: Output): Promise<number> {
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === '-h') {
    output.out(overview());
    return name === undefined ? 2 : 0;
  }
  if (name === '--version' || name === '-v') {
    output.out(MOLDSHEET_VERSION);
    return 0;
  }
  const command = commands.find((one) => one.name === name);
  if (!command) throw new Failure(`There is no command ${name}; see ${PROGRAM} --help.`);
  if (rest.includes('--help') || rest.includes('-h')) {
    output.out(commandHelp(command));
    return 0;
  }
  return command.run(readArguments(command, rest), output);
}

function readArguments(command: Command, argv: readonly string[]): Arguments {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, { type, short, multiple }]) => [
      name,
      { type, ...(short && { short }), ...(multiple && { multiple }) },
    ]),
  );
  let parsed;
  try {
    parsed = parseArgs({ args: [...argv], options, allowPositionals: true });
  } catch (error) {
    const said = error instanceof Error ? (error.message.split(/[.;]\s|\n/)[0] ?? '') : String(error);
    throw new Failure(`${said}; see ${PROGRAM} ${command.name} --help.`);
  }
  const { positionals, values } = parsed;
  const [least, most] = command.takes;
  if (positionals.length < least || positionals.length > most) {
    throw new Failure(
      `The usage is: ${command.usage.map((one) => `${PROGRAM} ${command.name} ${one}`).join(' or ')}`,
    );
  }
  return {
    positionals,
    text: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
    texts: (name) => [values[name] ?? []].flat().filter((value) => typeof value === 'string'),
    flag: (name) => values[name] === true,
  };
}

function overview(): string {
  const width = Math.max(...commands.map(({ name }) => name.length));
  const line = (name: string, says: string) => `  ${name.padEnd(width)}  ${says}`;
  return [
    wrap('Worksheet functions for designing short-run injection molds, on the command line.'),
    '',
    `Usage: ${PROGRAM} COMMAND …`,
    '',
    ...commands.map(({ name, summary }) => line(name, summary)),
    '',
    `${PROGRAM} COMMAND --help says more of a command; ${PROGRAM} --version gives the version.`,
  ].join('\n');
}

function commandHelp({ name, usage, summary, details, options }: Command): string {
  const shown = Object.entries(options).map(([option, { short, value, says }]) => {
    const names = [...(short ? [`-${short}`] : []), `--${option}`].join(', ') + (value ? ` ${value}` : '');
    return `  ${names}\n${wrap(says, 78, '      ')}`;
  });
  return [
    ...usage.map((one, index) => `${index === 0 ? 'Usage:' : '      '} ${PROGRAM} ${name} ${one}`),
    '',
    wrap(summary),
    ...details.map((one) => wrap(one)),
    ...(shown.length > 0 ? ['', ...shown] : []),
  ].join('\n');
}
