import { Button, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import { useSyncExternalStore } from 'react';
import type { Newer } from './offline/newer';
import { READ_ONLY } from './readOnly';
import type { Session, SessionState } from './session';

interface Props {
  readonly session: Session;
  readonly state: SessionState;
  readonly newer: Newer;
}

/** What a person must know of the page itself: that another tab has the workbook, that the page is not the newest. */
export function PageBars({ session, state: { readOnly, busy }, newer }: Props) {
  const { isThere } = useSyncExternalStore(newer.subscribe, () => newer.state);
  return (
    <>
      {readOnly && (
        <Bar says={READ_ONLY} act="Take a copy" busy={busy} onAct={() => void session.takeCopy()} />
      )}
      {isThere && (
        <Bar
          says="A newer version of Moldsheet is there. The workbook stays as it is."
          act="Load it"
          busy={busy}
          onAct={() => {
            newer.take();
          }}
        />
      )}
    </>
  );
}

function Bar({
  says,
  act,
  busy,
  onAct,
}: {
  readonly says: string;
  readonly act: string;
  readonly busy: boolean;
  readonly onAct: () => void;
}) {
  return (
    <MessageBar intent="info" layout="multiline" shape="square">
      <MessageBarBody>{says}</MessageBarBody>
      <MessageBarActions>
        <Button size="small" disabled={busy} onClick={onAct}>
          {act}
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}
