import {
  Button,
  Checkbox,
  Field,
  makeStyles,
  Radio,
  RadioGroup,
  Spinner,
  Text,
  tokens,
} from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import { SYSTEMS, type System } from '../core/quantity';
import type { Section } from '../forms/sections/section';
import type { FormOutcome, Place } from './host';
import { WriteButton } from './WriteButton';

const useStyles = makeStyles({
  part: { display: 'flex', flexDirection: 'column', gap: '8px', alignItems: 'flex-start' },
  hint: { color: tokens.colorNeutralForeground2 },
});

interface Props {
  readonly make: (sections: readonly Section[], system: System) => Promise<void>;
  /** Writes them into the sheet in front, where the host can. */
  readonly writeHere?: (
    sections: readonly Section[],
    system: System,
    at: Place | undefined,
  ) => Promise<FormOutcome>;
}

/** A design sheet of the sections that a person chooses, in the order of the job. */
export function DesignSections({ make, writeHere }: Props) {
  const styles = useStyles();
  const [all, setAll] = useState<readonly Section[]>([]);
  const [chosen, choose] = useState<ReadonlySet<string>>(new Set());
  const [system, setSystem] = useState<System>('in');
  const [busy, setBusy] = useState(false);

  useEffect(() => {
    void import('../forms/sections').then(({ sections }) => {
      setAll(sections);
    });
  }, []);

  const wanted = all.filter(({ id }) => chosen.has(id));
  const run = async () => {
    setBusy(true);
    try {
      await make(wanted, system);
    } finally {
      setBusy(false);
    }
  };

  return (
    <div className={styles.part}>
      <Text className={styles.hint}>
        Inputs with units, results, margins and verdicts, and a sheet to hand on. The numbers are an invented
        example.
      </Text>
      <div>
        {all.map(({ id, title, decide }) => (
          <Checkbox
            key={id}
            label={title}
            title={decide}
            checked={chosen.has(id)}
            onChange={(_event, { checked }) => {
              choose(new Set(checked === true ? [...chosen, id] : [...chosen].filter((one) => one !== id)));
            }}
          />
        ))}
      </div>
      <Field label="Units of the sheet">
        <RadioGroup
          layout="horizontal"
          value={system}
          onChange={(_event, { value }) => {
            setSystem(value as System);
          }}
        >
          {SYSTEMS.map((one) => (
            <Radio key={one} value={one} label={one} />
          ))}
        </RadioGroup>
      </Field>
      {busy ? (
        <Spinner size="small" label="Making the design sheet" />
      ) : (
        <Button disabled={chosen.size === 0} onClick={() => void run()}>
          Make the design sheet
        </Button>
      )}
      {writeHere && !busy && (
        <WriteButton
          what="design sheet"
          disabled={chosen.size === 0}
          write={(at) => writeHere(wanted, system, at)}
        />
      )}
    </div>
  );
}
