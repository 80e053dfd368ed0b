import { makeStyles, Tab, TabList, tokens } from '@fluentui/react-components';
import { useState, type ReactNode } from 'react';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { CellCard } from './CellCard';
import { FunctionHelp } from './FunctionHelp';
import { FunctionList } from './FunctionList';
import type { Host } from './host';
import { later } from './later';

// Pages that not everybody opens are loaded when they are.
const WorkView = later(async () => (await import('./work/WorkView')).WorkView);
const EquationEditor = later(async () => (await import('./equation/EquationEditor')).EquationEditor);
const WhatIf = later(async () => (await import('./whatif/WhatIf')).WhatIf);

const useStyles = makeStyles({
  panel: {
    display: 'flex',
    flexDirection: 'column',
    height: '100%',
    minHeight: 0,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
  },
  tabs: { flexShrink: 0, flexWrap: 'wrap', borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  page: { display: 'flex', flexDirection: 'column', flexGrow: 1, minHeight: 0 },
});

/** A page of the panel that only one host has. */
export interface MorePage {
  readonly id: string;
  readonly title: string;
  readonly body: ReactNode;
}

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  readonly page: string;
  readonly onPage: (page: string) => void;
  /** How often a form was asked for at the selected cell: the functions are to choose from then. */
  readonly formsAsked?: number;
  /** Stands between the tabs and the page. */
  readonly notice?: ReactNode;
  readonly more?: readonly MorePage[];
}

/** The side panel: the functions with their help, the work of the selected cell, and what its host adds. */
export function Panel({ host, functions, page, onPage, formsAsked = 0, notice, more = [] }: Props) {
  const styles = useStyles();
  const pages: readonly MorePage[] = [
    {
      id: 'functions',
      title: 'Functions',
      body: <Functions key={formsAsked} host={host} functions={functions} forForm={formsAsked > 0} />,
    },
    { id: 'work', title: 'Work', body: <WorkView host={host} functions={functions} /> },
    { id: 'whatif', title: 'What if', body: <WhatIf host={host} /> },
    { id: 'equation', title: 'Equation', body: <EquationEditor host={host} functions={functions} /> },
    ...more,
  ];
  return (
    <div className={styles.panel}>
      <TabList
        className={styles.tabs}
        size="small"
        selectedValue={page}
        onTabSelect={(_event, { value }) => {
          onPage(String(value));
        }}
      >
        {pages.map(({ id, title }) => (
          <Tab key={id} value={id}>
            {title}
          </Tab>
        ))}
      </TabList>
      {notice}
      <div className={styles.page}>{pages.find(({ id }) => id === page)?.body}</div>
    </div>
  );
}

/** What the selected cell says, the functions, and the help of each. */
function Functions({
  host,
  functions,
  forForm,
}: Pick<Props, 'host' | 'functions'> & {
  /** A form is to be written: its function is what is looked for. */
  readonly forForm: boolean;
}) {
  const [chosen, choose] = useState<WorksheetFunction>();
  const [search, setSearch] = useState('');
  return (
    <>
      <CellCard host={host} functions={functions} onChoose={choose} />
      {chosen ? (
        <FunctionHelp
          host={host}
          fn={chosen}
          forForm={forForm}
          onBack={() => {
            choose(undefined);
          }}
          onInsert={(text) => void host.insertFormula(text)}
        />
      ) : (
        <FunctionList
          functions={functions}
          search={search}
          onSearch={setSearch}
          onChoose={choose}
          forForm={forForm}
        />
      )}
    </>
  );
}
