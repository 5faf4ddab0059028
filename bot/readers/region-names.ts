import type { Region } from '../../core/settings.ts';

/**
 * Countries and states by whose name a region is meant, in lower case. Members of the Union: Treaty on European Union,
 * article 52; states: US Code, title 4; provinces: Constitution Act 1867 of Canada and later; states and territories:
 * Commonwealth of Australia Constitution Act. Northern Ireland is left out: rules of two regions meet there.
 */
const byRegion: Readonly<Record<Region, string>> = {
  eu: 'eu|europe|european union|austria|belgium|bulgaria|croatia|cyprus|czechia|czech republic|denmark|estonia|finland|france|germany|greece|hungary|ireland|italy|latvia|lithuania|luxembourg|malta|netherlands|poland|portugal|romania|slovakia|slovenia|spain|sweden',
  uk: 'uk|gb|great britain|britain|england|scotland|wales|cornwall|devon|kent|sussex|yorkshire|birmingham|bristol|cardiff|edinburgh|glasgow|leeds|liverpool|london|manchester|sheffield',
  us: 'usa|u\\.s\\.|united states|america|alabama|alaska|arizona|arkansas|california|colorado|connecticut|delaware|florida|georgia|hawaii|idaho|illinois|indiana|iowa|kansas|kentucky|louisiana|maine|maryland|massachusetts|michigan|minnesota|mississippi|missouri|montana|nebraska|nevada|new hampshire|new jersey|new mexico|new york|north carolina|north dakota|ohio|oklahoma|oregon|pennsylvania|rhode island|south carolina|south dakota|tennessee|texas|utah|vermont|virginia|washington|west virginia|wisconsin|wyoming|states|boston|philadelphia|san francisco|seattle|chicago',
  ca: 'canada|alberta|british columbia|manitoba|new brunswick|newfoundland|nova scotia|ontario|prince edward island|quebec|saskatchewan|yukon|nunavut|montreal|ottawa|toronto|vancouver',
  au: 'australia|new south wales|queensland|south australia|tasmania|western australia|sydney|melbourne|brisbane|adelaide|canberra',
};

/** A region and the names it goes by, as alternatives of a pattern; longer names first where one holds another. */
export const regionNames: readonly (readonly [Region, string])[] = (
  ['au', 'ca', 'us', 'uk', 'eu'] as const
).map((region) => [region, byRegion[region]]);
