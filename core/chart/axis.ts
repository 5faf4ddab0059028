/** A straight-line scale from figures to places in the picture. */
export interface Scale {
  readonly domain: readonly [number, number];
  readonly at: (value: number) => number;
}

export const scaleOf = (domain: readonly [number, number], range: readonly [number, number]): Scale => {
  const perUnit = (range[1] - range[0]) / (domain[1] - domain[0]);
  return { domain, at: (value) => range[0] + (value - domain[0]) * perUnit };
};

const roundSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000] as const;

/** Smallest round step of which at most `most` fit into `span`. */
export const stepFor = (span: number, most: number): number =>
  roundSteps.find((step) => span / step <= most) ?? span / most;

/** Whole multiples of `step` from the first figure of the domain to the last. */
export const ticksOf = ([low, high]: readonly [number, number], step: number): readonly number[] => {
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step);
};

export const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
export const celsiusOf = (degreesF: number): number => (degreesF - 32) / 1.8;

/** A whole number with a real minus sign. */
export const whole = (value: number): string => {
  const rounded = Math.round(value);
  return rounded < 0 ? `\u2212${-rounded}` : `${Math.abs(rounded)}`;
};
