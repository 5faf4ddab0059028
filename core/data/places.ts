/**
 * Which IANA zone a place keeps. The zones' own cities ("Lisbon" of Europe/Lisbon) are known without this table; here are
 * further towns and countries with one zone, by zone. The country of each zone is in the tz database's zone1970.tab; which
 * town lies in which country is general knowledge (memory).
 */
export const placesByZone: Readonly<Record<string, string>> = {
  'Europe/Lisbon': 'porto, oporto, braga, coimbra, faro, evora, aveiro, setubal, mainland portugal',
  'Atlantic/Azores': 'azores, ponta delgada',
  'Atlantic/Madeira': 'funchal',
  'Atlantic/Canary': 'canaries, canary islands, las palmas, tenerife',
  'Europe/Madrid':
    'barcelona, seville, sevilla, bilbao, malaga, zaragoza, mallorca, palma, alicante, mainland spain',
  'Europe/London':
    'uk, u.k., united kingdom, britain, great britain, england, scotland, wales, northern ireland, manchester, liverpool, leeds, sheffield, bristol, edinburgh, glasgow, cardiff, swansea, belfast, nottingham, leicester, brighton, norwich, oxford, plymouth, exeter, york, aberdeen, inverness',
  'Europe/Dublin': 'ireland, cork, galway, limerick, waterford',
  'Europe/Paris':
    'france, lyon, marseille, toulouse, nantes, lille, bordeaux, strasbourg, rennes, montpellier',
  'Europe/Brussels': 'belgium, antwerp, ghent, bruges, liege, leuven',
  'Europe/Amsterdam':
    'netherlands, the netherlands, holland, rotterdam, utrecht, the hague, eindhoven, groningen',
  'Europe/Berlin':
    'germany, hamburg, munich, muenchen, cologne, koeln, frankfurt, stuttgart, leipzig, dresden, bremen, hanover, hannover, nuremberg, freiburg, bonn',
  'Europe/Vienna': 'austria, graz, linz, salzburg, innsbruck',
  'Europe/Zurich': 'switzerland, geneva, basel, bern, lausanne, lucerne',
  'Europe/Rome': 'italy, milan, naples, turin, florence, venice, bologna, genoa, palermo, verona',
  'Europe/Copenhagen': 'denmark, aarhus, odense, aalborg',
  'Europe/Stockholm': 'sweden, gothenburg, malmo, uppsala',
  'Europe/Oslo': 'norway, bergen, trondheim, stavanger, tromso',
  'Europe/Helsinki': 'finland, tampere, turku, oulu, espoo',
  'Atlantic/Reykjavik': 'iceland',
  'Europe/Warsaw': 'poland, krakow, cracow, gdansk, wroclaw, poznan, lodz',
  'Europe/Prague': 'czechia, czech republic, brno, ostrava',
  'Europe/Bratislava': 'slovakia, kosice',
  'Europe/Budapest': 'hungary, debrecen',
  'Europe/Ljubljana': 'slovenia, maribor',
  'Europe/Zagreb': 'croatia, rijeka, zadar',
  'Europe/Belgrade': 'serbia, novi sad',
  'Europe/Sofia': 'bulgaria, plovdiv, varna',
  'Europe/Bucharest': 'romania, cluj, timisoara, iasi',
  'Europe/Athens': 'greece, thessaloniki, patras, heraklion',
  'Asia/Nicosia': 'cyprus, limassol, larnaca',
  'Europe/Malta': 'valletta',
  'Europe/Istanbul': 'turkey, turkiye, ankara, izmir, antalya',
  'Europe/Tallinn': 'estonia, tartu',
  'Europe/Riga': 'latvia',
  'Europe/Vilnius': 'lithuania, kaunas',
  'Europe/Kiev': 'ukraine, kyiv, lviv, odesa, kharkiv',
  'Africa/Casablanca': 'morocco, rabat, marrakesh, marrakech, fez',
  'Africa/Cairo': 'egypt, alexandria',
  'Africa/Johannesburg': 'south africa, cape town, durban, pretoria',
  'Africa/Lagos': 'nigeria, abuja',
  'Africa/Nairobi': 'kenya, mombasa',
  'Africa/Accra': 'ghana, kumasi',
  'Asia/Jerusalem': 'israel, tel aviv, haifa',
  'Asia/Dubai': 'united arab emirates, uae, abu dhabi',
  'Asia/Calcutta':
    'india, kolkata, mumbai, bombay, delhi, new delhi, bangalore, bengaluru, chennai, pune, kochi',
  'Asia/Katmandu': 'nepal, kathmandu',
  'Asia/Colombo': 'sri lanka, kandy',
  'Asia/Bangkok': 'thailand, chiang mai, phuket',
  'Asia/Saigon': 'vietnam, ho chi minh city, hanoi',
  'Asia/Rangoon': 'myanmar, yangon',
  'Asia/Kuala_Lumpur': 'malaysia, penang',
  'Asia/Manila': 'philippines, cebu',
  'Asia/Shanghai': 'china, beijing, shenzhen, guangzhou, chengdu',
  'Asia/Tokyo': 'japan, osaka, kyoto, yokohama, sapporo, nagoya',
  'Asia/Seoul': 'south korea, busan',
  'Australia/Sydney': 'canberra, wollongong',
  'Australia/Melbourne': 'geelong, ballarat',
  'Australia/Brisbane': 'queensland, gold coast, cairns',
  'Australia/Perth': 'fremantle',
  'Australia/Hobart': 'tasmania, launceston',
  'Pacific/Auckland': 'new zealand, christchurch, dunedin, wellington',
  'Pacific/Honolulu': 'hawaii',
  'America/New_York':
    'eastern time, us eastern, philadelphia, washington dc, washington d.c., atlanta, miami, charlotte, pittsburgh, baltimore, cleveland, asheville, orlando',
  'America/Chicago':
    'central time, us central, houston, dallas, austin, minneapolis, milwaukee, new orleans, nashville, memphis, st louis',
  'America/Denver': 'mountain time, us mountain, salt lake city, albuquerque, santa fe, colorado springs',
  'America/Los_Angeles':
    'pacific time, us pacific, california, san francisco, seattle, san diego, sacramento, oakland, las vegas',
  'America/Phoenix': 'arizona, tucson',
  'America/Anchorage': 'alaska, fairbanks',
  'America/Detroit': 'ann arbor, grand rapids',
  'America/Toronto': 'ottawa, montreal, quebec, quebec city, kingston ontario',
  'America/Halifax': 'nova scotia',
  'America/St_Johns': 'newfoundland',
  'America/Vancouver': 'british columbia',
  'America/Edmonton': 'calgary, alberta',
  'America/Winnipeg': 'manitoba',
  'America/Mexico_City': 'guadalajara, puebla, oaxaca',
  'America/Sao_Paulo': 'rio, rio de janeiro, brasilia, curitiba',
  'America/Buenos_Aires': 'argentina, rosario, mendoza',
  'America/Santiago': 'valparaiso',
  'America/Bogota': 'colombia, medellin',
  'America/Lima': 'peru, cusco',
  'America/Montevideo': 'uruguay',
};

/** Names that may be meant in more than one zone, each with what to say instead. */
export const ambiguousPlaces: Readonly<Record<string, readonly (readonly [say: string, zone: string])[]>> = {
  portugal: [
    ['Lisbon', 'Europe/Lisbon'],
    ['the Azores', 'Atlantic/Azores'],
  ],
  spain: [
    ['Madrid', 'Europe/Madrid'],
    ['the Canaries', 'Atlantic/Canary'],
  ],
  portland: [
    ['America/Los_Angeles (Oregon)', 'America/Los_Angeles'],
    ['America/New_York (Maine)', 'America/New_York'],
  ],
  birmingham: [
    ['London (England)', 'Europe/London'],
    ['Chicago (Alabama)', 'America/Chicago'],
  ],
  cambridge: [
    ['London (England)', 'Europe/London'],
    ['New York (Massachusetts)', 'America/New_York'],
  ],
  newcastle: [
    ['London (England)', 'Europe/London'],
    ['Sydney (New South Wales)', 'Australia/Sydney'],
  ],
  'san jose': [
    ['Los Angeles (California)', 'America/Los_Angeles'],
    ['Costa Rica', 'America/Costa_Rica'],
  ],
  'san juan': [
    ['Puerto Rico', 'America/Puerto_Rico'],
    ['Buenos Aires (Argentina)', 'America/Buenos_Aires'],
  ],
  valencia: [
    ['Madrid (Spain)', 'Europe/Madrid'],
    ['Caracas (Venezuela)', 'America/Caracas'],
  ],
  cordoba: [
    ['Madrid (Spain)', 'Europe/Madrid'],
    ['Buenos Aires (Argentina)', 'America/Buenos_Aires'],
  ],
  granada: [
    ['Madrid (Spain)', 'Europe/Madrid'],
    ['Managua (Nicaragua)', 'America/Managua'],
  ],
  hamilton: [
    ['Toronto (Ontario)', 'America/Toronto'],
    ['Auckland (New Zealand)', 'Pacific/Auckland'],
  ],
  kingston: [
    ['Jamaica', 'America/Jamaica'],
    ['Toronto (Ontario)', 'America/Toronto'],
  ],
  georgia: [
    ['New York (the US state)', 'America/New_York'],
    ['Tbilisi (the country)', 'Asia/Tbilisi'],
  ],
  victoria: [
    ['Vancouver (British Columbia)', 'America/Vancouver'],
    ['Melbourne (the Australian state)', 'Australia/Melbourne'],
  ],
  texas: [
    ['Chicago (most of it)', 'America/Chicago'],
    ['Denver (El Paso)', 'America/Denver'],
  ],
};

/** Countries and abbreviations too wide for one zone: a city is asked for, with these as examples. */
export const widePlaces: Readonly<Record<string, readonly string[]>> = {
  us: ['New York', 'Chicago', 'Denver', 'Los Angeles'],
  usa: ['New York', 'Chicago', 'Denver', 'Los Angeles'],
  america: ['New York', 'Chicago', 'Denver', 'Los Angeles'],
  'united states': ['New York', 'Chicago', 'Denver', 'Los Angeles'],
  canada: ['Toronto', 'Winnipeg', 'Vancouver'],
  australia: ['Sydney', 'Brisbane', 'Adelaide', 'Perth'],
  brazil: ['Sao Paulo', 'Manaus'],
  mexico: ['Mexico City', 'Tijuana'],
  russia: ['Moscow', 'Yekaterinburg', 'Vladivostok'],
  indonesia: ['Jakarta', 'Makassar'],
  chile: ['Santiago', 'Punta Arenas'],
  europe: ['Lisbon', 'Paris', 'Athens'],
  africa: ['Lagos', 'Cairo', 'Nairobi'],
  asia: ['Dubai', 'Singapore', 'Tokyo'],
  est: ['New York', 'Sydney'],
  edt: ['New York'],
  cst: ['Chicago', 'Shanghai'],
  cdt: ['Chicago'],
  mst: ['Denver', 'Phoenix'],
  mdt: ['Denver'],
  pst: ['Los Angeles', 'Manila'],
  pdt: ['Los Angeles'],
  cet: ['Paris', 'Lagos'],
  cest: ['Paris', 'Berlin'],
  eet: ['Athens', 'Cairo'],
  wet: ['Lisbon'],
  bst: ['London', 'Dhaka'],
  ist: ['Dublin', 'Kolkata', 'Jerusalem'],
  aest: ['Sydney', 'Brisbane'],
};
