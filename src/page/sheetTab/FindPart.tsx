import { Button, Checkbox, Field, Input, Link } from '@fluentui/react-components';
import { useEffect, useRef, useState } from 'react';
import type { Found } from './desk';
import type { PartProps } from './part';
import { useFormStyles } from './useForm';

export function FindPart({ desk, selection: { sheet } }: PartProps) {
  const styles = useFormStyles();
  const input = useRef<HTMLInputElement>(null);
  const [text, setText] = useState('');
  const [by, setBy] = useState('');
  const [inFormulas, setInFormulas] = useState(false);
  const [everywhere, setEverywhere] = useState(true);
  const [matchesCase, setMatchesCase] = useState(false);
  const [isWhole, setIsWhole] = useState(false);
  const [found, setFound] = useState<readonly Found[]>();
  const [at, setAt] = useState(-1);
  const [done, setDone] = useState('');
  useEffect(() => {
    input.current?.focus();
  }, []);
  const search = { text, inFormulas, matchesCase, isWhole };
  const only = everywhere ? undefined : sheet;
  const go = (cells: readonly Found[], index: number) => {
    const cell = cells[index];
    setAt(index);
    if (cell) desk.select(cell);
  };
  const find = () => {
    setDone('');
    const cells = desk.find(search, only);
    const isSame = JSON.stringify(cells) === JSON.stringify(found);
    setFound(cells);
    if (cells.length > 0) go(cells, isSame ? (at + 1) % cells.length : 0);
  };
  return (
    <div className={styles.form}>
      <Field label="Find">
        <Input
          input={{ ref: input }}
          value={text}
          onChange={(_, { value }) => {
            setText(value);
            setFound(undefined);
          }}
          onKeyDown={({ key }) => {
            if (key === 'Enter') find();
          }}
        />
      </Field>
      <Field label="Replace by">
        <Input
          value={by}
          onChange={(_, { value }) => {
            setBy(value);
          }}
        />
      </Field>
      <div>
        <Checkbox
          label="In formulas"
          checked={inFormulas}
          onChange={(_, { checked }) => {
            setInFormulas(checked === true);
          }}
        />
        <Checkbox
          label="All sheets"
          checked={everywhere}
          onChange={(_, { checked }) => {
            setEverywhere(checked === true);
          }}
        />
        <Checkbox
          label="Case counts"
          checked={matchesCase}
          onChange={(_, { checked }) => {
            setMatchesCase(checked === true);
          }}
        />
        <Checkbox
          label="The whole cell"
          checked={isWhole}
          onChange={(_, { checked }) => {
            setIsWhole(checked === true);
          }}
        />
      </div>
      <div className={styles.row}>
        <Button appearance="primary" disabled={text === ''} onClick={find}>
          Find next
        </Button>
        <Button
          disabled={text === ''}
          onClick={() => {
            const count = desk.replaceAll(search, by, only);
            setDone(count === 1 ? 'One cell was changed.' : `${count} cells were changed.`);
            setFound(undefined);
          }}
        >
          Replace all
        </Button>
      </div>
      <span role="status" className={styles.says}>
        {done || (found && (found.length === 0 ? 'Nothing found.' : `${at + 1} of ${found.length}`))}
      </span>
      {found && found.length > 0 && (
        <ul className={styles.list} aria-label="Found cells">
          {found.slice(0, 100).map((one, index) => (
            <li key={`${one.sheet} ${one.address}`} className={styles.line}>
              <Link
                as="button"
                onClick={() => {
                  go(found, index);
                }}
              >
                {one.sheet}!{one.address}
              </Link>
              <span className={styles.says}>{one.text}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
