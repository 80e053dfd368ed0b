import {
  Button,
  FluentProvider,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  tokens,
} from '@fluentui/react-components';
import { useEffect, useSyncExternalStore } from 'react';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host } from '../panel/host';
import { later } from '../panel/later';
import { Panel } from '../panel/Panel';
import { darkTheme, lightTheme } from '../panel/theme';
import { excelFiles } from './files';
import { FirstRun } from './FirstRun';
import { isDark, onThemeLook } from './hostTheme';
import { FIRST_STEPS, readPanelState, setPanelState, subscribe, type Notice } from './panelState';
import { rememberSeen } from './remember';
import { SharedWorkbookBar, SharingWords } from './Sharing';

// What not everybody opens is loaded when it is.
const CheckTab = later(async () => (await import('./check/CheckTab')).CheckTab);
const DesignSheets = later(async () => (await import('./DesignSheets')).DesignSheets);
const HelpTab = later(async () => (await import('./HelpTab')).HelpTab);
const ShareTab = later(async () => (await import('../panel/share/ShareTab')).ShareTab);

const useStyles = makeStyles({
  app: {
    display: 'flex',
    flexDirection: 'column',
    height: '100%',
    backgroundColor: tokens.colorNeutralBackground1,
  },
  // Excel shows the name above the panel; here it is for screen readers.
  heading: {
    position: 'absolute',
    width: '1px',
    height: '1px',
    margin: 0,
    overflow: 'hidden',
    clipPath: 'inset(50%)',
  },
  notice: { flexShrink: 0 },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
}

/** The panel in Excel: the same as beside the workbook page, with the design sheets to insert. */
export function App({ host, functions }: Props) {
  const dark = useSyncExternalStore(onThemeLook, isDark);
  useEffect(() => {
    // Scroll bars and the controls of the browser follow Excel, not the system.
    document.documentElement.style.colorScheme = dark ? 'dark' : 'light';
  }, [dark]);
  return (
    <FluentProvider theme={dark ? darkTheme : lightTheme} style={{ height: '100%' }}>
      <Pages host={host} functions={functions} />
    </FluentProvider>
  );
}

function Pages({ host, functions }: Props) {
  const styles = useStyles();
  const { page, notice, isFirstRun } = useSyncExternalStore(subscribe, readPanelState);
  if (isFirstRun) {
    return (
      <main className={styles.app}>
        <h1 className={styles.heading}>Moldsheet</h1>
        <FirstRun
          onDone={() => {
            rememberSeen(FIRST_STEPS);
            setPanelState({ isFirstRun: false });
          }}
        />
      </main>
    );
  }
  return (
    <main className={styles.app}>
      <h1 className={styles.heading}>Moldsheet</h1>
      <Panel
        host={host}
        functions={functions}
        page={page}
        onPage={(chosen) => {
          setPanelState({ page: chosen, notice: undefined });
        }}
        notice={
          <>
            <SharedWorkbookBar />
            {notice && <NoticeBar {...notice} />}
          </>
        }
        more={[
          {
            id: 'share',
            title: 'Share',
            body: <ShareTab files={excelFiles} before={<SharingWords />} checks={false} />,
          },
          { id: 'check', title: 'Check', body: <CheckTab /> },
          { id: 'sheets', title: 'Sheets', body: <DesignSheets host={host} /> },
          { id: 'help', title: 'Help', body: <HelpTab host={host} functions={functions} /> },
        ]}
      />
    </main>
  );
}

function NoticeBar({ intent, text }: Notice) {
  const styles = useStyles();
  return (
    <MessageBar className={styles.notice} intent={intent} layout="multiline">
      <MessageBarBody>{text}</MessageBarBody>
      <MessageBarActions>
        <Button
          size="small"
          onClick={() => {
            setPanelState({ notice: undefined });
          }}
        >
          Dismiss
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}
