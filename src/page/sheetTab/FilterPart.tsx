import { Button, Checkbox } from '@fluentui/react-components';
import { useState } from 'react';
import { areaAddress, columnLetters } from '../../cells/address';
import type { PartProps } from './SheetTab';
import { Choice } from './Choice';
import { useFormStyles } from './useForm';

/** Longer lists are not read through. */
const MOST = 100;

export function FilterPart({ desk, selection: { sheet, area } }: PartProps) {
  const styles = useFormStyles();
  const [chosen, setChosen] = useState<number>();
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const present = desk.sheet(sheet)?.filters?.[0];
  const column = chosen !== undefined && chosen >= area.left && chosen <= area.right ? chosen : area.left;
  const columns = Array.from(
    { length: Math.min(area.right - area.left + 1, 100) },
    (_, at) => area.left + at,
  );
  const rows = desk.shownIn(sheet, area, column);
  const texts = [...new Set(rows.map(({ text }) => text))].sort().slice(0, MOST);
  return (
    <div className={styles.form}>
      <span className={styles.says}>
        {present
          ? `A filter works on ${areaAddress(present)}.`
          : 'Select the rows with their heading, then choose what stays to be seen.'}
      </span>
      <Choice
        label="By column"
        value={column}
        options={columns.map((one) => [one, `Column ${columnLetters(one)}`] as const)}
        onChoose={setChosen}
      />
      <div role="group" aria-label="Stays to be seen">
        {texts.map((text) => (
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
      </div>
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabled={area.bottom <= area.top}
          onClick={() => {
            const hidden = rows.filter(({ text }) => left.has(text)).map(({ row }) => row);
            const shows = texts.filter((text) => !left.has(text));
            desk.apply({ do: 'setFilter', sheet, area, column: column - area.left, shows, hidden });
          }}
        >
          Filter
        </Button>
        {present && (
          <Button
            onClick={() => {
              desk.apply({ do: 'clearFilter', sheet });
            }}
          >
            Show all rows
          </Button>
        )}
      </div>
    </div>
  );
}
