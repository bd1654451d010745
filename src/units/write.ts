/** A number for people: four significant digits, no digits of the integer part dropped, no trailing zeros. */
export function writeNumber(value: number): string {
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size >= 1e15 || size < 1e-6) return value.toExponential(3).replace(/\.?0+e/, 'e');
  const decimals = Math.min(12, Math.max(0, 3 - Math.floor(Math.log10(size))));
  const text = value.toFixed(decimals);
  return decimals > 0 ? text.replace(/\.?0+$/, '') : text;
}
