import type { Trouble } from '../answer.ts';

export const labelExample = 'label for Fernlea mint lip balm, 12 g, region us';
export const sheetExample = 'print labels for Fernlea mint lip balm, 24 round lids 40 mm';

export const labelCues =
  'label labels labelling labeling labelled labeled sticker stickers strip strips lids band bands etiquette etiquettes'.split(
    ' ',
  );

/** Words around a label that ask for nothing more. */
export const labelWords = new Set([
  ...labelCues,
  ...`inci print printing printable printed print-out printout make makes making made draw create design do does give show write set prepare need needs want new again ready
  for of on to in with and a an the my our us me it its this that these those them one each per every round circle circles circular small large lid lid-label
  tin tins jar jars pot pots tube tubes container containers top tops base bases bottom bottoms underside side sides around wrap wraps band bands
  sheet sheets front back page pages pdf paper a4 letter size sized sizes wide high tall across diameter height mm cm inch inches by x times
  net weight contents content fill filled wt copies copy set text wording what goes go stands stand must should has have say be is are there missing
  lack lacks needed required list full ingredient ingredients names name legal order rules rule law version region market sold sell selling for sale sale
  please how look like would will about same instead now then also too only just today number batch last latest newest recent poured pour lot date dates best before put 's
  lip balm balms salve salves recipe recipes product shop fair market stall craft group all everything whole version cut mark marks sheet labelled
  back front order descending falling legally writing piece pieces pcs diameter style names naming print-ready which words required that list say says state written write do does responsible person address contact blank blanks fill-in template country english french bilingual correct right proper email e-mail mail call information details facts what's maker address title was were listed ordered written website web site phone tel telephone number add use forgot oh its it's i'm we're sorry actually holds hold made on both wording sticky self-adhesive adhesive how many much side weighs weigh state if by under i live living based one going shops written has sell selling there way`.split(
    /\s+/,
  ),
]);

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const labelOfWhat = missing(
  `A label for what? Name a recipe or write one out, for example "${labelExample}" or "${sheetExample}".`,
);
export const labelOfPart = missing(
  `A label lists everything that is in the tin, so I need the whole recipe: "label for 20% beeswax, 30% shea butter, 50% olive oil, 12 g".`,
);
export const flatLabel = missing(
  'I make round labels for lids and strips that go round a tin. Say "strips for a tin 48 mm x 15 mm" (across and high), or "round labels 40 mm".',
);
