/** Buttons beside the tabs of the sheets: how many cells of each are in error or do not hold. */

export interface SheetTrouble {
  readonly sheet: string;
  readonly count: number;
}

/** More sheets than these are counted together. */
const MOST_SHEETS = 3;
const TABS = '[data-u-comp="slide-tab-bar"]';

export class TroubleMarks {
  private readonly element = document.createElement('div');

  constructor(
    private readonly grid: HTMLElement,
    /** Goes to the next such cell of a sheet. */
    private readonly go: (sheet: string) => void,
  ) {
    this.element.className = 'trouble-marks';
    // The grid makes its bar of tabs late, and anew with every workbook.
    new MutationObserver(() => {
      this.attach();
    }).observe(grid, { childList: true, subtree: true });
  }

  show(troubles: readonly SheetTrouble[]): void {
    const shown = troubles.slice(0, MOST_SHEETS).map((one) => this.button(one));
    const rest = troubles.slice(MOST_SHEETS);
    const [next] = rest;
    if (next) {
      const count = rest.reduce((sum, one) => sum + one.count, 0);
      shown.push(this.button({ sheet: next.sheet, count }, `${rest.length} more sheets`));
    }
    this.element.replaceChildren(...shown);
    this.attach();
  }

  private attach(): void {
    if (this.element.isConnected) return;
    this.grid.querySelector(TABS)?.parentElement?.parentElement?.append(this.element);
  }

  private button({ sheet, count }: SheetTrouble, name = sheet): HTMLButtonElement {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = `${name} ✗ ${count}`;
    button.title = `${count === 1 ? 'One cell' : `${count} cells`} of ${name} in error or with a verdict that does not hold: go to the next`;
    button.setAttribute('aria-label', `${button.textContent}: ${button.title}`);
    button.addEventListener('click', () => {
      this.go(sheet);
    });
    return button;
  }
}
