/** The look of a cell as declarations of CSS. */
import type { BorderLine, CellStyle, LineStyle, Side, StyleOverlay } from '../package/model';

const LINES: Readonly<Record<LineStyle, string>> = {
  thin: '1px solid',
  medium: '2px solid',
  thick: '3px solid',
  double: '3px double',
  hair: '1px dotted',
  dotted: '1px dotted',
  dashed: '1px dashed',
  dashDot: '1px dashed',
  dashDotDot: '1px dashed',
  mediumDashed: '2px dashed',
  mediumDashDot: '2px dashed',
  mediumDashDotDot: '2px dashed',
  slantDashDot: '2px dashed',
};
const SIDES: readonly Side[] = ['top', 'right', 'bottom', 'left'];
/** Pixels of a step of indentation, as spreadsheets indent. */
const INDENT = 9;
const MARGIN = 3;

const borderCss = ({ line, color }: BorderLine): string => `${LINES[line]} ${color ?? '#000'}`;

/** With the looks that rules lay over it, the strongest first. */
export function cellCss(style: CellStyle, overlays: readonly StyleOverlay[] = []): string {
  const pick = <T>(of: (one: StyleOverlay) => T | undefined, own: T): T =>
    overlays.map(of).find((one) => one !== undefined) ?? own;
  const { font } = style;
  const color = pick(({ font: over }) => over.color, font.color);
  const fill = pick((one) => one.fill, style.fill);
  const lines = [
    pick(({ font: over }) => over.underline, font.underline) === 'none' ? '' : 'underline',
    pick(({ font: over }) => over.strike, font.strike) ? 'line-through' : '',
  ].filter(Boolean);
  const declarations = [
    `font: ${pick(({ font: over }) => over.italic, font.italic) ? 'italic ' : ''}${pick(({ font: over }) => over.bold, font.bold) ? 'bold ' : ''}${font.size}pt ${family(font.name)}`,
    color === undefined ? '' : `color: ${color}`,
    fill === undefined ? '' : `background: ${fill}`,
    lines.length > 0 ? `text-decoration: ${lines.join(' ')}` : '',
    `vertical-align: ${VERTICAL[style.vertical] ?? 'bottom'}`,
    style.wrap ? 'white-space: pre-wrap; overflow-wrap: anywhere' : '',
    style.indent > 0
      ? `padding-${style.horizontal === 'right' ? 'right' : 'left'}: ${style.indent * INDENT + MARGIN}px`
      : '',
    ...SIDES.map((side) => {
      const line = pick((one) => one.borders[side], style.borders[side]);
      return line ? `border-${side}: ${borderCss(line)}` : '';
    }),
  ];
  return declarations.filter(Boolean).join('; ');
}

const VERTICAL: Readonly<Partial<Record<CellStyle['vertical'], string>>> = {
  top: 'top',
  center: 'middle',
  justify: 'top',
  distributed: 'middle',
};

/** The fonts of a workbook are not on every machine; what looks like them stands behind. */
const family = (name: string): string =>
  `"${name.replaceAll(/["\\]/g, '')}", Arial, "Liberation Sans", sans-serif`;

const ALIGN: Readonly<Partial<Record<CellStyle['horizontal'], string>>> = {
  left: 'left',
  center: 'center',
  right: 'right',
  centerContinuous: 'center',
  justify: 'justify',
  distributed: 'center',
  fill: 'left',
};

/** Numbers stand to the right, truth values and errors in the middle, text to the left, unless told otherwise. */
export function alignment(style: CellStyle, value: unknown): string {
  const told = ALIGN[style.horizontal];
  if (told !== undefined) return told;
  if (typeof value === 'number') return 'right';
  return typeof value === 'string' || value === null ? 'left' : 'center';
}
