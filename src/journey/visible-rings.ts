import type { Overlay, PhotoPoint } from './overlay';

/** The rings of a bore as far as they are seen: that of the mouth, and of a deeper one what lies within it; the rest
 *  is behind the near wall. None where the outline is not of a bore. */
export function visibleRings({ outline }: Overlay): readonly (readonly PhotoPoint[])[] {
  const [mouth, ...deeper] = outline.filter(isRing);
  return mouth ? [mouth, ...deeper.flatMap((ring) => runsWithin(ring, mouth))] : [];
}

function isRing(line: readonly PhotoPoint[]): boolean {
  const [first, last] = [line[0], line.at(-1)];
  return line.length > 8 && first[0] === last?.[0] && first[1] === last[1];
}

function runsWithin(ring: readonly PhotoPoint[], mouth: readonly PhotoPoint[]): PhotoPoint[][] {
  // Begun behind the wall, no run is cut in two.
  const from = Math.max(
    0,
    ring.findIndex((point) => !isWithin(point, mouth)),
  );
  const turned = [...ring.slice(from, -1), ...ring.slice(0, from + 1)];
  const runs: PhotoPoint[][] = [[]];
  for (const point of turned) {
    if (isWithin(point, mouth)) runs.at(-1)!.push(point);
    else runs.push([]);
  }
  return runs.filter((run) => run.length > 1);
}

/** By how often a ray to the right crosses the polygon. */
function isWithin([x, y]: PhotoPoint, polygon: readonly PhotoPoint[]): boolean {
  const crossings = polygon.slice(1).filter((b, i) => {
    const a = polygon[i];
    return a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
  });
  return crossings.length % 2 === 1;
}
