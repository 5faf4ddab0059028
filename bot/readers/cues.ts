/** Words that ask for something by themselves: a sentence with one of them is never passed over as talk. */
export const cueWords: ReadonlySet<string> = new Set(
  `scale scaling rescale upscale downscale resize weigh make fill pour convert conversion translate nearest whole
  save store record show list rename delete remove restore revert versions history recipes update edit change
  infuse steep macerate cost costs price prices labour margin design invent suggest formulate recommend propose swap replace substitute melt survive
  nut nuts free vegan remind reminder reminders expire expires expired expiring overdue settings region units currency help commands workshop workshops masterclass class course people makers participants`.split(
    /\s+/,
  ),
);
