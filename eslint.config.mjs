import tseslint from 'typescript-eslint'

// Math functions whose last bits differ between engines, and everything that reads a locale, a clock or chance.
const NOT_PORTABLE = ['pow', 'exp', 'expm1', 'log', 'log2', 'log10', 'log1p', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'sinh', 'cosh', 'tanh', 'asinh', 'acosh', 'atanh', 'cbrt', 'hypot', 'random', 'fround', 'round']
const portable = [
  ...NOT_PORTABLE.map((f) => ({ selector: `MemberExpression[object.name='Math'][property.name='${f}']`, message: `Math.${f} is not portable to the last bit; deciding code uses + − × ÷ and √ (see DEVELOPERS.md).` })),
  { selector: "BinaryExpression[operator='**'], AssignmentExpression[operator='**=']", message: '`**` is not portable to the last bit; multiply instead.' },
  { selector: "MemberExpression[object.name='Math'][computed=true]", message: 'Name the Math function, so that this check can see it.' },
  { selector: "Identifier[name='globalThis']", message: 'What stands behind globalThis is hidden from this check; name it.' },
  { selector: ":not(MemberExpression) > Identifier[name='Math']", message: 'Name the Math function, so that this check can see it.' },
  { selector: "VariableDeclarator[init.name='Math']", message: 'Name the Math function, so that this check can see it.' },
  { selector: "Identifier[name='Intl'], Identifier[name='localeCompare'], Identifier[name=/^toLocale/]", message: 'Locales differ between machines; compare with < and format with toFixed.' },
  { selector: "Identifier[name='Date'], MemberExpression[object.name='performance'], MemberExpression[object.name='crypto'][property.name=/^(getRandomValues|randomUUID)$/]", message: 'Deciding code has no clock and no chance: take them as arguments.' },
]
const zodWhole = { selector: "ImportDeclaration[source.value='zod'] > :matches(ImportSpecifier, ImportDefaultSpecifier)", message: "Write import * as z from 'zod': the named import bundles every locale." }
const engineListeners = { selector: "CallExpression[callee.property.name=/^(on|stop)$/][callee.object.name=/engine/i]", message: 'Listeners pile up and stop() ends other runs; use what run() returns.' }

export default tseslint.config(
  { ignores: ['node_modules/', '.data/', '.wrangler/', 'src/rulebook/shelf.ts', 'src/store/migrations.ts'] },
  ...tseslint.configs.strict,
  {
    files: ['**/*.ts', '**/*.mjs'],
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-restricted-syntax': ['error', zodWhole, engineListeners],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    // The rooms that decide: the same bytes on every engine, today and in five years.
    files: ['src/quantity/**', 'src/compute/**', 'src/rulebook/**', 'src/verdict/**', 'src/ledger/**'],
    rules: { 'no-restricted-syntax': ['error', zodWhole, engineListeners, ...portable], 'no-restricted-globals': ['error', 'process', 'fetch', 'setTimeout', 'setInterval', 'console'] },
  },
  {
    // Doors and use cases hold no figures of the trade.
    files: ['src/verdict/**', 'src/usecases/**', 'src/rulebook/**'],
    rules: { 'no-magic-numbers': ['error', { ignore: [-1, 0, 1, 2], ignoreArrayIndexes: true, enforceConst: true }] },
  },
)
