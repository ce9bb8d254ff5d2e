/** Elastomers by fluid: families after ISO 1629, fluid classes after ISO 6743-4 and ISO 15380, as
 *  ISO 6072 tests them on one another. Common practice, from memory; the maker's compatibility
 *  table decides. EPDM swells in mineral oil, so it stands only where no oil can come. */
export const elastomers = [
  { fluid: 'mineral', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM'] },
  { fluid: 'emulsion', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM', 'AU', 'EU'] },
  { fluid: 'solution', suits: ['NBR', 'HNBR'], avoid: ['AU', 'EU'] },
  { fluid: 'glycol', suits: ['NBR', 'HNBR', 'EPDM'], avoid: ['AU', 'EU'] },
  { fluid: 'phosphate-aryl', suits: ['FKM', 'EPDM'], avoid: ['NBR', 'HNBR', 'AU', 'EU'] },
  { fluid: 'phosphate-alkyl', suits: ['EPDM'], avoid: ['NBR', 'HNBR', 'FKM', 'AU', 'EU'] },
  { fluid: 'ester-fire', suits: ['FKM', 'HNBR'], avoid: ['EPDM'] },
  { fluid: 'vegetable', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM'] },
  { fluid: 'ester', suits: ['FKM', 'HNBR'], avoid: ['EPDM'] },
  { fluid: 'polyglycol', suits: ['FKM', 'HNBR'], avoid: ['EPDM', 'AU', 'EU'] },
  { fluid: 'hydrocarbon', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM'] },
  { fluid: 'brake', suits: ['EPDM'], avoid: ['NBR', 'HNBR', 'FKM'] },
] as const;

/** Usual limits, °C (common practice, from memory; compounds differ by 10 K and more). */
export const temperatures = [
  { elastomer: 'NBR', minC: -30, maxC: 100 },
  { elastomer: 'HNBR', minC: -25, maxC: 140 },
  { elastomer: 'FKM', minC: -15, maxC: 200 },
] as const;
