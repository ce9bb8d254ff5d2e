/** What was found, for drawing over the photo.
 *  Frame: upright full-size photo, pixels, x right, y down, pixel centres at integers. */
export type PhotoPoint = readonly [x: number, y: number];

export interface CrestMark {
  readonly at: PhotoPoint;
  readonly side: 'left' | 'right';
  /** Axial position along the axis from `axis[0]`, mm. */
  readonly axialMm: number;
}

export interface Overlay {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly markers: readonly { readonly id: number; readonly corners: readonly PhotoPoint[] }[];
  /** The four corners of a card's or sheet's face that gave the scale; none of the scale card's. */
  readonly reference: readonly PhotoPoint[];
  readonly outline: readonly (readonly PhotoPoint[])[];
  /** From the free end of the thread towards the hex, over the measured zone. */
  readonly axis: readonly [PhotoPoint, PhotoPoint] | null;
  /** The two lines along which the view touches the crest cylinder or cone. */
  readonly contactLines: readonly (readonly [PhotoPoint, PhotoPoint])[];
  readonly crests: readonly CrestMark[];
}

/** Radius profile of the outline over the measured zone, both sides, with the fitted period. */
export interface CrestProfile {
  /** Axial positions, mm from `axis[0]`, shared by all arrays. */
  readonly axialMm: readonly number[];
  /** Outline radius from the axis, mm; NaN is written as null where the outline is unusable. */
  readonly leftMm: readonly (number | null)[];
  readonly rightMm: readonly (number | null)[];
  readonly leftFitMm: readonly number[];
  readonly rightFitMm: readonly number[];
}
