/** Gives the grid's own controls the names and roles that a screen reader needs; the grid leaves them out. */

/** By the name of the icon. */
const ICONS: Readonly<Record<string, string>> = {
  undo: 'Undo',
  redo: 'Redo',
  brush: 'Copy the format',
  'clear-format-double': 'Clear',
  'font-size-increase': 'Larger letters',
  'font-size-reduce': 'Smaller letters',
  bold: 'Bold',
  italic: 'Italic',
  underline: 'Underline',
  strikethrough: 'Strike through',
  percent: 'Percent',
  dollar: 'Currency',
  'add-digits': 'More decimals',
  'reduce-digits': 'Fewer decimals',
  protect: 'Protect cells',
  shortcut: 'Keys',
  close: 'Close',
  convert: 'All sheets',
  'hide-gridlines-double': 'Gridlines',
  reduce: 'Smaller',
  increase: 'Larger',
};

const INPUTS: readonly (readonly [selector: string, name: string])[] = [
  ['[data-u-comp="defined-name"] input', 'Cell or name'],
  ['[data-u-command="sheet.command.set-range-font-family"] input', 'Font'],
  ['[data-u-command="sheet.command.set-range-fontsize"] input', 'Size of letters'],
];

const hasName = (element: Element): boolean =>
  element.hasAttribute('aria-label') || element.textContent.trim() !== '';

/** `univerjs-icon-font-size-increase-icon` → `font-size-increase`. */
const iconOf = (element: Element): string =>
  /univerjs-icon-([\w-]+?)-icon/.exec(element.querySelector('svg')?.getAttribute('class') ?? '')?.[1] ?? '';

/** `sheet.command.set-range-text-color` → `Text color`, for what has no name of ours. */
function wordsOf(element: Element): string {
  const command = element.closest('[data-u-command]')?.getAttribute('data-u-command') ?? '';
  const words = command
    .split('.')
    .slice(2)
    .join(' ')
    .replace(/^set-range-|^set-|-command$/g, '')
    .replaceAll('-', ' ');
  return words === '' ? 'More' : words.charAt(0).toUpperCase() + words.slice(1);
}

function nameIn(grid: Element): void {
  for (const [selector, name] of INPUTS)
    for (const input of grid.querySelectorAll(selector)) input.setAttribute('aria-label', name);
  for (const input of grid.querySelectorAll('input:not([aria-label])'))
    input.setAttribute('aria-label', wordsOf(input));
  for (const button of grid.querySelectorAll('button, a[role="button"]')) {
    if (hasName(button)) continue;
    const isAdding = button.getAttribute('data-u-comp') === 'sheet-bar-append-button';
    const icon = iconOf(button);
    const name = isAdding && icon === 'increase' ? 'Add a sheet' : ICONS[icon];
    button.setAttribute('aria-label', name ?? wordsOf(button));
  }
  for (const trigger of grid.querySelectorAll(':is(div, a)[aria-haspopup]:not([role])')) {
    trigger.setAttribute('role', trigger.querySelector('button, input') ? 'combobox' : 'button');
    if (!hasName(trigger)) trigger.setAttribute('aria-label', `${wordsOf(trigger)}: choose`);
  }
  for (const track of grid.querySelectorAll('[role="track"]')) track.setAttribute('role', 'presentation');
  for (const handle of grid.querySelectorAll('[role="handle"]')) {
    handle.removeAttribute('role');
    handle.setAttribute('aria-label', 'Zoom');
  }
  for (const canvas of grid.querySelectorAll('canvas[tabindex="1"]')) canvas.setAttribute('tabindex', '0');
}

/** Also what the grid draws later. */
export function nameControls(grid: Element): void {
  let isDue = false;
  new MutationObserver(() => {
    if (isDue) return;
    isDue = true;
    requestAnimationFrame(() => {
      isDue = false;
      nameIn(grid);
    });
  }).observe(grid, { childList: true, subtree: true });
}
