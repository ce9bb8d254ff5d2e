/** By the crossings of a ray to the right. */
export function isInside(
  polygon: readonly (readonly [number, number])[],
  x: number,
  y: number,
): boolean {
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
