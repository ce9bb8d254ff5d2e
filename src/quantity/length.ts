/** A parsed length carries a brand; elsewhere the unit in the name is enough. */
declare const unit: unique symbol;
export type Mm = number & { readonly [unit]: 'mm' };

export const mm = (value: number): Mm => value as Mm;

/** Exactly: ISO 31-1 and the international yard and pound agreement of 1959. */
export const mmPerInch = 25.4;

export const inches = (value: number): Mm => mm(value * mmPerInch);

/** Pitch of a single-start thread. */
export const pitchOfTpi = (threadsPerInch: number): Mm => mm(mmPerInch / threadsPerInch);
