import {
  Button,
  FluentProvider,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  tokens,
} from '@fluentui/react-components';
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host } from '../panel/host';
import { later } from '../panel/later';
import { CheckBar } from '../panel/share/CheckBar';
import { ShareTab } from '../panel/share/ShareTab';
import { darkTheme, lightTheme } from '../panel/theme';
import { AppBar } from './AppBar';
import { CalculationBars } from './CalculationBars';
import { EntryDialog } from './EntryDialog';
import { NARROW, useNarrow } from './narrow';
import type { Newer } from './offline/newer';
import { PageBars } from './PageBars';
import { painted } from './painted';
import type { Session } from './session';
import type { SheetDesk } from './sheetTab/desk';
import { SheetTabLater } from './sheetTab/SheetTabLater';
import { onDarkChange, prefersDark } from './theme';
import { useFileDrop } from './useFileDrop';
import { useKeys } from './useKeys';

/** What this is, as the shell says it. */
const DESCRIPTION = document.querySelector<HTMLMetaElement>('meta[name="description"]')?.content;

/** Behind the sheet, which is what a person came for. */
const Panel = later(async () => {
  // Not between the results and the screen.
  await painted();
  return (await import('../panel/Panel')).Panel;
});

const useStyles = makeStyles({
  app: { display: 'flex', flexDirection: 'column', height: '100%' },
  messages: { flexShrink: 0 },
  desk: { display: 'flex', flexGrow: 1, minHeight: 0 },
  grid: { position: 'relative', flexGrow: 1, minWidth: 0 },
  // Where the shell says the same.
  opening: {
    position: 'absolute',
    zIndex: 1,
    inset: '18vh 0 auto',
    maxWidth: '30em',
    margin: '16px auto',
    padding: '0 1em',
    fontSize: tokens.fontSizeBase400,
    lineHeight: '24px',
  },
  panel: {
    flexShrink: 0,
    width: '340px',
    borderLeft: `1px solid ${tokens.colorNeutralStroke2}`,
    // From below, so that the cell that it speaks of stays in view.
    [NARROW]: {
      position: 'fixed',
      zIndex: 1000,
      inset: 'auto 0 0',
      width: 'auto',
      height: '58%',
      borderLeft: 'none',
      borderTop: `2px solid ${tokens.colorBrandStroke1}`,
      boxShadow: tokens.shadow28,
    },
  },
  drop: {
    position: 'fixed',
    zIndex: 2000,
    inset: '8px',
    display: 'grid',
    placeItems: 'center',
    border: `2px dashed ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusXLarge,
    backgroundColor: tokens.colorNeutralBackgroundAlpha2,
    fontSize: tokens.fontSizeBase500,
    pointerEvents: 'none',
  },
});

interface Props {
  readonly session: Session;
  readonly host: Host;
  readonly sheetDesk: SheetDesk;
  readonly functions: readonly WorksheetFunction[];
  /** File names. */
  readonly samples: readonly string[];
  readonly newer: Newer;
  /** The grid's element, made once and outside of React. */
  readonly gridElement: HTMLElement;
}

export function App(props: Props) {
  const dark = useSyncExternalStore(onDarkChange, prefersDark);
  return (
    <FluentProvider theme={dark ? darkTheme : lightTheme} style={{ height: '100%' }}>
      <Desk {...props} />
    </FluentProvider>
  );
}

function Desk({ session, host, sheetDesk, functions, samples, gridElement, newer }: Props) {
  const styles = useStyles();
  const state = useSyncExternalStore(session.subscribe, () => session.state);
  const [panelOpen, setPanelOpen] = useState(!useNarrow());
  const [page, setPage] = useState('functions');
  const [isReady, setIsReady] = useState(false);
  if (!isReady && !state.busy) setIsReady(true);
  // One function for good: another one each time would put the grid in anew, and an entry would lose its keys.
  const place = useCallback((element: HTMLElement | null) => element?.append(gridElement), [gridElement]);
  const dropping = useFileDrop((file) => void session.openFile(file));

  useEffect(() => {
    document.title = `${state.unsaved ? '• ' : ''}${state.fileName} – Moldsheet`;
  }, [state.fileName, state.unsaved]);
  const [part, setPart] = useState('format');
  // Asked for again, a part begins anew.
  const [asked, setAsked] = useState(0);
  const show = useCallback((which: string) => {
    setPanelOpen(true);
    setPage('sheet');
    setPart(which);
    setAsked((times) => times + 1);
  }, []);
  const keys = useMemo(() => {
    const shows = (which: string) => () => {
      show(which);
    };
    return {
      s: () => void session.save(),
      f: shows('find'),
      h: shows('find'),
      1: shows('format'),
      home: () => {
        sheetDesk.toCorner('first');
      },
      end: () => {
        sheetDesk.toCorner('last');
      },
    };
  }, [session, sheetDesk, show]);
  useKeys(keys, isReady);
  const [formsAsked, setFormsAsked] = useState(0);
  useEffect(
    () =>
      sheetDesk.onFormAsked(() => {
        setPanelOpen(true);
        setPage('functions');
        setFormsAsked((times) => times + 1);
      }),
    [sheetDesk],
  );
  useEffect(
    () =>
      sheetDesk.onFilterAsked(() => {
        show('filter');
      }),
    [sheetDesk, show],
  );

  return (
    <div className={styles.app}>
      <AppBar
        session={session}
        state={state}
        samples={samples}
        panelOpen={panelOpen}
        onPanel={setPanelOpen}
      />
      <section className={styles.messages} aria-label="Messages">
        {state.notice && (
          <MessageBar intent={state.notice.kind} layout="singleline" shape="square">
            <MessageBarBody>{state.notice.text}</MessageBarBody>
            <MessageBarActions
              containerAction={
                <Button
                  appearance="transparent"
                  size="small"
                  onClick={() => {
                    session.dismissNotice();
                  }}
                >
                  Dismiss
                </Button>
              }
            />
          </MessageBar>
        )}
        <PageBars session={session} state={state} newer={newer} />
        <CalculationBars session={session} state={state} />
        <CheckBar
          files={session.files}
          onShow={() => {
            setPanelOpen(true);
            setPage('share');
          }}
        />
      </section>
      <div className={styles.desk}>
        <main className={styles.grid} aria-label="Workbook" ref={place}>
          {!state.stands && <p className={styles.opening}>{DESCRIPTION}</p>}
        </main>
        {panelOpen && (
          <aside className={styles.panel} aria-label="Functions">
            {isReady && (
              <Panel
                host={host}
                functions={functions}
                page={page}
                onPage={(which) => {
                  setPage(which);
                  setFormsAsked(0);
                }}
                formsAsked={formsAsked}
                more={[
                  {
                    id: 'sheet',
                    title: 'Sheet',
                    body: <SheetTabLater desk={sheetDesk} open={part} asked={asked} onOpen={setPart} />,
                  },
                  { id: 'share', title: 'Share', body: <ShareTab files={session.files} /> },
                ]}
              />
            )}
          </aside>
        )}
      </div>
      {state.question && <EntryDialog question={state.question} />}
      {dropping && <div className={styles.drop}>Drop the workbook to open it</div>}
    </div>
  );
}
