import {refused, type Problem} from '../../problem.js';

/** Longer than any bench, in metres; it keeps every square and quotient finite. */
const longest = 1e6;

/** A nanometre: anything shorter is no length that a knife knows. */
const shortest = 1e-9;

/** How far two equal lengths or angles may differ by rounding alone. */
export const rounding = 1e-12;

export const rightAngle = Math.PI / 2;

export const problem = (code: string, args: Readonly<Record<string, string | number>>): Problem => ({code, args});

export const refusal = (code: string, args: Readonly<Record<string, number>>): ReturnType<typeof refused> => refused(problem(code, args));

/** Why lengths cannot be used, if they cannot: codes `length-not-positive`, `quantity-not-finite`, `quantity-too-big`, with {name}. */
export const lengthProblems = (lengths: Readonly<Record<string, number | undefined>>, least = shortest): Problem[] =>
  Object.entries(lengths).flatMap(([name, value = NaN]) => {
    const code = !Number.isFinite(value) ? 'quantity-not-finite' : value > longest ? 'quantity-too-big' : 'length-not-positive';
    return value >= least && value <= longest ? [] : [problem(code, {name})];
  });

/** The lengths of a list, named by what they are and their number: panel 1, panel 2. */
export const numbered = <T>(name: string, list: readonly T[]): Record<string, T> =>
  Object.fromEntries(list.map((each, i) => [`${name} ${String(i + 1)}`, each]));

/** Why an angle cannot be a fold, if it cannot: codes `quantity-not-finite` {name}, `fold-out-of-range` {angle, most}. */
export const foldProblems = (angle: number): Problem[] =>
  !Number.isFinite(angle) ? [problem('quantity-not-finite', {name: 'angle'})]
  : angle < 0 || angle > rightAngle * (1 + rounding) ? [problem('fold-out-of-range', {angle, most: rightAngle})] : [];
