/** Holds what is put into cells of the grid against the rules of the workbook. */
import type { CellValue, Matrix } from '../cells/value';
import type { Validation } from '../package/model';
import type { CellPlace } from '../sheet/book';
import { refusalOfEntry, type Refusal } from '../workbook/entryRules';

export interface SheetPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Who is asked, and told. */
export interface EntryDesk {
  /** What was typed does not fit the rule of its cell: says whether it stays. */
  readonly onRefusal: (cell: SheetPlace, typed: string, refusal: Refusal) => Promise<boolean>;
  /** Keys wait until what is given is called. */
  readonly holdKeys: () => () => void;
  /** Cells that were filled otherwise (pasted, dragged) and do not fit their rules. */
  readonly onOutside: (cells: readonly SheetPlace[]) => void;
}

/** What the grid knows of its cells. */
interface Cells {
  readonly calculation: {
    value(place: CellPlace): CellValue;
    evaluate(formula: string, place: CellPlace): Matrix;
  };
  /** Waits until no calculation is under way. */
  calculated(): Promise<void>;
  rulesAt(place: CellPlace): readonly Validation[];
  sheetName(calculated: number): string;
  /** The content of a cell as it would be typed. */
  typedText(place: CellPlace): string;
}

/** Cells of one paste that are held against their rules. */
const MOST_HELD = 5_000;

const placeKey = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;

export class HeldEntries {
  /** Places whose entry a person is asked about. */
  private readonly asked = new Set<string>();
  private filled: CellPlace[] = [];

  constructor(
    private readonly cells: Cells,
    private readonly desk: EntryDesk,
  ) {}

  /** Another workbook is on show. */
  forget(): void {
    this.filled = [];
  }

  /** A cell was changed. */
  note(place: CellPlace): void {
    if (!this.asked.has(placeKey(place)) && this.filled.length < MOST_HELD) this.filled.push(place);
  }

  /** Whether what was typed stays. */
  async stays(place: CellPlace | undefined): Promise<boolean> {
    // The grid moves on after the answer: where there is nothing to ask, in the same moment as the key.
    if (!place || this.cells.rulesAt(place).length === 0) return true;
    const release = this.desk.holdKeys();
    return this.isTaken(place).finally(() => {
      // The grid moves on first.
      setTimeout(release);
    });
  }

  /** Tells what was put into cells without a person being asked. */
  tell(): void {
    const filled = this.filled.splice(0);
    const outside = filled.filter(
      (place) => this.cells.calculation.value(place) !== null && this.refusal(place),
    );
    if (outside.length > 0) this.desk.onOutside(outside.map((place) => this.named(place)));
  }

  private async isTaken(place: CellPlace): Promise<boolean> {
    const key = placeKey(place);
    this.asked.add(key);
    await this.cells.calculated();
    this.asked.delete(key);
    const refusal = this.refusal(place);
    return !refusal || this.desk.onRefusal(this.named(place), this.cells.typedText(place), refusal);
  }

  private refusal(place: CellPlace): Refusal | undefined {
    const rules = this.cells.rulesAt(place);
    if (rules.length === 0) return undefined;
    const { calculation } = this.cells;
    return refusalOfEntry(rules, place, calculation.value(place), (formula) =>
      calculation.evaluate(formula, place),
    );
  }

  private named(place: CellPlace): SheetPlace {
    return { ...place, sheet: this.cells.sheetName(place.sheet) };
  }
}
