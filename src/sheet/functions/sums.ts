import { eachNumber } from './numbersIn';
import { inContext } from './spec';

export const SUM = inContext('SUM', '(r)+', (context, ...args) => {
  let sum = 0;
  eachNumber(context, args, (value) => (sum += value));
  return sum;
});
