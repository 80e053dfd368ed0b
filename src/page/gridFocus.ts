/**
 * The keyboard belongs to the sheet unless somebody is in a field: after a click on a button it comes back, what is
 * typed on a button goes into the cell, and keys pressed while an act is under way wait for the cells that it leaves.
 */

import { EarlyKeys } from './earlyKeys';

/** Where a person writes or chooses by keys. */
const FIELDS =
  'input, textarea, select, [contenteditable="true"], [role="listbox"], [role="menu"], [role="dialog"], [role="alertdialog"]';

const LEFT = '[role="menu"], [role="dialog"], [role="alertdialog"]';

/** In the grid: the box with the address, and what its menus ask for. */
const GRID_FIELDS = 'input, textarea, select, [role="menu"], [role="dialog"]';

/** Buttons that open something, or that arrow keys go along. */
const OPENERS = '[aria-haspopup], [aria-expanded], [role="tab"], [role="menuitem"], [role="option"]';

/** With Ctrl: what acts on the selected cells. */
const SHEET_KEYS = /^[zyxcvdr]$/i;

export class GridFocus {
  /** The last that a person did was a click; a touch would bring up the keyboard of the screen. */
  private byMouse = false;
  private pressed: EventTarget | null = null;
  private holds = 0;
  private readonly kept: KeyboardEvent[] = [];
  private isReplaying = false;
  private readonly early = new EarlyKeys();
  /** The grid may have another workbook since the last key, whose editor is there a frame later. */
  private isFrameDue = false;

  constructor(
    private readonly grid: HTMLElement,
    /** Puts the focus into the grid's editor. */
    private readonly focusGrid: () => void,
  ) {
    window.addEventListener('pointerdown', this.pointed, true);
    window.addEventListener('keydown', this.heard, true);
    window.addEventListener('click', this.clicked);
    window.addEventListener('focusin', this.focused);
  }

  /** The sheet is on the screen. */
  stand(): void {
    this.early.stand(performance.now());
  }

  /** Keeps keys meant for the sheet until what is given is called; then they go into the grid. */
  hold(): () => void {
    this.holds++;
    let isOver = false;
    return () => {
      if (isOver) return;
      isOver = true;
      this.holds--;
      this.isFrameDue = true;
      if (this.holds === 0) void this.replay();
    };
  }

  /** Forgets the keys that wait; says whether there were any. */
  drop(): boolean {
    return this.kept.splice(0).length > 0;
  }

  /** Unless a person is in a field, or goes through the controls by keys. */
  private giveBack(): void {
    const active = document.activeElement;
    const isNowhere = !active || active === document.body;
    if (isNowhere || (this.byMouse && !this.grid.contains(active) && !active.closest(FIELDS)))
      this.focusGrid();
  }

  private readonly pointed = ({ pointerType, target }: PointerEvent): void => {
    this.byMouse = pointerType !== 'touch';
    this.pressed = target;
  };

  private readonly heard = (event: KeyboardEvent): void => {
    // What this file passes on, and what makes up a letter of several keys.
    if (!event.isTrusted || event.isComposing || /^(Process|Control|Shift|Alt|Meta)$/.test(event.key)) return;
    const target = event.target instanceof HTMLElement ? event.target : document.body;
    const inGrid = this.grid.contains(target);
    const isField = target.closest(inGrid ? GRID_FIELDS : FIELDS) !== null;
    const waits = this.holds > 0 || this.isReplaying;
    const leftByMouse = this.byMouse && waits && !target.closest(OPENERS);
    const isMeant = !isField && (inGrid || leftByMouse || isForSheet(event, target));
    if (!isMeant) {
      this.byMouse = false;
      return;
    }
    if (this.early.has(event.timeStamp)) {
      event.preventDefault();
      event.stopImmediatePropagation();
      return;
    }
    if (!waits && inGrid) return;
    if (waits) this.kept.push(event);
    else {
      this.focusGrid();
      // A letter goes where the focus is by then; the grid's keys ask where they were pressed.
      if (isLetter(event)) return;
      pass(event);
    }
    event.preventDefault();
    event.stopImmediatePropagation();
  };

  private readonly clicked = ({ detail, target }: MouseEvent): void => {
    // By keys a click has no count.
    if (detail === 0 || !(target instanceof Element)) return;
    const button = target.closest('button');
    if (!button || this.grid.contains(button) || button.closest(OPENERS)) return;
    // Who opens a dialog or a field has the focus there by then.
    setTimeout(() => {
      this.giveBack();
    });
  };

  /** A dialog or a menu that was left by a click puts the focus on the button that had opened it. */
  private readonly focused = ({ target, relatedTarget: from }: FocusEvent): void => {
    if (!this.byMouse || !(target instanceof HTMLButtonElement) || this.grid.contains(target)) return;
    // From elsewhere it is a person who came, with a reader of the screen.
    if (from instanceof Element && !from.closest(LEFT)) return;
    if (this.pressed instanceof Node && target.contains(this.pressed)) return;
    queueMicrotask(() => {
      this.giveBack();
    });
  };

  /** One after the other, as they were pressed; what is pressed meanwhile comes behind. */
  private async replay(): Promise<void> {
    if (this.isReplaying) return;
    this.isReplaying = true;
    while (this.holds === 0) {
      if (this.isFrameDue) {
        this.isFrameDue = false;
        this.giveBack();
        // Till then a key would be lost: also one that nobody has pressed yet.
        await new Promise(requestAnimationFrame);
        continue;
      }
      const next = this.kept.shift();
      if (!next) break;
      if (!this.grid.contains(document.activeElement)) this.focusGrid();
      pass(next);
      // The grid ends an entry and moves on behind its own back.
      await new Promise((resolve) => setTimeout(resolve));
    }
    this.isReplaying = false;
  }
}

const isLetter = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  key.length === 1 && !ctrlKey && !metaKey && !altKey;

/** Pressed outside of the grid and of any field. */
function isForSheet(event: KeyboardEvent, target: HTMLElement): boolean {
  const { key, ctrlKey, metaKey } = event;
  if (ctrlKey || metaKey) return SHEET_KEYS.test(key) && window.getSelection()?.isCollapsed !== false;
  if (target === document.body) return /^(Arrow.*|Enter|Page.*|Home|End|Backspace|Delete|F2|F4|.)$/.test(key);
  // The space bar presses a button.
  return key === 'F2' || key === 'Delete' || (isLetter(event) && key !== ' ');
}

/** A key as if it had been pressed in the grid, which goes by the old numbers of keys and hears what is inserted. */
/* eslint-disable @typescript-eslint/no-deprecated -- nothing newer does either */
function pass(pressed: KeyboardEvent): void {
  const { key, code, keyCode, ctrlKey, shiftKey, altKey, metaKey } = pressed;
  const init = { key, code, keyCode, ctrlKey, shiftKey, altKey, metaKey, bubbles: true, cancelable: true };
  const again = new KeyboardEvent('keydown', init);
  const goesOn = document.activeElement?.dispatchEvent(again) ?? true;
  if (goesOn && isLetter(again)) document.execCommand('insertText', false, key);
}
/* eslint-enable @typescript-eslint/no-deprecated */
