import { fileURLToPath } from 'node:url';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';
import { arrows } from './arrows.js';
import { pure } from './pure.js';

const lax = ['no-base-to-string', 'restrict-template-expressions', 'no-unsafe-argument', 'no-unsafe-assignment', 'no-unsafe-call', 'no-unsafe-member-access', 'no-unsafe-return'];

export default defineConfig(
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: fileURLToPath(new URL('../..', import.meta.url)) } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': 'off', // the compiler reports them
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allow: [{ from: 'file', name: ['Quantity', 'Column'] }, { from: 'package', package: 'decimal.js', name: 'Decimal' }] }],
      eqeqeq: 'error',
      'prefer-const': 'error',
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { house: { rules: { arrows, pure } } },
    rules: {
      'house/arrows': 'error',
      'house/pure': 'error',
      'no-console': 'error',
      'no-restricted-syntax': ['error', 'ExportDefaultDeclaration', 'TSEnumDeclaration'],
    },
  },
  { files: ['src/cli.ts'], rules: { 'house/pure': 'off', 'no-console': 'off' } },
  { files: ['tests/**/*.ts', 'bench/**/*.ts'], rules: Object.fromEntries(lax.map((rule) => [`@typescript-eslint/${rule}`, 'off'])) },
);
