import type { Connection } from './connections/connection';

/** Second names, as the trade itself uses them (common practice). Searched, and shown beside the
 *  standard's number. */
const byFamily: Readonly<Record<string, readonly string[]>> = {
  'ISO 8434-2': ['JIC', 'AN 37°', 'SAE J514'],
  'ISO 8434-3': ['ORFS', 'SAE J1453'],
  'ISO 11926': ['ORB', 'SAE straight thread', 'SAE J1926'],
  'ISO 6149': ['metric ORB', 'SAE J2244'],
  'ISO 9974': ['DIN 3852-1'],
  'DIN 3852-1': ['metric taper', 'DIN 158', 'keg'],
  'ISO 1179': ['BSPP', 'DIN 3852-2'],
  'ISO 8434-6': ['BSPP 60°', 'BSP', 'DKR'],
  'ISO 7-1': ['BSPT', 'R', 'Rc', 'Rp', 'JIS PT'],
  'ASME B1.20.1': ['NPT'],
  'SAE J476': ['NPTF', 'dryseal'],
  'SAE J512': ['SAE 45°'],
  'SAE J512 inverted': ['inverted flare'],
  'SAE J512 compression': ['compression'],
  'DIN 7631': ['DKM', 'metric 60°'],
  'NF E 48-050': ['French gas', 'GAZ'],
  'JIS B 8363': ['JIS 30°'],
  'ISO 6162-1': ['SAE flange 3000 psi', 'code 61', 'SFL'],
  'ISO 6162-2': ['SAE flange 6000 psi', 'code 62', 'SFS'],
  'ISO 4038': ['brake flare', 'SAE J533'],
  'EN 837-1': ['gauge'],
  'ISO 15171': ['test point', 'diagnostic coupling'],
};

/** Of an end as far as it is known. */
export function aliasesOf({
  family,
  size,
  form,
  end,
}: Pick<Connection, 'family' | 'size' | 'form'> & {
  readonly end: Connection['end'] | null;
}): readonly string[] {
  if (form === 'NPSM swivel') return ['NPSM'];
  if (form === 'Rp') return ['Rp', 'BSPT socket'];
  if (family !== 'ISO 8434-1') return byFamily[family] ?? [];
  const series = size.endsWith('S') ? 'S' : size.endsWith('LL') ? 'LL' : 'L';
  const nose = series === 'S' ? 'DKOS' : 'DKOL';
  return [
    `${series} series`,
    'DIN 2353',
    'DIN 3861',
    ...(end === 'female' && series !== 'LL' ? ['DKO', nose] : []),
  ];
}
