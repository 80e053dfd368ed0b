import { Link, makeStyles, SearchBox, Text, tokens } from '@fluentui/react-components';
import { useMemo } from 'react';

import { GUIDE, HELP_LIST } from '../call/helpPage';
import { families, functionSearch } from '../call/search';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { useArrowKeys } from './useArrowKeys';

const useStyles = makeStyles({
  search: { margin: '12px 16px 8px', maxWidth: 'none' },
  list: { flexGrow: 1, minHeight: 0, overflowY: 'auto', padding: '0 8px 12px' },
  family: {
    margin: '8px 8px 2px',
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightSemibold,
    letterSpacing: '0.04em',
  },
  question: {
    margin: '0 8px 2px',
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
  },
  entry: {
    display: 'block',
    width: '100%',
    padding: '6px 8px',
    border: 'none',
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: 'transparent',
    color: 'inherit',
    font: 'inherit',
    textAlign: 'left',
    cursor: 'pointer',
    ':hover': { backgroundColor: tokens.colorNeutralBackground1Hover },
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: '-2px' },
  },
  name: { display: 'block', fontWeight: tokens.fontWeightSemibold },
  summary: {
    display: 'block',
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  none: { padding: '8px' },
  guide: { display: 'flex', columnGap: '16px', flexWrap: 'wrap', padding: '6px 16px' },
});

interface Props {
  readonly functions: readonly WorksheetFunction[];
  readonly search: string;
  readonly onSearch: (text: string) => void;
  readonly onChoose: (fn: WorksheetFunction) => void;
  /** The keyboard goes to the search, and it is said what the function is chosen for. */
  readonly forForm: boolean;
}

/** Every function by family; with a search, the ones it means, best first. */
export function FunctionList({ functions, search, onSearch, onChoose, forForm }: Props) {
  const styles = useStyles();
  const find = useMemo(() => functionSearch(functions), [functions]);
  const found = find(search);
  const keys = useArrowKeys(found.length);
  const groups =
    search.trim() === ''
      ? byFamily(found)
      : [{ title: `${found.length} found`, question: '', members: found }];
  return (
    <>
      {forForm && (
        <Text className={styles.none} role="status">
          Choose the function whose form is to stand at the selected cell.
        </Text>
      )}
      <SearchBox
        autoFocus={forForm}
        className={styles.search}
        aria-label="Search the functions"
        placeholder="Search by name or words"
        value={search}
        onChange={(_event, { value }) => {
          onSearch(value);
        }}
      />
      <div className={styles.list} {...keys.list}>
        {found.length === 0 && (
          <Text className={styles.none} as="p" role="status">
            No function speaks of this. Try another word for it, or fewer words.
          </Text>
        )}
        {found.length > 0 &&
          groups.map(({ title, question, members }) => (
            <section key={title} aria-label={title}>
              <h2 className={styles.family}>{title}</h2>
              {question !== '' && <p className={styles.question}>{question}</p>}
              {members.map((fn) => (
                <button
                  key={fn.id}
                  type="button"
                  className={styles.entry}
                  {...keys.entry(found.indexOf(fn))}
                  onClick={() => {
                    onChoose(fn);
                  }}
                >
                  <span className={styles.name}>{fn.id}</span>
                  <span className={styles.summary}>{fn.summary}</span>
                </button>
              ))}
            </section>
          ))}
      </div>
      <nav className={styles.guide} aria-label="Help">
        <Link href={GUIDE} target="_blank" rel="noreferrer">
          Guide: from drawing to first shot
        </Link>
        <Link href={HELP_LIST} target="_blank" rel="noreferrer">
          All help
        </Link>
      </nav>
    </>
  );
}

function byFamily(functions: readonly WorksheetFunction[]) {
  const groups = new Map<string, WorksheetFunction[]>();
  for (const fn of functions) groups.set(fn.family, [...(groups.get(fn.family) ?? []), fn]);
  return [...groups].map(([family, members]) => ({
    title: families[family]?.title ?? family,
    question: families[family]?.question ?? '',
    members,
  }));
}
