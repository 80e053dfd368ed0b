import {
  Button,
  Field,
  Input,
  makeStyles,
  MessageBar,
  MessageBarBody,
  Text,
  Textarea,
  tokens,
} from '@fluentui/react-components';
import { useState } from 'react';
import { cellAddress } from '../../cells/address';
import { NAMESPACE } from '../../cells/namespace';
import { unitFormula } from '../../call/tools/unitFormula';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import type { Host } from '../host';
import { KeptEquations } from './KeptEquations';
import {
  EMPTY,
  equationCells,
  equationSize,
  judge,
  withEquation,
  type EquationDraft,
  type Said,
  type SymbolRow,
} from './draft';
import { messageOf } from '../messageOf';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  form: { display: 'flex', flexDirection: 'column', gap: '10px' },
  about: { margin: '0 0 10px', color: tokens.colorNeutralForeground2 },
  rows: {
    display: 'grid',
    gridTemplateColumns: 'minmax(32px, auto) minmax(0, 1fr) minmax(0, 1fr)',
    gap: '6px 8px',
    alignItems: 'center',
  },
  head: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground3 },
  symbol: { fontFamily: tokens.fontFamilyMonospace, overflowWrap: 'anywhere' },
  narrow: { minWidth: 0 },
  notes: { margin: 0, paddingLeft: '18px', color: tokens.colorNeutralForeground2 },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
}

/** An equation of the shop's own, typed as text, checked while it is typed, and written into the sheet. */
export function EquationEditor({ host, functions }: Props) {
  const styles = useStyles();
  const [draft, setDraft] = useState(EMPTY);
  const [told, tell] = useState<{ readonly intent: 'success' | 'warning'; readonly text: string }>();
  const said = judge(draft, functions);
  const change = (next: EquationDraft) => {
    setDraft(next);
    tell(undefined);
  };
  return (
    <section className={styles.view} aria-label="Equation" tabIndex={0}>
      <KeptEquations host={host} functions={functions} onTake={change} />
      <p className={styles.about}>
        The right side of an equation of your own. Its units are checked; nothing else is.
      </p>
      <div className={styles.form}>
        <Field label="Equation">
          <Textarea
            value={draft.equation}
            rows={2}
            placeholder="F/(pi/4*d^2)"
            onChange={(_event, { value }) => {
              change(withEquation(draft, value));
            }}
          />
        </Field>
        {draft.rows.length > 0 && (
          <SymbolRows
            rows={draft.rows}
            onChange={(rows) => {
              change({ ...draft, rows });
            }}
          />
        )}
        <Field label="Unit of the result">
          <Input
            value={draft.unit}
            placeholder="none"
            onChange={(_event, { value }) => {
              change({ ...draft, unit: value });
            }}
          />
        </Field>
        <Field label="Name of the result">
          <Input
            value={draft.result}
            placeholder="Result"
            onChange={(_event, { value }) => {
              change({ ...draft, result: value });
            }}
          />
        </Field>
        <Verdict said={said} unit={draft.unit} />
        <Button
          appearance="primary"
          disabled={said.says !== 'fits' && said.says !== 'value'}
          onClick={() => {
            write(host, draft).then(tell, (error: unknown) => {
              tell({ intent: 'warning', text: messageOf(error) });
            });
          }}
        >
          Write at the selected cell
        </Button>
        {told && (
          <MessageBar intent={told.intent} layout="multiline">
            <MessageBarBody>{told.text}</MessageBarBody>
          </MessageBar>
        )}
        <ul className={styles.notes}>
          {unitFormula.notes?.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}

function SymbolRows({
  rows,
  onChange,
}: {
  readonly rows: readonly SymbolRow[];
  readonly onChange: (rows: readonly SymbolRow[]) => void;
}) {
  const styles = useStyles();
  const edited = (which: number, part: Partial<SymbolRow>) =>
    rows.map((row, i) => (i === which ? { ...row, ...part } : row));
  return (
    <div className={styles.rows} role="group" aria-label="Symbols">
      {['Symbol', 'Value', 'Unit'].map((title) => (
        <span key={title} className={styles.head}>
          {title}
        </span>
      ))}
      {rows.flatMap(({ symbol, value, unit }, i) => [
        <span key={`${symbol} symbol`} className={styles.symbol}>
          {symbol}
        </span>,
        <Input
          key={`${symbol} value`}
          className={styles.narrow}
          aria-label={`Value of ${symbol}`}
          value={value}
          input={{ className: styles.narrow }}
          onChange={(_event, data) => {
            onChange(edited(i, { value: data.value }));
          }}
        />,
        <Input
          key={`${symbol} unit`}
          className={styles.narrow}
          aria-label={`Unit of ${symbol}`}
          value={unit}
          input={{ className: styles.narrow }}
          onChange={(_event, data) => {
            onChange(edited(i, { unit: data.value }));
          }}
        />,
      ])}
    </div>
  );
}

function Verdict({ said, unit }: { readonly said: Said; readonly unit: string }) {
  switch (said.says) {
    case 'nothing yet':
      return null;
    case 'problem':
      return (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{said.text}</MessageBarBody>
        </MessageBar>
      );
    case 'fits':
      return <Text role="status">The units fit. Without a value: {said.missing.join(', ')}.</Text>;
    case 'value':
      return (
        <Text role="status" weight="semibold">
          = {Number(said.value.toPrecision(6)).toString()} {unit}
        </Text>
      );
  }
}

/** Writes where nothing stands yet; says where it went, or what is in the way. */
async function write(
  host: Host,
  draft: EquationDraft,
): Promise<{ readonly intent: 'success' | 'warning'; readonly text: string }> {
  const selected = await host.readSelection();
  if (!selected) return { intent: 'warning', text: 'Select the cell where it shall begin.' };
  const range = { ...selected, ...equationSize(draft) };
  const there = await host.read(range);
  for (const [down, line] of there.entries()) {
    const across = line.findIndex(({ value, formula }) => formula !== '' || (value !== null && value !== ''));
    if (across < 0) continue;
    const filled = cellAddress(range.row + down, range.column + across);
    return {
      intent: 'warning',
      text: `${filled} is filled. Select a cell with ${range.rows} free rows and ${range.columns} free columns.`,
    };
  }
  await host.write(range, equationCells(draft, range));
  await host.recalculate();
  return {
    intent: 'success',
    text: `Written from ${cellAddress(range.row, range.column)}: ${NAMESPACE}.${unitFormula.name} reads the equation and its rows from the sheet.`,
  };
}
