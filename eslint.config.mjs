import js from '@eslint/js';
import {configs as lit} from 'eslint-plugin-lit';
import ts from 'typescript-eslint';

/**
 * Imports run one way: components -> drawing -> calc; messages and shared are leaves. Types may be named where values may
 * not be used: they are gone when the code runs.
 */
function layer(room, {not = [], except = [], types = []}) {
  const patterns = (rooms, allowTypeImports) => rooms.map((name) => ({
    regex: `(^|/)${name}(/|$)`, allowTypeImports,
    message: `${room} may not ${allowTypeImports ? 'use values of' : 'import'} ${name}: components -> drawing -> calc; messages and shared are leaves.`,
  }));
  return {
    files: [`${room}/**/*.ts`], ignores: except,
    rules: {'@typescript-eslint/no-restricted-imports': ['error', {patterns: [...patterns(not, false), ...patterns(types, true)]}]},
  };
}

const anyPackage = String.raw`^[^.]`;

export default ts.config(
  {ignores: ['build/', 'dist/', 'coverage/', '.cache/', 'node_modules/']},
  js.configs.recommended,
  {
    files: ['**/*.ts'],
    extends: [ts.configs.strictTypeChecked, lit['flat/recommended']],
    languageOptions: {parserOptions: {projectService: true, tsconfigRootDir: import.meta.dirname}},
    rules: {
      'lit/no-classfield-shadowing': 'error',
      'lit/lifecycle-super': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      // numbers in a template need no ceremony; anything else still does
      '@typescript-eslint/restrict-template-expressions': ['error', {allowNumber: true}],
      '@typescript-eslint/no-unused-vars': ['error', {argsIgnorePattern: '^_', varsIgnorePattern: '^_'}],
      // tsc knows better: for this rule `this.#a ??= …` is no use of #a
      'no-unused-private-class-members': 'off',
      'eqeqeq': 'error',
    },
  },
  layer('src/calc', {not: ['components', 'drawing', 'messages', 'lit', '@lit', '@svgdotjs', anyPackage]}),
  layer('src/drawing', {not: ['components', 'lit', '@lit']}),
  layer('src/messages', {not: ['components', 'drawing', anyPackage], types: ['calc']}),
  layer('shared', {not: ['components', 'drawing', 'messages', anyPackage], types: ['calc']}),
  {
    files: ['src/calc/**/*.ts', 'shared/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...['Date', 'document', 'window', 'globalThis', 'performance', 'crypto', 'setTimeout', 'fetch', 'localStorage']
        .map((name) => ({name, message: 'calc is pure: no clock, no DOM, no random source of its own.'}))],
      'no-restricted-properties': ['error', {object: 'Math', property: 'random', message: 'calc is pure: take a random source as an argument.'}],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      // chai's assertions are properties
      '@typescript-eslint/no-unused-expressions': 'off',
      // `equal` of chai is typed as a promise for the sake of comparing rendered pages
      '@typescript-eslint/no-floating-promises': ['error', {allowForKnownSafeCalls: [{from: 'package', name: 'Equal', package: '@open-wc/semantic-dom-diff'}]}],
      '@typescript-eslint/explicit-module-boundary-types': 'off',
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: {globals: Object.fromEntries(['process', 'console', 'URL', 'Buffer', 'fetch', 'setTimeout', 'clearTimeout'].map((name) => [name, 'readonly']))},
  },
  {
    files: ['**/*.js'],
    languageOptions: {globals: Object.fromEntries(['window', 'document', 'parent', 'addEventListener', 'console', 'customElements'].map((name) => [name, 'readonly']))},
  },
);
