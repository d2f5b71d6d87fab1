import {expect} from '@open-wc/testing';
import fc from 'fast-check';
import {usualAir} from '../../../../src/calc/aero/air.js';
import {parasiteDrag} from '../../../../src/calc/aero/parasite.js';
import {withValues} from '../../../../src/calc/design/design.js';
import type {GliderDesign} from '../../../../src/calc/design/design.js';
import {flightOf} from '../../../../src/calc/flight/flight.js';
import {flyingPlane, loadedWith, type FlyingPlane} from '../../../../src/calc/flight/flying-plane.js';
import {glideAt} from '../../../../src/calc/flight/glide.js';
import {airframeOf} from '../../../../src/calc/flight/simulation/plane-airframe.js';
import {fly, throwLimits, type FlightOptions, type Throw} from '../../../../src/calc/flight/simulation/throw.js';
import type {Track} from '../../../../src/calc/flight/simulation/track.js';
import {mostLift, trimmedFor} from '../../../../src/calc/flight/trimmed.js';
import {gliding} from './gliders.js';

function there<T>(outcome: {readonly ok: true; readonly value: T} | {readonly ok: false; readonly problems: readonly {readonly code: string}[]}): T {
  if (!outcome.ok) throw new Error(outcome.problems.map(({code}) => code).join());
  return outcome.value;
}

const {plane, trim} = there(flightOf(gliding));
const {glide} = there(trim);
const airframe = airframeOf(plane, gliding.body, usualAir);
const right: Throw = {height: 1.6, speed: glide.speed, angle: -glide.angle, attack: glide.setting.attack, wind: 0};
const flown = (thrown: Partial<Throw>, options?: FlightOptions): Track => there(fly(airframe, {...right, ...thrown}, options));

const numbers = ({moments}: Track): number[] => moments.flatMap((moment) => Object.values(moment) as number[]);

describe('a throw followed to the ground', () => {
  it('goes on as the glide that the plane is trimmed for: speed, sink and glide ratio', () => {
    const {last, moments} = flown({height: 40}, {until: 10});
    expect(last.speed).to.be.closeTo(glide.speed, 1e-3 * glide.speed);
    const first = moments[0]?.height ?? NaN;
    expect((first - last.height) / last.time).to.be.closeTo(glide.sink.usual, 2e-3 * glide.sink.usual);
    expect(last.x / (first - last.height)).to.be.closeTo(glide.ratio.usual, 2e-3 * glide.ratio.usual);
  });

  it('comes to the same glide from other throws too', () => {
    const {last} = flown({height: 90, speed: 1.5 * glide.speed, angle: 0.3}, {until: 40});
    expect(last.speed).to.be.closeTo(glide.speed, 2e-3 * glide.speed);
    expect(-last.angle).to.be.closeTo(glide.angle, 2e-3);
  });

  it('loses just the energy that drag takes, stalls and loops included', () => {
    fc.assert(fc.property(
      fc.double({min: 0.3, max: 4, noNaN: true}), fc.double({min: -1, max: 1.4, noNaN: true}), fc.double({min: -0.6, max: 0.6, noNaN: true}), fc.double({min: -3, max: 3, noNaN: true}),
      (times, angle, attack, wind) => {
        const {moments: [first], last} = flown({height: 8, speed: times * glide.speed, angle, attack, wind});
        if (!first) throw new Error('not thrown');
        expect(first.energy - last.energy).to.be.closeTo(last.taken, 1e-6 * last.taken);
      },
    ), {numRuns: 60});
  });

  it('is followed with steps fine enough: a hundredth of the tolerance changes nothing a tape could measure', () => {
    for (const times of [0.7, 1, 1.6, 3]) {
      const usual = flown({speed: times * glide.speed}).last, fine = flown({speed: times * glide.speed}, {tolerance: 1e-10}).last;
      expect(usual.x).to.be.closeTo(fine.x, 1e-4);
      expect(usual.time).to.be.closeTo(fine.time, 1e-5);
    }
  });

  it('has a number for every moment of any throw that is allowed, of planes that are heavy at either end too', () => {
    const within = ([least, most]: readonly [number, number]) => fc.double({min: least, max: most, noNaN: true});
    fc.assert(fc.property(
      within(throwLimits.height), within(throwLimits.speed), within(throwLimits.angle), within(throwLimits.attack), within(throwLimits.wind), fc.double({min: -0.025, max: 0.08, noNaN: true}),
      (height, speed, angle, attack, wind, more) => {
        const loaded = airframeOf(loadedWith(plane, more, -plane.wingAt), gliding.body, usualAir);
        const track = there(fly(loaded, {height, speed, angle, attack, wind}, {until: 12}));
        expect(numbers(track).every(Number.isFinite)).to.equal(true);
        expect(track.ended).to.not.equal('given-up');
        expect(track.last.speed).to.be.lessThan(60);
        expect(Math.max(...track.moments.map(({rate}) => Math.abs(rate)))).to.be.lessThan(400);
      },
    ), {numRuns: 80});
  });

  it('refuses throws that cannot be, by the field they belong to', () => {
    for (const [thrown, path] of [
      [{height: 0}, 'launch.height'], [{height: NaN}, 'launch.height'], [{speed: 0}, 'launch.speed'], [{speed: -3}, 'launch.speed'], [{speed: 1e9}, 'launch.speed'],
      [{angle: 4}, 'launch.angle'], [{attack: Infinity}, 'launch.pitch'], [{wind: 90}, 'launch.wind'],
    ] as const) {
      const refused = fly(airframe, {...right, ...thrown});
      expect(refused.ok ? undefined : refused.problems.map(({code, path: at}) => [code, at])).to.deep.equal([['throw-out-of-range', path]]);
    }
  });

  it('is carried by the wind and otherwise the same', () => {
    const still = flown({});
    const along = right.speed * Math.cos(right.angle) - 2, up = right.speed * Math.sin(right.angle);
    const hand = Math.atan2(up, along);
    const windy = flown({wind: 2, speed: Math.hypot(along, up), angle: hand, attack: right.angle + right.attack - hand});
    expect(windy.last.time).to.be.closeTo(still.last.time, 1e-6);
    expect(windy.last.x).to.be.closeTo(still.last.x - 2 * still.last.time, 1e-5);
  });

  it('knows every moment between its steps', () => {
    const track = flown({speed: 2 * glide.speed});
    const {at, last, highest} = track;
    expect(at(-1)).to.deep.equal(track.moments[0]);
    expect(at(1e9)).to.deep.equal(last);
    expect(highest.height).to.be.at.least(Math.max(...track.moments.map(({height}) => height)));
    const [a, b, c] = [-1e-4, 0, 1e-4].map((d) => at(last.time / 2 + d)) as [ReturnType<typeof at>, ReturnType<typeof at>, ReturnType<typeof at>];
    expect((c.height - a.height) / 2e-4).to.be.closeTo(b.speed * Math.sin(b.angle), 1e-3);
  });
});

describe('what the air does to a plane in every attitude', () => {
  const load = (of: FlyingPlane, design: GliderDesign, attack: number, speed = glide.speed) => airframeOf(of, design.body, usualAir).loads(speed, attack, 0);

  it('is the flight model’s up to the stall', () => {
    const pressure = usualAir.density * glide.speed ** 2 / 2 * plane.parasite.area;
    const {lift, drag, moment} = load(plane, gliding, glide.setting.attack);
    expect(lift / pressure).to.be.closeTo(glide.lift, 1e-9);
    expect(drag / pressure).to.be.closeTo(glide.drag.usual, 1e-3 * glide.drag.usual);
    expect(moment / pressure).to.be.closeTo(0, 1e-9);
  });

  it('rubs as the flight model says at any speed of a throw', () => {
    const {attack} = glide.setting;
    for (const speed of [1, 2.5, 5, 12, 25]) {
      const pressure = usualAir.density * speed ** 2 / 2 * plane.parasite.area;
      const lifting = glide.drag.usual - parasiteDrag(plane.parasite, glide.speed, usualAir).usual;
      expect(load(plane, gliding, attack, speed).drag / pressure).to.be.closeTo(lifting + parasiteDrag(plane.parasite, speed, usualAir).usual, 3e-4);
    }
  });

  it('never jumps, and lifts no more than about its most', () => {
    const most = mostLift(plane).most;
    const pressure = usualAir.density * glide.speed ** 2 / 2 * plane.parasite.area;
    let before = load(plane, gliding, -Math.PI);
    for (let attack = -Math.PI; attack <= Math.PI; attack += 1e-3) {
      const now = load(plane, gliding, attack);
      for (const part of ['lift', 'drag', 'moment'] as const) expect(Math.abs(now[part] - before[part]) / pressure).to.be.lessThan(0.02);
      expect(now.lift / pressure).to.be.lessThan(1.15 * most);
      expect(now.drag).to.be.greaterThan(0);
      before = now;
    }
  });

  it('turns the nose down beyond the stall of a plane that is stable, and into the stream when thrown tail first', () => {
    const {attack} = trimmedFor(plane, mostLift(plane).usual, plane.built);
    for (let beyond = 0.12; beyond < 2.8; beyond += 0.1) expect(load(plane, gliding, attack + beyond).moment).to.be.lessThan(0);
    const far = airframeOf(plane, gliding.body, usualAir);
    const track = there(fly(far, {...right, height: 30, speed: 5, attack: throwLimits.attack[1]}, {until: 6}));
    expect(Math.abs(track.last.attack)).to.be.lessThan(0.3);
  });

  it('is the same object while nothing of it changes', () => {
    const again = there(flyingPlane(withValues(gliding, {'launch.speed': 7})));
    expect(airframeOf(again, gliding.body, usualAir)).to.equal(airframe);
    expect(glideAt(again, glide.setting, usualAir).speed).to.equal(glide.speed);
  });
});
