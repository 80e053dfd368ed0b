import { Button, Field, Textarea } from '@fluentui/react-components';
import { useState } from 'react';
import type { PartProps } from './part';
import { useFormStyles } from './useForm';

export function NotePart({ desk, selection }: PartProps) {
  const { sheet, area } = selection;
  const { top: row, left: column } = area;
  const present =
    desk.sheet(sheet)?.notes.find((one) => one.row === row && one.column === column)?.text ?? '';
  return (
    <NoteForm
      key={`${sheet} ${row} ${column} ${present}`}
      desk={desk}
      selection={selection}
      present={present}
    />
  );
}

function NoteForm({ desk, selection: { sheet, area }, present }: PartProps & { readonly present: string }) {
  const styles = useFormStyles();
  const [text, setText] = useState(present);
  const set = (to: string | null) => {
    desk.apply({ do: 'setNote', sheet, row: area.top, column: area.left, text: to });
  };
  return (
    <div className={styles.form}>
      <Field label="Note on the first selected cell">
        <Textarea
          resize="vertical"
          value={text}
          onChange={(_, { value }) => {
            setText(value);
          }}
        />
      </Field>
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabled={text.trim() === '' || text === present}
          onClick={() => {
            set(text);
          }}
        >
          Keep the note
        </Button>
        {present !== '' && (
          <Button
            onClick={() => {
              set(null);
            }}
          >
            Take it away
          </Button>
        )}
      </div>
    </div>
  );
}
