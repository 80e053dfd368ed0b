export interface PicturedCell {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Cells of a drawn sheet that another drawing of the same sheet shows otherwise: other fill, other amount of ink, ink
 * elsewhere in the cell. Where in the other one its rows begin is looked for. Runs in a page, which reads images.
 *
 * Programs break lines and smooth letters in their own ways, and the live page draws arrows into cells with a list: so
 * much is let pass, and no more.
 */
export async function differences({
  drawn,
  shown,
  cells,
}: {
  readonly drawn: string;
  readonly shown: string;
  readonly cells: readonly PicturedCell[];
}): Promise<string[]> {
  /** Sums of the differences of red, green and blue. */
  const [OTHER_FILL, IS_INK] = [24, 150];
  const [ACROSS, DOWN, RIGHT] = [14, 10, 60];
  /** Width of the grid's numbers of rows. */
  const NUMBERS = 46;
  const EDGE = 3;

  const read = async (base64: string): Promise<ImageData> => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas');
    context.drawImage(image, 0, 0);
    return context.getImageData(0, 0, image.width, image.height);
  };
  const [picture, live] = await Promise.all([read(drawn), read(shown)]);
  const part = (image: ImageData, x: number, y: number, of: number): number =>
    image.data[(y * image.width + x) * 4 + of] ?? 0;
  const apart = (a: ImageData, ax: number, ay: number, b: ImageData, bx: number, by: number): number =>
    [0, 1, 2].reduce((sum, of) => sum + Math.abs(part(a, ax, ay, of) - part(b, bx, by, of)), 0);

  const right = NUMBERS - Math.round(Math.min(...cells.map(({ x }) => x)));
  const corners = cells
    .filter(({ width, height }) => width > 12 && height > 10)
    .map(({ x, y, width }) => [Math.round(x + width - 5), Math.round(y + EDGE)] as const);
  const bottom = Math.ceil(Math.max(...cells.map(({ y, height }) => y + height)));
  let [below, least] = [0, Infinity];
  for (let at = 0; at + bottom < live.height; at++) {
    let sum = 0;
    for (const [x, y] of corners) {
      sum += Math.min(200, apart(picture, x, y, live, x + right, y + at));
      if (sum >= least) break;
    }
    if (sum < least) [below, least] = [at, sum];
  }
  if (least === Infinity) return ['The page shows fewer rows than the picture.'];

  const look = (image: ImageData, x: number, y: number, width: number, height: number) => {
    const count = new Map<number, number>();
    const places: [number, number][] = [];
    for (let row = y; row < y + height; row++)
      for (let column = x; column < x + width; column++) places.push([column, row]);
    for (const [column, row] of places) {
      const at = row * image.width + column;
      const color =
        ((image.data[at * 4] ?? 0) << 16) |
        ((image.data[at * 4 + 1] ?? 0) << 8) |
        (image.data[at * 4 + 2] ?? 0);
      count.set(color, (count.get(color) ?? 0) + 1);
    }
    const fill = [...count].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
    const fills = [fill >> 16, (fill >> 8) & 255, fill & 255];
    const ink = places.filter(
      ([column, row]) =>
        fills.reduce((sum, one, of) => sum + Math.abs(part(image, column, row, of) - one), 0) > IS_INK,
    );
    const [xs, ys] = [ink.map(([column]) => column - x), ink.map(([, row]) => row - y)];
    return {
      fills,
      ink: ink.length,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
    };
  };
  return cells.flatMap(({ text, x, y, width, height }) => {
    const [wide, tall] = [Math.round(width) - 2 * EDGE, Math.round(height) - 2 * EDGE];
    if (wide < 1 || tall < 1) return [];
    const [left, top] = [Math.round(x) + EDGE, Math.round(y) + EDGE];
    const one = look(picture, left, top, wide, tall);
    const other = look(live, left + right, top + below, wide, tall);
    const fill = one.fills.reduce((sum, value, of) => sum + Math.abs(value - (other.fills[of] ?? 0)), 0);
    const faults = [
      ...(fill > OTHER_FILL ? [`fill ${one.fills.join()}, on the page ${other.fills.join()}`] : []),
      ...(Math.abs(one.ink - other.ink) > Math.max(40, 0.3 * one.ink)
        ? [`${one.ink} points of ink, on the page ${other.ink}`]
        : []),
    ];
    if (one.ink > 8 && other.ink > 8) {
      if (Math.abs(one.left - other.left) > ACROSS)
        faults.push(`left ${one.left}, on the page ${other.left}`);
      if (Math.abs(one.right - other.right) > RIGHT)
        faults.push(`right ${one.right}, on the page ${other.right}`);
      if (Math.abs(one.top - other.top) > DOWN || Math.abs(one.bottom - other.bottom) > DOWN)
        faults.push(`between ${one.top} and ${one.bottom}, on the page ${other.top} and ${other.bottom}`);
    }
    return faults.map((fault) => `${text.slice(0, 40)}: ${fault}`);
  });
}
