import type { PrintDescription } from '../../../src/package/description';
import { Refused } from './typed';
import type { StandInWorkbook } from './workbook';

const POINTS_PER_INCH = 72;

/** How a sheet is printed. An Excel without a printer refuses all of it. */
export class StandInPages {
  isSet = false;
  private readonly kept: Record<string, unknown> = {};
  private titleRows: string | undefined;
  private readonly footers: { left?: string; center?: string; right?: string } = {};
  readonly headersFooters;

  constructor(private readonly book: StandInWorkbook) {
    const { footers } = this;
    this.headersFooters = {
      defaultForAllPages: {
        set leftFooter(text: string) {
          footers.left = text;
        },
        set centerFooter(text: string) {
          footers.center = text;
        },
        set rightFooter(text: string) {
          footers.right = text;
        },
      },
    };
  }

  private keep(name: string, value: unknown): void {
    if (!this.book.hasPrinter) throw new Refused('GeneralException', 'No printers are installed.');
    this.isSet = true;
    this.kept[name] = value;
  }

  set paperSize(paper: 'Letter' | 'A4') {
    this.keep('paper', paper);
  }

  set orientation(word: 'Landscape' | 'Portrait') {
    this.keep('landscape', word === 'Landscape');
  }

  set zoom({ horizontalFitToPages }: { horizontalFitToPages?: number }) {
    this.keep('pagesWide', horizontalFitToPages);
  }

  set leftMargin(points: number) {
    this.keep('side', points / POINTS_PER_INCH);
  }

  set rightMargin(points: number) {
    this.keep('side', points / POINTS_PER_INCH);
  }

  set topMargin(points: number) {
    this.keep('top', points / POINTS_PER_INCH);
  }

  set bottomMargin(points: number) {
    this.keep('bottom', points / POINTS_PER_INCH);
  }

  setPrintArea(area: string): void {
    this.keep('area', area);
  }

  setPrintTitleRows(rows: string): void {
    this.titleRows = rows.replaceAll('$', '');
  }

  describe(): PrintDescription {
    const { side, top, bottom, ...others } = this.kept;
    return {
      ...others,
      ...(this.titleRows !== undefined && { titleRows: this.titleRows }),
      ...(Object.keys(this.footers).length > 0 && { footer: this.footers }),
      margins: { side, top, bottom },
    } as PrintDescription;
  }
}
