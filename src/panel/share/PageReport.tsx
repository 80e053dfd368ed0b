import { Button, makeStyles, tokens } from '@fluentui/react-components';
import { download } from './files';
import type { PageCopy } from './pageCopy';

const useStyles = makeStyles({
  report: {
    display: 'flex',
    flexDirection: 'column',
    gap: '10px',
    marginTop: '20px',
    alignItems: 'flex-start',
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, overflowWrap: 'anywhere' },
  says: { margin: 0, color: tokens.colorNeutralForeground2 },
});

/** The page that was made, to be taken as a file. */
export function PageReport({ page: { fileName, bytes } }: { readonly page: PageCopy }) {
  const styles = useStyles();
  return (
    <section className={styles.report} aria-label="The page">
      <h3 className={styles.title}>
        {fileName}, {Math.ceil(bytes.length / 1000)} kB
      </h3>
      <p className={styles.says}>
        Send it as a file. It opens without a network, calculates with the MOLD functions themselves, lets the
        marked inputs be changed and saves nothing: this workbook stays the one that counts. It carries the
        whole workbook, hidden sheets too.
      </p>
      <Button
        appearance="primary"
        onClick={() => {
          download(fileName, bytes, 'text/html');
        }}
      >
        Download
      </Button>
    </section>
  );
}
