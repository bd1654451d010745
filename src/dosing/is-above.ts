/** Whether a number is above a limit by more than what the rounding of doubles adds: 0.3 of 1.5 L is not above 20 %. */
export const isAbove = (x: number, limit: number): boolean => x > limit * (1 + 1e-9);
