import {expect} from '@open-wc/testing';
import {glideBalance} from '../../src/calc/flight/glide.js';
import {highest} from '../../src/calc/flight/highest.js';
import {eigenvalues} from '../../src/calc/flight/eigenvalues.js';
import {longitudinalMatrix, phugoidPeriod} from '../../src/calc/flight/motion-equations.js';

const deg = Math.PI / 180;

describe('Stengel’s paper aeroplane', () => {
  // R. F. Stengel, Flight Dynamics (2004), example 1.3-1, course file PaperPlane.m (read); g = 9.8 there
  const area = 0.017, aspect = 0.86, load = 0.003 * 9.8 / area, flat = 0.02;
  const factor = 1 / (Math.PI * 0.9 * aspect);
  const drag = (lift: number) => flat + factor * lift * lift;
  const lift = highest((each) => each / drag(each), [0.01, 1]);
  const {speed, angle} = glideBalance(lift, drag(lift), load, 1.225);

  it('glides 5.51 m for each metre of height', () => {
    expect(lift / drag(lift)).to.be.closeTo(5.513, 0.002);
  });

  it('flies 0.18 rad below level, at 3.55 m/s', () => {
    expect(angle).to.be.closeTo(0.18, 0.001);
    expect(speed).to.be.closeTo(3.55, 0.005);
  });
});

describe('glide performance', () => {
  it('sinks slowest at 0.76 of the speed of the flattest glide', () => {
    // 3^(−¼) for a parabolic polar and small angles: H. Smith, Aircraft Flight Mechanics (from memory). With very little drag the angles are small.
    const drag = (lift: number) => 1e-5 + 1e-4 * lift * lift;
    const speedAt = (lift: number) => glideBalance(lift, drag(lift), 10, 1.2).speed;
    const flattest = Math.sqrt(0.1), slowest = highest((lift) => -glideBalance(lift, drag(lift), 10, 1.2).sink, [0.05, 2]);
    expect(speedAt(slowest) / speedAt(flattest)).to.be.closeTo(0.7598, 0.0005);
  });

  it('is 1 % slower in an 11° glide than in level flight', () => {
    // H. Smith, GlidingFlight (read): V = V_md √cos γ, 99 % at 11°
    expect(glideBalance(1, Math.tan(11 * deg), 10, 1.2).speed / glideBalance(1, 0, 10, 1.2).speed).to.be.closeTo(0.99, 0.002);
  });
});

describe('the phugoid', () => {
  it('takes Lanchester’s 47 seconds at 200 knots', () => {
    // Barba and others, Practical Numerical Methods with Python, lesson 1 (read)
    expect(phugoidPeriod(200 * 1852 / 3600)).to.be.closeTo(47, 0.5);
  });

  it('comes out of the equations of motion for a plane that holds its angle of attack', () => {
    // Lanchester: period π√2 V/g, damping ratio 1/(√2 L/D) = 0.1179 at L/D = 6. Stiff in pitch: a large moment for a small change of angle.
    const speed = 6, gravity = 9.80665, glide = 6;
    const matrix = longitudinalMatrix(
      {xu: -2 * gravity / speed / glide, xw: 0, zu: -2 * gravity / speed, zw: -3, zwDot: 0, zq: 0, mu: 0, mw: -1e5, mwDot: 0, mq: -50},
      {speed, pathAngle: 0, gravity},
    );
    const slow = eigenvalues(matrix)[2];
    const size = Math.hypot(slow?.re ?? NaN, slow?.im ?? NaN);
    expect(2 * Math.PI / size).to.be.closeTo(phugoidPeriod(speed), 0.001 * phugoidPeriod(speed));
    expect(-(slow?.re ?? NaN) / size).to.be.closeTo(0.1179, 0.0005);
  });
});
