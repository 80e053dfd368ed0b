import { areasOverlap, type Area } from '../../cells/address';

/** What is left of areas without the cells of another. */
export function without(areas: readonly Area[], hole: Area): Area[] {
  return areas.flatMap((area) => {
    if (!areasOverlap(area, hole)) return [area];
    const top = Math.max(area.top, hole.top);
    const bottom = Math.min(area.bottom, hole.bottom);
    return [
      { ...area, bottom: hole.top - 1 },
      { ...area, top, bottom, right: hole.left - 1 },
      { ...area, top, bottom, left: hole.right + 1 },
      { ...area, top: hole.bottom + 1 },
    ].filter((piece) => piece.top <= piece.bottom && piece.left <= piece.right);
  });
}
