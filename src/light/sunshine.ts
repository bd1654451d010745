/** How much longer than the day, in s, sunshine may have been read: the sun is seen a little before it rises, and recorders are read by eye. */
const tolerated = 900;

/** Hours of sunshine as they count, at most the length of the day (both s); refuses more. */
export function sunshineTaken(sunshine: number, daylight: number, refuse: (path: string, expected: string, received: string, hint: string) => never): number {
  if (sunshine > daylight + tolerated) {
    refuse('sunshine', `at most the length of the day, ${(daylight / 3600).toFixed(2)} h`, `${(sunshine / 3600).toFixed(2)} h`, 'the sum of a month is to be divided by its days');
  }
  return Math.min(sunshine, daylight);
}
