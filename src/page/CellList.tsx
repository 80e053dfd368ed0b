import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react';
import { inOwnSign } from '../cells/decimalSign';
import { listIsThere } from './cellListKeys';

interface Choice {
  readonly label: string;
  readonly value: string;
}

/** What the grid hands to the list that it opens at a cell. */
interface Props {
  readonly popup: {
    readonly extraProps: {
      readonly options: readonly Choice[];
      readonly defaultValue: string;
      readonly onChange: (values: readonly string[]) => unknown;
      readonly hideFn: () => void;
    };
  };
}

const shown = (label: string): string => (/^-?\d*\.\d+$/.test(label) ? inOwnSign(label) : label);

/** The choices of a cell, by mouse or keys: letters narrow them, arrows walk, Enter takes one. */
export function CellList({ popup: { extraProps } }: Props) {
  const { options, defaultValue, onChange, hideFn } = extraProps;
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const [sought, setSought] = useState('');
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      options.findIndex(({ value }) => value === defaultValue),
    ),
  );
  const left = options.filter(({ label }) => shown(label).toLowerCase().includes(sought.toLowerCase()));
  const last = left.length - 1;
  const active = Math.min(at, last);
  useEffect(() => {
    list.current?.children[active]?.scrollIntoView({ block: 'nearest' });
  }, [active]);
  useEffect(() => {
    input.current?.focus({ preventScroll: true });
    listIsThere(input.current);
  }, []);
  const take = (choice: Choice | undefined): void => {
    if (choice) onChange([choice.value]);
    hideFn();
  };
  const pressed = (event: KeyboardEvent): void => {
    const moves: Readonly<Record<string, number>> = {
      ArrowDown: Math.min(active + 1, last),
      ArrowUp: Math.max(active - 1, 0),
      PageDown: Math.min(active + 8, last),
      PageUp: Math.max(active - 8, 0),
    };
    const to = moves[event.key];
    if (to !== undefined) setAt(to);
    else if (event.key === 'Enter' || event.key === 'Tab') take(left[active]);
    else if (event.key === 'Escape') hideFn();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="cell-list">
      <input
        ref={input}
        role="combobox"
        aria-label="Choices of the cell"
        aria-expanded="true"
        aria-controls={id}
        aria-autocomplete="list"
        aria-activedescendant={left[active] && `${id}-${active}`}
        placeholder="Type to find"
        value={sought}
        onChange={({ target }) => {
          setSought(target.value);
          setAt(0);
        }}
        onKeyDown={pressed}
      />
      <ul ref={list} id={id} role="listbox" aria-label="Choices">
        {left.map((choice, index) => (
          <li
            key={choice.value}
            id={`${id}-${index}`}
            role="option"
            aria-selected={index === active}
            onPointerDown={(event) => {
              event.preventDefault();
            }}
            onClick={() => {
              take(choice);
            }}
          >
            {shown(choice.label)}
          </li>
        ))}
      </ul>
      {left.length === 0 && <p role="status">None of the choices has that.</p>}
    </div>
  );
}
