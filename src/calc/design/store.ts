import {carriedAlong} from '../as-built/carry.js';
import type {Problem} from '../problem.js';
import type {SystemOfUnits} from '../units/kinds.js';
import {clashesOf} from './clashes.js';
import {defaultDesign, sameValue, valueAt, withValues} from './design.js';
import type {GliderDesign} from './design.js';
import {dimensionPaths} from './dimensions.js';
import type {DimensionPath, DimensionValue} from './dimensions.js';
import {checkValue} from './read-dimension.js';

/** An entry that could not be taken: what was typed, kept so that nothing typed is lost, and why. */
export interface RefusedEntry {
  readonly text: string;
  readonly problem: Problem;
}

/** One revision of a glider: what every listener is given. Frozen, plain, and understood by any copy of this package. */
export interface DesignState {
  readonly version: 1;
  readonly revision: number;
  readonly design: GliderDesign;
  /** Values as their author wrote them, by path; files keep them until the value is changed. */
  readonly texts: Readonly<Partial<Record<DimensionPath, string>>>;
  /** Entries standing in a field that were refused, by path. */
  readonly refused: Readonly<Partial<Record<DimensionPath, RefusedEntry>>>;
  /** What is wrong with the file the glider came from and belongs beside no field. */
  readonly notices: readonly Problem[];
  /** The glider's own file could not be read, and `notices` say why: the design is only what stands in for it. Left out otherwise. */
  readonly unread?: true | undefined;
  /** The units that the page's author chose for everything that reads this glider. */
  readonly units?: SystemOfUnits;
  /** How often another glider was put in the place of the one before, as when a file was opened; left out before the first time. */
  readonly gliders?: number;
  /** Clashes between values; each names the path it belongs beside. */
  readonly problems: readonly Problem[];
}

/** A wish about one dimension: a value in SI units, or an entry that could not be read. */
export type Change =
  | {readonly path: DimensionPath; readonly value: DimensionValue; readonly text?: string}
  | {readonly path: DimensionPath; readonly refused: RefusedEntry};

/** What crosses between a design and an element: plain functions and frozen data, no class. */
export interface DesignHandle {
  readonly version: 1;
  readonly current: () => DesignState;
  /** Asks for changes; all that may stand make one revision together. Gives the problems of those that may not. */
  readonly request: (changes: readonly Change[]) => readonly Problem[];
  /** Hears of each new revision; gives the way to stop hearing. */
  readonly subscribe: (listener: (state: DesignState) => void) => () => void;
}

/** The side of a store that its owner keeps. */
export interface DesignStore extends DesignHandle {
  /** Puts another glider in its place, as when a file is opened. */
  replace(design: GliderDesign, read?: Partial<Pick<DesignState, 'texts' | 'refused' | 'notices' | 'unread'>>): void;
  present(units: SystemOfUnits | undefined): void;
}

type Kept = Omit<DesignState, 'version' | 'revision' | 'problems'>;

const stateOf = (revision: number, kept: Kept): DesignState =>
  Object.freeze({version: 1, revision, ...kept, problems: clashesOf(kept.design)});

/** Owns one glider and its revisions. */
export function createDesignStore(design: GliderDesign = defaultDesign): DesignStore {
  let state = stateOf(1, {design, texts: {}, refused: {}, notices: []});
  const listeners = new Set<(state: DesignState) => void>();
  const become = (changed: Partial<Kept>): void => {
    const {design, texts, refused, notices, unread, units, gliders}: Kept = {...state, ...changed};
    state = stateOf(state.revision + 1, {design, texts, refused, notices, ...(unread && {unread}), ...(units && {units}), ...(gliders !== undefined && {gliders})});
    for (const listener of [...listeners]) listener(state);
  };
  return {
    version: 1,
    current: () => state,
    request(changes) {
      const values: Partial<Record<DimensionPath, DimensionValue>> = {};
      const texts = new Map(Object.entries(state.texts) as [DimensionPath, string][]);
      const refused = new Map(Object.entries(state.refused) as [DimensionPath, RefusedEntry][]);
      const problems: Problem[] = [];
      let entriesMoved = false;
      for (const change of changes) {
        const entry = refusalOf(change);
        if (entry) {
          problems.push(entry.problem);
          refused.set(change.path, entry);
          entriesMoved = true;
        } else if ('value' in change) {
          values[change.path] = change.value;
          if (change.text === undefined) texts.delete(change.path); else texts.set(change.path, change.text);
          entriesMoved = refused.delete(change.path) || entriesMoved;
        }
      }
      const carried = carriedAlong(state.design, values);
      for (const path of Object.keys(carried) as DimensionPath[]) texts.delete(path);
      const next = withValues(state.design, {...values, ...carried});
      if (next !== state.design || entriesMoved) become({design: next, texts: Object.fromEntries(texts), refused: Object.fromEntries(refused)});
      return problems;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => { listeners.delete(listener); };
    },
    replace(design, {texts = {}, refused = {}, notices = [], unread} = {}) {
      // the same glider given back, as after a file that could not be read, is no other one
      const other = dimensionPaths.some((path) => !sameValue(valueAt(design, path), valueAt(state.design, path)));
      become({design, texts, refused, notices, unread, ...(other && {gliders: (state.gliders ?? 0) + 1})});
    },
    present(units) {
      if (units === state.units) return;
      const {units: _, ...rest} = state;
      state = units ? {...rest, units} : rest;
      become({});
    },
  };
}

function refusalOf(change: Change): RefusedEntry | undefined {
  if ('refused' in change) return change.refused;
  const problem = checkValue(change.path, change.value);
  return problem && {text: change.text ?? '', problem};
}
