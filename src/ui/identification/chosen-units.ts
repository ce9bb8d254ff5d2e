import { createSignal } from 'solid-js';
import { t } from '../language/language';
import type { LengthUnit, PitchUnit } from './bench-input';

// The bench's unit stays chosen from one reading to the next.
const [pitchUnit, setPitchUnit] = createSignal<PitchUnit>('tpi');
const [lengthUnit, setLengthUnit] = createSignal<LengthUnit>('mm');

export { lengthUnit, pitchUnit, setLengthUnit, setPitchUnit };

export const pitchPlaceholder = () =>
  pitchUnit() === 'tpi' ? t().reading.placeholder.tpi : t().reading.placeholder.mmPitch;

export const lengthPlaceholder = () =>
  lengthUnit() === 'mm'
    ? t().reading.placeholder.mm
    : `${t().reading.placeholder.in} · ${t().reading.placeholder.fraction}`;
