import { Field, Select, type FieldProps } from '@fluentui/react-components';

/** What stands in a record, by its own keys. */
export const entriesOf = <K extends string, V>(record: Readonly<Record<K, V>>): [K, V][] =>
  Object.entries(record) as [K, V][];

/** One of few values, each with its words. */
export function Choice<T extends string | number>({
  value,
  options,
  onChoose,
  ...field
}: Pick<FieldProps, 'label' | 'hint' | 'validationMessage'> & {
  readonly value: T;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly onChoose: (value: T) => void;
}) {
  return (
    <Field {...field}>
      <Select
        value={String(value)}
        onChange={(_, data) => {
          const chosen = options.find(([one]) => String(one) === data.value);
          if (chosen) onChoose(chosen[0]);
        }}
      >
        {options.map(([one, words]) => (
          <option key={one} value={one}>
            {words}
          </option>
        ))}
      </Select>
    </Field>
  );
}
