import { UNITS_PARAMETER } from '../../derive/words';
import { parameter } from './tool';

/** The parameters that the tools share. */
export const FUNCTION = parameter('function', 'Name of a function, such as "SEAT.FORCE"');
export const ITS_ARGUMENTS = parameter('arguments', 'The arguments of that function, as it takes them', {
  optional: true,
  repeating: true,
});
export const INPUTS = parameter('inputs', 'Range of two columns: the name of an argument, its value');
export const TRIALS = parameter('trials', 'Number of trials. If left out: 10000', { optional: true });
export const SEED = parameter(
  'seed',
  'Start of the random series: the same seed gives the same answer. If left out: 1',
  {
    optional: true,
  },
);
export const UNITS = UNITS_PARAMETER;
