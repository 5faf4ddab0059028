/** Everyday English words one slip from an ingredient's name: typed alone they are never taken for it. */
export const everydayWords: ReadonlySet<string> = new Set(
  'clone close clover cloven cove favor favour favorite finger glove manage mangle narrow theme themed'.split(
    ' ',
  ),
);
