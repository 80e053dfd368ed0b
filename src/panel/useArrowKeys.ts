import { useState, type KeyboardEvent } from 'react';

const STEP: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 };

/** Makes a long list of buttons one stop of the Tab key, with arrow keys inside. */
export function useArrowKeys(length: number) {
  const [at, setAt] = useState(0);
  const current = Math.min(at, length - 1);
  return {
    list: {
      onKeyDown: (event: KeyboardEvent<HTMLElement>) => {
        const step = STEP[event.key];
        const target =
          event.key === 'Home'
            ? 0
            : event.key === 'End'
              ? length - 1
              : step === undefined
                ? undefined
                : current + step;
        if (target === undefined) return;
        event.preventDefault();
        const next = Math.max(0, Math.min(length - 1, target));
        setAt(next);
        event.currentTarget.querySelectorAll('button')[next]?.focus();
      },
    },
    entry: (index: number) => ({
      tabIndex: index === current ? 0 : -1,
      onFocus: () => {
        setAt(index);
      },
    }),
  };
}
