/** Angles carry a brand where both units meet; inside one function a plain number with its unit in
 *  the name (`tiltRad`) is enough. */
declare const unit: unique symbol;
export type Rad = number & { readonly [unit]: 'rad' };
export type Deg = number & { readonly [unit]: 'deg' };

export const rad = (value: number): Rad => value as Rad;
export const deg = (value: number): Deg => value as Deg;

export const toDeg = (angle: Rad): Deg => deg((angle * 180) / Math.PI);
export const toRad = (angle: Deg): Rad => rad((angle * Math.PI) / 180);

/** The same direction in (−π, π]. */
export function wrapped(angle: Rad): Rad {
  const turn = 2 * Math.PI;
  const within = angle - turn * Math.ceil((angle - Math.PI) / turn);
  return rad(within);
}
