/** A record without the entries that are written but left undefined. */
export function stated<Name extends string>(entries: { readonly [N in Name]?: number | undefined }): { readonly [N in Name]?: number } {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as { readonly [N in Name]?: number };
}
