import { describe, expect, it } from 'vitest';
import { gridStyle, styleOfGrid } from '../../src/page/gridStyles';
import type { CellStyle } from '../../src/package/model';

const plain: CellStyle = {
  font: { name: 'Calibri', size: 11, bold: false, italic: false, strike: false, underline: 'none' },
  borders: {},
  horizontal: 'general',
  vertical: 'bottom',
  wrap: false,
  indent: 0,
  rotation: 0,
  shrink: false,
  numberFormat: 'General',
  locked: true,
};

const styles: Record<string, Partial<CellStyle>> = {
  'a plain cell': {},
  'a heading': {
    font: { ...plain.font, bold: true, italic: true, strike: true, underline: 'single', color: '#166572' },
    fill: '#EEF3F4',
  },
  borders: {
    borders: { top: { line: 'thin', color: '#808080' }, left: { line: 'double', color: '#000000' } },
  },
  'wrapped text': { wrap: true, horizontal: 'left', vertical: 'top', indent: 2 },
  'text on its side': { rotation: 90, horizontal: 'center', vertical: 'center' },
  'stacked text': { rotation: 255 },
  'a number format': { numberFormat: '0.000" mm"', horizontal: 'right' },
};

describe('a style that went into the grid', () => {
  it.each(Object.entries(styles))('comes back the same: %s', (_name, change) => {
    const back = styleOfGrid(gridStyle({ ...plain, ...change }));
    expect({
      horizontal: 'general',
      wrap: false,
      indent: 0,
      rotation: 0,
      numberFormat: 'General',
      ...back,
    }).toEqual({
      ...plain,
      ...change,
      shrink: undefined,
      locked: undefined,
    });
  });

  it('comes back with its colours as files write them, whatever the grid made of them', () => {
    expect(styleOfGrid({ bg: { rgb: 'rgb(1,2,3)' }, cl: { rgb: 'red' } })).toMatchObject({
      fill: '#010203',
      font: { color: '#FF0000' },
    });
    expect(styleOfGrid({ bg: { rgb: '' } }).fill).toBeUndefined();
  });
});
