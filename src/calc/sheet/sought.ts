import type {GliderDesign} from '../design/design.js';
import {wingPart} from '../parts/wing.js';
import type {Job} from './engine/job.js';
import type {Ladder} from './engine/largest.js';
import {leastSteps, spanOf} from './span-steps.js';

/** The best layout of a job. */
export interface LayoutSought {
  readonly what: 'layout';
  readonly job: Job;
}

/** Where a search for a larger number begins, and whether everything is known to find room there. */
interface Beginning {
  readonly from: number;
  readonly known: boolean;
}

/** As many gliders as the boards of a job give; its parts are those of one. */
export interface GlidersSought extends Beginning {
  readonly what: 'gliders';
  readonly job: Job;
  /** More are not looked for. */
  readonly most: number;
}

/** The longest wing that finds room with the other parts of a job, in steps of so many metres. */
export interface SpanSought extends Beginning {
  readonly what: 'span';
  readonly job: Job;
  readonly wing: GliderDesign['wing'];
  readonly step: number;
}

/** What a search looks for; plain data that can be sent to a worker. */
export type Sought = LayoutSought | GlidersSought | SpanSought;

/** No longer wing is looked for, m: the most that its dimension takes. */
const longest = 10;

/** What is looked for beyond a first answer as one job for each number. */
export function ladderOf(sought: GlidersSought | SpanSought): Ladder {
  const {job, from, known} = sought;
  if (sought.what === 'gliders') {
    return {from, known, least: 1, most: sought.most, jobOf: (n) => ({...job, parts: job.parts.map((part) => ({...part, count: part.count * n}))})};
  }
  const {wing, step} = sought;
  return {
    // a longer wing is no easier: of one chord it holds the shorter one, of several it has more area and is as deep
    from, known, least: leastSteps(wing, step), most: Math.floor(longest / step),
    jobOf(n) {
      const part = wingPart({...wing, span: spanOf(n, step)});
      return part.ok ? {...job, parts: job.parts.map((each) => (each.id === 'wing' ? {...each, outline: part.value.outline} : each))} : undefined;
    },
  };
}
