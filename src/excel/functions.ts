/// <reference types="custom-functions-runtime" />
import { worksheetFunctions } from '../call/functions';
import { noteCall } from './callLog';
import { readArguments, writeAnswer } from './cells';

// At the top level of a deferred script: Excel asks for the functions as soon as the page is ready, and shows #VALUE!
// for any that is associated later.
for (const fn of worksheetFunctions) {
  CustomFunctions.associate(fn.id, (...given: unknown[]) => {
    noteCall();
    return writeAnswer(fn.call(readArguments(fn, given)));
  });
}
