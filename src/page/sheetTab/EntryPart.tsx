import { Button, Field, Input, Textarea } from '@fluentui/react-components';
import { useState } from 'react';
import { areaContains } from '../../cells/address';
import type { EntryRule } from '../../package/edits';
import type { Validation } from '../../package/model';
import { inWords } from '../../workbook/entryRules';
import type { PartProps } from './part';
import { Choice, entriesOf } from './Choice';
import { useFormStyles } from './useForm';

const KINDS = {
  words: 'One of these words',
  cells: 'What stands in these cells',
  decimal: 'A number within bounds',
  whole: 'A whole number within bounds',
  custom: 'What makes a formula true',
} as const;
type Kind = keyof typeof KINDS;

const STYLES = { stop: 'Stop', warning: 'Warn, may be kept', information: 'Tell only' } as const;

/** Either bound may be left open. */
function boundsOf(from: string, to: string): Pick<EntryRule, 'operator' | 'formulas'> {
  const [a, b] = [from.trim(), to.trim()];
  if (b === '') return { operator: 'greaterThanOrEqual', formulas: a === '' ? [] : [a] };
  return a === ''
    ? { operator: 'lessThanOrEqual', formulas: [b] }
    : { operator: 'between', formulas: [a, b] };
}

function ruleOf(
  kind: Kind,
  first: string,
  second: string,
): Pick<EntryRule, 'kind' | 'operator' | 'formulas' | 'choices'> {
  const formula = first.trim().replace(/^=/, '');
  if (kind === 'words') {
    const choices = first
      .split(/[\n,]/)
      .map((one) => one.trim())
      .filter(Boolean);
    return { kind: 'list', operator: 'between', choices, formulas: [] };
  }
  if (kind === 'cells')
    return { kind: 'list', operator: 'between', formulas: formula === '' ? [] : [formula] };
  if (kind === 'custom')
    return { kind: 'custom', operator: 'between', formulas: formula === '' ? [] : [formula] };
  return { kind, ...boundsOf(first, second) };
}

export function EntryPart({ desk, selection: { sheet, area } }: PartProps) {
  const styles = useFormStyles();
  const [kind, setKind] = useState<Kind>('words');
  const [first, setFirst] = useState('');
  const [second, setSecond] = useState('');
  const [style, setStyle] = useState<keyof typeof STYLES>('stop');
  const [says, setSays] = useState('');
  const present: Validation | undefined = desk
    .sheet(sheet)
    ?.validations.find(({ areas }) => areas.some((one) => areaContains(one, area.top, area.left)));
  const hasBounds = kind === 'decimal' || kind === 'whole';
  return (
    <div className={styles.form}>
      <span className={styles.says}>
        {present ? `These cells take: ${inWords(present)}.` : 'These cells take anything.'}
      </span>
      <Choice label="Take only" value={kind} options={entriesOf(KINDS)} onChoose={setKind} />
      {kind === 'words' ? (
        <Field label="Words, parted by commas or lines">
          <Textarea
            value={first}
            onChange={(_, { value }) => {
              setFirst(value);
            }}
          />
        </Field>
      ) : (
        <Field
          label={
            hasBounds
              ? 'From (a number or a cell)'
              : kind === 'cells'
                ? 'Cells, as in Lists!$A$2:$A$9'
                : 'Formula for the first cell'
          }
        >
          <Input
            value={first}
            onChange={(_, { value }) => {
              setFirst(value);
            }}
          />
        </Field>
      )}
      {hasBounds && (
        <Field label="To (a number or a cell)">
          <Input
            value={second}
            onChange={(_, { value }) => {
              setSecond(value);
            }}
          />
        </Field>
      )}
      <Choice label="Anything else" value={style} options={entriesOf(STYLES)} onChoose={setStyle} />
      <Field label="What is said then">
        <Input
          value={says}
          onChange={(_, { value }) => {
            setSays(value);
          }}
        />
      </Field>
      <div className={styles.row}>
        <Button
          appearance="primary"
          onClick={() => {
            const rule = {
              ...ruleOf(kind, first, second),
              allowBlank: true,
              refusal: { style, title: '', text: says.trim() },
            };
            desk.apply({ do: 'setEntryRule', sheet, area, rule });
          }}
        >
          Set the rule
        </Button>
        {present && (
          <Button
            onClick={() => {
              desk.apply({ do: 'setEntryRule', sheet, area, rule: null });
            }}
          >
            Take anything
          </Button>
        )}
      </div>
    </div>
  );
}
