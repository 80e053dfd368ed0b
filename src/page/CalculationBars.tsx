import { Button, Link, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import { cellAddress } from '../cells/address';
import type { Session, SessionState } from './session';

/** Cells that are named one by one. */
const NAMED = 5;

/** What a person must know of the calculation: that it takes long, and what it could not calculate. */
export function CalculationBars({
  session,
  state: { calculating, kept },
}: {
  readonly session: Session;
  readonly state: SessionState;
}) {
  return (
    <>
      {calculating && (
        <MessageBar intent="info" layout="singleline" shape="square">
          <MessageBarBody>Calculating…</MessageBarBody>
          <MessageBarActions>
            <Button
              size="small"
              onClick={() => {
                session.stopCalculating();
              }}
            >
              Stop
            </Button>
          </MessageBarActions>
        </MessageBar>
      )}
      {kept.length > 0 && (
        <MessageBar intent="warning" layout="multiline" shape="square">
          <MessageBarBody>
            {kept.length === 1 ? 'One cell shows' : `${kept.length} cells show`} the value that came with the
            file, since the formula cannot be calculated here:{' '}
            {kept.slice(0, NAMED).map((cell, at) => (
              <span key={`${cell.sheet} ${cell.row} ${cell.column}`}>
                {at > 0 && ', '}
                <Link
                  title={cell.reason}
                  onClick={() => {
                    session.select(cell);
                  }}
                >
                  {cell.sheet}!{cellAddress(cell.row, cell.column)}
                </Link>
              </span>
            ))}
            {kept.length > NAMED && ' …'}
          </MessageBarBody>
        </MessageBar>
      )}
    </>
  );
}
