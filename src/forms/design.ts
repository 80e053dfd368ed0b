/** A design sheet made of sections. */
import { argumentNamed, findDefinition } from '../call/findDefinition';
import { inputsOf } from '../core/define';
import type { Kind, System } from '../core/quantity';
import { DEFERS } from '../derive/help';
import { wordsOf } from '../derive/words';
import { entryRow, quantityOf } from './entries';
import type { Ground } from './ground';
import { numberStyle, STYLES, valueFormat } from './looks';
import { cellName, label } from './names';
import { whereItFits } from './fits';
import type { FormPlan, Place } from './plan';
import { withFreeNames } from './renamed';
import { checkRow, knowsStrength, marginRow, resultRows } from './results';
import { absolute, Rows, type HeadText } from './rows';
import { overallFormula, verdictFormula } from './scale';
import type { Part, Section, SectionInput, Shots, Table, Use, Verdict, Worked } from './sections/section';
import { heldIn, logNames, logRows, NO_SHOTS, SHOTS_NOTE, soughtIn, takenRow, withItsLogs } from './shotLog';
import { roundedIn } from './units';

/** Rows of the sheet that stay in view. */
export const FROZEN_ROWS = 5;

/** A line of the sheet to hand on. */
export interface HandedOn {
  readonly section: string;
  readonly label: string;
  /** Addresses on the design sheet; a verdict has no unit. */
  readonly value: string;
  readonly unit?: string;
  readonly kind: Kind | 'text' | 'verdict';
}

export interface DesignPlan {
  readonly title: string;
  readonly plan: FormPlan;
  readonly lines: readonly HandedOn[];
}

export interface DesignWish {
  readonly sections: readonly Section[];
  /** Of the units cell that the design brings where the sheet has none. */
  readonly system: System;
  readonly title?: string;
  /** Logs begin with invented shots, for a sheet to learn from; else empty, and nothing rests on them. */
  readonly exampleShots?: boolean;
}

const TITLE = 'Design sheet';

interface Summed {
  readonly label: string;
  readonly section: string;
  readonly cell: string;
}

/** Title, cautions, verdicts of the whole, then section by section inputs and results. */
export function planDesign(
  { sections: wanted, system, title = TITLE, exampleShots = false }: DesignWish,
  ground: Ground,
  at: Place = { row: 0, column: 0 },
): DesignPlan {
  const { sections, fed } = withItsLogs(wanted);
  // Formulas of sections are written with the names that they have in a workbook of their own.
  const free: Ground = { ...ground, isTaken: () => false };
  const make = (known?: readonly Summed[]) =>
    new DesignMaker(title, sections, fed, exampleShots, new Rows(free, at, system), known).make();
  // The verdicts stand above what they sum up, so their cells are known once all is laid out.
  const { plan, lines } = make(make().sums);
  const { units } = ground;
  const joined = new Map(units && [['units', units.name ?? absolute(units.row, units.column)]]);
  return { plan: withFreeNames(whereItFits(plan, ground, 'design sheet'), ground, joined), lines, title };
}

class DesignMaker {
  private readonly sums: Summed[] = [];
  private readonly lines: HandedOn[] = [];
  /** What stands for a key in formulas. */
  private readonly texts = new Map<string, string>();
  /** How many errors the table above has. */
  private errors = '0';

  constructor(
    private readonly title: string,
    private readonly sections: readonly Section[],
    /** The keys whose value shots may give. */
    private readonly fed: ReadonlyMap<string, Shots>,
    private readonly exampleShots: boolean,
    private readonly rows: Rows,
    private readonly known: readonly Summed[] | undefined,
  ) {}

  make(): Omit<DesignPlan, 'title'> & { readonly sums: readonly Summed[] } {
    const { rows, sections } = this;
    rows.wide(this.title, STYLES.title, 26);
    rows.wide(
      'The numbers in the yellow cells are an invented example: type your own over them.',
      STYLES.scenario,
    );
    rows.wide(DEFERS, STYLES.danger);
    if (!rows.hasUnits) rows.unitsRow();
    rows.heads();
    this.summary();
    for (const { danger } of sections) if (danger !== undefined) rows.wide(danger, STYLES.caution);
    for (const section of sections) this.section(section);
    return { plan: rows.plan(), lines: this.lines, sums: this.sums };
  }

  private summary(): void {
    const { rows } = this;
    const sums = this.known ?? this.sections.flatMap(countOf);
    rows.wide('Verdicts', STYLES.section, 22);
    const [from, to] = [rows.valueBelow(1), rows.valueBelow(sums.length)];
    rows.words(
      'The whole design',
      'The worst of the verdicts below. What does not hold says under its results what to do.',
    );
    rows.blanks();
    rows.noFormula();
    rows.verdict(overallFormula(`${from}:${to}`));
    this.lines.push({
      section: 'Verdicts',
      label: 'The whole design',
      value: rows.here().value,
      kind: 'verdict',
    });
    rows.end();
    for (const { label: of, section, cell } of sums) {
      rows.words(of, section);
      rows.blanks();
      rows.noFormula();
      rows.verdict(cell);
      this.lines.push({ section: 'Verdicts', label: of, value: rows.here().value, kind: 'verdict' });
      rows.end();
    }
  }

  private section(section: Section): void {
    const { rows } = this;
    rows.wide(section.title, STYLES.section, 22);
    rows.wide(`Decide: ${section.decide}`, STYLES.decide);
    for (const [key, input] of Object.entries(section.inputs)) this.input(section, key, input);
    for (const part of section.parts) this.part(section, part);
  }

  /** An input that an earlier section has, or works out, is that one. */
  private input(section: Section, key: string, { first, ...own }: SectionInput): void {
    if (this.texts.has(key)) return;
    const { rows } = this;
    const { definition, input, index } = argumentFor(section, key);
    const parameter = wordsOf(definition).parameters[index];
    if (!parameter) throw new Error(`${definition.name} has no ${input.name}`);
    const kind = quantityOf(input.reading);
    const here = rows.here();
    const called = own.label ?? label(key);
    const amount = kind === undefined ? first : roundedIn(first, kind, rows.system);
    this.texts.set(
      key,
      entryRow(rows, input, parameter, amount, {
        ...own,
        label: called,
        name: this.nameFor(key),
        ...(this.mayBeBlank(key) && { emptied: { follows: undefined } }),
      }),
    );
    this.lines.push({
      section: section.title,
      label: called,
      value: here.value,
      unit: here.unit,
      kind: kind ?? 'text',
    });
    this.taken(section, key, called);
  }

  /** Whether all that takes a key can do without it, and goes by the same value then. */
  private mayBeBlank(key: string): boolean {
    const takers = this.sections.flatMap((section) => takersOf(section, key));
    const defaults = new Set(takers.map(({ input }) => input.default));
    return takers.length > 0 && defaults.size === 1 && !defaults.has(undefined);
  }

  /** Of the first value under a key. */
  private nameFor(key: string): string {
    return this.fed.has(key) ? logNames(key).without : cellName(key);
  }

  /** Where shots may give the value of a key, all that follows takes it from a row of its own. */
  private taken(section: Section, key: string, called: string): void {
    const log = this.fed.get(key);
    if (!log) return;
    const { value, unit } = this.rows.here();
    this.texts.set(key, takenRow(this.rows, log, called));
    const { kind } = soughtIn(log);
    this.lines.push({ section: section.title, label: `${called}: as taken`, value, unit, kind });
  }

  private part(section: Section, part: Part): void {
    switch (part.type) {
      case 'use':
        this.use(section, part);
        return;
      case 'worked':
        this.worked(section, part);
        return;
      case 'verdict':
        this.verdict(section, part);
        return;
      case 'shots':
        this.shots(section, part);
        return;
      case 'table':
        this.table(part);
    }
  }

  private use(section: Section, { fn, key, label: called, note, with: bound }: Use): void {
    const { rows } = this;
    const definition = findDefinition(fn);
    const args = inputsOf(definition).map(({ name, optional }) => {
      const to = bound[name] ?? (optional ? undefined : name);
      if (to === undefined || to.startsWith('"')) return to ?? '';
      return this.texts.get(to) ?? '';
    });
    const call = { definition, args };
    const written = resultRows(rows, call, { label: called, note, name: this.nameFor(key) });
    for (const { label: each, cells, kind = 'text' } of written)
      this.lines.push({ section: section.title, label: each, value: cells.value, unit: cells.unit, kind });
    this.texts.set(key, written[0]?.name ?? '');
    const mayYield = knowsStrength(definition);
    if (mayYield) marginRow(rows, call);
    const title = `${called}: range${mayYield ? ' and strength' : ''}`;
    this.sums.push({ label: title, section: section.title, cell: checkRow(rows, call, title) });
    this.taken(section, key, called);
  }

  private shots(section: Section, part: Shots): void {
    const { agrees, tooFew, ...line } = logRows(this.rows, part, this.texts, this.exampleShots);
    this.lines.push({ section: section.title, ...line });
    const formula = `IF(${tooFew},"${NO_SHOTS}",${verdictFormula({ when: agrees })})`;
    this.judged(section, `${part.label}: shots against prediction`, SHOTS_NOTE, formula);
  }

  private worked(section: Section, { key, label: called, note, formula, kind }: Worked): void {
    const { rows } = this;
    rows.words(called, note);
    rows.blanks();
    rows.put('value', { formula, look: numberStyle(valueFormat(kind)) });
    rows.put('unit', rows.unitOf(kind));
    rows.formulaText(`=${formula}`);
    const { value, unit } = rows.here();
    this.lines.push({ section: section.title, label: called, value, unit, kind });
    this.texts.set(key, rows.name(this.nameFor(key)));
    rows.end();
    this.taken(section, key, called);
  }

  private verdict(section: Section, { label: called, note, judged }: Verdict): void {
    const formula = verdictFormula(
      'when' in judged ? { when: judged.when.replace('{errors}', this.errors) } : judged,
    );
    this.judged(section, called, note, formula);
  }

  private judged(section: Section, called: string, note: string, formula: string): void {
    const { rows } = this;
    rows.words(called, note);
    rows.blanks();
    rows.verdict(formula);
    rows.noFormula();
    this.sums.push({ label: called, section: section.title, cell: rows.here().value });
    rows.end();
  }

  private table({ title, heads, rows: things, gives }: Table): void {
    const { rows } = this;
    rows.tableHeads([
      { value: title },
      { value: heads[0] },
      { value: heads[1] },
      ...gives.map(({ head, kind }) => headText(rows, head, kind)),
    ]);
    const first = rows.here();
    let last = first;
    for (const [what, one, two] of things) {
      last = rows.here();
      const cells = { '{1}': last.entry, '{2}': last.entryUnit, '{3}': last.value };
      rows.put('label', { ...(what !== '' && { value: what }), look: STYLES.typedName });
      rows.put('entry', { ...(one !== '' && { value: one }), look: STYLES.typedWords });
      rows.put('entryUnit', { ...(one !== '' && { value: two }), look: STYLES.typedNumber });
      gives.forEach(({ formula, kind }, i) => {
        const text = Object.entries(cells).reduce((all, [sign, cell]) => all.replaceAll(sign, cell), formula);
        rows.put(i === 0 ? 'value' : 'unit', {
          formula: `IF(${last.entry}="","",${text})`,
          look: kind === 'text' ? STYLES.words : numberStyle(valueFormat(kind)),
        });
      });
      rows.put('note', { look: STYLES.note });
      rows.noFormula();
      rows.end();
    }
    this.errors = `SUMPRODUCT(--ISERROR(${first.value}:${last.unit}))`;
  }
}

function headText(rows: Rows, head: string, kind: Kind | 'text'): HeadText {
  if (kind === 'text') return { value: head };
  const unit = rows.unitOf(kind);
  return unit.formula === undefined
    ? { value: unit.value === '–' ? head : `${head}, ${String(unit.value)}` }
    : { formula: `"${head}, "&${unit.formula}` };
}

/** As many verdicts as the section will have. */
const countOf = (section: Section): Summed[] =>
  section.parts.flatMap((part) =>
    part.type === 'use' || part.type === 'verdict' || part.type === 'shots'
      ? [{ label: '', section: '', cell: 'A1' }]
      : [],
  );

/** The first argument of a function in the section that takes a key: it says what may be typed. */
function argumentFor(section: Section, key: string) {
  const like = section.inputs[key]?.like;
  if (like) return argumentNamed(findDefinition(like[0]), like[1]);
  const [first] = takersOf(section, key);
  if (first) return first;
  throw new Error(`No function of the section ${section.id} takes ${key}`);
}

/** The arguments that a key is for, in the order of the section. */
const takersOf = (section: Section, key: string) =>
  section.parts.flatMap((part) => {
    if (part.type !== 'use' && part.type !== 'shots') return [];
    const definition = findDefinition(part.fn);
    const taken =
      part.type === 'shots'
        ? heldIn(part).flatMap(([{ name }, held]) => (held === key ? [name] : []))
        : inputsOf(definition).flatMap(({ name, optional }) =>
            (part.with[name] ?? (optional ? undefined : name)) === key ? [name] : [],
          );
    return taken.map((name) => argumentNamed(definition, name));
  });
