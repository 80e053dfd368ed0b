import { makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { CellList } from './CellList';
import type { Returned } from './desk';

const useStyles = makeStyles({
  report: { display: 'flex', flexDirection: 'column', gap: '10px', marginTop: '20px' },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, overflowWrap: 'anywhere' },
  says: { margin: 0, color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  content: { display: 'block' },
  kept: { display: 'block', color: tokens.colorNeutralForeground2 },
});

/** What the colleague changed; the changes stay, the formulas come back around them. */
export function ReturnedReport({
  returned: { fileName, restored, changed, problems, basis },
  children,
}: {
  readonly returned: Returned;
  readonly children: ReactNode;
}) {
  const styles = useStyles();
  return (
    <section className={styles.report} aria-label="Report of what came back">
      <h3 className={styles.title}>{fileName}</h3>
      <p className={styles.says}>
        {restored} MOLD {restored === 1 ? 'formula is' : 'formulas are'} back. Shared with {basis}.{' '}
        {changed.length === 0 ? 'Nothing was changed.' : `${counted(changed.length)} changed since:`}
      </p>
      {problems.map((problem) => (
        <p key={problem} className={styles.says}>
          {problem}
        </p>
      ))}
      {children}
      <CellList
        lines={changed.map(({ sheet, cell, before, now, kept }) => ({
          sheet,
          cell,
          says: (
            <>
              <span className={styles.content}>
                {contentText(before)} → {contentText(now)}
              </span>
              {kept !== undefined && <span className={styles.kept}>Stays instead of ={kept}</span>}
            </>
          ),
        }))}
      />
    </section>
  );
}

const counted = (cells: number): string => (cells === 1 ? 'One cell was' : `${cells} cells were`);

/** Numbers without the last digits of a file, which say nothing; twelve still show any change. */
function contentText(content: string): string {
  if (content === '') return 'blank';
  const number = Number(content);
  return Number.isFinite(number) && content.trim() !== '' ? String(Number(number.toPrecision(12))) : content;
}
