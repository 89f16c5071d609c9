import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const notRepeatable = 'The same input must give the same bytes: no clock, no chance, no locale.';

export default defineConfig(
  { ignores: ['.build/', 'node_modules/', 'out/', 'coverage/'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strict],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      // Index sums of geometry know their bounds; the compiler does not.
      '@typescript-eslint/no-non-null-assertion': 'off',
      'eqeqeq': 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx', 'hack'], location: 'anywhere' }],
    },
  },
  {
    files: ['engine/**', 'generators/**', 'templates/**'],
    rules: {
      'no-console': 'error',
      'no-restricted-globals': ['error', { name: 'Intl', message: notRepeatable }, { name: 'performance', message: notRepeatable }],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: notRepeatable },
        { object: 'Date', property: 'now', message: notRepeatable },
        ...['toLocaleString', 'toLocaleUpperCase', 'toLocaleLowerCase', 'localeCompare'].map((property) => ({
          property,
          message: notRepeatable,
        })),
      ],
      'no-restricted-syntax': [
        'error',
        { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: notRepeatable },
      ],
    },
  },
  {
    files: ['tests/**'],
    rules: {
      'no-restricted-properties': [
        'error',
        ...['it', 'test', 'describe'].flatMap((object) =>
          ['only', 'skip', 'todo'].map((property) => ({
            object,
            property,
            message: 'Only skipIf, and only where a browser or a system package is missing.',
          })),
        ),
        { object: 'vi', property: 'mock', message: 'No mocks: run the real thing.' },
        { object: 'Math', property: 'random', message: 'Use fast-check with a fixed seed.' },
      ],
    },
  },
);
