import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {
  asFlown, planformOf, sectionAt, sweepOf, type Planform, type Station,
} from '../../../../src/calc/geometry/planform/index.js';
import {areaMoments, type Polygon} from '../../../../src/calc/geometry/polygon/index.js';
import type {Outcome} from '../../../../src/calc/problem.js';

function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const codesOf = (outcome: Outcome<unknown>): string[] => outcome.ok ? [] : outcome.problems.map(({code}) => code);

const planform = (...stations: Station[]): Planform => valueOf(planformOf(stations));

const length = (min: number, max: number) => fc.double({min, max, noNaN: true});

/** Random half wings of one to five panels. */
const anyHalf = fc.array(
  fc.record({width: length(0.02, 0.3), chord: length(0.02, 0.3), back: length(-0.1, 0.2)}),
  {minLength: 2, maxLength: 6},
).map((rows): Station[] => {
  let at = 0;
  return rows.map(({width, chord, back}, i) => {
    at += i ? width : 0;
    return {at, chord, back: i ? back : 0};
  });
});

/** The same half wing as an outline, x back and y out. */
const outlineOf = (stations: readonly Station[]): Polygon => [
  ...stations.map(({at, back}) => ({x: back, y: at})),
  ...[...stations].reverse().map(({at, back, chord}) => ({x: back + chord, y: at})),
];

describe('planform of a wing', () => {
  it('gives a plain rectangle its own chord everywhere', () => {
    const wing = planform({at: 0, chord: 0.12, back: 0}, {at: 0.35, chord: 0.12, back: 0});
    expect(wing.span).to.equal(0.7);
    expect(wing.area).to.be.closeTo(0.084, 1e-12);
    expect(wing.aspectRatio).to.be.closeTo(0.7 / 0.12, 1e-12);
    expect(wing.taper).to.equal(1);
    expect(wing.meanChord).to.be.closeTo(0.12, 1e-12);
    expect(wing.meanAerodynamicChord).to.be.closeTo(0.12, 1e-12);
    expect(wing.meanAerodynamicChordAt).to.be.closeTo(0.175, 1e-12);
    expect(wing.meanAerodynamicChordBack).to.be.closeTo(0, 1e-12);
    expect(wing.quarterChordBack).to.be.closeTo(0.03, 1e-12);
    expect(wing.areaCentreBack).to.be.closeTo(0.06, 1e-12);
  });

  it('finds the same area and centre as the outline of the half', () => {
    fc.assert(fc.property(anyHalf, (stations) => {
      const wing = planform(...stations);
      const {area, centroid} = areaMoments(outlineOf(stations));
      expect(wing.area).to.be.closeTo(2 * Math.abs(area), 1e-12);
      expect(wing.areaCentreBack).to.be.closeTo(centroid.x, 1e-9);
      expect(wing.meanAerodynamicChordAt).to.be.closeTo(centroid.y, 1e-9);
    }));
  });

  it('finds the same mean aerodynamic chord as adding up thin strips', () => {
    fc.assert(fc.property(anyHalf, (stations) => {
      const strips = 4000;
      const half = stations.at(-1)?.at ?? 0;
      let area = 0, squares = 0, back = 0;
      for (let i = 0; i < strips; i++) {
        const section = sectionAt(stations, (i + 0.5) / strips * half);
        area += section?.chord ?? 0;
        squares += (section?.chord ?? 0) ** 2;
        back += (section?.chord ?? 0) * (section?.back ?? 0);
      }
      const wing = planform(...stations);
      expect(wing.meanAerodynamicChord).to.be.closeTo(squares / area, 1e-4);
      expect(wing.meanAerodynamicChordBack).to.be.closeTo(back / area, 1e-4);
    }), {numRuns: 20});
  });

  it('is the same when a panel is split in two, and never has its mean chord above the aerodynamic one', () => {
    fc.assert(fc.property(anyHalf, length(0.01, 0.99), (stations, share) => {
      const whole = planform(...stations);
      const middle = sectionAt(stations, share * whole.span / 2);
      const split = planform(...[...stations, ...(middle ? [middle] : [])].sort((a, b) => a.at - b.at));
      for (const key of Object.keys(whole) as (keyof Planform)[]) expect(split[key]).to.be.closeTo(whole[key], 1e-9);
      expect(whole.meanAerodynamicChord).to.be.at.least(whole.meanChord - 1e-12);
    }));
  });

  it('measures back from the leading edge at the root, wherever that is', () => {
    fc.assert(fc.property(anyHalf, length(-1, 1), (stations, by) => {
      const here = planform(...stations);
      const there = planform(...stations.map((station) => ({...station, back: station.back + by})));
      expect(there.meanAerodynamicChordBack).to.be.closeTo(here.meanAerodynamicChordBack, 1e-9);
      expect(there.areaCentreBack).to.be.closeTo(here.areaCentreBack, 1e-9);
    }));
  });

  it('takes a step in the chord', () => {
    const wing = planform(
      {at: 0, chord: 0.2, back: 0}, {at: 0.1, chord: 0.2, back: 0},
      {at: 0.1, chord: 0.1, back: 0}, {at: 0.2, chord: 0.1, back: 0},
    );
    expect(wing.area).to.be.closeTo(0.06, 1e-12);
    expect(wing.meanAerodynamicChord).to.be.closeTo((0.1 * 0.04 + 0.1 * 0.01) / 0.03, 1e-12);
  });

  it('names what is wrong with its stations', () => {
    const root = {at: 0, chord: 0.1, back: 0};
    expect(codesOf(planformOf([]))).to.deep.equal(['planform-too-few-stations']);
    expect(codesOf(planformOf([root]))).to.deep.equal(['planform-too-few-stations']);
    expect(codesOf(planformOf([root, {at: 0.2, chord: 0, back: 0}]))).to.deep.equal(['planform-chord-not-positive']);
    expect(planformOf([root, {at: 0.2, chord: -0.1, back: 0}])).to.deep.equal({
      ok: false, problems: [{code: 'planform-chord-not-positive', args: {station: 1, chord: -0.1}}],
    });
    expect(codesOf(planformOf([root, {at: NaN, chord: 0.1, back: 0}]))).to.deep.equal(['planform-not-finite']);
    expect(codesOf(planformOf([root, {at: 0.2, chord: 0.1, back: Infinity}]))).to.deep.equal(['planform-not-finite']);
    expect(codesOf(planformOf([{...root, at: 0.01}, {at: 0.2, chord: 0.1, back: 0}])))
      .to.deep.equal(['planform-not-from-centre']);
    expect(codesOf(planformOf([root, {at: 0.2, chord: 0.1, back: 0}, {at: 0.1, chord: 0.1, back: 0}])))
      .to.deep.equal(['planform-out-of-order']);
    expect(codesOf(planformOf([root, root]))).to.deep.equal(['planform-no-span']);
  });

  it('never gives a number that is not one', () => {
    fc.assert(fc.property(
      fc.array(fc.record({at: fc.double(), chord: fc.double({min: -1, max: 1e6}), back: fc.double({min: -1e6, max: 1e6})})),
      (stations) => {
        const outcome = planformOf(stations.map((station) => ({...station, at: Math.min(Math.abs(station.at), 1e6)})));
        if (outcome.ok) expect(Object.values(outcome.value).every(Number.isFinite)).to.equal(true);
      },
    ));
  });
});

describe('a wing as it flies', () => {
  const half: Station[] = [
    {at: 0, chord: 0.12, back: 0}, {at: 0.25, chord: 0.12, back: 0}, {at: 0.4, chord: 0.08, back: 0.02},
  ];

  it('is narrower by the cosine of each panel', () => {
    const flown = valueOf(asFlown(half, [0, Math.PI / 3]));
    expect(flown.map(({at}) => at)).to.deep.equal([0, 0.25, 0.25 + (0.4 - 0.25) * Math.cos(Math.PI / 3)]);
    expect(flown.map(({chord}) => chord)).to.deep.equal([0.12, 0.12, 0.08]);
    const cut = planform(...half), flat = planform(...flown);
    expect(flat.span).to.be.closeTo(0.65, 1e-12);
    expect(flat.area).to.be.closeTo(cut.area - 0.15 * 0.1, 1e-12);
  });

  it('is the wing as cut when nothing is tilted, and the same up or down', () => {
    fc.assert(fc.property(anyHalf, length(-1.5, 1.5), (stations, angle) => {
      const level = valueOf(asFlown(stations, stations.slice(1).map(() => 0)));
      level.forEach(({at}, i) => expect(at).to.be.closeTo(stations[i]?.at ?? NaN, 1e-12));
      const up = asFlown(stations, stations.slice(1).map(() => angle));
      const down = asFlown(stations, stations.slice(1).map(() => -angle));
      expect(up).to.deep.equal(down);
    }));
  });

  it('wants one angle for each panel, short of upright', () => {
    expect(codesOf(asFlown(half, [0]))).to.deep.equal(['dihedral-one-per-panel']);
    expect(codesOf(asFlown(half, [0, Math.PI / 2]))).to.deep.equal(['dihedral-past-upright']);
    expect(codesOf(asFlown(half, [0, NaN]))).to.deep.equal(['dihedral-past-upright']);
    expect(codesOf(asFlown([], []))).to.deep.equal(['planform-too-few-stations']);
  });
});

describe('a section between stations', () => {
  const half: Station[] = [{at: 0, chord: 0.12, back: 0}, {at: 0.2, chord: 0.08, back: 0.02}];

  it('lies evenly between its neighbours, and ends where the wing ends', () => {
    const section = sectionAt(half, 0.05);
    expect(section?.chord).to.be.closeTo(0.11, 1e-12);
    expect(section?.back).to.be.closeTo(0.005, 1e-12);
    expect(sectionAt(half, -1)).to.deep.equal({at: -1, chord: 0.12, back: 0});
    expect(sectionAt(half, 1)).to.deep.equal({at: 1, chord: 0.08, back: 0.02});
    expect(sectionAt([], 0)).to.equal(undefined);
  });
});

describe('sweep', () => {
  it('is that of the line asked for', () => {
    const half: Station[] = [{at: 0, chord: 0.12, back: 0}, {at: 0.2, chord: 0.08, back: 0.02}];
    expect(valueOf(sweepOf(half, 0))).to.be.closeTo(Math.atan(0.1), 1e-12);
    expect(valueOf(sweepOf(half, 0.5))).to.be.closeTo(0, 1e-12);
    expect(valueOf(sweepOf(half, 1))).to.be.closeTo(-Math.atan(0.1), 1e-12);
    expect(codesOf(sweepOf([], 0))).to.deep.equal(['planform-too-few-stations']);
  });

  it('weighs panels by their area', () => {
    const half: Station[] = [
      {at: 0, chord: 0.1, back: 0}, {at: 0.3, chord: 0.1, back: 0}, {at: 0.4, chord: 0.1, back: 0.1},
    ];
    expect(valueOf(sweepOf(half, 0.25))).to.be.closeTo(Math.atan(0.25), 1e-12);
  });
});
