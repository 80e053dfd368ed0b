/** Which `cm` numbers of cells mean "dynamic array" (MS-XLSX 2.3.12, dynamicArrayProperties). */
import type { XmlElement } from './xml';
import { child, childrenOf, descendants, flag, numeric } from './xml';

export const DYNAMIC_TYPE = 'XLDAPR';

/** Numbers count from one. */
export function dynamicArrayMarks(root: XmlElement | undefined): ReadonlySet<number> {
  const marks = new Set<number>();
  if (root === undefined) return marks;
  const type =
    childrenOf(child(root, 'metadataTypes'), 'metadataType').findIndex(
      (one) => one.attributes['name'] === DYNAMIC_TYPE,
    ) + 1;
  const future = childrenOf(root, 'futureMetadata').find((one) => one.attributes['name'] === DYNAMIC_TYPE);
  const dynamic = childrenOf(future, 'bk').map((bk) =>
    descendants(bk, 'dynamicArrayProperties').some((one) => flag(one.attributes['fDynamic'])),
  );
  childrenOf(child(root, 'cellMetadata'), 'bk').forEach((bk, at) => {
    const isMark = childrenOf(bk, 'rc').some(
      ({ attributes }) =>
        numeric(attributes['t'], 0) === type && dynamic[numeric(attributes['v'], -1)] === true,
    );
    if (isMark) marks.add(at + 1);
  });
  return marks;
}
