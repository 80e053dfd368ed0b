import { Button, Field, Input } from '@fluentui/react-components';
import { useState } from 'react';
import { areaAddress, cellAddress, type Area } from '../../cells/address';
import type { ColorRule } from '../../package/edits';
import type { ConditionalFormat } from '../../package/model';
import type { PartProps } from './part';
import { Choice, entriesOf } from './Choice';
import { useFormStyles } from './useForm';

const LOOKS = {
  holds: { title: 'Green: holds', fill: '#DDF0DA', color: '#1E5B1A' },
  little: { title: 'Yellow: little to spare', fill: '#FFF2C4', color: '#6B4A00' },
  fails: { title: 'Red: does not hold', fill: '#FBDCD0', color: '#8A2500' },
  unknown: { title: 'Blue: not known', fill: '#DBE7F5', color: '#1D3F6B' },
} as const;

const WHENS = {
  greaterThan: 'is greater than',
  lessThan: 'is less than',
  between: 'is from … to …',
  notBetween: 'is not from … to …',
  equal: 'is equal to',
  holds: 'holds the words',
  error: 'is in error',
  formula: 'makes this formula true',
} as const;
type When = keyof typeof WHENS;

const NEEDS_NONE: readonly When[] = ['error'];

function conditionOf(
  when: When,
  first: string,
  second: string,
  { top, left }: Area,
): Pick<ColorRule, 'kind' | 'operator' | 'formulas'> {
  const cell = cellAddress(top, left);
  const value = (text: string) => {
    const plain = text.trim().replace(/^=/, '');
    const isWord =
      !text.trim().startsWith('=') && /[^\d.\s+-]/.test(plain) && !/^\$?[A-Z]{1,3}\$?\d+$/i.test(plain);
    return isWord ? `"${plain.replaceAll('"', '""')}"` : plain;
  };
  if (when === 'formula') return { kind: 'expression', formulas: [first.trim().replace(/^=/, '')] };
  if (when === 'error') return { kind: 'expression', formulas: [`ISERROR(${cell})`] };
  if (when === 'holds')
    return { kind: 'expression', formulas: [`ISNUMBER(SEARCH("${first.replaceAll('"', '""')}",${cell}))`] };
  const two = when === 'between' || when === 'notBetween';
  return { kind: 'cellIs', operator: when, formulas: two ? [value(first), value(second)] : [value(first)] };
}

/** A rule as a person reads it. */
function said({ areas, kind, operator, formulas }: ConditionalFormat): string {
  const where = areas.map(areaAddress).join(', ');
  const [first = '', second = ''] = formulas;
  if (kind === 'expression') return `${where}: where ${first}`;
  const words = WHENS[operator as When] as string | undefined;
  return `${where}: ${(words ?? operator ?? '').replace('…', first).replace('…', second)}${second === '' ? ` ${first}` : ''}`;
}

export function ColorsPart({ desk, selection: { sheet, area } }: PartProps) {
  const styles = useFormStyles();
  const [when, setWhen] = useState<When>('holds');
  const [first, setFirst] = useState('✗');
  const [second, setSecond] = useState('');
  const [look, setLook] = useState<keyof typeof LOOKS>('fails');
  const rules = desk.sheet(sheet)?.conditionalFormats ?? [];
  return (
    <div className={styles.form}>
      <Choice label="Where a selected cell" value={when} options={entriesOf(WHENS)} onChoose={setWhen} />
      {!NEEDS_NONE.includes(when) && (
        <Field label={when === 'formula' ? 'Formula for the first cell' : 'Value, words or cell'}>
          <Input
            value={first}
            onChange={(_, { value }) => {
              setFirst(value);
            }}
          />
        </Field>
      )}
      {(when === 'between' || when === 'notBetween') && (
        <Field label="To">
          <Input
            value={second}
            onChange={(_, { value }) => {
              setSecond(value);
            }}
          />
        </Field>
      )}
      <Choice
        label="It looks"
        value={look}
        options={entriesOf(LOOKS).map(([id, { title }]) => [id, title] as const)}
        onChoose={setLook}
      />
      <div className={styles.row}>
        <Button
          appearance="primary"
          onClick={() => {
            const { fill, color } = LOOKS[look];
            const rule = {
              areas: [area],
              ...conditionOf(when, first, second, area),
              style: { fill, font: { color, bold: true } },
            };
            desk.apply({ do: 'addColorRule', sheet, rule });
          }}
        >
          Add the rule
        </Button>
      </div>
      <ul className={styles.list} aria-label="Rules of this sheet">
        {rules.map((rule, index) => (
          <li key={index} className={styles.line}>
            <span className={styles.says}>{said(rule)}</span>
            <Button
              size="small"
              aria-label={`Delete the rule ${said(rule)}`}
              onClick={() => {
                desk.apply({ do: 'deleteColorRule', sheet, index });
              }}
            >
              Delete
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
