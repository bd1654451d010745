/** Letters to change, add or leave out to make one text the beginning of another. */
function distanceToBeginning(written: string, word: string): number {
  let row = Array.from({ length: word.length + 1 }, (_, j) => j);
  for (const [i, letter] of [...written].entries()) {
    const next = [i + 1];
    for (let j = 0; j < word.length; j++) next.push(Math.min(row[j]! + (word[j] === letter ? 0 : 1), row[j + 1]! + 1, next[j]! + 1));
    row = next;
  }
  return Math.min(...row);
}

/** A hint at the words, at most three, that a text most likely stands for: the nearest. `spellings` gives the ways to write one. */
export function nearestHint<Word extends string>(written: string, words: readonly Word[], spellings: (word: Word) => readonly string[]): string | undefined {
  const text = written.toLowerCase();
  const distances = words.map((word) => Math.min(...spellings(word).map((spelling) => distanceToBeginning(text, spelling.toLowerCase()))));
  const least = Math.min(...distances);
  if (least > text.length / 3) return undefined;
  const near = words.filter((_, i) => distances[i] === least).slice(0, 3);
  return `did you mean ${near.map((word) => `'${word}'`).join(' or ')}?`;
}
