type Polygon = readonly (readonly [number, number])[];

/** By the crossings of a ray to the right. */
export function isInside(polygon: Polygon, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
    const ax = polygon[i][0];
    const ay = polygon[i][1];
    const bx = polygon[j][0];
    const by = polygon[j][1];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

/** Where the outline crosses a height, left to right: inside lies from each odd one to the next. */
export function crossings(polygon: Polygon, y: number): number[] {
  const at: number[] = [];
  polygon.forEach(([ax, ay], i) => {
    const [bx, by] = polygon[(i + 1) % polygon.length];
    if (ay > y !== by > y) at.push(((bx - ax) * (y - ay)) / (by - ay) + ax);
  });
  return at.sort((p, q) => p - q);
}
