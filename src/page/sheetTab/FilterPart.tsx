import { Button, Checkbox } from '@fluentui/react-components';
import { useEffect, useRef, useState } from 'react';
import { areaAddress, columnLetters, type Area } from '../../cells/address';
import type { OwnFilter } from '../filterArrows';
import type { SheetDesk } from './desk';
import type { PartProps } from './part';
import { Choice } from './Choice';
import { useFormStyles } from './useForm';

/** Longer lists are not read through. */
const MOST = 500;

export function FilterPart({ desk, selection: { sheet, area: selected } }: PartProps) {
  const styles = useFormStyles();
  const [chosen, setChosen] = useState<number>();
  const part = useRef<HTMLDivElement>(null);
  // Once, when it is asked for: whoever goes on in the sheet meanwhile keeps the keys.
  useEffect(() => {
    part.current?.querySelector<HTMLElement>('[role="group"] input')?.focus();
  }, []);
  const { present, area, table } = desk.filterFor(sheet, selected);
  const column = chosen !== undefined && chosen >= area.left && chosen <= area.right ? chosen : selected.left;
  const columns = Array.from(
    { length: Math.min(area.right - area.left + 1, 100) },
    (_, at) => area.left + at,
  );
  const where = `${sheet}!${areaAddress(area)}`;
  return (
    <div ref={part} className={styles.form}>
      <span className={styles.says}>
        {present
          ? `A filter works on ${areaAddress(present.area)}: its headings have arrows (Alt+Down opens them).`
          : 'Select the rows with their heading, then choose what stays to be seen.'}
      </span>
      <Choice
        label="By column"
        value={column}
        options={columns.map((one) => [one, `Column ${columnLetters(one)}`] as const)}
        onChoose={setChosen}
      />
      <Values
        key={`${where} ${column}`}
        desk={desk}
        sheet={sheet}
        table={table}
        present={present}
        area={area}
        column={column}
      />
      {present && (
        <div className={styles.row}>
          <Button
            onClick={() => {
              desk.apply({
                do: 'clearFilter',
                sheet,
                ...(present.table !== undefined && { table: present.table }),
              });
            }}
          >
            Show all rows
          </Button>
        </div>
      )}
    </div>
  );
}

interface ValuesProps {
  readonly desk: SheetDesk;
  readonly sheet: string;
  readonly table: string | undefined;
  readonly present: OwnFilter | undefined;
  readonly area: Area;
  readonly column: number;
}

/** What the cells of a column show, each text once, to be kept or left out. */
function Values({ desk, sheet, table, present, area, column }: ValuesProps) {
  const styles = useFormStyles();
  const at = column - area.left;
  const isPresent = present && areaAddress(present.area) === areaAddress(area);
  const criterion = isPresent ? present.columns.find((one) => one.column === at) : undefined;
  const texts = [...new Set(desk.shownIn(sheet, area, column).map(({ text }) => text))].sort((a, b) =>
    a.localeCompare(b, 'en', { numeric: true }),
  );
  const [left, setLeft] = useState<ReadonlySet<string>>(
    () => new Set(criterion?.shows && texts.filter((text) => !criterion.shows?.includes(text))),
  );
  const all = left.size === 0 ? true : texts.every((text) => left.has(text)) ? false : 'mixed';
  return (
    <>
      {criterion && !criterion.shows && (
        <span className={styles.says}>This column is filtered in a way that cannot be changed here.</span>
      )}
      <div role="group" aria-label="Stays to be seen">
        <Checkbox
          label="(all)"
          checked={all}
          onChange={() => {
            setLeft(all === true ? new Set(texts) : new Set());
          }}
        />
        {texts.slice(0, MOST).map((text) => (
          <div key={text}>
            <Checkbox
              label={text === '' ? '(blank)' : text}
              checked={!left.has(text)}
              onChange={() => {
                const next = new Set(left);
                if (!next.delete(text)) next.add(text);
                setLeft(next);
              }}
            />
          </div>
        ))}
        {texts.length > MOST && (
          <span className={styles.says}>… and {texts.length - MOST} more, as (all) has them.</span>
        )}
      </div>
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabled={area.bottom <= area.top}
          onClick={() => {
            const shows = left.size === 0 ? null : texts.filter((text) => !left.has(text));
            desk.setFilter(sheet, table, area, at, shows);
          }}
        >
          Filter
        </Button>
      </div>
    </>
  );
}
