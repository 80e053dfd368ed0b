import { makeStyles, tokens } from '@fluentui/react-components';
import { useState } from 'react';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { CellCard } from './CellCard';
import { FunctionHelp } from './FunctionHelp';
import { FunctionList } from './FunctionList';
import type { Host } from './host';

const useStyles = makeStyles({
  panel: {
    display: 'flex',
    flexDirection: 'column',
    height: '100%',
    minHeight: 0,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
  },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
}

/** The side panel: what the selected cell says, the functions, and the help of each. */
export function Panel({ host, functions }: Props) {
  const styles = useStyles();
  const [chosen, choose] = useState<WorksheetFunction>();
  const [search, setSearch] = useState('');
  return (
    <div className={styles.panel}>
      <CellCard host={host} functions={functions} onChoose={choose} />
      {chosen ? (
        <FunctionHelp
          fn={chosen}
          onBack={() => {
            choose(undefined);
          }}
          onInsert={(text) => void host.insertFormula(text)}
        />
      ) : (
        <FunctionList functions={functions} search={search} onSearch={setSearch} onChoose={choose} />
      )}
    </div>
  );
}
