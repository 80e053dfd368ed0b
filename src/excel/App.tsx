import {
  Button,
  FluentProvider,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  Tab,
  TabList,
  tokens,
  type Theme,
} from '@fluentui/react-components';
import { useSyncExternalStore } from 'react';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host } from '../panel/host';
import { Panel } from '../panel/Panel';
import { DesignSheets } from './DesignSheets';
import { readPanelState, setPanelState, subscribe, type PanelPage } from './panelState';

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
  tabs: { flexShrink: 0, borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  notice: { flexShrink: 0 },
  page: { flexGrow: 1, minHeight: 0 },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  readonly theme: Theme;
}

/** The panel in Excel: the same as beside the workbook page, with the design sheets to insert. */
export function App({ host, functions, theme }: Props) {
  return (
    <FluentProvider theme={theme} style={{ height: '100%' }}>
      <Pages host={host} functions={functions} />
    </FluentProvider>
  );
}

function Pages({ host, functions }: Omit<Props, 'theme'>) {
  const styles = useStyles();
  const { page, notice } = useSyncExternalStore(subscribe, readPanelState);
  return (
    <main className={styles.app}>
      <h1 className={styles.heading}>Moldsheet</h1>
      <TabList
        className={styles.tabs}
        size="small"
        selectedValue={page}
        onTabSelect={(_event, { value }) => {
          setPanelState({ page: value as PanelPage, notice: undefined });
        }}
      >
        <Tab value="functions">Functions</Tab>
        <Tab value="sheets">Design sheets</Tab>
      </TabList>
      {notice && (
        <MessageBar className={styles.notice} intent={notice.intent} layout="multiline">
          <MessageBarBody>{notice.text}</MessageBarBody>
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
      )}
      <div className={styles.page}>
        {page === 'functions' ? <Panel host={host} functions={functions} /> : <DesignSheets />}
      </div>
    </main>
  );
}
