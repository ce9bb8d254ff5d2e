/** Long over short side of what cameras deliver (common practice); a file of another shape has been cropped. */
const frames = [1, 4 / 3, 3 / 2, 16 / 9];
const sameShape = 0.02;

/** Whether a photo, px, has the shape of a camera's whole frame. */
export function isWholeFrame(width: number, height: number): boolean {
  const ratio = Math.max(width, height) / Math.min(width, height);
  return frames.some((frame) => Math.abs(ratio / frame - 1) < sameShape);
}
