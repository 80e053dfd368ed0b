/** What a person sees of the page and does with it: sheets, the chosen cell, its entry and its work. */
import { cellAddress } from '../cells/address';
import { decimalSign } from '../cells/decimalSign';
import { CellError } from '../cells/value';
import { DEFERS } from '../derive/help';
import { chooseDecimalSign } from '../panel/decimalSign';
import { escapeHtml } from '../render/html';
import { printHtml } from '../render/printPage';
import type { CellPlace } from '../sheet/book';
import { pageTable, shownSheets } from '../share/onePage';
import { headingOf } from '../whatif/heading';
import type { Desk } from './desk';
import { valueWords, workHtml } from '../work/workHtml';

const named = (id: string): HTMLElement => {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the part "${id}" of the page is missing`);
  return element;
};

const { file = '', date = '' } = document.body.dataset;

/** Changed inputs that are named above the sheet. */
const FEW = 4;

export class View {
  private readonly sheets: readonly number[];
  private sheet: number;
  private chosen: CellPlace | undefined;
  /** What was said of the last entry. */
  private answer = '';

  constructor(private readonly desk: Desk) {
    const { workbook } = desk;
    this.sheets = shownSheets(workbook).map((one) => workbook.sheets.indexOf(one));
    this.sheet = this.sheets.includes(workbook.activeSheet) ? workbook.activeSheet : (this.sheets[0] ?? 0);
  }

  show(): void {
    document.body.classList.add('live');
    const print = named('print');
    print.hidden = false;
    print.addEventListener('click', () => {
      window.print();
    });
    window.addEventListener('beforeprint', () => {
      this.layOutPaper();
    });
    window.addEventListener('afterprint', () => {
      named('paper').replaceChildren();
    });
    const sheets = named('sheets');
    sheets.addEventListener('click', ({ target }) => {
      const place = this.placeOf(target);
      if (place) void this.choose(place);
    });
    sheets.addEventListener('keydown', (event) => {
      const place = this.placeOf(event.target);
      if (!place || (event.key !== 'Enter' && event.key !== ' ')) return;
      event.preventDefault();
      void this.choose(place);
    });
    document.addEventListener('keydown', ({ key }) => {
      if (key === 'Escape') this.leave();
    });
    this.offerSign();
    this.tabs();
    this.front(this.sheet);
  }

  /** The other decimal sign than the one on show. */
  private offerSign(): void {
    const button = named('sign');
    const tell = (): void => {
      button.textContent = decimalSign() === '.' ? 'Show 0,5 for 0.5' : 'Show 0.5 for 0,5';
    };
    button.hidden = false;
    tell();
    button.addEventListener('click', () => {
      chooseDecimalSign(decimalSign() === '.' ? ',' : '.');
      tell();
      this.draw();
      void this.tellCell(false);
    });
  }

  private tabs(): void {
    const tabs = this.sheets.map((index) => {
      const tab = document.createElement('button');
      tab.type = 'button';
      tab.textContent = this.desk.sheet(index).name;
      tab.addEventListener('click', () => {
        this.leave();
        this.front(index);
      });
      return tab;
    });
    named('tabs').replaceChildren(...tabs);
  }

  private front(index: number): void {
    this.sheet = index;
    named('tabs')
      .querySelectorAll('button')
      .forEach((tab, i) => {
        tab.setAttribute('aria-pressed', String(this.sheets[i] === index));
      });
    for (const section of this.sections())
      section.classList.toggle('front', section.dataset['sheet'] === String(index));
    this.draw();
  }

  private sections(): HTMLElement[] {
    return [...named('sheets').querySelectorAll<HTMLElement>('section')];
  }

  /** The sheet in front as it is now. */
  private draw(): void {
    const { desk, sheet: index } = this;
    const front = this.sections().find(({ dataset }) => dataset['sheet'] === String(index));
    const table = front?.querySelector('.table');
    const kept = new Set(desk.kept().map(({ sheet, row, column }) => `${sheet} ${row} ${column}`));
    if (table)
      table.innerHTML = pageTable(desk.workbook, desk.sheet(index), {
        value: (_, row, column) => desk.value({ sheet: index, row, column }),
        overlays: desk.overlays,
        look: desk.look,
        decimalComma: decimalSign() === ',',
        attributes: (row, column) => {
          const place = { sheet: index, row, column };
          const marks = [
            desk.inputs.has(place) && 'data-entry tabindex="0"',
            kept.has(`${index} ${row} ${column}`) && 'data-kept',
          ];
          return [`data-cell="${row} ${column}"`, ...marks.filter(Boolean)].join(' ');
        },
      });
    this.markChosen();
    this.tellState();
  }

  private markChosen(): void {
    const { chosen } = this;
    for (const one of named('sheets').querySelectorAll('.chosen')) one.classList.remove('chosen');
    if (chosen) this.cellElement(chosen)?.classList.add('chosen');
  }

  private cellElement({ sheet, row, column }: CellPlace): HTMLElement | null {
    return named('sheets').querySelector(`[data-sheet="${sheet}"] [data-cell="${row} ${column}"]`);
  }

  private tellState(): void {
    const { desk } = this;
    const { changed, inputs } = desk;
    const state = named('state');
    const kept = desk.kept();
    const first = kept[0];
    const lines = [
      changed.length === 0
        ? `Calculated here, with the inputs of the workbook. ${inputs.marked ? 'The cells with a dotted edge' : 'The workbook marks no inputs: its numbers that formulas read, with a dotted edge,'} can be changed.`
        : `Changed here and not saved: ${this.changesText(FEW)}.`,
      first
        ? `${kept.length === 1 ? 'One cell cannot' : `${kept.length} cells cannot`} be calculated here and ${kept.length === 1 ? 'keeps' : 'keep'} the value of the file, whatever the inputs are (struck through): ${this.cellName(first)}: ${first.reason}`
        : '',
    ];
    state.textContent = lines.filter(Boolean).join(' ');
    state.classList.toggle('changed', changed.length > 0);
    if (changed.length === 0) return;
    const back = document.createElement('button');
    back.type = 'button';
    back.textContent = 'Put the workbook’s inputs back';
    back.addEventListener('click', () => {
      desk.putBack();
      this.leave();
      this.draw();
    });
    state.append(' ', back);
  }

  private changesText(most = Infinity): string {
    const { changed } = this.desk;
    const texts = changed
      .slice(0, most)
      .map(({ was, is, ...place }) => `${this.cellName(place)} ${valueWords(was)} → ${valueWords(is)}`);
    return [...texts, ...(changed.length > most ? [`${changed.length - most} more`] : [])].join(', ');
  }

  private cellName({ sheet, row, column }: CellPlace): string {
    const address = cellAddress(row, column);
    return this.sheets.length === 1 ? address : `${this.desk.sheet(sheet).name}!${address}`;
  }

  private placeOf(target: EventTarget | null): CellPlace | undefined {
    const cell = target instanceof Element ? target.closest<HTMLElement>('[data-cell]') : null;
    const [row, column] = cell?.dataset['cell']?.split(' ').map(Number) ?? [];
    return row === undefined || column === undefined ? undefined : { sheet: this.sheet, row, column };
  }

  private leave(): void {
    const { chosen } = this;
    this.chosen = undefined;
    this.opens(false);
    this.markChosen();
    if (chosen) this.cellElement(chosen)?.focus();
  }

  private opens(is: boolean): void {
    named('cell').hidden = !is;
    document.body.classList.toggle('choosing', is);
  }

  private async choose(place: CellPlace): Promise<void> {
    this.chosen = place;
    this.answer = '';
    this.markChosen();
    await this.tellCell(true);
  }

  /** The panel of the chosen cell: its name and value, its entry where it is an input, how its number came about. */
  private async tellCell(isNew: boolean): Promise<void> {
    const { desk, chosen } = this;
    if (!chosen) return;
    const { sheet, row, column } = chosen;
    const { name, notes } = desk.sheet(sheet);
    const [{ label, unit }, work] = await Promise.all([
      headingOf(
        { read: desk.read, write: () => Promise.resolve(), recalculate: () => Promise.resolve() },
        { sheet: name, row, column },
      ),
      workHtml(desk, chosen),
    ]);
    // Another cell may have been chosen meanwhile.
    if (this.chosen !== chosen) return;
    const value = desk.value(chosen);
    const note = notes.find((one) => one.row === row && one.column === column)?.text;
    const error = value instanceof CellError ? valueWords(value) : undefined;
    const panel = named('cell');
    const wasScrolled = panel.scrollTop;
    this.opens(true);
    panel.innerHTML = [
      `<div class="head"><h2>${escapeHtml(this.cellName(chosen))}</h2><button id="close" type="button" aria-label="Close">✕</button></div>`,
      `<p class="label">${escapeHtml(label)}</p>`,
      desk.inputs.has(chosen)
        ? '<form id="entry"></form>'
        : `<p class="value">${escapeHtml(this.shownText(chosen))} ${escapeHtml(typeof value === 'number' ? unit : '')}</p>`,
      `<p id="answer" role="alert">${escapeHtml(this.answer)}</p>`,
      error === undefined || work.includes(escapeHtml(error))
        ? ''
        : `<p class="refusal">${escapeHtml(error)}</p>`,
      note === undefined ? '' : `<p class="note">${escapeHtml(note)}</p>`,
      work === ''
        ? ''
        : `<section aria-label="Work">${work}</section><p class="small">${escapeHtml(DEFERS)}</p>`,
    ].join('');
    named('close').addEventListener('click', () => {
      this.leave();
    });
    if (desk.inputs.has(chosen)) this.entry(chosen, unit, isNew);
    panel.scrollTop = isNew ? 0 : wasScrolled;
    if (isNew) this.cellElement(chosen)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  private shownText(place: CellPlace): string {
    return this.cellElement(place)?.textContent ?? '';
  }

  private entry(place: CellPlace, unit: string, isNew: boolean): void {
    const { desk } = this;
    const value = desk.value(place);
    const choices = desk.choices(place);
    const rule = desk.rule(place);
    const bounds = desk.bounds(place);
    const hints = [rule?.prompt?.text, bounds === undefined ? undefined : `Takes ${bounds}.`];
    const form = named('entry') as HTMLFormElement;
    const field = choices ? document.createElement('select') : document.createElement('input');
    field.id = 'value';
    if (field instanceof HTMLSelectElement) {
      const texts = choices?.map(valueWords) ?? [];
      const present = valueWords(value);
      for (const one of texts.includes(present) ? texts : [present, ...texts])
        field.add(new Option(one, one, false, one === present));
      if (rule?.allowBlank === true && value !== null) field.add(new Option('(blank)', ''));
    } else {
      field.type = 'text';
      field.autocomplete = 'off';
      field.value = value === null ? '' : valueWords(value);
    }
    const label = document.createElement('label');
    label.htmlFor = field.id;
    label.textContent = unit === '' ? 'Value' : `Value in ${unit}`;
    const apply = document.createElement('button');
    apply.textContent = 'Put in';
    const hint = document.createElement('p');
    hint.className = 'small';
    hint.textContent = hints.filter(Boolean).join(' ');
    form.replaceChildren(label, field, ...(choices ? [] : [apply]), hint);
    const enter = (): void => {
      this.answer = desk.enter(place, field.value)?.text ?? '';
      this.draw();
      void this.tellCell(false);
    };
    if (choices) field.addEventListener('change', enter);
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      enter();
    });
    field.focus({ preventScroll: true });
    if (isNew && field instanceof HTMLInputElement) field.select();
  }

  /** Every sheet for the printer, with what was changed here on a page behind them. */
  private layOutPaper(): void {
    const { desk } = this;
    const { changed } = desk;
    const html = printHtml(desk.workbook, {
      file: changed.length === 0 ? file : `${file}, inputs changed`,
      date,
      value: (sheet, row, column) => desk.value({ sheet: desk.workbook.sheets.indexOf(sheet), row, column }),
      overlays: desk.overlays,
      look: desk.look,
      decimalComma: decimalSign() === ',',
      ...(changed.length > 0 && {
        work: [
          `<h2>Inputs changed since the workbook of ${escapeHtml(date)}</h2><p>${escapeHtml(this.changesText())}</p>`,
        ],
      }),
    });
    const page = new DOMParser().parseFromString(html, 'text/html');
    named('paper').replaceChildren(...page.head.querySelectorAll('style'), ...page.body.childNodes);
  }
}
