/// <reference types="custom-functions-runtime" />
import { catalogue } from '../catalogue';
import { callDefinition } from '../call/worksheet';
import { tools } from '../call/tools';
import { toolFunction } from '../call/tools/tool';
import type { Argument, Matrix } from '../cells/value';
import { inputsOf } from '../core/define';
import { noteCall } from './callLog';
import { readArguments, writeAnswer, type ExcelAnswer } from './cells';
import { lateAnswer } from './late';

/** Excel itself struggles with larger arguments and answers; the page and the command line take whole columns. */
const MOST_CELLS = 50_000;

/** Associates a function by its id; every call is noted. */
function associate(
  id: string,
  answer: (given: readonly unknown[]) => ExcelAnswer | Promise<ExcelAnswer>,
): void {
  CustomFunctions.associate(id, (...given: unknown[]) => {
    noteCall();
    return answer(given);
  });
}

const answerWith =
  (parameters: readonly { readonly repeating: boolean }[], call: (args: readonly Argument[]) => Matrix) =>
  (given: readonly unknown[]): ExcelAnswer =>
    writeAnswer(call(readArguments(parameters, given)));

// At the top level of a deferred script: Excel asks for the functions as soon as the page is ready, and shows #VALUE!
// for any that is associated later. Without the words of the functions, which wait for whoever asks for them.
for (const definition of catalogue) {
  // The units come after the inputs.
  const parameters = [...inputsOf(definition), undefined].map(() => ({ repeating: false }));
  const answer = answerWith(parameters, (args) => callDefinition(definition, args, MOST_CELLS));
  for (const id of [definition.name, ...(definition.aliases ?? [])]) associate(id, answer);
}
for (const tool of tools) {
  const fn = toolFunction(tool);
  const answer = answerWith(tool.parameters, (args) => fn.call(args));
  associate(fn.id, tool.late ? (given) => lateAnswer(fn.id, given) : answer);
}
