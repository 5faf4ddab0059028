/** One of these stands in every message about the bench; anything else is passed by at once. */
export const benchCues =
  `alcohol ethanol isopropanol isopropyl ipa spirit spirits disinfect disinfecting disinfected disinfection sanitise sanitize sanitising
  sanitizing sterilise sterilize sterilising sterilizing sterile hygiene clean cleaning cleaned wash washing fire burning flames flame smoking smoke burn burnt burned
  burns scald scalded scalding splashed splash tolerance tolerances tne short shortfall underfilled underweight underfill weighed weighs holds hold held declared labelled short
  labeled patch microwave mould mold mouldy moldy rancid bloom grainy smells rags rag cloths cracked broke broken shatter shattered shattering crack bath bain-marie
  gloves wipe wiping sore sick ill lid lids warm warming preheat heat cold dry drying crayons putty taste tastes disinfectant lightest lighter heaviest scent scents fragrance essential oils spilled spilt dripped white grey fuzz fuzzy furry fluff blister blistered spots full hand hands finger fingers arm face wet blisters extinguish skin`.split(
    /\s+/,
  );
