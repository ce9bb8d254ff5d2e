/** How sharp a picture is: squared slope of green per pixel, against the square of its mean, so that the
 *  brighter of two frames does not win by its light alone. Only to rank frames of one scene. */
export function sharpness({ width, height, data }: Pick<ImageData, 'width' | 'height' | 'data'>) {
  let slopes = 0;
  let light = 0;
  for (let y = 1; y < height; y++) {
    for (let x = 1; x < width; x++) {
      const at = 4 * (y * width + x) + 1;
      const across = data[at] - data[at - 4];
      const down = data[at] - data[at - 4 * width];
      slopes += across * across + down * down;
      light += data[at];
    }
  }
  const count = (width - 1) * (height - 1);
  return count > 0 && light > 0 ? slopes / count / (light / count) ** 2 : 0;
}
