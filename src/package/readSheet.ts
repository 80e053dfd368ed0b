import type { Area } from '../cells/address';
import type {
  ColumnRun,
  FilterColumn,
  ConditionalFormat,
  Hyperlink,
  Note,
  Sheet,
  SheetFilter,
  Table,
  Validation,
  ValidationKind,
} from './model';
import { MAX_COLUMNS, parseArea, parseCell } from '../cells/address';
import type { Theme } from './colors';
import { resolveColor } from './colors';
import type { CellContext } from './readCells';
import { CellReader } from './readCells';
import type { Styles } from './readStyles';
import { dropUndefined } from './readStyles';
import type { Parts } from './relationships';
import { readText, relationshipsOf } from './relationships';
import { fromFileSpelling } from './spelling';
import type { KnownFunctions } from './spelling';
import type { XmlElement } from './xml';
import type { OpenTag } from './xmlHandler';
import {
  TreeBuilder,
  child,
  childrenOf,
  decodeText,
  descendants,
  flag,
  numeric,
  parseXml,
  prefixed,
  scanXml,
} from './xml';

export interface SheetContext extends CellContext {
  readonly styles: Styles;
  readonly theme: Theme;
}

/** The cells are read as they stream by, everything else of the sheet as a tree. */
export function readSheet(
  parts: Parts,
  part: string,
  name: string,
  state: Sheet['state'],
  context: SheetContext,
): Sheet {
  const cells = new CellReader(name, context);
  const tree = new TreeBuilder();
  let inData = false;
  scanXml(readText(parts, part) ?? '', part, {
    open(tag: OpenTag) {
      if (inData) cells.open(tag);
      else tree.open(tag);
      if (tag.name === 'sheetData' && tree.depth === 2) inData = true;
    },
    text(text) {
      if (inData) cells.text(text);
      else tree.text(text);
    },
    close(closing, start, end) {
      if (closing === 'sheetData') inData = false;
      if (inData) cells.close(closing);
      else tree.close(closing, start, end);
    },
  });
  const root = tree.root;
  const format = child(root, 'sheetFormatPr')?.attributes ?? {};
  const view = child(child(root, 'sheetViews'), 'sheetView');
  const tabColor = resolveColor(child(child(root, 'sheetPr'), 'tabColor'), context.theme);
  return {
    name,
    state,
    cells: cells.finish(),
    rows: cells.rows,
    columns: childrenOf(child(root, 'cols'), 'col').flatMap(readColumns),
    // 8.43 is what the usual base of 8 characters comes to, with the gap between cells.
    defaultColumnWidth: numeric(format['defaultColWidth'], numeric(format['baseColWidth'], 8) + 0.43),
    defaultRowHeight: numeric(format['defaultRowHeight'], 15),
    merges: childrenOf(child(root, 'mergeCells'), 'mergeCell').flatMap((one) => areas(one.attributes['ref'])),
    frozen: readFrozen(child(view, 'pane')),
    showsGridlines: flag(view?.attributes['showGridLines'], true),
    isProtected: flag(child(root, 'sheetProtection')?.attributes['sheet']),
    zoom: numeric(view?.attributes['zoomScale'], 100),
    ...(tabColor === undefined ? {} : { tabColor }),
    validations: validationsOf(root).map((one) => readValidation(one, context.known)),
    conditionalFormats: childrenOf(root, 'conditionalFormatting').flatMap((one) =>
      readConditional(one, context),
    ),
    ...readNeighbours(parts, part, root),
  };
}

function areas(list: string | undefined): Area[] {
  return (list ?? '').split(/\s+/).flatMap((one) => parseArea(one) ?? []);
}

function readColumns({ attributes }: XmlElement): ColumnRun[] {
  const first = numeric(attributes['min'], 1) - 1;
  const last = Math.min(numeric(attributes['max'], first + 1), MAX_COLUMNS) - 1;
  if (first < 0 || last < first) return [];
  const { width, hidden, style } = attributes;
  const size = width === undefined ? {} : { width: numeric(width, 8.43) };
  return [{ first, last, hidden: flag(hidden), style: numeric(style, 0), ...size }];
}

function readFrozen(pane: XmlElement | undefined): Sheet['frozen'] {
  if (pane?.attributes['state']?.startsWith('frozen') !== true) return { rows: 0, columns: 0 };
  return { rows: numeric(pane.attributes['ySplit'], 0), columns: numeric(pane.attributes['xSplit'], 0) };
}

/** Rules that look at other sheets stand apart, in an extension of the format (MS-XLSX 2.4.100). */
function validationsOf(root: XmlElement | undefined): XmlElement[] {
  const extensions = childrenOf(child(root, 'extLst'), 'ext');
  return [root, ...extensions].flatMap((one) => childrenOf(child(one, 'dataValidations'), 'dataValidation'));
}

function readValidation(element: XmlElement, known: KnownFunctions): Validation {
  const { attributes } = element;
  const kind = (attributes['type'] ?? 'none') as ValidationKind;
  const formulas = ['formula1', 'formula2'].flatMap((name) => {
    const formula = child(element, name);
    const text = child(formula, 'f')?.text ?? formula?.text;
    return text === undefined || text === '' ? [] : [fromFileSpelling(text, known)];
  });
  const written = kind === 'list' ? /^"((?:[^"]|"")*)"$/.exec(formulas[0] ?? '')?.[1] : undefined;
  const { promptTitle, prompt, errorTitle, error } = attributes;
  return {
    areas: areas(attributes['sqref'] ?? child(element, 'sqref')?.text),
    kind,
    ...(written === undefined
      ? {}
      : {
          choices: written
            .replaceAll('""', '"')
            .split(',')
            .map((one) => one.trim()),
        }),
    operator: attributes['operator'] ?? 'between',
    formulas,
    allowBlank: flag(attributes['allowBlank']),
    // The format's own name for this attribute is the wrong way round: it hides the arrow.
    showsArrow: kind === 'list' && !flag(attributes['showDropDown']),
    ...(flag(attributes['showInputMessage']) && (prompt ?? promptTitle) !== undefined
      ? { prompt: { title: decodeText(promptTitle ?? ''), text: decodeText(prompt ?? '') } }
      : {}),
    ...(flag(attributes['showErrorMessage'])
      ? {
          refusal: {
            style: (attributes['errorStyle'] ?? 'stop') as 'stop' | 'warning' | 'information',
            title: decodeText(errorTitle ?? ''),
            text: decodeText(error ?? ''),
          },
        }
      : {}),
  };
}

function readConditional(element: XmlElement, context: SheetContext): ConditionalFormat[] {
  return childrenOf(element, 'cfRule').flatMap((rule) => {
    const { type: kind, operator, dxfId, priority, stopIfTrue } = rule.attributes;
    const style = context.styles.overlays[numeric(dxfId, -1)];
    if ((kind !== 'expression' && kind !== 'cellIs') || style === undefined) return [];
    return [
      {
        areas: areas(element.attributes['sqref']),
        kind,
        ...dropUndefined({ operator }),
        formulas: childrenOf(rule, 'formula').map((one) => fromFileSpelling(one.text, context.known)),
        priority: numeric(priority, 1),
        stopIfTrue: flag(stopIfTrue),
        style,
      },
    ];
  });
}

/** What the sheet keeps in parts beside its own. */
function readNeighbours(
  parts: Parts,
  part: string,
  root: XmlElement | undefined,
): Pick<Sheet, 'hyperlinks' | 'notes' | 'tables' | 'filters' | 'filter'> {
  const related = relationshipsOf(parts, part);
  const partsOf = (kind: string) =>
    related.flatMap((one) => {
      const xml = one.kind === kind && !one.external ? readText(parts, one.target) : undefined;
      return xml === undefined ? [] : [parseXml(xml, one.target)];
    });
  const hyperlinks = childrenOf(child(root, 'hyperlinks'), 'hyperlink').flatMap(
    ({ attributes }): Hyperlink[] => {
      const id = prefixed(attributes, 'id');
      const address = related.find((one) => one.id === id && one.external)?.target;
      // Anything but the web and mail, such as a script or a program on this disk, is not offered to be followed.
      const target = address !== undefined && /^(https?:|mailto:)/i.test(address) ? address : undefined;
      const { location, tooltip } = attributes;
      return areas(attributes['ref']).map((area) => ({
        area,
        ...dropUndefined({ target, location, tooltip }),
      }));
    },
  );
  const tables = partsOf('table');
  return {
    hyperlinks,
    notes: partsOf('comments').flatMap(readNotes),
    tables: tables.flatMap(readTable),
    filters: [root, ...tables].flatMap((one) => childrenOf(one, 'autoFilter')).flatMap(readFilter),
    ...dropUndefined({ filter: readSheetFilter(child(root, 'autoFilter')) }),
  };
}

function readNotes(root: XmlElement): Note[] {
  return childrenOf(child(root, 'commentList'), 'comment').flatMap((comment) => {
    const place = parseCell(comment.attributes['ref'] ?? '');
    const body = child(comment, 'text');
    if (place === undefined || body === undefined) return [];
    const runs = [...childrenOf(body, 't'), ...childrenOf(body, 'r').flatMap((run) => childrenOf(run, 't'))];
    return [{ ...place, text: decodeText(runs.map((run) => run.text).join('')) }];
  });
}

/** One that lets all pass hides nothing. */
function readFilter(filter: XmlElement): Area[] {
  return child(filter, 'filterColumn') ? areas(filter.attributes['ref']) : [];
}

function readSheetFilter(filter: XmlElement | undefined): SheetFilter | undefined {
  const [area] = areas(filter?.attributes['ref']);
  if (!filter || !area) return undefined;
  const columns = childrenOf(filter, 'filterColumn').map((one): FilterColumn => {
    const column = numeric(one.attributes['colId'], 0);
    const texts = child(one, 'filters');
    // Days and months are a tree of their own.
    if (!texts || child(texts, 'dateGroupItem')) return { column };
    const shown = childrenOf(texts, 'filter').map(({ attributes }) => decodeText(attributes['val'] ?? ''));
    return { column, shows: flag(texts.attributes['blank'], false) ? [...shown, ''] : shown };
  });
  return { area, columns };
}

function readTable(root: XmlElement): Table[] {
  const { displayName, name, ref, headerRowCount, totalsRowCount } = root.attributes;
  return areas(ref).map((area) => ({
    name: displayName ?? name ?? '',
    area,
    hasHeader: numeric(headerRowCount, 1) > 0,
    hasTotals: numeric(totalsRowCount, 0) > 0,
    columns: descendants(root, 'tableColumn').map((one) => decodeText(one.attributes['name'] ?? '')),
    ...dropUndefined({ filter: readSheetFilter(child(root, 'autoFilter')) }),
  }));
}
