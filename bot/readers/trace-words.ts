import { wordsOf } from './word-list.ts';
/** Words that ask for a trace by themselves. */
export const traceCues = wordsOf(
  'recipients recipient whereabouts trace traced tracing traces traceability recall recalls recalled recalling affected track tracking tracked',
);

/** One of these has to be there, or the words above. */
export const traceWeakCues =
  wordsOf(`batches where's who's which where who whom what what's went used uses use using contain contains containing whats bad call put made make
  holds hold come came goes go got has have out back withdraw bad customers customer people shops names name rest others other give given gave away take takes taking taken drawn drew inside landed anyone anybody someone get became become anything sold buyers takers with does`);

/** Words of such a question that ask for nothing more. */
export const traceWords: ReadonlySet<string> = new Set([
  ...traceCues,
  ...traceWeakCues,
  ...wordsOf(`did do does is are was were the a an of from with in into on to for by at it its this that those these them they there
  batch batches lot lots tin tins jar jars pot pots stick sticks tube tubes balm balms salve salves recipe recipes product products
  ingredient ingredients everything every all any each go gone going been ever everyone everybody anyone anybody people person received receive
  us ours received something buyers clients friends give giving places schools pupils someone somebody get become becomes of what up warn warned inform informed called calling pull pulled must there's told it house kitchen door building hands far left world away our have got sold given gave bought buy taken took ended up still now so far today sheet sheets list report pdf print printed printable paper please can you me us we our
  how many much number and or also find show tell need needs know notify told inform warn back forward history origin source sources
  drew drawn draw draws yet so anything something since poured pour maker makers wax oil butter herb turned out rancid contaminated mouldy moldy faulty off wrong not no good recall-sheet
  should shops shop stall fair fairs market customers customer holders holder holding where's who's what's which's ones one inside
  end ends up landed turned turn turns sitting sits finish finished lot's were wherever exactly currently already anywhere somewhere else list gift gifts neighbours lots' trace-back step steps full last latest supplier supplier's suppliers wants warns warned warning phoned rang rung wrote letter mailed emailed calls callback health inspector office lady man says said asks asked dodgy suspect suspicious problem please same story same thing track tracked tracking follow followed`),
]);
