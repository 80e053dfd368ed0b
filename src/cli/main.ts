import { parseArgs } from 'node:util';
import type { Arguments, Command, Output } from './command';
import { Failure } from './command';
import { Stopped } from '../sheet/budget';
import { wrap } from './table';

/** Set by the build from package.json. */
declare const MOLDSHEET_VERSION: string;

const PROGRAM = 'moldsheet';

const help: Command = {
  usage: ['[FUNCTION]', '[COMMAND]'],
  summary: 'Say what a function gives and takes, with its equation and sources.',
  details: ['Of a command it says how it is used.'],
  options: {},
  takes: [0, 1],
  async run({ positionals: [topic] }, output) {
    output.out(topic === undefined ? await overview() : await helpOn(topic, output));
    return 0;
  },
};

async function helpOn(topic: string, output: Output): Promise<string> {
  const command = await COMMANDS.get(topic)?.();
  if (command) return commandHelp(topic, command);
  const { functionHelp, nearestFunctions } = await import('./functions');
  const text = await functionHelp(topic, output.checks);
  if (text !== undefined) return text;
  const nearest = await nearestFunctions(topic);
  throw new Failure(`There is no command and no function ${topic}; nearest: ${nearest.join(', ')}.`);
}

/** In the order of the help. Each is read when it is asked for: one formula waits for no other command. */
const COMMANDS: ReadonlyMap<string, () => Promise<Command>> = new Map([
  ['calc', async () => (await import('./calc')).calc],
  ['recalc', async () => (await import('./recalc')).recalc],
  ['whatif', async () => (await import('./whatif')).whatif],
  ['variants', async () => (await import('./variants')).variants],
  ['solve', async () => (await import('./solve')).solve],
  ['check', async () => (await import('./check')).check],
  ['share', async () => (await import('./share')).share],
  ['print', async () => (await import('./print')).print],
  ['form', async () => (await import('./form')).form],
  ['new', async () => (await import('./new')).newSheet],
  ['functions', async () => (await import('./functions')).functions],
  ['serve', async () => (await import('./serve')).serve],
  ['help', () => Promise.resolve(help)],
]);

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
    output.out(await overview());
    return name === undefined ? 2 : 0;
  }
  if (name === '--version' || name === '-v') {
    output.out(MOLDSHEET_VERSION);
    return 0;
  }
  const command = await COMMANDS.get(name)?.();
  if (!command) throw new Failure(`There is no command ${name}; see ${PROGRAM} --help.`);
  if (rest.includes('--help') || rest.includes('-h')) {
    output.out(commandHelp(name, command));
    return 0;
  }
  return command.run(readArguments(name, command, rest), output);
}

function readArguments(name: string, command: Command, argv: readonly string[]): Arguments {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([option, { type, short, multiple }]) => [
      option,
      { type, ...(short && { short }), ...(multiple && { multiple }) },
    ]),
  );
  let parsed;
  try {
    parsed = parseArgs({ args: [...argv], options, allowPositionals: true });
  } catch (error) {
    const said = error instanceof Error ? (error.message.split(/[.;]\s|\n/)[0] ?? '') : String(error);
    throw new Failure(`${said}; see ${PROGRAM} ${name} --help.`);
  }
  const { positionals, values } = parsed;
  const [least, most] = command.takes;
  if (positionals.length < least || positionals.length > most) {
    throw new Failure(
      `The usage is: ${command.usage.map((one) => `${PROGRAM} ${name} ${one}`).join(' or ')}`,
    );
  }
  return {
    positionals,
    text: (option) => (typeof values[option] === 'string' ? values[option] : undefined),
    texts: (option) => [values[option] ?? []].flat().filter((value) => typeof value === 'string'),
    flag: (option) => values[option] === true,
  };
}

async function overview(): Promise<string> {
  const commands = await Promise.all(
    Array.from(COMMANDS, async ([name, load]) => ({ name, summary: (await load()).summary })),
  );
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

function commandHelp(name: string, { usage, summary, details, options }: Command): string {
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
