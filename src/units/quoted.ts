/** A value as it is quoted in a problem: short, and never throwing. */
export function quoted(value: unknown): string {
  let text: string | undefined;
  try {
    text = value === undefined ? 'nothing' : typeof value === 'object' || typeof value === 'string' ? JSON.stringify(value) : (value as number).toString();
  } catch {
    // A value that cannot be written, such as one that holds itself.
  }
  text ??= 'an object';
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
