// Runs in a browser, bundled by tools/bench.mjs: how long throws take, worked out and drawn.
import {usualAir} from '../src/calc/aero/air.ts';
import {defaultDesign, withValues} from '../src/calc/design/design.ts';
import {flightOf} from '../src/calc/flight/flight.ts';
import {airframeOf} from '../src/calc/flight/simulation/plane-airframe.ts';
import {fly} from '../src/calc/flight/simulation/throw.ts';
import {throwStudy} from '../src/calc/flight/simulation/throw-study.ts';
import {turnTrack} from '../src/calc/flight/simulation/turning.ts';
import {drawFlightPath, flightPathPicture} from '../src/components/flight-path/picture.ts';
import {screenInk} from '../src/drawing/ink.ts';
import {Pen} from '../src/drawing/pen.ts';

const design = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -0.02});
const {plane, trim} = flightOf(design).value;
const {glide} = trim.value;
const airframe = airframeOf(plane, design.body, usualAir);
const fine = {until: 10, tolerance: 1e-6};
const thrown = (speed, height) => ({height, wind: 0, speed, angle: 0.2, attack: glide.setting.attack});
const reader = {reader: '', system: 'metric', say: ({en}) => en, write: (value) => value.toFixed(1)};

/** Twenty throws from slow to fast, thrown `i` for the first time. */
const fan = (i) => Array.from({length: 20}, (_, k) => {
  const one = {...thrown((0.6 + 0.05 * k) * glide.speed, 1.6), angle: -0.1 + 1e-9 * i};
  return {id: `throw ${k}`, thrown: one, track: fly(airframe, one, fine).value};
});
const study = throwStudy(design, 'one').value;
const svg = globalThis.document.body.appendChild(globalThis.document.createElementNS('http://www.w3.org/2000/svg', 'svg'));
const pen = new Pen(svg, screenInk);

const cases = {
  'a flight of 10 s': (i) => fly(airframe, {...thrown(1.6 * glide.speed, 90), angle: 0.3 + 1e-9 * i}, fine),
  'a turning flight of 10 s': (i) => turnTrack(design, {fin: 0.05 + 1e-9 * i}, {height: 90, seconds: 10}),
  '20 throws': fan,
  '20 throws, drawn': (i) => {
    drawFlightPath(pen, 900, flightPathPicture(reader, {...study, flown: fan(i)}, 0));
    svg.getBoundingClientRect();
  },
};

globalThis.benchThrows = () => Object.entries(cases).map(([name, run]) => {
  const times = [];
  for (let i = 0; i < 80; i++) {
    const start = globalThis.performance.now();
    run(i);
    if (i >= 20) times.push(globalThis.performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return {name, middle: times[times.length >> 1], quickest: times[0]};
});
