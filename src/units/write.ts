/** A number for people: four significant digits, no digits of the integer part dropped, no trailing zeros. */
export const writeNumber = (value: number): string => {
  const size = Math.abs(value);
  return String(size >= 1e4 && size < 1e15 ? Math.round(value) : Number(value.toPrecision(4)));
};
