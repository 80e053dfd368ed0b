import { NAMESPACE } from '../cells/namespace';
import type { HelpDraft } from '../call/helpEntry';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Command, Output } from './command';
import { Failure } from './command';
import { table } from './table';

async function all(): Promise<readonly WorksheetFunction[]> {
  return (await import('../call/functions')).worksheetFunctions;
}

export const functions: Command = {
  usage: ['[WORD…]'],
  summary: 'List the worksheet functions, or those that answer to words of the shop, best first.',
  details: ['Words may be a question, such as: how much stock to leave.'],
  options: {},
  takes: [0, 20],
  async run({ positionals }, output) {
    const { functionSearch } = await import('../call/search');
    const found = functionSearch(await all())(positionals.join(' '));
    if (found.length === 0) throw new Failure(`No function speaks of ${positionals.join(' ')}.`);
    output.out(positionals.length === 0 ? await byFamily(found) : functionTable(found));
    return 0;
  },
};

const functionTable = (found: readonly WorksheetFunction[]): string =>
  table(
    ['Function', 'What it gives'],
    found.map(({ id, summary }) => [`${NAMESPACE}.${id}`, summary]),
  );

/** Each family under its title and the question that it answers. */
async function byFamily(functions: readonly WorksheetFunction[]): Promise<string> {
  const { families } = await import('../call/search');
  const names = [...new Set(functions.map(({ family }) => family))];
  const blocks = names.map((name) => {
    const { title = name, question = '' } = families[name] ?? {};
    const members = functions.filter(({ family }) => family === name);
    return `${title}: ${question}\n\n${functionTable(members)}`;
  });
  return blocks.join('\n\n');
}

/** The help of one function; undefined where there is none of that name. */
export async function functionHelp(name: string, checks: Output['checks']): Promise<string | undefined> {
  const wanted = withoutNamespace(name);
  const draft = await draftOf(wanted, checks);
  if (!draft) return undefined;
  const { calculateFormulas } = await import('../workbook/calculateFormulas');
  const [answer = []] = await calculateFormulas([draft.typed], await all());
  const { helpText } = await import('./helpText');
  return helpText(draft.entry(answer));
}

async function draftOf(id: string, checks: Output['checks']): Promise<HelpDraft | undefined> {
  const { exampleCheck } = await import('../call/example');
  const { definitionHelp, toolHelp } = await import('../call/helpEntry');
  const { catalogue } = await import('../catalogue');
  const definition = catalogue.find(({ name, aliases = [] }) => [name, ...aliases].includes(id));
  if (definition) return definitionHelp(definition, exampleCheck(definition, await checks()));
  const { tools } = await import('../call/tools');
  const tool = tools.find(({ name }) => name === id);
  return tool && toolHelp(tool);
}

export async function nearestFunctions(name: string): Promise<string[]> {
  const { nearestNames } = await import('../tables/names');
  const { isListed } = await import('../derive/words');
  const ids = (await all()).filter(isListed).map(({ id }) => id);
  return nearestNames(withoutNamespace(name), ids).map((id) => `${NAMESPACE}.${id}`);
}

export function withoutNamespace(name: string): string {
  return name.toUpperCase().replace(new RegExp(`^=?${NAMESPACE}\\.`), '');
}
