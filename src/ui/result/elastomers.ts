/** Elastomer families by fluid, for seals of hydraulic connections. Fluids by the classes of
 *  ISO 6743-4 (HM, HFA, HFC, HFD, HETG, HEES, HEPG), elastomers by ISO 1629; which suits which
 *  follows the compatibility table of ISO 6072 and common practice, both from memory. What depends
 *  on the fluid's own kind stands in neither list. EPDM never meets mineral oil, and NBR never
 *  meets a phosphate ester. The maker's compatibility table decides. */
export const elastomers = [
  { fluid: 'mineral', suits: ['NBR', 'HNBR', 'FKM'], avoid: ['EPDM'] },
  { fluid: 'hot', suits: ['FKM', 'HNBR'], avoid: ['EPDM', 'NBR'] },
  { fluid: 'cold', suits: ['NBR'], avoid: ['FKM', 'EPDM'] },
  { fluid: 'emulsion', suits: ['NBR', 'HNBR'], avoid: ['EPDM', 'AU', 'EU'] },
  { fluid: 'glycol', suits: ['NBR', 'HNBR'], avoid: ['AU', 'EU'] },
  { fluid: 'phosphate', suits: ['EPDM'], avoid: ['NBR', 'HNBR', 'AU', 'EU'] },
  { fluid: 'phosphateAryl', suits: ['FKM', 'EPDM'], avoid: ['NBR', 'HNBR', 'AU', 'EU'] },
  { fluid: 'ester', suits: ['FKM', 'HNBR'], avoid: ['EPDM'] },
  { fluid: 'polyglycol', suits: ['FKM', 'HNBR'], avoid: ['AU', 'EU'] },
  { fluid: 'brake', suits: ['EPDM'], avoid: ['NBR', 'HNBR', 'FKM'] },
] as const;
