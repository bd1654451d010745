/** What an example claims after `// =>`, held against what its code gives. */
import { runInNewContext } from 'node:vm';

/** Whether a number is the claimed one, to the digits printed; a remark may follow the claim, `…` says that digits were cut off. */
function isNumber(value: number, claim: string): boolean {
  const [, text, decimals = '', exponent = '0', cut] = /^(-?\d+(?:\.(\d+))?(?:e([+-]?\d+))?)(…)?(?![\w.])/.exec(claim) ?? [];
  if (text === undefined) return String(value) === claim;
  return Math.abs(value - Number(text)) <= (cut ? 1 : 0.5) * 10 ** (Number(exponent) - decimals.length) * (1 + 1e-9);
}

/** Whether a value is the claimed array or object, whose numbers are kept as text. */
function isAlike(value: unknown, claimed: unknown): boolean {
  if (typeof claimed === 'string' && claimed.startsWith('#')) return typeof value === 'number' && isNumber(value, claimed.slice(1));
  if (typeof claimed !== 'object' || claimed === null) return value === claimed;
  if (typeof value !== 'object' || value === null || Object.keys(value).join() !== Object.keys(claimed).join()) return false;
  return Object.entries(claimed).every(([key, one]) => isAlike((value as Record<string, unknown>)[key], one));
}

/** Whether a value is what the documentation writes. */
export function holds(value: unknown, claim: string): boolean {
  if (typeof value === 'number') return isNumber(value, claim);
  if (typeof value === 'string') return /^['"`]/.test(claim) ? claim === claim[0] + value + claim[0] : claim === value;
  const plain = typeof value === 'object' && value !== null && (Array.isArray(value) || value.toString === Object.prototype.toString);
  if (!plain) return String(value) === claim;
  const numbersAsText = claim.replaceAll(/('[^']*'|"[^"]*")|(?<![\w.])-?\d[\d.]*(?:e[+-]?\d+)?…?/g, (all, quoted) => (quoted === undefined ? `'#${all}'` : all));
  return isAlike(value, runInNewContext(`(${numbersAsText})`));
}
