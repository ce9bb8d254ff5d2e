import { brakeFlare } from './brake-flare';
import type { Connection } from './connection';
import { din3852part1 } from './din-3852-1';
import { din7631 } from './din-7631';
import { en837 } from './en-837';
import { iso1179 } from './iso-1179';
import { iso6149 } from './iso-6149';
import { iso6162 } from './iso-6162';
import { iso8434part1 } from './iso-8434-1';
import { iso8434part2 } from './iso-8434-2';
import { iso8434part3 } from './iso-8434-3';
import { iso8434part6 } from './iso-8434-6';
import { iso9974 } from './iso-9974';
import { iso11926 } from './iso-11926';
import { iso15171 } from './iso-15171';
import { jisB8363 } from './jis-b-8363';
import { nfE48050 } from './nf-e-48-050';
import { saeJ512 } from './sae-j512';
import { taperPipe } from './taper-pipe';

export const connections: readonly Connection[] = [
  ...iso8434part3,
  ...iso8434part2,
  ...saeJ512,
  ...iso11926,
  ...iso6149,
  ...iso1179,
  ...iso9974,
  ...din3852part1,
  ...iso8434part1,
  ...nfE48050,
  ...iso8434part6,
  ...din7631,
  ...jisB8363,
  ...brakeFlare,
  ...en837,
  ...iso15171,
  ...taperPipe,
  ...iso6162,
];
