import {memo} from '../memo.js';
import {planformOf} from '../geometry/planform/planform.js';
import type {GliderDesign} from '../design/design.js';
import type {DerivedValue} from '../derived-value.js';
import {wingStations} from './wing-stations.js';

const planform = memo((wing: GliderDesign['wing']) => planformOf(wingStations(wing)));

const fromPlanform = (kind: DerivedValue['kind'], pick: (p: Extract<ReturnType<typeof planform>, {ok: true}>['value']) => number): DerivedValue => ({
  kind,
  of: ({wing}) => { const p = planform(wing); return p.ok ? {ok: true, value: pick(p.value)} : p; },
});

/** What follows from the wing's outline alone. */
export const wingValues: Readonly<Record<string, DerivedValue>> = {
  area: fromPlanform('area', (p) => p.area),
  meanChord: fromPlanform('length', (p) => p.meanAerodynamicChord),
};
