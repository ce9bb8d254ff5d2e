/** Lengths carry a brand where photo and card meet; elsewhere the unit in the name is enough. */
declare const unit: unique symbol;
export type Mm = number & { readonly [unit]: 'mm' };
export type Px = number & { readonly [unit]: 'px' };

export const mm = (value: number): Mm => value as Mm;
export const px = (value: number): Px => value as Px;

/** Exactly: ISO 31-1 and the international yard and pound agreement of 1959. */
export const mmPerInch = 25.4;

export const inches = (value: number): Mm => mm(value * mmPerInch);
export const toInches = (length: Mm): number => length / mmPerInch;

/** Pitch of a single-start thread. */
export const pitchOfTpi = (threadsPerInch: number): Mm => mm(mmPerInch / threadsPerInch);
export const tpiOfPitch = (pitch: Mm): number => mmPerInch / pitch;
