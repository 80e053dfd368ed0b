import { useEffect } from 'react';

/**
 * Keys with Ctrl (or the command key) that the page answers itself, wherever the focus is; the letter decides. Before the
 * workbook stands they do nothing, and the browser does not answer them in its own way.
 */
export function useKeys(keys: Readonly<Record<string, () => void>>, stands: boolean): void {
  useEffect(() => {
    const heard = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey) return;
      const act = keys[event.key.toLowerCase()];
      const isTyping = (event.target as Partial<HTMLElement> | null)?.tagName === 'INPUT';
      // In a field of the panel these keys move the cursor.
      if (!act || (isTyping && /^(home|end)$/i.test(event.key))) return;
      event.preventDefault();
      event.stopPropagation();
      if (stands) act();
    };
    window.addEventListener('keydown', heard, true);
    return () => {
      window.removeEventListener('keydown', heard, true);
    };
  }, [keys, stands]);
}
