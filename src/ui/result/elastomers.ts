/** Elastomer families by fluid group, names after ISO 1629:2013. Common practice, from memory;
 *  the maker's compatibility table decides. */
export const elastomers = [
  { fluid: 'mineral', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM'] },
  { fluid: 'hot', suits: ['FKM', 'HNBR'], avoid: ['EPDM', 'NBR'] },
  { fluid: 'water', suits: ['NBR', 'HNBR'], avoid: ['AU', 'EU'] },
  { fluid: 'ester', suits: ['FKM', 'HNBR'], avoid: ['EPDM'] },
  { fluid: 'phosphate', suits: ['EPDM', 'FKM'], avoid: ['NBR', 'HNBR'] },
  { fluid: 'brake', suits: ['EPDM'], avoid: ['NBR', 'FKM'] },
] as const;
