/** How far from straight above the guided camera asks for, degrees. A male end is seen from above; the far wall of a
 *  bore at 30–40° where it stands, and at 50–60° (30–40° above the table) where it lies, with some room: renders of
 *  female ends measure from 22 to 60°. */
const guidedTiltDeg = {
  male: { least: 0, most: 30 },
  female: { least: 25, most: 60 },
} as const;
export type GuidedEnd = keyof typeof guidedTiltDeg;

/** Which way the camera is to be turned; null where it is good. */
export function tiltFault(tiltDeg: number, end: GuidedEnd): 'too-level' | 'too-slanted' | null {
  const { least, most } = guidedTiltDeg[end];
  return tiltDeg < least ? 'too-level' : tiltDeg > most ? 'too-slanted' : null;
}
