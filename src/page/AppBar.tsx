import {
  Button,
  makeStyles,
  mergeClasses,
  Menu,
  MenuDivider,
  MenuItem,
  MenuList,
  MenuPopover,
  MenuTrigger,
  Text,
  ToggleButton,
  tokens,
} from '@fluentui/react-components';
import { useState } from 'react';
import { chooseFile } from './files';
import { NARROW } from './narrow';
import { DesignDialog } from './DesignDialog';
import { PrintDialog } from './PrintDialog';
import { sampleTitle } from './samples';
import type { Session, SessionState } from './session';

const useStyles = makeStyles({
  bar: {
    display: 'flex',
    flexShrink: 0,
    alignItems: 'center',
    gap: '4px',
    height: '44px',
    padding: '0 12px',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground2,
    [NARROW]: { flexWrap: 'wrap', height: 'auto', padding: '4px 6px' },
  },
  button: {
    minWidth: 'auto',
    flexShrink: 0,
    fontWeight: tokens.fontWeightRegular,
    [NARROW]: { paddingInline: '7px' },
  },
  icon: { width: '22px', height: '22px' },
  name: {
    margin: '0 12px 0 6px',
    color: tokens.colorBrandForeground1,
    fontSize: tokens.fontSizeBase400,
    fontWeight: 600,
  },
  file: {
    flexGrow: 1,
    minWidth: 0,
    overflow: 'hidden',
    textOverflow: 'ellipsis',
    whiteSpace: 'nowrap',
    textAlign: 'center',
    // Beside the name of the program, above the buttons.
    [NARROW]: { order: -1, flexBasis: '25%', textAlign: 'right' },
  },
  first: { [NARROW]: { order: -2 } },
  panel: { [NARROW]: { order: -1 } },
  state: { color: tokens.colorNeutralForeground3 },
});

interface Props {
  readonly session: Session;
  readonly state: SessionState;
  readonly samples: readonly string[];
  readonly panelOpen: boolean;
  readonly onPanel: (open: boolean) => void;
}

export function AppBar({ session, state, samples, panelOpen, onPanel }: Props) {
  const styles = useStyles();
  const { fileName, unsaved, inBrowser, busy, opening, leftBehind } = state;
  const [printing, setPrinting] = useState(false);
  const [designing, setDesigning] = useState(false);
  return (
    <header className={styles.bar}>
      <img src="icon.svg" alt="" className={mergeClasses(styles.icon, styles.first)} />
      <h1 className={mergeClasses(styles.name, styles.first)}>Moldsheet</h1>
      <Button
        className={styles.button}
        appearance="subtle"
        disabled={busy}
        onClick={() => void session.openNew()}
      >
        New
      </Button>
      <Button
        className={styles.button}
        appearance="subtle"
        disabled={busy}
        onClick={() => {
          chooseFile((file) => void session.openFile(file));
        }}
      >
        Open…
      </Button>
      <Button
        className={styles.button}
        appearance="subtle"
        disabled={busy}
        onClick={() => void session.save()}
      >
        Save
      </Button>
      <Button
        className={styles.button}
        appearance="subtle"
        disabled={busy}
        onClick={() => {
          setPrinting(true);
        }}
      >
        Print…
      </Button>
      {printing && (
        <PrintDialog
          session={session}
          onClose={() => {
            setPrinting(false);
          }}
        />
      )}
      {designing && (
        <DesignDialog
          session={session}
          onClose={() => {
            setDesigning(false);
          }}
        />
      )}
      <Menu>
        <MenuTrigger disableButtonEnhancement>
          <Button className={styles.button} appearance="subtle" disabled={busy || samples.length === 0}>
            Samples
          </Button>
        </MenuTrigger>
        <MenuPopover>
          <MenuList>
            <MenuItem
              onClick={() => {
                setDesigning(true);
              }}
            >
              A design sheet of your own sections…
            </MenuItem>
            {samples.map((name) => (
              <MenuItem key={name} onClick={() => void session.openSample(name)}>
                {sampleTitle(name)}
              </MenuItem>
            ))}
          </MenuList>
        </MenuPopover>
      </Menu>
      {leftBehind.length > 0 && <LeftBehind session={session} state={state} />}
      <div
        className={styles.file}
        role="status"
        title={inBrowser ? 'Kept in this browser' : 'Being kept in this browser'}
      >
        {opening === null ? (
          <>
            <Text weight="semibold">{fileName}</Text>
            <Text className={styles.state}>{unsaved ? ' – not saved to a file' : ''}</Text>
          </>
        ) : (
          <Text className={styles.state}>Opening {opening}…</Text>
        )}
      </div>
      <ToggleButton
        className={mergeClasses(styles.button, styles.panel)}
        appearance="subtle"
        checked={panelOpen}
        onClick={() => {
          onPanel(!panelOpen);
        }}
      >
        Functions
      </ToggleButton>
    </header>
  );
}

function LeftBehind({ session, state: { leftBehind } }: Pick<Props, 'session' | 'state'>) {
  const styles = useStyles();
  return (
    <Menu>
      <MenuTrigger disableButtonEnhancement>
        <Button className={styles.button} appearance="subtle">
          Unsaved work
        </Button>
      </MenuTrigger>
      <MenuPopover>
        <MenuList>
          {leftBehind.map(({ id, fileName, keptAt }) => (
            <MenuItem
              key={id}
              secondaryContent={new Date(keptAt).toLocaleString()}
              onClick={() => void session.openLeftBehind(id)}
            >
              {fileName}
            </MenuItem>
          ))}
          <MenuDivider />
          {leftBehind.map(({ id, fileName }) => (
            <MenuItem key={id} onClick={() => void session.discardLeftBehind(id)}>
              Discard {fileName}
            </MenuItem>
          ))}
        </MenuList>
      </MenuPopover>
    </Menu>
  );
}
