import {
  Accordion,
  AccordionHeader,
  AccordionItem,
  AccordionPanel,
  makeStyles,
  Text,
  tokens,
} from '@fluentui/react-components';
import { useSyncExternalStore, type ReactNode } from 'react';
import { areaAddress } from '../../cells/address';
import { ColorsPart } from './ColorsPart';
import type { SheetDesk } from './desk';
import { EntryPart } from './EntryPart';
import { FilterPart } from './FilterPart';
import { FindPart } from './FindPart';
import { FormatPart } from './FormatPart';
import { NamesPart } from './NamesPart';
import { NotePart } from './NotePart';
import type { PartProps } from './part';
import { SortPart } from './SortPart';

const useStyles = makeStyles({
  tab: { overflowY: 'auto', padding: '10px 16px', minHeight: 0 },
  where: { color: tokens.colorNeutralForeground2 },
});

const PARTS: readonly (readonly [id: string, title: string, part: (props: PartProps) => ReactNode])[] = [
  ['find', 'Find and replace', FindPart],
  ['format', 'Number format', FormatPart],
  ['entry', 'List and bounds', EntryPart],
  ['colors', 'Colors by value', ColorsPart],
  ['note', 'Note', NotePart],
  ['names', 'Names', NamesPart],
  ['sort', 'Sort, turn, freeze', SortPart],
  ['filter', 'Filter', FilterPart],
];

interface Props {
  readonly desk: SheetDesk;
  readonly open: string;
  /** How often a part was asked for by a key or an arrow. */
  readonly asked: number;
  readonly onOpen: (part: string) => void;
}

/** What can be set of the selected cells and their sheet, in plain words. */
export function SheetTab({ desk, open, asked, onOpen }: Props) {
  const styles = useStyles();
  const selection = useSyncExternalStore(desk.subscribe, desk.selection);
  const workbook = useSyncExternalStore(desk.subscribe, desk.workbook);
  if (!selection || !workbook.sheets.some(({ name }) => name === selection.sheet)) return null;
  const where = `${selection.sheet}!${areaAddress(selection.area)}`;
  return (
    <div className={styles.tab}>
      <Text className={styles.where}>Selected: {where}</Text>
      <Accordion
        collapsible
        openItems={[open]}
        onToggle={(_, { value }) => {
          onOpen(value === open ? '' : String(value));
        }}
      >
        {PARTS.map(([id, title, Part]) => (
          <AccordionItem key={id} value={id}>
            <AccordionHeader as="h2">{title}</AccordionHeader>
            <AccordionPanel>
              {open === id && <Part key={asked} desk={desk} selection={selection} />}
            </AccordionPanel>
          </AccordionItem>
        ))}
      </Accordion>
    </div>
  );
}
