import {
  Button,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  tokens,
} from '@fluentui/react-components';
import { useState } from 'react';
import { WITHOUT_ADD_IN } from '../derive/excelWords';
import { setPanelState } from './panelState';
import { isSeen, rememberSeen } from './remember';

const useStyles = makeStyles({
  says: { margin: '0 0 14px', color: tokens.colorNeutralForeground2 },
  bar: { flexShrink: 0 },
});

/** Said in the Share tab before a copy is made. */
export function SharingWords() {
  const styles = useStyles();
  return (
    <p className={styles.says}>
      {WITHOUT_ADD_IN} They come back when somebody with the add-in clicks <em>Recalculate all</em>. So share
      the native copy beside it, or in its place.
    </p>
  );
}

/** Said once of a workbook that lies where others may have it open. */
export function SharedWorkbookBar() {
  const styles = useStyles();
  const { url } = Office.context.document;
  const key = `shared ${url}`;
  const [isHidden, hide] = useState(() => !/^https?:/i.test(url) || isSeen(key));
  if (isHidden) return null;
  const done = () => {
    rememberSeen(key);
    hide(true);
  };
  return (
    <MessageBar className={styles.bar} intent="warning" layout="multiline">
      <MessageBarBody>This workbook lies where it can be shared. {WITHOUT_ADD_IN}</MessageBarBody>
      <MessageBarActions>
        <Button
          size="small"
          onClick={() => {
            done();
            setPanelState({ page: 'share', notice: undefined });
          }}
        >
          Make a native copy
        </Button>
        <Button size="small" onClick={done}>
          Understood
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}
