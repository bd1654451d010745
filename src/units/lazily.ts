/** What `make` gives, made at the first call and kept. */
export function lazily<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
