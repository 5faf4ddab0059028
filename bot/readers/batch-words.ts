import type { Trouble } from '../answer.ts';

export const pourExample = 'poured 24 tins of Fernlea hand balm today';

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));

/** Any of these, or a lot code, has to be in a message about a batch. */
export const batchCues =
  `poured pouring pour pours filled produced manufactured compounded blended mixed production made batch batches correct correction fix amend change gave given give donated handed sold used finished keep kept retain retention sample returned
  waste out forgot forgotten managed popped shared stole stolen free restocked remelted back threw thrown binned wasted discarded discard dispose scrap destroy destroyed dropped looks look looked smells checked note notes picture pictures photo photos empty gone left looks went put set aside sent posted delivered lent often times did done prepared turned knocked cooked whipped cast fell mailed shipped ran banged churned`.split(
    /\s+/,
  );

/** Words around a pour that ask for nothing more. */
export const pourWords = words(`
  poured pouring pour made make manufactured compounded filled fill weighed weigh weighed-out out yield yielded net total came bath melted heated wax at about into by us just now again another
  more second batch batches today yesterday day lot lots number with from using used and then it them all together got we i tins each full hot temperature temp degrees were was this that
  called code recipe version loss no lids ah logged not yet written evening morning afternoon night before did done record recorded log enter note add new finished been write down produced cast last on same past date ago hour hours minute minutes lunch breakfast dinner supper break before after came come out our latest already finally actually quickly slowly carefully nicely successfully luckily happily also too only just still once really take takes taking make makes making expired managed completed double triple all same anyway even though knowingly prepared turned knocked ran banged churned off whipped up cooked cast lesson class group team pupils students third first next as book please write entered enter put every each`);

/** Words around tins that went somewhere, where no verb says so. */
export const goesWords = words(`
  also too as well already another more and then please today again of the our my all tins free gift gifts present presents prize prizes reward treat favour thank-you off out go went extra further it now yesterday batch lot for last rest left remaining sale return or swap loan trial commission consignment credit whats by post parcel mail boat bus van train courier ferry bike car`);

export const listWords = words(`
  ones often times time when overview everything up were been each batch batches list listing show see view all our my the what which have we do got book record records written down are there make been season made poured far left open still last latest recent recently of so with tins
  any pours pour did past current every everything in stock how many need needs due look looks looking quality check checks a an did between from and to during was had anything please that it them one produced`);

export const showWords = words(`
  version versions old again all batch show see view open display details detail about what is in was of the how many much tins left are do we have status look up find tell me info made when which
  fair market sale shop event class workshop count number tally sell leave leaves makes recipe lots used went into its best before date expire expiry was were did poured pour day filled full already still any there got us for out gone over remaining last latest newest most recent yield bath temperature temperatures hot weight weighed loss note notes name kind size big given give gave away sold container containers at used made makers`);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const whatPoured = missing(
  `What was poured? Name a recipe or write out its lines, for example "${pourExample}".`,
);
export const howManyPoured = missing(`How many tins were poured? For example "${pourExample}".`);
export const whichBatch = missing(
  'Which batch? Say its code, for example "batch 26-KIVO"; "list batches" shows them all.',
);
export const whatWrong = missing(
  'What was wrong with it? For example "correct 26-KIVO: it was 22 tins, two spilled".',
);
export const howManyGone = missing('How many? For example "gave 6 tins of 26-KIVO to the spring fair".');

/** A batch goes out in its tins, and not by weight. */
export const howManyTins = (lot: string): Trouble =>
  missing(
    `A batch is counted in tins, not by weight. How many tins of ${lot} was it? For example "threw away 2 tins of ${lot}".`,
  );

export const notInPour = (said: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I could not place "${said.slice(0, 4).join(' ')}" in that. Put remarks after "note:", for example "${pourExample}, note: set slowly".`,
});
