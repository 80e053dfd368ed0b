/** Keys pressed between the one that asks for a cell's list and its being there. */
let waiting: KeyboardEvent[] | undefined;
const LONGEST_WAIT = 2_000;

export function waitForList(): void {
  waiting = [];
  setTimeout(() => (waiting = undefined), LONGEST_WAIT);
}

/** Takes a key where a list is waited for. */
export function waitsForList(event: KeyboardEvent): boolean {
  waiting?.push(event);
  return waiting !== undefined;
}

/** A list has the keyboard now. */
export function listIsThere(input: HTMLElement | null): void {
  const keys = waiting ?? [];
  waiting = undefined;
  // Each finds the list as the one before it left it.
  const pass = (): void => {
    const next = keys.shift();
    if (!next || !input?.isConnected) return;
    // Nothing newer types into a field as a person does, so that the field hears of it and can undo it.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    if (next.key.length === 1) document.execCommand('insertText', false, next.key);
    else
      input.dispatchEvent(new KeyboardEvent('keydown', { key: next.key, bubbles: true, cancelable: true }));
    setTimeout(pass);
  };
  setTimeout(pass);
}
