export const rounded = (v: number): number => Number(v.toPrecision(3));
