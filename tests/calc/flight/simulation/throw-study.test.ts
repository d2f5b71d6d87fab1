import {expect} from '@open-wc/testing';
import {usualAir} from '../../../../src/calc/aero/air.js';
import {defaultDesign, withValues} from '../../../../src/calc/design/design.js';
import {airframeOf} from '../../../../src/calc/flight/simulation/plane-airframe.js';
import {fly} from '../../../../src/calc/flight/simulation/throw.js';
import {throwStudy, type FlownId, type ThrowStudy} from '../../../../src/calc/flight/simulation/throw-study.js';
import {ballLands, ballSpeed} from '../../../../src/calc/flight/simulation/thrown-ball.js';
import type {Track} from '../../../../src/calc/flight/simulation/track.js';
import {gliding} from './gliders.js';

function studyOf(...[design, comparison]: Parameters<typeof throwStudy>): ThrowStudy {
  const study = throwStudy(design, comparison);
  if (!study.ok) throw new Error(study.problems.map(({code}) => code).join());
  return study.value;
}

function track({flown}: ThrowStudy, id: FlownId): Track {
  const one = flown.find((each) => each.id === id);
  if (!one) throw new Error(`no ${id}`);
  return one.track;
}

describe('throws compared', () => {
  it('says what the hand must do: the speed of the glide, along the glide', () => {
    const {right, glide, ball} = studyOf(gliding, 'throws');
    expect(right.speed).to.be.closeTo(glide.speed, 1e-12);
    expect(right.angle).to.be.closeTo(-glide.angle, 1e-12);
    expect(ball).to.be.closeTo(glide.speed * Math.sqrt(2 * 1.6 / 9.80665), 1e-12);
    expect(ballSpeed(ballLands(5, 1.6), 1.6)).to.be.closeTo(5, 1e-12);
  });

  it('drops from a slow throw, glides from the right one, zooms and then dives from a fast one', () => {
    const study = studyOf(gliding, 'throws');
    const [slow, right, fast, up] = (['slow', 'right', 'fast', 'up'] as const).map((id) => track(study, id)) as [Track, Track, Track, Track];
    expect(study.flown).to.have.length(4);
    expect(slow.last.x).to.be.lessThan(right.last.x);
    expect(slow.at(0.4).height).to.be.lessThan(right.at(0.4).height);
    expect(right.highest.height).to.be.closeTo(1.6, 1e-6);
    expect(fast.highest.height).to.be.greaterThan(2);
    expect(up.highest.height).to.be.greaterThan(1.65);
    // slower on top than it glides, faster again at the ground
    expect(fast.highest.speed).to.be.lessThan(fast.last.speed);
  });

  it('shows a heavy nose and a heavy tail by whole grams, thrown alike', () => {
    const study = studyOf(gliding, 'balances');
    const [nose, right, tail] = study.flown;
    expect(study.flown.map(({id}) => id)).to.deep.equal(['nose-heavy', 'right', 'tail-heavy']);
    expect((nose?.noseMass ?? NaN) * 1e3).to.be.closeTo(Math.round((nose?.noseMass ?? NaN) * 1e3), 1e-9);
    expect(tail?.noseMass).to.equal(-(nose?.noseMass ?? NaN));
    expect(nose?.thrown).to.deep.equal(right?.thrown);
    expect(nose?.track.last.x).to.be.lessThan(right?.track.last.x ?? NaN);
    // up on its tail, and down from the stall
    expect(tail?.track.at(1).height).to.be.greaterThan(0.5 + (right?.track.at(1).height ?? NaN));
    expect(tail?.track.last.angle).to.be.lessThan(-0.5);
  });

  it('is shown to a millimetre, and its energy to a millionth', () => {
    const study = studyOf(gliding, 'throws'), airframe = airframeOf(study.plane, gliding.body, usualAir);
    for (const {thrown, track: {last, moments: [first]}} of study.flown) {
      const fine = fly(airframe, thrown, {tolerance: 1e-11});
      if (!fine.ok) throw new Error('not thrown');
      expect(last.x).to.be.closeTo(fine.value.last.x, 1e-3);
      expect(last.time).to.be.closeTo(fine.value.last.time, 1e-3);
      expect((first?.energy ?? NaN) - last.energy).to.be.closeTo(last.taken, 1e-6 * last.taken);
    }
  });

  it('throws as the reader says, beside the others', () => {
    const study = studyOf(withValues(gliding, {'launch.speed': 9, 'launch.angle': 0.1, 'launch.pitch': 0.05}), 'throws');
    const own = study.flown.at(-1);
    expect(own?.id).to.equal('own');
    expect(own?.thrown).to.include({speed: 9, angle: 0.1});
    expect((own?.thrown.attack ?? NaN) - study.right.attack).to.be.closeTo(0.05, 1e-12);
    expect(studyOf(withValues(gliding, {'launch.speed': 9}), 'one').flown.map(({id}) => id)).to.deep.equal(['own']);
  });

  it('throws slower into the wind, and not at all into too much of it', () => {
    const still = studyOf(gliding, 'throws'), windy = studyOf(withValues(gliding, {'launch.wind': 2}), 'throws');
    expect(windy.right.speed).to.be.lessThan(still.right.speed);
    expect(track(windy, 'right').last.time).to.be.closeTo(track(still, 'right').last.time, 1e-5);
    for (const wind of [15, -15]) {
      const refused = throwStudy(withValues(gliding, {'launch.wind': wind}), 'throws');
      expect(refused.ok ? undefined : refused.problems[0]).to.deep.include({code: 'wind-above-speed', path: 'launch.wind'});
    }
  });

  it('throws a plane too that does not fly, and says why it does not', () => {
    const study = studyOf(defaultDesign, 'one');
    expect(study.trim.ok ? undefined : study.trim.problems[0]?.code).to.equal('flight-unstable');
    expect(study.flown).to.have.length(1);
    expect(track(study, 'right').ended).to.equal('landed');
    const diving = studyOf(withValues(gliding, {'arrangement.tailIncidence': 0.05}), 'one');
    expect(diving.trim.ok ? undefined : diving.trim.problems[0]?.code).to.equal('trim-dives');
  });

  it('is worked out once', () => {
    expect(throwStudy(gliding, 'throws')).to.equal(throwStudy(withValues(gliding, {'name': 'Dune'}), 'throws'));
  });
});
