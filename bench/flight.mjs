// Runs in a browser, bundled by tools/bench.mjs: how long the flight model takes for a design that it has not seen.
import {defaultDesign, withValues} from '../src/calc/design/design.ts';
import {planeAero} from '../src/calc/aero/plane-aero.ts';
import {flightOf, tailForSpeed} from '../src/calc/flight/flight.ts';
import {motionOf} from '../src/calc/flight/motion.ts';
import {wingStrength} from '../src/calc/flight/wing-strength.ts';

/** A plane that flies: balanced a fifth of a chord ahead of its neutral point, and trimmed. */
function trimmed() {
  const weighed = withValues(defaultDesign, {'measured.mass': 0.09, 'measured.balance': 0});
  const aero = planeAero(weighed.wing, weighed.tail, weighed.arrangement, weighed.board).value;
  const balanced = withValues(weighed, {'measured.balance': aero.neutralPoint - 0.2 * aero.shape.wing.meanAerodynamicChord});
  const tail = tailForSpeed(balanced, 5.5);
  return withValues(balanced, {'arrangement.tailIncidence': tail.value.tailIncidence});
}

const everything = (design) => [flightOf(design), motionOf(design), wingStrength(design)];

/** Each time another design, since the same one is remembered. */
const cases = {
  'from nothing: another span': (design, i) => everything(withValues(design, {'wing.span': 0.65 + 1e-9 * i})),
  'after a change of mass': (design, i) => everything(withValues(design, {'ballast.masses': [{mass: 1e-3 + 1e-9 * i, at: 0.02}]})),
  'after a change of the tail’s angle': (design, i) => everything(withValues(design, {'arrangement.tailIncidence': design.arrangement.tailIncidence - 1e-9 * i})),
};

/** Milliseconds for one run: the clock is coarse, so some at a time; the middle of many such, and the quickest. */
function timed(run, rounds = 60, each = 5) {
  const times = [];
  for (let round = 0; round < rounds; round++) {
    const start = globalThis.performance.now();
    for (let k = 0; k < each; k++) run(round * each + k);
    times.push((globalThis.performance.now() - start) / each);
  }
  times.sort((a, b) => a - b);
  return {middle: times[Math.floor(rounds / 2)], quickest: times[0]};
}

globalThis.benchFlight = () => {
  const before = globalThis.performance.now();
  const design = trimmed();
  everything(design);
  const first = globalThis.performance.now() - before;
  const rows = Object.entries(cases).map(([name, run]) => {
    timed((i) => run(design, 1e5 + i), 20);
    const outcomes = run(design, 1e6);
    if (outcomes.some(({ok}) => !ok)) throw new Error(`${name}: ${JSON.stringify(outcomes.find(({ok}) => !ok))}`);
    return {name, ...timed((i) => run(design, i))};
  });
  return {panels: flightOf(design).value.plane.aero.panels, first, rows};
};
