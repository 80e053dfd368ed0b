import { Button, Link, makeStyles, Spinner, Text, tokens } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import type { System } from '../core/quantity';
import type { Section } from '../forms/sections/section';
import { DesignSections } from '../panel/DesignSections';
import type { Host } from '../panel/host';
import { sampleTitle } from '../panel/samples';
import { designSheetNames, insertDesignSheet } from './designSheets';
import { messageOf } from '../panel/messageOf';
import { setPanelState } from './panelState';

const useStyles = makeStyles({
  page: { display: 'flex', flexDirection: 'column', gap: '8px', padding: '12px 16px', overflowY: 'auto' },
  sheet: {
    display: 'flex',
    alignItems: 'center',
    justifyContent: 'space-between',
    gap: '8px',
    paddingBlock: '6px',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  heading: { margin: '6px 0 0', fontSize: tokens.fontSizeBase300 },
  hint: { color: tokens.colorNeutralForeground2 },
});

/** What writes designs is loaded with the first. */
const writers = () => import('./forms');

/** The ready design sheets, each with a button that puts it into the open workbook. */
export function DesignSheets({ host }: { readonly host: Host }) {
  const styles = useStyles();
  const [names, setNames] = useState<readonly string[]>();
  const [busy, setBusy] = useState<string>();

  useEffect(() => {
    designSheetNames().then(setNames, (error: unknown) => {
      setNames([]);
      report(error);
    });
  }, []);

  const insert = async (fileName: string) => {
    setBusy(fileName);
    setPanelState({ notice: undefined });
    try {
      const sheets = await insertDesignSheet(fileName);
      setPanelState({ notice: { intent: 'success', text: `Inserted: ${sheets.join(', ')}.` } });
    } catch (error) {
      report(error);
    } finally {
      setBusy(undefined);
    }
  };

  const make = async (sections: readonly Section[], system: System) => {
    setPanelState({ notice: undefined });
    try {
      const { makeDesignInExcel } = await writers();
      setPanelState({ notice: { intent: 'success', text: await makeDesignInExcel(sections, system) } });
    } catch (error) {
      report(error);
    }
  };

  return (
    <section className={styles.page} aria-label="Design sheets">
      <h2 className={styles.heading}>Of sections that you choose</h2>
      <DesignSections
        make={make}
        writeHere={async (sections, system, at) => {
          const { writeDesignInExcel } = await writers();
          return writeDesignInExcel(host, sections, system, at);
        }}
      />
      <h2 className={styles.heading}>Ready to change</h2>
      <Text className={styles.hint}>
        A design sheet is put behind the sheets of this workbook. Its inputs are yours to change.
      </Text>
      {!names && <Spinner size="small" label="Looking for design sheets" />}
      {names?.length === 0 && <Text role="status">No design sheet came with this installation.</Text>}
      {names?.map((fileName) => (
        <div key={fileName} className={styles.sheet}>
          <Link href={`samples/${fileName}`} download title="Download as a workbook of its own">
            {sampleTitle(fileName)}
          </Link>
          <Button
            size="small"
            disabled={busy !== undefined}
            icon={busy === fileName ? <Spinner size="extra-tiny" /> : null}
            aria-label={`Insert ${sampleTitle(fileName)}`}
            onClick={() => void insert(fileName)}
          >
            Insert
          </Button>
        </div>
      ))}
    </section>
  );
}

const report = (error: unknown): void => {
  setPanelState({
    notice: { intent: 'error', text: messageOf(error) },
  });
};
