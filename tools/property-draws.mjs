const usualSeed = 620;
const usualRuns = 100;
const served = '/property-draws.module';

function wholeNumber(name, text, least, most) {
  const number = Number(text);
  if (!/^-?\d+$/.test(text) || number < least || number > most) throw new Error(`${name} is ${text}; it may be a whole number from ${least} to ${most}.`);
  return number;
}

/**
 * What the property tests draw: with the same seed always the same, so that a run turns red only when the code has changed. SEED names another
 * (`random`: any); RUNS says how often a property is tried that states no number of its own.
 */
export function propertyDraws({SEED, RUNS} = process.env) {
  const seed = SEED === 'random' ? Math.floor(Math.random() * 2 ** 31) : SEED ? wholeNumber('SEED', SEED, -(2 ** 31), 2 ** 31 - 1) : usualSeed;
  return {seed, numRuns: RUNS ? wholeNumber('RUNS', RUNS, 1, 1e9) : usualRuns};
}

/** How much longer a test may take than with the usual number of runs. */
export const patienceFor = ({numRuns}) => Math.max(1, numRuns / usualRuns);

/** For @web/test-runner: tests get their fast-check through a module that sets its seed. Its parameters are global, so all tests of a page share them. */
export const propertyDrawsServer = (draws) => ({
  name: 'property-draws',
  resolveImport: ({source, context}) => (source === 'fast-check' && context.path !== served ? served : undefined),
  serve: ({path}) => (path === served ? {
    body: `import {configureGlobal} from 'fast-check';
export * from 'fast-check';
export {default} from 'fast-check';
configureGlobal(${JSON.stringify(draws)});
`, type: 'js',
  } : undefined),
});
