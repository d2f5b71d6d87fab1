import {expect} from '@open-wc/testing';
import {gravity, usualAir} from '../../src/calc/aero/air.js';
import {parasiteDrag} from '../../src/calc/aero/parasite.js';
import {defaultDesign, withValues} from '../../src/calc/design/design.js';
import {flightOf} from '../../src/calc/flight/flight.js';
import {motionOf} from '../../src/calc/flight/motion.js';
import {phugoidPeriod} from '../../src/calc/flight/motion-equations.js';
import {holdingAirframe} from '../../src/calc/flight/simulation/airframe.js';
import {airframeOf} from '../../src/calc/flight/simulation/plane-airframe.js';
import {fly, type FlightOptions, type Throw} from '../../src/calc/flight/simulation/throw.js';
import {throwStudy} from '../../src/calc/flight/simulation/throw-study.js';
import type {Airframe} from '../../src/calc/flight/simulation/airframe.js';
import type {Moment, Track} from '../../src/calc/flight/simulation/track.js';

function flown(airframe: Airframe, thrown: Partial<Throw> & Pick<Throw, 'height' | 'speed' | 'angle'>, options?: FlightOptions): Track {
  const track = fly(airframe, {attack: 0, wind: 0, ...thrown}, options);
  if (!track.ok) throw new Error(track.problems.map(({code}) => code).join());
  return track.value;
}

/** The times at which what is looked at passes through nothing. */
function crossings(track: Track, of: (moment: Moment) => number, from: number, to: number): number[] {
  const found: number[] = [], step = 1e-3;
  for (let time = from; time < to; time += step) {
    const a = of(track.at(time)), b = of(track.at(time + step));
    if (a * b < 0) found.push(time + step * a / (a - b));
  }
  return found;
}

/**
 * The paper aeroplane of R. F. Stengel, Flight Dynamics (2004), example 1.3-1, and his program for it: 3 g, 0.017 m², aspect ratio 0.86, Oswald's factor
 * 0.9, drag without lift 0.02, thrown 2 m high in the air of sea level, at the lift of its flattest glide. Program and glide were read; the throws with level release and
 * at three times the speed are from memory. The distances are those of another integration of his equations to eleven digits, not read off his plots.
 */
describe('a published paper aeroplane', () => {
  const [area, mass, aspect, g, density] = [0.017, 0.003, 0.86, 9.8, 1.225];
  const lift = Math.sqrt(0.02 * Math.PI * 0.9 * aspect), drag = 0.04;
  const angle = Math.atan(drag / lift);
  const speed = Math.sqrt(2 * mass * g * Math.cos(angle) / (density * area * lift));
  const plane = holdingAirframe({mass, area, lift, drag, density, gravity: g});

  it('glides as published: 5.513 to 1, 3.55 m/s, 0.18 rad down', () => {
    expect(lift / drag).to.be.closeTo(5.513, 2e-3);
    expect(speed).to.be.closeTo(3.55, 5e-3);
    expect(angle).to.be.closeTo(0.18, 1e-3);
  });

  it('comes down 11.026 m away from an even glide', () => {
    const {last, ended} = flown(plane, {height: 2, speed, angle: -angle});
    expect(ended).to.equal('landed');
    expect(last.x).to.be.closeTo(11.02632, 1e-4);
    expect(last.height).to.be.closeTo(0, 1e-9);
  });

  it('is 20.825 m away 6 s after a level release', () => {
    // the ground is out of its way
    expect(flown(plane, {height: 50, speed, angle: 0}, {until: 6}).last.x).to.be.closeTo(20.82485, 1e-3);
  });

  it('loops once when thrown at three times its speed, 4.423 m high at most', () => {
    const track = flown(plane, {height: 2, speed: 3 * speed, angle: 0});
    expect(track.highest.height).to.be.closeTo(4.422791, 2e-5);
    expect(track.last.angle).to.be.within(1.5 * Math.PI, 2.5 * Math.PI);
  });
});

/** F. W. Lanchester, Aerodonetics (1908): a plane without drag that holds its angle of attack swings once in π √2 V/g. */
describe('the slow swing between height and speed', () => {
  it('has the period by Lanchester where there is next to no drag', () => {
    const [area, mass, lift] = [0.05, 0.08, 0.7];
    const glide = Math.sqrt(2 * mass * gravity / (1.225 * area * lift));
    const plane = holdingAirframe({mass, area, lift, drag: 1e-6, density: 1.225, gravity});
    const track = flown(plane, {height: 50, speed: 1.005 * glide, angle: 0}, {until: 12});
    const times = crossings(track, ({angle}) => angle, 0.1, 12);
    expect((times[2] ?? NaN) - (times[0] ?? NaN)).to.be.closeTo(phugoidPeriod(glide), 1e-3 * phugoidPeriod(glide));
  });

  it('swings as the roots of the equations of small motions say', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -0.02});
    const flight = flightOf(design), motion = motionOf(design);
    if (!flight.ok || !flight.value.trim.ok || !motion.ok) throw new Error('does not glide');
    const {plane, trim: {value: {glide}}} = flight.value;
    const airframe = airframeOf(plane, design.body, usualAir);
    const even = flown(airframe, {height: 60, speed: glide.speed, angle: -glide.angle, attack: glide.setting.attack}, {until: 30}).last;
    const track = flown(airframe, {height: 60, speed: 1.01 * even.speed, angle: even.angle, attack: even.attack}, {until: 30});
    const times = crossings(track, ({speed}) => speed - even.speed, 0.5, 25);
    const [swing] = motion.value.phugoid, period = swing?.period ?? NaN;
    if (times.length < 3 || !swing) throw new Error('does not swing');
    expect((times[2] ?? NaN) - (times[0] ?? NaN)).to.be.closeTo(period, 0.02 * period);
    // the equations keep the drag coefficient as the speed changes; in the simulation friction's falls with it, and with it half of what that adds to the damping
    const {parasite, mass} = plane;
    const falls = (parasiteDrag(parasite, 1.02 * glide.speed, usualAir).usual - parasiteDrag(parasite, 0.98 * glide.speed, usualAir).usual) / 0.04;
    const damping = -swing.root.re + usualAir.density * glide.speed * parasite.area / (2 * mass) * falls / 2;
    const [first, second] = [0, 1].map((i) => Math.abs(track.at((times[i] ?? NaN) + period / 4).speed - even.speed)) as [number, number];
    expect(2 * Math.log(first / second) / ((times[2] ?? NaN) - (times[0] ?? NaN))).to.be.closeTo(damping, 0.02 * damping);
  });
});

/** NASA, Right Flight, educational guide EG-2002-06-105-HQ: too much weight in the nose will cause the airplane to dive toward the ground. */
describe('the classroom rule of the heavy nose', () => {
  it('dives', () => {
    const design = withValues(defaultDesign, {'ballast.masses': [{mass: 0.029, at: 0.015}], 'arrangement.tailIncidence': -0.02});
    const study = throwStudy(design, 'balances');
    if (!study.ok) throw new Error('not thrown');
    const [heavy, right] = ['nose-heavy', 'right'].map((id) => study.value.flown.find((one) => one.id === id)?.track.last) as [Moment, Moment];
    expect(heavy.angle).to.be.lessThan(right.angle - 0.03);
    expect(heavy.speed).to.be.greaterThan(right.speed);
    expect(heavy.x).to.be.lessThan(right.x);
  });
});
