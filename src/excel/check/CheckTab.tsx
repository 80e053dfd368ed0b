import { Button, makeStyles, MessageBar, MessageBarBody, Spinner, tokens } from '@fluentui/react-components';
import { useSyncExternalStore } from 'react';
import { CheckPart } from '../../panel/share/CheckPart';
import { CellList } from '../../panel/share/CellList';
import { counted } from '../../panel/share/checkDesk';
import { cellAddress } from '../../cells/address';
import { excelFiles } from '../files';
import { labelOf } from './cures';
import { faultsDesk } from './desk';
import { GROUPS, type Cure, type Finding } from './examine';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  part: { display: 'flex', flexDirection: 'column', gap: '10px', alignItems: 'flex-start' },
  found: { alignSelf: 'stretch' },
  title: { margin: 0, fontSize: tokens.fontSizeBase400 },
  group: { margin: '14px 0 4px', fontSize: tokens.fontSizeBase300 },
  says: { margin: 0, color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  content: { display: 'block' },
  cures: { display: 'flex', flexWrap: 'wrap', gap: '6px', marginBlock: '6px' },
  divide: {
    width: '100%',
    margin: '24px 0 20px',
    border: 'none',
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

const TITLES: Readonly<Record<Finding['group'], readonly [one: string, many: string]>> = {
  mode: ['setting of the calculation', 'settings of the calculation'],
  protected: ['protected sheet with MOLD formulas', 'protected sheets with MOLD formulas'],
  lost: ['formula that lost the add-in', 'formulas that lost the add-in'],
  oldList: ['formula that Excel does not know yet', 'formulas that Excel does not know yet'],
  blank: ['blank input', 'blank inputs'],
  errors: ['cell in error', 'cells in error'],
  tables: ['cell of a data table', 'cells of data tables'],
};

/** Groups that one act cures as a whole: the button stands once, above their cells. */
const TOGETHER: Partial<Record<Finding['group'], Cure>> = {
  lost: { does: 're-enter' },
  oldList: { does: 'fetch the list' },
};

/** Faults of the open workbook, each with a button for its cure; then whether its numbers still hold. */
export function CheckTab() {
  const styles = useStyles();
  const { busy, findings, says, problem } = useSyncExternalStore(
    faultsDesk.subscribe,
    () => faultsDesk.state,
  );
  return (
    <section className={styles.view} aria-label="Check of the workbook" tabIndex={0}>
      <div className={styles.part}>
        <h2 className={styles.title}>Cells and settings</h2>
        <p className={styles.says}>
          Finds cells in error with their message, formulas that lost the add-in, blank inputs, settings of
          Excel that spoil results, protected sheets.
        </p>
        {busy ? (
          <Spinner size="small" label="Looking at the workbook" />
        ) : (
          <Button appearance="primary" onClick={() => void faultsDesk.look()}>
            {findings ? 'Check cells and settings again' : 'Check cells and settings'}
          </Button>
        )}
        {problem !== undefined && (
          <MessageBar intent="error" layout="multiline">
            <MessageBarBody>{problem}</MessageBarBody>
          </MessageBar>
        )}
        <div className={styles.found} aria-live="polite">
          {says !== '' && <p className={styles.says}>{says}</p>}
          {findings?.length === 0 && <p className={styles.says}>Nothing to mend was found.</p>}
          {GROUPS.map((group) => {
            const members = findings?.filter((one) => one.group === group) ?? [];
            return members.length > 0 && <Group key={group} group={group} members={members} />;
          })}
        </div>
      </div>
      <hr className={styles.divide} />
      <CheckPart files={excelFiles} />
    </section>
  );
}

interface GroupProps {
  readonly group: Finding['group'];
  readonly members: readonly Finding[];
}

function Group({ group, members }: GroupProps) {
  const styles = useStyles();
  const together = TOGETHER[group];
  return (
    <section aria-label={TITLES[group][1]}>
      <h3 className={styles.group}>{counted(members.length, ...TITLES[group])}</h3>
      {together && <Cures cures={[together]} />}
      <CellList
        lines={members.map(({ at, says, cures }) => ({
          sheet: at?.sheet ?? '',
          cell: at ? cellAddress(at.row, at.column) : '',
          says: (
            <>
              <span className={styles.content}>{says}</span>
              <Cures cures={cures.filter(({ does }) => does !== together?.does)} />
            </>
          ),
        }))}
      />
    </section>
  );
}

function Cures({ cures }: { readonly cures: readonly Cure[] }) {
  const styles = useStyles();
  return (
    <div className={styles.cures}>
      {cures.map((cure) => (
        <Button key={labelOf(cure)} size="small" onClick={() => void faultsDesk.cure(cure)}>
          {labelOf(cure)}
        </Button>
      ))}
    </div>
  );
}
