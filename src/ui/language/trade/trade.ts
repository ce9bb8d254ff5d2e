import type { Widen } from '../widen';
import type { tradeEn } from './en';

export type Trade = Widen<typeof tradeEn>;
