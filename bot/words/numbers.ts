/** Grams as the scale shows them: one decimal for a step of 0.1 g. */
export const atStep = (grams: number, decimals: number): string => grams.toFixed(decimals);

/** Digits that a number holds for certain. */
const certainDigits = 15;

/** Without zeros at the end of what stands after the point. */
const shortened = (digits: string): string => {
  if (!digits.includes('.')) return digits;
  let end = digits.length;
  while (digits[end - 1] === '0') end -= 1;
  return digits.slice(0, digits[end - 1] === '.' ? end - 1 : end);
};

/** A number for reading: at most `decimals`, no trailing zeros, no exponent. */
export const plain = (value: number, decimals = 2): string => {
  const digits = value.toFixed(decimals);
  const text = digits.length > certainDigits ? String(Number(digits)) : shortened(digits);
  return text === '-0' ? '0' : text;
};

/** A number with enough digits to be useful, big or small: 0.0333, 14.8, 1250. */
export const readable = (value: number): string => {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  return plain(value, Math.min(8, Math.max(0, (size < 0 ? 2 : 3) - size)));
};

/** Three telling digits, for remarks: 0.589, 14.8, 371. */
export const brief = (value: number): string =>
  value === 0 ? '0' : plain(value, Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))))));

export const percentText = (percent: number): string => `${plain(percent, percent < 1 ? 2 : 1)} %`;
