import { execFileSync, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const command = ['--import', 'tsx', 'src/cli.ts'];
const run = (...words: readonly string[]): string => execFileSync(process.execPath, [...command, ...words], { cwd: root, encoding: 'utf8' });
const failed = (words: readonly string[], input = ''): { readonly status: number | null; readonly stderr: string } => spawnSync(process.execPath, [...command, ...words], { cwd: root, encoding: 'utf8', input });

describe('the command line', { timeout: 30_000 }, () => {
  test('assesses a greenhouse for people and for programs', () => {
    expect(run('assess', 'docs/examples/teaching-garden.json')).toContain('What to weigh in');
    expect(JSON.parse(run('assess', 'docs/examples/teaching-garden.json', '--json'))).toHaveProperty('zones.2.name', 'potted basil');
  });

  test('names every calculation', () => {
    expect(run('list')).toMatch(/^vapourPressureDeficit {2,}Vapour pressure deficit/m);
    expect(run()).toContain('guttation run NAME');
  });

  // FAO-56, Table 2.3, 24 °C: 2.984 kPa.
  test('runs one, from pairs, from JSON and from standard input', () => {
    const words = ['run', 'saturationVapourPressure', '--json'];
    const given = { temperature: '24 °C', correlation: 'FAO-56' };
    const results = [
      run(...words, 'temperature=24 °C', 'correlation=FAO-56'),
      run(...words, JSON.stringify(given)),
      execFileSync(process.execPath, [...command, ...words], { cwd: root, encoding: 'utf8', input: JSON.stringify(given) }),
    ];
    for (const result of results) expect(JSON.parse(result)).toHaveProperty('saturationVapourPressure', expect.stringMatching(/^2\.98/));
    expect(run('run', 'saturationVapourPressure', 'temperature=24 °C')).toMatch(/^saturationVapourPressure: 2\.986 kPa$/m);
  });

  test.each([
    [['run', 'nonsense'], 2, "there is no calculation 'nonsense'"],
    [['run', 'vapourPressureDeficit', 'airTemperature'], 2, 'is not name=value'],
    [['run', 'vapourPressureDeficit', 'airTemperature=24', 'relativeHumidity=65'], 1, "did you mean '65 %'?"],
    [['assess', 'no-such-file.json'], 1, 'cannot read no-such-file.json'],
    [['assess', 'README.md'], 1, 'README.md is not JSON'],
    [['dance'], 2, 'guttation list'],
    [['list', '--loud'], 2, '--loud'],
  ])('%j ends with %i and says why', (words, status, text) => {
    const end = failed(words);
    expect(end.stderr).toContain(text);
    expect(end.status).toBe(status);
  });
});
