/**
 * What each source key stands for, and how its words or numbers were seen. "read" means they were seen in a public
 * copy; "memory" means they were recalled and must be looked up before anyone treats them as exact. A trader's page
 * that repeats a standard is a restatement, not the standard itself.
 */
export const sources = [
  {
    id: 'CODEX210-R',
    what: 'Codex Alimentarius CXS 210-1999, Standard for Named Vegetable Oils (Tables 1, 2, tocopherols)',
    readHow:
      'read as a page-per-oil restatement; oils seen: sunflower high-oleic, rice bran, sesame, palm, soybean, canola, walnut, safflower high-oleic, flaxseed. All nine agree with what was recalled beforehand',
  },
  {
    id: 'CODEX210-A22',
    what: 'CXS 210-1999, 2022 amendments list',
    readHow:
      'read: only the amended sunflower lines (C18:1 14.0-43.0, C18:2 45.4-74.0, relative density 0.916-0.923, SV 187-194), from the first page of a copy of the standard',
  },
  {
    id: 'CODEX210-M',
    what: 'CXS 210-1999, other oils (sunflower rest, grapeseed, safflower, corn, cottonseed, peanut, palm kernel and babassu Table 2, almond, hazelnut, avocado)',
    readHow:
      'memory. Strong for the oils in the standard since 1999; weaker for almond, hazelnut, avocado (added later)',
  },
  {
    id: 'CODEX33-M',
    what: 'CXS 33-1981, olive oils and olive pomace oils',
    readHow: 'memory',
  },
  { id: 'CODEX86-M', what: 'CXS 86-1981, cocoa butter', readHow: 'memory' },
  {
    id: 'CODEX211-M',
    what: 'CXS 211-1999, named animal fats',
    readHow: 'memory',
  },
  { id: 'CODEX12-M', what: 'CXS 12-1981, honey', readHow: 'memory' },
  {
    id: 'CODEX325R',
    what: 'CXS 325R-2017, regional standard for unrefined shea butter, Table 2',
    readHow: "read: a national regulator's page that adopts the text",
  },
  {
    id: 'CODEX325R-M',
    what: 'CXS 325R-2017, fatty-acid table',
    readHow: 'memory (the copy was cut off before it)',
  },
  {
    id: 'PMC6770503',
    what: 'Nutrients 11 (2019) 2008, Table 4: Codex (2015) fatty acids of palm and palm kernel fractions',
    readHow: 'read in the published table',
  },
  {
    id: 'PMC6930611',
    what: 'Molecules 24 (2019) 4235, Table 1: babassu against Codex',
    readHow: 'read in the published table',
  },
  {
    id: 'PMC4384276',
    what: 'J. Anim. Sci. Biotechnol. 6 (2015) 10, Table 2: profiles and iodine values of four fats',
    readHow: 'read in the published table',
  },
  {
    id: 'PMC9148000',
    what: 'Molecules 27 (2022) 3216, Table 2: lavender oil limits of Ph. Eur. 10 and ISO 3515',
    readHow: 'read in the published table',
  },
  {
    id: 'USDA-SR26',
    what: 'USDA National Nutrient Database for Standard Reference, release 26, oils and fats group; grams per 100 g turned into percent of the listed acids',
    readHow: 'read from the tables of the release (foods, nutrients, weights)',
  },
  {
    id: 'BP2025',
    what: 'British Pharmacopoeia 2025 (Ph. Eur. 11.6) monographs: refined almond, refined sunflower, virgin wheat germ, virgin castor, refined borage oil',
    readHow: 'read: third-party copies of the monograph text',
  },
  {
    id: 'PHEUR-MCT',
    what: 'Ph. Eur./BP Triglycerides, medium-chain',
    readHow: "read: a maker's page repeating the monograph",
  },
  {
    id: 'PHEUR-BEES',
    what: 'Ph. Eur./BP Beeswax, white',
    readHow: "read: a maker's page repeating the monograph",
  },
  {
    id: 'PHEUR-PEP',
    what: 'Ph. Eur. peppermint oil, constituent limits',
    readHow: 'read: quoted in a textbook page',
  },
  {
    id: 'PHEUR-ORANGE',
    what: 'Ph. Eur. 6.2 sweet orange oil',
    readHow: 'read: quoted in a drug-compendium page',
  },
  {
    id: 'PHEUR-LEMON',
    what: 'BP/Ph. Eur. lemon oil',
    readHow: "read: a maker's page repeating the limits",
  },
  {
    id: 'PHEUR-M',
    what: 'European Pharmacopoeia, other monographs',
    readHow: 'memory',
  },
  {
    id: 'USP32',
    what: 'USP32-NF27 Cocoa Butter and Sesame Oil',
    readHow: 'read: copies',
  },
  { id: 'USP35', what: 'USP35-NF30 Castor Oil', readHow: 'read: copy' },
  { id: 'USP29', what: 'USP29-NF24 Peppermint Oil', readHow: 'read: copy' },
  {
    id: 'USP2025',
    what: 'USP 2025 Lemon Oil',
    readHow: 'read: third-party copy',
  },
  {
    id: 'USP-WAX',
    what: 'USP28-NF23 White Wax and USP35-NF30 Yellow Wax',
    readHow: 'read: copies (melting range of white wax; acid value)',
  },
  {
    id: 'USP-DROP',
    what: 'USP32-NF27 chapter 1101, medicine dropper',
    readHow: 'read: copy',
  },
  {
    id: 'USP-M',
    what: 'USP-NF Cocoa Butter fatty acids, other USP facts',
    readHow: 'memory',
  },
  {
    id: 'AOCS-CD1C85',
    what: 'AOCS Recommended Practice Cd 1c-85, calculated iodine value',
    readHow: 'read: two copies of the sheet and a letter to the editor of 2002 repeating both formulas',
  },
  {
    id: 'MERCK',
    what: 'Merck Index entries Jojoba Oil and Rice Bran Oil',
    readHow: 'read: copied entries',
  },
  {
    id: 'BPC1911',
    what: 'British Pharmaceutical Codex 1911: beeswax, wool fat',
    readHow: 'read: public-domain copy',
  },
  {
    id: 'CFR172-890',
    what: '21 CFR 172.890 Rice bran wax',
    readHow: 'read, several copies',
  },
  { id: 'CFR184-1702', what: '21 CFR 184.1702 Sheanut oil', readHow: 'read' },
  {
    id: 'CFR101-9',
    what: '21 CFR 101.9(b)(5)(viii), labelling spoon sizes',
    readHow: 'read: quoted in a note on unit standards',
  },
  {
    id: 'CFR73-M',
    what: '21 CFR part 73 subpart C, colour additives for cosmetics',
    readHow: 'memory',
  },
  {
    id: 'JECFA-CARN',
    what: 'JECFA specification Carnauba wax (51st meeting, 1998)',
    readHow: 'read: copy',
  },
  {
    id: 'JECFA-M',
    what: 'JECFA specifications beeswax, candelilla',
    readHow: 'memory (the copies seen stop before the numbers)',
  },
  {
    id: 'EU2023-1545',
    what: 'Commission Regulation (EU) 2023/1545',
    readHow: 'read: opening recitals, and pages listing the thresholds, dates and new names',
  },
  {
    id: 'EOS2014-R',
    what: 'Essential Oil Safety, 2nd ed., 2014 (handbook): phototoxicity and dermal maxima',
    readHow: 'read only second-hand: two web lists quoting the handbook',
  },
  { id: 'EOS2014-M', what: 'the same handbook', readHow: 'memory' },
  {
    id: 'IFRA-M',
    what: 'IFRA Standards (lip products are category 1)',
    readHow: 'memory; no numbers used',
  },
  {
    id: 'HMPC-COMFREY',
    what: 'EMA/HMPC summary for the public, comfrey root (EMA/HMPC/333915/2015)',
    readHow: 'read',
  },
  { id: 'HMPC-M', what: 'other EMA/HMPC herbal monographs', readHow: 'memory' },
  {
    id: 'NFSA-COMFREY',
    what: 'national food-safety authority risk profile, Symphytum officinale extracts (2012)',
    readHow: 'read',
  },
  {
    id: 'NFSA-ARNICA',
    what: 'national food-safety authority risk profile, Arnica montana flower extract (2012)',
    readHow: 'read: opening only',
  },
  {
    id: 'TR-ARNICA',
    what: 'herb seller and herb reference pages on arnica cautions',
    readHow: 'read: weak kind of source',
  },
  {
    id: 'HERB-NOTE',
    what: "a herbal college's note on helichrysum",
    readHow: 'read: weak kind of source',
  },
  {
    id: 'WHO-EPO',
    what: 'WHO monograph on evening primrose oil',
    readHow: 'read: a forum copy; quoted only in a comment',
  },
  {
    id: 'MANGO12',
    what: 'J. Am. Oil Chem. Soc. 89 (2012) 1567, mango kernel fat of four varieties',
    readHow: 'read: abstract',
  },
  {
    id: 'MANGO9',
    what: 'paper on the triglyceride composition of mango kernel fat, nine varieties',
    readHow: 'read: abstract',
  },
  {
    id: 'MANGO-IR',
    what: 'conference paper on Iranian mango seed kernel oil',
    readHow: 'read: abstract',
  },
  {
    id: 'PKO-J',
    what: 'J. Oil Palm Res. 25 (2013) 245, palm kernel and its products',
    readHow: 'read: abstract',
  },
  {
    id: 'ARS-MEADOW',
    what: 'USDA ARS abstract, processing conditions and meadowfoam press oil (2002)',
    readHow: 'read',
  },
  {
    id: 'FNS2012',
    what: 'Food Nutr. Sci. 3 (2012) no. 12, almond oil stability and alpha-tocopherol',
    readHow: 'read: abstract',
  },
  {
    id: 'KOKUM-E',
    what: "encyclopedia article on kokum butter, citing an extractors' handbook of 2009",
    readHow: 'read',
  },
  {
    id: 'KOKUM-91',
    what: 'J. Am. Oil Chem. Soc. 68 (1991) 726, as quoted on a trade page',
    readHow: 'read second-hand',
  },
  {
    id: 'MURU-E',
    what: 'encyclopedia article on murumuru fat',
    readHow: 'read',
  },
  {
    id: 'MURU-PC',
    what: 'trade-magazine review of natural butters',
    readHow: 'read: excerpt',
  },
  {
    id: 'ENCY',
    what: 'general encyclopedia articles (candelilla, jojoba, soybean and safflower oil)',
    readHow: 'read',
  },
  {
    id: 'ICC-VCO',
    what: 'coconut-community standard for virgin coconut oil, as repeated by producers',
    readHow: 'read',
  },
  {
    id: 'COCO-TR',
    what: 'producer sheet repeating Codex coconut-oil limits',
    readHow: 'read',
  },
  {
    id: 'GRAPE-IT',
    what: 'Italian technical sheet for grapeseed oil (legal limits)',
    readHow: 'read',
  },
  { id: 'CAST-BP', what: 'trade sheets, castor oil BP grade', readHow: 'read' },
  { id: 'HAZ-TR', what: 'trade sheets, hazelnut oil', readHow: 'read' },
  { id: 'SES-TR', what: 'trade pharmacy note, sesame oil', readHow: 'read' },
  {
    id: 'SOY-TR',
    what: 'one refined soybean oil specification',
    readHow: 'read',
  },
  { id: 'PALM-TR', what: 'trade sheet, refined palm oil', readHow: 'read' },
  { id: 'JOJ-TR', what: 'trade sheet, jojoba oil', readHow: 'read' },
  { id: 'LAN-TR', what: 'teaching page on wool fat', readHow: 'read' },
  {
    id: 'NM085090-M',
    what: 'Moroccan standard NM 08.5.090, argan oil',
    readHow: 'memory',
  },
  {
    id: 'GB11765-M',
    what: 'Chinese standard GB/T 11765, oil-tea camellia seed oil',
    readHow: 'memory',
  },
  { id: 'ISO3033-M', what: 'ISO 3033, spearmint oil', readHow: 'memory' },
  { id: 'ISO3053-M', what: 'ISO 3053, grapefruit oil', readHow: 'memory' },
  { id: 'ISO3520-M', what: 'ISO 3520, bergamot oil', readHow: 'memory' },
  { id: 'ISO3757-M', what: 'ISO 3757, patchouli oil', readHow: 'memory' },
  { id: 'ISO4730-M', what: 'ISO 4730, tea tree oil', readHow: 'memory' },
  { id: 'ISO4731-M', what: 'ISO 4731, geranium oil', readHow: 'memory' },
  { id: 'ISO4733-M', what: 'ISO 4733, cardamom oil', readHow: 'memory' },
  { id: 'ISO9842-M', what: 'ISO 9842, rose oil', readHow: 'memory' },
  { id: 'ISO16928-M', what: 'ISO 16928, ginger oil', readHow: 'memory' },
  {
    id: 'HB-M',
    what: 'handbooks of oil, wax and essential-oil properties in general (AOCS physical and chemical characteristics; pharmaceutical excipients; supplier data)',
    readHow: 'memory: plausible, not exact',
  },
  {
    id: 'NIST-M',
    what: 'NIST Handbook 44 appendix C; international yard and pound agreement 1959',
    readHow: 'the exact definitions are from memory; the rounded results were read in unit pages',
  },
  {
    id: 'LIPIDS80-M',
    what: 'Lipids 15 (1980) 379: relative oxidation rates 1 : 10.3 : 21.6 of 18:1, 18:2, 18:3 (the Cox value weights)',
    readHow: 'memory',
  },
  {
    id: 'DERIVED',
    what: 'arithmetic from atomic masses or from a formula read here',
    readHow: 'computed for this table',
  },
  { id: 'CP', what: 'common practice, no source', readHow: 'no source' },
] as const;

export type SourceId = (typeof sources)[number]['id'];

export const sourceIds: readonly SourceId[] = sources.map(({ id }) => id);
