import js from '@eslint/js';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';

const ours = {
  eqeqeq: 'error',
  'no-eval': 'error',
  'no-implied-eval': 'error',
  'no-new-func': 'error',
  'no-shadow': 'error',
  'no-var': 'error',
  'object-shorthand': 'error',
  'prefer-const': 'error',
};

export default defineConfig([
  globalIgnores(['built/', 'node_modules/']),
  {
    files: ['**/*.js', '**/*.mjs'],
    extends: [js.configs.recommended],
    // Some of the scripts are served as they are written: no newer syntax than a four-year-old phone reads.
    languageOptions: { ecmaVersion: 2022 },
    rules: ours,
  },
  {
    files: ['**/*.js'],
    ignores: ['worker.js', 'worker/*.js', 'eslint.config.js'],
    languageOptions: { globals: globals.browser },
  },
  { files: ['worker.js', 'worker/*.js'], languageOptions: { globals: globals.serviceworker } },
  { files: ['*.mjs', 'eslint.config.js'], languageOptions: { globals: globals.node } },
]);
