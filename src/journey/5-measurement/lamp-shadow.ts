/** How wide a shadow a lamp beside the lens throws: it adjoins the metal, and passes for it. A phone's
 *  lens and lamp are about 14 mm apart (common practice). */
export function lampShadowMm(heightMm: number, cameraHeightMm: number): number {
  return (14 * heightMm) / (cameraHeightMm - heightMm);
}
