import { Button, Checkbox, Field, Input } from '@fluentui/react-components';
import { useState } from 'react';
import { columnLetters, parseCell } from '../../cells/address';
import type { PartProps } from './part';
import { Choice } from './Choice';
import { useFormStyles } from './useForm';

export function SortPart({ desk, selection }: PartProps) {
  const styles = useFormStyles();
  const { left, right } = selection.area;
  const [chosen, setChosen] = useState<number>();
  const [hasHeading, setHasHeading] = useState(false);
  const [problem, setProblem] = useState('');
  const [to, setTo] = useState('');
  const [notTurned, setNotTurned] = useState('');
  const column = chosen !== undefined && chosen >= left && chosen <= right ? chosen : left;
  const columns = Array.from({ length: Math.min(right - left + 1, 100) }, (_, at) => left + at);
  const sort = (descending: boolean) => {
    setProblem(desk.sort(selection, column, descending, hasHeading) ?? '');
  };
  const target = parseCell(to.trim());
  return (
    <div className={styles.form}>
      <Choice
        label="Sort the selected rows by"
        validationMessage={problem}
        value={column}
        options={columns.map((one) => [one, `Column ${columnLetters(one)}`] as const)}
        onChoose={setChosen}
      />
      <Checkbox
        label="The first row is a heading"
        checked={hasHeading}
        onChange={(_, { checked }) => {
          setHasHeading(checked === true);
        }}
      />
      <div className={styles.row}>
        <Button
          onClick={() => {
            sort(false);
          }}
        >
          Smallest first
        </Button>
        <Button
          onClick={() => {
            sort(true);
          }}
        >
          Largest first
        </Button>
      </div>
      <Field
        label="Write the values turned, rows as columns, from this cell on"
        validationMessage={notTurned}
      >
        <Input
          value={to}
          placeholder="H2"
          onChange={(_, { value }) => {
            setTo(value);
          }}
        />
      </Field>
      <div className={styles.row}>
        <Button
          disabled={!target}
          onClick={() => {
            if (target) setNotTurned(desk.transpose(selection, target) ?? '');
          }}
        >
          Turn
        </Button>
        <Button
          onClick={() => {
            desk.keepValues(selection);
          }}
        >
          Formulas into their values
        </Button>
        <Button
          onClick={() => {
            desk.freezeAt(selection);
          }}
        >
          Freeze here
        </Button>
      </div>
    </div>
  );
}
