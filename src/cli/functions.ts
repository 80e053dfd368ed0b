import { NAMESPACE } from '../cells/namespace';
import type { HelpDraft } from '../call/helpEntry';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { helpText } from './helpText';
import type { Command } from './command';
import { Failure } from './command';
import { table } from './table';

async function all(): Promise<readonly WorksheetFunction[]> {
  return (await import('../call/functions')).worksheetFunctions;
}

export const functions: Command = {
  name: 'functions',
  usage: ['[WORD…]'],
  summary: 'List the worksheet functions, or those that speak of a word.',
  details: ['Looks for every word in names, summaries and arguments.'],
  options: {},
  takes: [0, 20],
  async run({ positionals }, output) {
    const found = (await all()).filter((one) =>
      positionals.every((word) => speaksOf(one, word.toLowerCase())),
    );
    if (found.length === 0) throw new Failure(`No function speaks of ${positionals.join(' ')}.`);
    output.out(
      table(
        ['Function', 'What it gives'],
        found.map(({ id, summary }) => [`${NAMESPACE}.${id}`, summary]),
      ),
    );
    return 0;
  },
};

function speaksOf({ id, family, summary, parameters }: WorksheetFunction, word: string): boolean {
  const texts = [id, family, summary, ...parameters.flatMap(({ name, says }) => [name, says])];
  return texts.some((text) => text.toLowerCase().includes(word));
}

/** The help of one function; undefined where there is none of that name. */
export async function functionHelp(name: string): Promise<string | undefined> {
  const wanted = withoutNamespace(name);
  const draft = await draftOf(wanted);
  if (!draft) return undefined;
  const { calculateFormulas } = await import('../workbook/engine/calculateFormulas');
  const [answer = []] = await calculateFormulas([draft.typed], await all());
  return helpText(draft.entry(answer));
}

async function draftOf(id: string): Promise<HelpDraft | undefined> {
  const { exampleCheck } = await import('../call/example');
  const { definitionHelp, toolHelp } = await import('../call/helpEntry');
  const { catalogue } = await import('../catalogue');
  const definition = catalogue.find(({ name }) => name === id);
  if (definition) return definitionHelp(definition, exampleCheck(definition));
  const { tools } = await import('../call/tools');
  const tool = tools.find(({ name }) => name === id);
  return tool && toolHelp(tool);
}

export async function nearestFunctions(name: string): Promise<string[]> {
  const { nearestNames } = await import('../tables/names');
  const ids = (await all()).map(({ id }) => id);
  return nearestNames(withoutNamespace(name), ids).map((id) => `${NAMESPACE}.${id}`);
}

function withoutNamespace(name: string): string {
  return name.toUpperCase().replace(new RegExp(`^=?${NAMESPACE}\\.`), '');
}
