import type { ReactNode } from 'react';
import { Button, makeStyles, Text, tokens } from '@fluentui/react-components';
import { numberText, withUnit } from '../../core/format';
import type { Heading } from '../../whatif/heading';
import { cellText } from '../../whatif/plan';
import type { Solution } from '../../whatif/solve';
import type { WhatIfDesk } from './desk';

const useStyles = makeStyles({
  solution: { display: 'flex', flexDirection: 'column', gap: '6px', marginTop: '18px' },
  heading: { margin: 0, fontSize: tokens.fontSizeBase300 },
  value: { fontSize: tokens.fontSizeBase500, fontWeight: tokens.fontWeightSemibold },
  says: { color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  enter: { alignSelf: 'flex-start', marginTop: '4px' },
});

interface Props {
  readonly desk: WhatIfDesk;
  readonly solution: Solution;
  readonly messages: ReactNode;
}

/** The value found, and a button that types it into the workbook. */
export function SolutionView({ desk, solution, messages }: Props) {
  const styles = useStyles();
  const { input, result, value, met, atEnd, stretch, runs } = solution;
  return (
    <section className={styles.solution} aria-label="Solution">
      <h2 className={styles.heading}>{input.label}</h2>
      <Text className={styles.value}>{withUnit(numberText(value), input.unit)}</Text>
      <Text className={styles.says}>
        {named(result)} is then {withUnit(numberText(met), result.unit)}. Found in {runs} calculations; the
        workbook is as it was.
      </Text>
      {atEnd && (
        <Text className={styles.says}>
          That is an end of the range: nearer values may meet the target as well.
        </Text>
      )}
      {stretch && (
        <Text className={styles.says}>
          The target holds beside it too, on a stretch: this is one value of many.
        </Text>
      )}
      <Button className={styles.enter} onClick={() => void desk.enter()}>
        Put it into {cellText(input.cell)}
      </Button>
      {messages}
    </section>
  );
}

const named = ({ label, cell }: Heading): string =>
  label === cellText(cell) ? label : `${label} (${cellText(cell)})`;
