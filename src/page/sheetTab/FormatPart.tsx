import { Button, Field, Input } from '@fluentui/react-components';
import { useState } from 'react';
import { decimalSign, type DecimalSign } from '../../cells/decimalSign';
import { chooseDecimalSign } from '../../panel/decimalSign';
import type { PartProps } from './part';
import { Choice, entriesOf } from './Choice';
import { useFormStyles } from './useForm';

const KINDS = {
  plain: 'As typed',
  decimals: 'Decimals',
  thousands: 'Decimals, thousands parted',
  percent: 'Percent',
  fraction: 'Fraction',
  inches: 'Fraction of an inch',
  text: 'Text',
  date: 'Date',
} as const;

type Kind = keyof typeof KINDS;

const PARTS_OF_ONE = [2, 4, 8, 16, 32, 64];

/** A number format of the file. */
export function formatCode(kind: Kind, decimals: number, parts: number, unit: string): string {
  const places = decimals > 0 ? `.${'0'.repeat(decimals)}` : '';
  const behind = unit.trim() === '' ? '' : `" ${unit.trim().replaceAll('"', '')}"`;
  const fraction = `# ${'?'.repeat(String(parts).length)}/${parts}`;
  switch (kind) {
    case 'plain':
      return 'General';
    case 'decimals':
      return `0${places}${behind}`;
    case 'thousands':
      return `#,##0${places}${behind}`;
    case 'percent':
      return `0${places}%`;
    case 'fraction':
      return `${fraction}${behind}`;
    case 'inches':
      return `${fraction}\\"`;
    case 'text':
      return '@';
    case 'date':
      return 'yyyy-mm-dd';
  }
}

const SIGNS: readonly (readonly [DecimalSign, string])[] = [
  ['.', 'Point: 0.5'],
  [',', 'Comma: 0,5'],
];

export function FormatPart({ desk, selection }: PartProps) {
  const styles = useFormStyles();
  const [kind, setKind] = useState<Kind>('decimals');
  const [decimals, setDecimals] = useState('2');
  const [parts, setParts] = useState(64);
  const [unit, setUnit] = useState('');
  const [sign, setSign] = useState(decimalSign());
  const hasDecimals = kind === 'decimals' || kind === 'thousands' || kind === 'percent';
  const isFraction = kind === 'fraction' || kind === 'inches';
  const count = Math.min(15, Math.max(0, Math.round(Number(decimals)) || 0));
  return (
    <div className={styles.form}>
      <Choice label="Show numbers as" value={kind} options={entriesOf(KINDS)} onChoose={setKind} />
      {hasDecimals && (
        <Field label="Decimals">
          <Input
            type="number"
            min={0}
            max={15}
            value={decimals}
            onChange={(_, { value }) => {
              setDecimals(value);
            }}
          />
        </Field>
      )}
      {isFraction && (
        <Choice
          label="To the nearest"
          value={parts}
          options={PARTS_OF_ONE.map((one) => [one, `1/${one}`] as const)}
          onChoose={setParts}
        />
      )}
      {(kind === 'decimals' || kind === 'thousands' || kind === 'fraction') && (
        <Field label="Unit behind it, as words only">
          <Input
            value={unit}
            onChange={(_, { value }) => {
              setUnit(value);
            }}
          />
        </Field>
      )}
      <div className={styles.row}>
        <Button
          appearance="primary"
          onClick={() => {
            desk.setNumberFormat(selection, formatCode(kind, count, parts, unit));
          }}
        >
          Set the format
        </Button>
      </div>
      <Choice
        label="Decimal sign on this page"
        hint="Shown, typed and printed so; files and formulas keep the point."
        value={sign}
        options={SIGNS}
        onChoose={(value) => {
          setSign(value);
          chooseDecimalSign(value);
          desk.redraw();
        }}
      />
    </div>
  );
}
