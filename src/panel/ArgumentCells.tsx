import { Button, makeStyles, Text, tokens } from '@fluentui/react-components';
import { useState } from 'react';
import { areaAddress } from '../cells/address';
import { mayBeDate } from '../call/dates';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { inputsOf } from '../core/define';
import type { Host, Range } from './host';
import type { SelectedCell } from './useSelectedCell';
import { callsIn, definitionOf } from '../work/calls';
import { cellsOf } from '../work/givenArguments';
import { messageOf } from './messageOf';

const useStyles = makeStyles({
  acts: { display: 'flex', flexWrap: 'wrap', gap: '6px', marginTop: '4px' },
  says: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

/** One thing that can be done for a cell that a formula reads. */
interface Act {
  readonly label: string;
  readonly done: string;
  readonly run: () => Promise<void>;
}

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  readonly cell: SelectedCell;
}

/** For the cells that the selected formula reads: a list where words are taken, text where a name may become a date. */
export function ArgumentCells({ host, functions, cell }: Props) {
  const styles = useStyles();
  const [says, setSays] = useState('');
  const acts = actsOf(cell, host, functions);
  if (acts.length === 0) return null;
  return (
    <>
      <div className={styles.acts}>
        {acts.map(({ label, done, run }) => (
          <Button
            key={label}
            size="small"
            onClick={() => {
              run().then(
                () => {
                  setSays(done);
                },
                (error: unknown) => {
                  setSays(messageOf(error));
                },
              );
            }}
          >
            {label}
          </Button>
        ))}
      </div>
      <Text className={styles.says} role="status">
        {says}
      </Text>
    </>
  );
}

function actsOf(
  { formula, range }: SelectedCell,
  host: Host,
  functions: readonly WorksheetFunction[],
): Act[] {
  const acts = callsIn(formula).flatMap((call) => {
    const parameters = functions.find(({ id }) => id === call.id)?.parameters ?? [];
    const definition = definitionOf(call);
    const inputs = definition ? inputsOf(definition) : [];
    return call.args.flatMap((argument, place): Act[] => {
      const parameter = parameters[place];
      const cells = cellsOf(argument);
      if (!parameter || !cells) return [];
      const { area, sheet = range.sheet } = cells;
      const address = areaAddress(area);
      const to: Range = {
        sheet,
        row: area.top,
        column: area.left,
        rows: area.bottom - area.top + 1,
        columns: area.right - area.left + 1,
      };
      const reading = inputs[place]?.reading;
      if (parameter.choices && host.offerWords) {
        const words = parameter.choices;
        const run = host.offerWords.bind(host, to, words);
        return [
          {
            label: `List for ${address}, ${parameter.name}`,
            done: `${address} now offers ${words.join(', ')}.`,
            run,
          },
        ];
      }
      if (reading && mayBeDate(reading) && host.formatAsText) {
        return [
          {
            label: `Text for ${address}, ${parameter.name}`,
            done: `${address} now keeps 10-32 or 1/4 as it is typed. What became a date before must be typed again.`,
            run: host.formatAsText.bind(host, to),
          },
        ];
      }
      return [];
    });
  });
  return acts.filter(({ label }, at) => acts.findIndex((other) => other.label === label) === at);
}
