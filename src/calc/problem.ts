/**
 * Something that keeps a stage from giving a number, as data: `src/messages` has the words.
 *
 * `path` is a path of the table of dimensions when the problem belongs beside one field; `args` are SI numbers,
 * strings or paths that the sentence mentions. A clash between values is the fault of none of them alone: `also` has the paths of the others, so that it
 * stands beside each.
 */
export interface Problem {
  readonly code: string;
  readonly path?: string;
  readonly also?: readonly string[];
  readonly args?: Readonly<Record<string, string | number>>;
}

/** What a stage gives: a value, or the reasons why there is none. Stages never throw for bad numbers. */
export type Outcome<T> =
  | {readonly ok: true; readonly value: T}
  | {readonly ok: false; readonly problems: readonly Problem[]};

export const good = <T>(value: T): Outcome<T> => ({ok: true, value});

export const refused = (...problems: readonly Problem[]): {readonly ok: false; readonly problems: readonly Problem[]} =>
  ({ok: false, problems});
