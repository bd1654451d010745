/** A value as it is quoted in a problem: short, and never throwing. */
export function quoted(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'a list' : 'an object';
  if (typeof value === 'symbol' || typeof value === 'function') return `a ${typeof value}`;
  const text = typeof value === 'string' ? JSON.stringify(value.slice(0, 60)) : `${value as number}`;
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
