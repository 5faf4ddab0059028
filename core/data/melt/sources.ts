/**
 * Where the figures of the melting model come from, and how they were seen. "read" means an abstract, excerpt or page
 * was seen in a public copy; "memory" means the figure was recalled and must be looked up before anyone treats it as
 * exact. A figure without any source says so.
 */
export const meltSources = [
  {
    id: 'S-TAG',
    what: 'doctoral thesis, Delft 1990, on liquid and multiple-solid equilibria in fats, and Fat Crystal Networks (2005): melting points and heats of triglycerides',
    readHow: 'memory, confidence medium',
  },
  {
    id: 'S-HANDB',
    what: 'physical-constant handbooks: alkanes, acids, alcohols',
    readHow: 'memory, confidence medium-high',
  },
  {
    id: 'S-HPO',
    what: 'Physical Chemistry of Foods (textbook), figure 15.22 after a Wageningen thesis of 1998: hydrogenated palm oil in sunflower oil',
    readHow: 'read: excerpt',
  },
  {
    id: 'S-SSS',
    what: 'J. Chem. Eng. Data 50 (2005) 1624, thermal properties of tristearin',
    readHow: 'read: abstract',
  },
  {
    id: 'S-CB1',
    what: 'chocolate handbooks: triglycerides of cocoa butters by origin',
    readHow: 'memory',
  },
  {
    id: 'S-CBTAG',
    what: 'poster table: triglycerides of one cocoa butter and its acetone fractions',
    readHow: 'read: excerpt',
  },
  {
    id: 'S-CBSFC',
    what: 'Food Chemistry 62 (1998) 73, review of cocoa butter and alternative fats: solid fat by origin, tempered',
    readHow: 'memory, confidence medium-high',
  },
  {
    id: 'S-CBPOLY',
    what: 'encyclopedia article on cocoa butter: melting points of the six crystal forms',
    readHow: 'read',
  },
  {
    id: 'S-CNOSFC',
    what: 'oil handbooks: coconut oil solid fat by pulsed NMR',
    readHow: 'memory, medium',
  },
  {
    id: 'S-PKOSFC',
    what: 'oil handbooks and Malaysian surveys: palm kernel oil solid fat',
    readHow: 'memory, medium',
  },
  {
    id: 'S-POSFC',
    what: 'Malaysian palm oil survey (1980s, widely reprinted): palm oil solid fat',
    readHow: 'memory, confidence high',
  },
  {
    id: 'S-CODEX',
    what: 'Codex Stan 210 fatty-acid ranges as reprinted in Nutrients 11 (2019) 2008, table 4',
    readHow: 'read: table',
  },
  {
    id: 'S-BELITZ',
    what: 'Food Chemistry (textbook), chapter 14, tables 14.8 and 14.9',
    readHow: 'read: excerpt',
  },
  {
    id: 'S-SHEA',
    what: 'MSc thesis, New Brunswick 2011, quality of West African shea butter',
    readHow: 'read: excerpt',
  },
  {
    id: 'S-MANGO',
    what: 'Bioresource Technology 92 (2004) 71, mango seed almond fat and its mixtures with cocoa butter',
    readHow: 'read: abstract',
  },
  {
    id: 'S-KOKUMW',
    what: 'encyclopedia article on kokum butter',
    readHow: 'read',
  },
  {
    id: 'S-BWMP',
    what: 'reference pages: melting point of beeswax',
    readHow: 'read',
  },
  {
    id: 'S-BWGMS',
    what: 'Gels 10 (2024) 214, beeswax and glycerol monostearate oleogels',
    readHow: 'read: abstract',
  },
  {
    id: 'S-BWMEM',
    what: 'classic analyses of beeswax: esters, hydrocarbons, free acids',
    readHow: 'memory',
  },
  {
    id: 'S-CLXCOMP',
    what: 'cargo reference page: make-up and melting point of candelilla wax',
    readHow: 'read',
  },
  {
    id: 'S-CRNMP',
    what: 'practitioner page and lipstick wax table: melting point of carnauba wax',
    readHow: 'read',
  },
  {
    id: 'S-RBW',
    what: 'rice bran wax in bulk and in oil compared with carnauba and candelilla (J. Am. Oil Chem. Soc. 2009; journal and year from memory)',
    readHow: 'read: abstract',
  },
  {
    id: 'S-CGC',
    what: 'plant wax crystal networks and oil binding in canola oil (J. Am. Oil Chem. Soc. 2014; journal and year from memory)',
    readHow: 'read: abstract',
  },
  {
    id: 'S-DOAN',
    what: 'oil-gelling properties of natural waxes in rice bran oil (2015; year from memory)',
    readHow: 'read: abstract',
  },
  {
    id: 'S-SFW',
    what: 'J. Am. Oil Chem. Soc. 89 (2012) 639, organogel formation of soybean oil with waxes',
    readHow: 'read: abstract and the institute summary',
  },
  {
    id: 'S-HARDFAT',
    what: 'Food Research International 121 (2019) 900, candelilla wax with fully hydrogenated fats in oleogels',
    readHow: 'read: abstract',
  },
  {
    id: 'S-RBWSTICK',
    what: 'J. Oleo Sci., doi 10.5650/jos.ess19058, rice bran wax with long alcohols',
    readHow: 'read: abstract',
  },
  {
    id: 'S-WAXBIN',
    what: 'Food Research International 2016, doi 10.1016/j.foodres.2016.08.003, binary wax blends in soybean oil',
    readHow: 'read: abstract',
  },
  {
    id: 'S-OLEOMEM',
    what: 'wax oleogel papers of 2009-2021 as remembered',
    readHow: 'memory, confidence low',
  },
  {
    id: 'S-POCKET',
    what: 'maker forum recipe: a 31.5 % beeswax stick that does not melt in a pocket',
    readHow: 'read, common practice',
  },
  {
    id: 'S-TEXAS',
    what: 'maker forum thread: a 20 % beeswax balm that fails in a hot climate',
    readHow: 'read, common practice',
  },
  {
    id: 'S-FORUM',
    what: 'maker forum thread, 2011: candelilla against beeswax',
    readHow: 'read, common practice',
  },
  {
    id: 'S-WAXQ',
    what: 'practitioner ingredient page: candelilla against beeswax',
    readHow: 'read, common practice',
  },
  {
    id: 'S-DENS',
    what: 'pharmacopoeia and oil handbooks: densities and melting dilation',
    readHow: 'memory, confidence medium',
  },
  {
    id: 'FA-RULE',
    what: "fatty-acid rule (core/melt/fatty-acids.ts) on the library's typical profile",
    readHow: 'computed',
  },
  { id: 'MOLAR', what: 'molar mass from the composition', readHow: 'computed' },
  {
    id: 'OWN',
    what: 'own estimate or trimming, no source',
    readHow: 'no source',
  },
  { id: 'CP', what: 'common practice, no source', readHow: 'no source' },
] as const;

export type MeltSourceId = (typeof meltSources)[number]['id'];

export const meltSourceIds: readonly MeltSourceId[] = meltSources.map(({ id }) => id);

/**
 * How a figure came here. `fitted` and `trimmed` figures were set so that the model meets a measurement, which then
 * proves nothing about it; `definition` is the yardstick itself.
 */
export type MeltHow =
  | 'read'
  | 'memory'
  | 'fitted'
  | 'trimmed'
  | 'estimate'
  | 'derived'
  | 'definition'
  | 'common-practice';

export type Confidence = 'low' | 'medium' | 'high';

/** What a row rests on; `note` says what a reader could not guess. */
export interface MeltBasis {
  readonly source: readonly [MeltSourceId, ...MeltSourceId[]];
  readonly how: MeltHow;
  readonly confidence: Confidence;
  readonly note?: string;
}
