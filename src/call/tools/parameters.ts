import { UNITS_PARAMETER } from '../../derive/words';
import { parameter } from './tool';

/** The parameters that the tools share. */
export const FUNCTION = parameter('function', 'Name of a function, such as "SEAT.FORCE"');
export const ITS_ARGUMENTS = parameter('arguments', 'The arguments of that function, as it takes them', {
  optional: true,
  repeating: true,
});
export const INPUTS = parameter('inputs', 'Range of two columns: the name of an argument, its value');
export const TRIALS = parameter('trials', 'Number of trials', { standard: 10_000 });
export const SEED = parameter(
  'seed',
  'Start of the random series: the same seed gives the same answer, another seed another sample',
  { standard: 1 },
);
export const UNITS = UNITS_PARAMETER;
