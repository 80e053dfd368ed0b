/**
 * Copies of earlier versions carried their originals as a hidden part of custom XML alone, which LibreOffice drops; one
 * that was never saved by another program still comes back.
 *
 *     <original xmlns="urn:moldsheet:original:1" basis="basis 2, 2.0.0">
 *       <added name="MoldTables"/>                         a sheet that sharing added
 *       <sheet name="Press">
 *         <f r="D12" is="…" was="MOLD.…" spill="D12:D14"/>  a rewritten cell: its formula or value now, its formula before
 *         <v r="B3" is="12"/>                               any other cell with content, as it was when shared
 *       </sheet>
 *     </original>
 */
import { parseCell } from '../cells/address';
import { childrenOf, parseXml } from '../package/xml';
import type { Original, OriginalCell } from './original';

export const EARLIER_NAMESPACE = 'urn:moldsheet:original:1';

export function readEarlierOriginal(xml: string): Original {
  const root = parseXml(xml, 'the original formulas');
  const text = (value: string | undefined): string => value ?? '';
  return {
    basis: text(root.attributes['basis']),
    added: childrenOf(root, 'added').map(({ attributes }) => text(attributes['name'])),
    outside: [],
    cells: childrenOf(root, 'sheet').flatMap(({ attributes: { name }, children }) =>
      children.flatMap(({ attributes }): OriginalCell[] => {
        const place = parseCell(text(attributes['r']));
        if (!place) return [];
        const { is = '', was, spill } = attributes;
        return [
          {
            sheet: text(name),
            ...place,
            is,
            ...(was !== undefined && { was }),
            ...(spill !== undefined && { spill }),
          },
        ];
      }),
    ),
  };
}
