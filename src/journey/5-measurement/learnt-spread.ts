import learnt from '../4-limbs/allowances.json';

/** What a measured length leaves behind that says how sure it is, mm. */
export interface Traces {
  /** Standard uncertainty by the outline's fit. */
  readonly fitMm: number;
  /** Between the outline's fit and what limbs or surface say without it, beyond what these may be off. */
  readonly apartMm: number;
  /** Standard uncertainty that limbs or surface claim for themselves. */
  readonly knownMm: number;
  readonly pitchMm: number;
  readonly pixelMm: number;
}

/** How much of each trace is uncertainty; set by `npm run calibrate` on photos with truth. */
export interface Shares {
  readonly fit: number;
  readonly apart: number;
  readonly known: number;
  readonly pitch: number;
  readonly pixel: number;
}

export const shareNames = ['fit', 'apart', 'known', 'pitch', 'pixel'] as const;

export const spreadMm = (t: Traces, a: Shares): number =>
  Math.hypot(
    a.fit * t.fitMm,
    a.apart * t.apartMm,
    a.known * t.knownMm,
    a.pitch * t.pitchMm,
    a.pixel * t.pixelMm,
  );

/** Of pitch and crest radius, and of the axis' height over what the hex network claims. */
export const learntShares: { readonly pitch: Shares; readonly radius: Shares } = learnt.shares;
export const learntHeight: { readonly known: number; readonly ofHeight: number } = learnt.height;
