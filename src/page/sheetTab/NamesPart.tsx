import { Button, Field, Input } from '@fluentui/react-components';
import { useState } from 'react';
import { columnLetters, quotedSheet } from '../../cells/address';
import type { DefinedName } from '../../package/model';
import type { Selection } from './desk';
import type { PartProps } from './part';
import { useFormStyles } from './useForm';

/** The selected cells as a name stands for them. */
function cellsText({ sheet, area: { top, left, bottom, right } }: Selection): string {
  const first = `$${columnLetters(left)}$${top + 1}`;
  const last = `$${columnLetters(right)}$${bottom + 1}`;
  return `${quotedSheet(sheet)}!${first === last ? first : `${first}:${last}`}`;
}

export function NamesPart({ desk, selection }: PartProps) {
  const styles = useFormStyles();
  const [old, setOld] = useState<DefinedName>();
  const [name, setName] = useState('');
  const [formula, setFormula] = useState<string>();
  const names = desk.workbook().names.filter(({ hidden }) => !hidden);
  const clear = () => {
    setOld(undefined);
    setName('');
    setFormula(undefined);
  };
  const scope = old?.sheet === undefined ? {} : { sheet: old.sheet };
  return (
    <div className={styles.form}>
      <Field label="Name">
        <Input
          value={name}
          onChange={(_, { value }) => {
            setName(value);
          }}
        />
      </Field>
      <Field label="Stands for">
        <Input
          value={formula ?? cellsText(selection)}
          onChange={(_, { value }) => {
            setFormula(value);
          }}
        />
      </Field>
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabled={name.trim() === ''}
          onClick={() => {
            const stands = (formula ?? cellsText(selection)).trim().replace(/^=/, '');
            desk.apply({ do: 'setName', name, formula: stands, ...(old && { was: old.name }), ...scope });
            clear();
          }}
        >
          {old ? 'Change the name' : 'Add the name'}
        </Button>
        {old && <Button onClick={clear}>Leave it</Button>}
      </div>
      <ul className={styles.list} aria-label="Names of this workbook">
        {names.map((one) => (
          <li key={`${one.name} ${one.sheet ?? ''}`} className={styles.line}>
            <span>
              {one.name}{' '}
              <span className={styles.says}>
                {one.formula}
                {one.sheet === undefined ? '' : ` (${one.sheet} only)`}
              </span>
            </span>
            <span className={styles.row}>
              <Button
                size="small"
                aria-label={`Change ${one.name}`}
                onClick={() => {
                  setOld(one);
                  setName(one.name);
                  setFormula(one.formula);
                }}
              >
                Change
              </Button>
              <Button
                size="small"
                aria-label={`Delete ${one.name}`}
                onClick={() => {
                  desk.apply({
                    do: 'deleteName',
                    name: one.name,
                    ...(one.sheet !== undefined && { sheet: one.sheet }),
                  });
                }}
              >
                Delete
              </Button>
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
