import { isBlack, modulesPerSide } from './dictionary';

export type MmPoint = readonly [xMm: number, yMm: number];

/** Closed outlines of a marker's black area, to be filled even-odd. Frame: the marker's top left
 *  corner is the origin, modules are the unit. Outlines rather than one square a module, because
 *  renderers leave hairlines between squares that merely touch. */
export function markerOutlines(id: number): (readonly [number, number])[][] {
  const black = (row: number, column: number) =>
    row >= 0 &&
    column >= 0 &&
    row < modulesPerSide &&
    column < modulesPerSide &&
    isBlack(id, row, column);

  // Directed edges with black on their right, keyed by where they start.
  const edges = new Map<string, [number, number][]>();
  const add = (x0: number, y0: number, x1: number, y1: number) => {
    const key = `${x0},${y0}`;
    edges.set(key, [...(edges.get(key) ?? []), [x1, y1]]);
  };
  for (let y = 0; y < modulesPerSide; y++)
    for (let x = 0; x < modulesPerSide; x++) {
      if (!black(y, x)) continue;
      if (!black(y - 1, x)) add(x, y, x + 1, y);
      if (!black(y, x + 1)) add(x + 1, y, x + 1, y + 1);
      if (!black(y + 1, x)) add(x + 1, y + 1, x, y + 1);
      if (!black(y, x - 1)) add(x, y + 1, x, y);
    }

  const outlines: [number, number][][] = [];
  for (const [start, targets] of edges)
    while (targets.length > 0) {
      const outline: [number, number][] = [];
      let key = start;
      do {
        const next = edges.get(key)?.pop();
        if (!next) throw new Error(`outline of marker ${id} does not close`);
        outline.push(next);
        key = `${next[0]},${next[1]}`;
      } while (key !== start);
      outlines.push(outline.filter((point, i) => isCorner(outline, point, i)));
    }
  return outlines;
}

function isCorner(outline: [number, number][], [x, y]: [number, number], i: number): boolean {
  const [px, py] = outline[(i + outline.length - 1) % outline.length]!;
  const [nx, ny] = outline[(i + 1) % outline.length]!;
  return (x - px) * (ny - y) !== (y - py) * (nx - x);
}
