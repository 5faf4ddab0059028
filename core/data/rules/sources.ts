/**
 * Where a rule stands and how its words were seen. `read` means the text was seen in a public copy, `read-secondary`
 * that somebody's account of it was; what is from memory has to be looked up before it may stop anybody.
 */
export const ruleSources = [
  { id: 'EU2023-1545', what: 'Commission Regulation (EU) 2023/1545, fragrance allergens', seen: 'read' },
  { id: 'EU1223-ANNEX', what: 'Regulation (EC) 1223/2009, Annexes II and III, consolidated', seen: 'read' },
  {
    id: 'EU2026-909',
    what: 'Commission Regulation (EU) 2026/909, citral and benzyl salicylate',
    seen: 'read',
  },
  {
    id: 'EU2022-1531',
    what: 'Annex III entry 324, methyl salicylate, Regulation (EU) 2022/1531',
    seen: 'read-secondary',
  },
  {
    id: 'GB2025-ANNEX3',
    what: 'Great Britain, Annex III, methyl salicylate, amendment of 2025',
    seen: 'read-secondary',
  },
  { id: 'EU2017-2228', what: 'Regulation (EU) 2017/2228, peanut and wheat protein', seen: 'read' },
  { id: 'SCCS1681', what: 'Opinion SCCS/1681/25, tea tree oil', seen: 'read' },
  {
    id: 'FDA-COLOURS',
    what: 'FDA table of colour additives permitted in cosmetics (first part of it)',
    seen: 'read',
  },
  { id: 'FDA-LEAD', what: 'FDA draft guidance, lead in cosmetic lip products, December 2016', seen: 'read' },
  {
    id: 'US-COLOUR-PAGE',
    what: 'a secondary page on unlisted colours, 21 CFR parts 73 and 74',
    seen: 'read-secondary',
  },
  { id: 'CFR73', what: '21 CFR part 73, colour additives', seen: 'read-secondary' },
  { id: 'CA-HOTLIST', what: 'Canada, Cosmetic Ingredient Hotlist: change notes', seen: 'read' },
  { id: 'CA-M', what: 'Canada, Cosmetic Ingredient Hotlist and heavy-metal guidance', seen: 'memory' },
  {
    id: 'CA-SOR2024-63',
    what: 'Canada, SOR/2024-63: allergens on labels and their dates',
    seen: 'read-secondary',
  },
  {
    id: 'GB-ALLERGENS',
    what: 'Great Britain has not adopted the EU allergen list of 2023: notices of two laboratories',
    seen: 'read-secondary',
  },
  { id: 'US-AGENDA', what: 'US regulatory agenda, fragrance allergens: no rule in force', seen: 'read' },
  {
    id: 'AU-STANDARD',
    what: 'Australia, Consumer Goods (Cosmetics) Information Standard 2020',
    seen: 'memory',
  },
  {
    id: 'IFRA49-METHYL-EUGENOL',
    what: 'IFRA Standard, methyl eugenol, 49th Amendment (2020)',
    seen: 'read',
  },
  { id: 'IFRA49-ESTRAGOLE', what: 'IFRA Standard, estragole, 49th Amendment (2020)', seen: 'read' },
  { id: 'IFRA49-CINNAMYL', what: 'IFRA Standard, cinnamic alcohol, 49th Amendment (2020)', seen: 'read' },
  { id: 'IFRA49-VERBENA', what: 'IFRA limits for verbena absolute, 49th Amendment', seen: 'read-secondary' },
  { id: 'IFRA51-INDEX', what: 'IFRA Standards, 51st Amendment: index pages only', seen: 'read' },
  {
    id: 'IFRA-M',
    what: 'IFRA Standards, 49th Amendment, Category 1 figures that were not seen',
    seen: 'memory',
  },
  {
    id: 'EOS2014-LIGHT',
    what: 'essential-oil safety handbook, 2nd edition 2014, light-sensitising oils',
    seen: 'read-secondary',
  },
  {
    id: 'CH-FUROCOUMARINS',
    what: 'Switzerland, sum of eight furocoumarins, calendar entry',
    seen: 'read-secondary',
  },
  {
    id: 'PMC9148000',
    what: 'open-access paper quoting Ph. Eur. and ISO 3515 for lavender oil',
    seen: 'read',
  },
  { id: 'DK-EPA-2008', what: 'Danish survey of essential oils, 2008, appendix 2', seen: 'read' },
  {
    id: 'COMFREY-RISK',
    what: 'Norwegian risk profile of comfrey, 2013, and a herbal handbook',
    seen: 'read',
  },
  {
    id: 'ALKANET-PAGE',
    what: 'a page collecting references on alkaloids in alkanet root',
    seen: 'read-secondary',
  },
  { id: 'EU2024-996', what: 'Regulation (EU) 2024/996, vitamin A', seen: 'read' },
  { id: 'EU-M', what: 'Regulation (EC) 1223/2009, entries that were not seen', seen: 'memory' },
  { id: 'PHEUR-M', what: 'European Pharmacopoeia, essential-oil monographs', seen: 'memory' },
  { id: 'ISO-M', what: 'ISO standards of essential oils', seen: 'memory' },
  { id: 'COMPOSITION-M', what: 'general composition of the oil', seen: 'memory' },
  { id: 'HERB-MONOGRAPH-M', what: 'European herbal monographs', seen: 'memory' },
  { id: 'CIR-M', what: 'cosmetic ingredient review', seen: 'memory' },
  { id: 'GENERAL-M', what: 'toxicity literature and composition', seen: 'memory' },
  { id: 'PRACTICE', what: 'common practice, no source', seen: 'practice' },
  { id: 'NONE-FOUND', what: 'no figure was found', seen: 'none-found' },
  { id: 'EU1223-ART19', what: 'Regulation (EC) 1223/2009, Article 19 (the label)', seen: 'read' },
  {
    id: 'EU1223-SAFETY',
    what: 'Regulation (EC) 1223/2009, Articles 10 and 11: safety report and product file',
    seen: 'read',
  },
  { id: 'EU76-211', what: 'Directive 76/211/EEC, Annex I: height of the figures', seen: 'memory' },
  {
    id: 'EU-GLOSSARY',
    what: 'EU list of common ingredient names, Decision (EU) 2022/677 as replaced by 2025/1175',
    seen: 'memory',
  },
  {
    id: 'GB1223-ART19',
    what: 'Regulation 2009/1223 as assimilated in Great Britain, Article 19',
    seen: 'read-secondary',
  },
  {
    id: 'GB-GUIDANCE',
    what: 'Great Britain, statutory guidance on Regulation 2009/1223, 4 May 2023',
    seen: 'read',
  },
  {
    id: 'US-FPLA',
    what: '21 CFR 701.13 and 15 USC 1453, net contents in both units',
    seen: 'read-secondary',
  },
  { id: 'CFR701', what: '21 CFR part 701, cosmetic labelling (its body was not seen)', seen: 'memory' },
  { id: 'CFR740', what: '21 CFR part 740, warning statements', seen: 'memory' },
  {
    id: 'US-FDCA602',
    what: 'FD&C Act section 602 (21 USC 362), name and place of business',
    seen: 'read-secondary',
  },
  {
    id: 'US-MOCRA609',
    what: 'FD&C Act section 609(a) (MoCRA), contact for adverse events',
    seen: 'read-secondary',
  },
  { id: 'US-ORIGIN', what: '19 USC 1304, country of origin of imported goods', seen: 'memory' },
  { id: 'US-PAGES', what: 'US authority pages on cosmetic labelling', seen: 'memory' },
  { id: 'CA-GUIDE', what: 'Canada, industry guide for the labelling of cosmetics', seen: 'read' },
  { id: 'CA-COSMETIC', what: 'Canada, Cosmetic Regulations', seen: 'read' },
  { id: 'CA-CPLA', what: 'Canada, Consumer Packaging and Labelling Act and Regulations', seen: 'read' },
  {
    id: 'AU-MEASUREMENT',
    what: 'Australia, National Trade Measurement Regulations 2009',
    seen: 'read',
  },
  { id: 'AU-CONSUMER', what: 'Australian Consumer Law; Commerce (Imports) Regulations', seen: 'memory' },
  { id: 'AU-CHEMICALS', what: 'Australia, Industrial Chemicals Act 2019', seen: 'memory' },
  { id: 'EU655-2013', what: 'Regulation (EU) No 655/2013, common criteria for claims', seen: 'read' },
  {
    id: 'MHRA-GN8',
    what: 'MHRA Guidance Note 8, what is a medicinal product, section 10',
    seen: 'read',
  },
  {
    id: 'FDA-LETTERS',
    what: 'FDA, warning letters on drug claims made for cosmetics, quoted claims',
    seen: 'read',
  },
  { id: 'CFR347', what: '21 CFR 347.50, skin-protectant drug labels', seen: 'read-secondary' },
  {
    id: 'ALCOHOL-PAGES',
    what: 'a university safety page and an infection-control review on alcohol disinfection',
    seen: 'read',
  },
  { id: 'FIRST-AID-PAGES', what: 'general first-aid pages on burns, none official', seen: 'read-secondary' },
  { id: 'GLASS-PAGE', what: 'a general science page on float glass and heat', seen: 'read-secondary' },
  { id: 'OWN', what: 'own judgement: no list of phrases by an authority was seen', seen: 'memory' },
] as const;

export type RuleSourceId = (typeof ruleSources)[number]['id'];

/** How a row's figure or wording came here. Only the first two may be called a limit without "about". */
export type RuleStatus = 'read' | 'read-secondary' | 'memory' | 'practice' | 'none-found';
