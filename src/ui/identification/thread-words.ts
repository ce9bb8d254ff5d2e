import type { Thread } from '../../standards/thread';
import { number } from '../language/format';
import { t } from '../language/language';

/** Whether its standard gives its diameters in inches: ISO 228-1 and ISO 7-1 give millimetres. */
export const inchFirst = ({ system }: Thread): boolean => system === 'UN' || system === 'NPT';

/** '16 tpi (1.5875 mm)' or '1.5 mm', as the thread is called. */
export function pitchWords({ tpi, pitchMm }: Thread): string {
  if (tpi === null) return `${plain(pitchMm)} mm`;
  return `${plain(tpi)} ${t().reading.units.tpi} (${number(pitchMm, 4)} mm)`;
}

/** Basic major diameter and pitch of a row, the thread's own unit first. */
export function sizeWords(thread: Thread): string {
  const metric = `${plain(thread.basicMajorMm)} mm`;
  const inch = `${plain(thread.basicMajorMm / 25.4)} in`;
  const [own, other] = inchFirst(thread) ? [inch, metric] : [metric, inch];
  return `${t().identification.basic} ${own} (${other}) · ${t().inspection.pitch} ${pitchWords(thread)}`;
}

/** As many decimals as it has: 1.5, 11.5, 16. */
const plain = (value: number): string =>
  number(value, String(Number(value.toFixed(4))).split('.')[1]?.length ?? 0);
