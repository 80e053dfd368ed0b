import {
  Button,
  Link,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
} from '@fluentui/react-components';
import { useSyncExternalStore } from 'react';
import { alarm, checkDeskOf } from './checkDesk';
import type { WorkbookFiles } from './files';

const useStyles = makeStyles({ bar: { flexShrink: 0 } });

/** Says of a file that was opened what to look at before it is saved; nothing where there is nothing. */
export function CheckBar({ files, onShow }: { readonly files: WorkbookFiles; readonly onShow: () => void }) {
  const styles = useStyles();
  const desk = checkDeskOf(files);
  const { fileName, report, dismissed } = useSyncExternalStore(desk.subscribe, () => desk.state);
  const says = report && !dismissed ? alarm(report) : '';
  if (says === '') return null;
  return (
    <MessageBar className={styles.bar} intent="info" layout="singleline" shape="square">
      <MessageBarBody>
        {fileName}: {says}. <Link onClick={onShow}>Show the cells</Link>
      </MessageBarBody>
      <MessageBarActions
        containerAction={
          <Button
            appearance="transparent"
            size="small"
            onClick={() => {
              desk.dismiss();
            }}
          >
            Hide
          </Button>
        }
      />
    </MessageBar>
  );
}
