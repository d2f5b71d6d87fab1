import {expect} from '@open-wc/testing';
import {weightsForBalance} from '../../../src/calc/balance/weights-for-balance.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import type {DimensionPath, DimensionValue} from '../../../src/calc/design/dimensions.js';
import {finVolume, tailVolume} from '../../../src/calc/flight/fin-volume.js';
import {flightCheck, sinkBand, speedBand, type FlightCheck, type Measure} from '../../../src/calc/flight/flight-check.js';
import {flightValues} from '../../../src/calc/flight/flight-values.js';
import {flightOf} from '../../../src/calc/flight/flight.js';
import {motionOf} from '../../../src/calc/flight/motion.js';
import type {MeasureId} from '../../../src/calc/flight/usual-ranges.js';
import {derivedValue} from '../../../src/calc/values.js';

const degree = Math.PI / 180;

/** The default glider with enough weight at its nose to steady itself, and its tail set to hold the nose up. */
const steady = {'ballast.masses': [{mass: 0.031, at: 0.01}], 'arrangement.tailIncidence': -2.5 * degree};

type Values = Readonly<Partial<Record<DimensionPath, DimensionValue>>>;

function checkOf(values: Values = {}): FlightCheck {
  const check = flightCheck(withValues(defaultDesign, values));
  if (!check.ok) throw new Error(check.problems.map(({code}) => code).join());
  return check.value;
}

function measureOf({measures}: FlightCheck, wanted: MeasureId): Measure {
  const found = measures.find(({id}) => id === wanted);
  if (!found) throw new Error(`no ${wanted}`);
  return found;
}

describe('flight check', () => {
  it('gives a tail-heavy plane no speed, but what would steady it', () => {
    const check = checkOf();
    expect(check.flight.ok).to.equal(false);
    expect(check.measures.map(({id}) => id)).to.deep.equal(['mass', 'wingLoading', 'cubeLoading', 'balance', 'staticMargin', 'tailVolume', 'finVolume']);
    expect(measureOf(check, 'balance').standing).to.equal('above');
    expect(measureOf(check, 'staticMargin').standing).to.equal('below');
  });

  it('puts the balance first, in the weight that the balance asks for, and tells how the plane flies then', () => {
    const {first} = checkOf(), asked = weightsForBalance(defaultDesign);
    expect(asked.ok && first?.weights).to.equal(asked.ok && asked.value);
    const mended = checkOf({'ballast.masses': first?.weights?.masses ?? []});
    expect([mended.first, mended.flight.ok, first?.then?.ok]).to.deep.equal([undefined, true, true]);
    expect(mended.trim.ok && first?.then?.ok && first.then.value.trim.ok && Math.abs(mended.trim.value.glide.speed - first.then.value.trim.value.glide.speed)).to.be.below(1e-9);
  });

  it('has every measure of a plane that glides, each range around its usual figure', () => {
    const check = checkOf(steady);
    expect(check.measures.map(({id}) => id)).to.deep.equal([
      'mass', 'wingLoading', 'cubeLoading', 'balance', 'staticMargin', 'tailVolume', 'finVolume', 'roll', 'speed', 'stallMargin', 'glideRatio', 'sink', 'reynolds',
    ]);
    for (const {id, value, from, to, standing} of check.measures) {
      expect(value.least, id).to.be.at.most(value.usual).and.to.be.above(0);
      expect(value.most, id).to.be.at.least(value.usual).and.to.be.below(1e6);
      expect(from, id).to.be.below(to);
      expect(standing, id).to.equal(value.usual < from ? 'below' : value.usual > to ? 'above' : 'within');
    }
  });

  it('is no surer of speed, sink and neutral point than the model is', () => {
    const check = checkOf(steady);
    const speed = measureOf(check, 'speed').value, sink = measureOf(check, 'sink').value, margin = measureOf(check, 'staticMargin').value;
    expect(speed.least).to.be.at.most((1 - speedBand) * speed.usual + 1e-12);
    expect(speed.most).to.be.at.least((1 + speedBand) * speed.usual - 1e-12);
    expect(sink.least).to.be.at.most((1 - sinkBand) * sink.usual + 1e-12);
    expect(sink.most).to.be.at.least((1 + sinkBand) * sink.usual - 1e-12);
    expect(margin.most - margin.least).to.be.closeTo(0.08, 1e-12);
  });

  it('wants the balance where the margins that the builder wants put it', () => {
    const check = checkOf({...steady, 'balance.marginLow': 0.1, 'balance.marginHigh': 0.2});
    const {from, to} = measureOf(check, 'balance');
    const {neutralPoint, aero: {shape: {wing: {meanAerodynamicChord: chord}}}} = check.plane;
    expect(from).to.be.closeTo(neutralPoint - 0.2 * chord, 1e-12);
    expect(to).to.be.closeTo(neutralPoint - 0.1 * chord, 1e-12);
  });

  it('says how the other skin would do: a wing peeled above is weaker in the middle', () => {
    const whole = checkOf(steady);
    if (!whole.strength.ok || !whole.otherwise.ok) throw new Error('no strength');
    expect(whole.otherwise.value.places[0]?.takes.usual).to.be.below(whole.strength.value.places[0]?.takes.usual ?? NaN);
    const peeled = checkOf({...steady, 'wing.peeled': 'above'});
    expect(peeled.strength.ok && peeled.strength.value.places[0]?.takes).to.deep.equal(whole.otherwise.value.places[0]?.takes);
  });

  it('is the same object while nothing changes, and refuses what has no plane in it', () => {
    const design = withValues(defaultDesign, steady);
    expect(flightCheck(design) === flightCheck(design)).to.equal(true);
    const ahead = flightCheck(withValues(defaultDesign, {'arrangement.tailAt': 0.21}));
    expect(ahead.ok ? [] : ahead.problems.map(({path}) => path)).to.include('arrangement.tailAt');
  });
});

describe('tail and fin volume', () => {
  it('follow their definitions for a rectangular plane, by hand', () => {
    const {plane, design} = checkOf({...steady, 'wing.joints': []});
    // areas and arms in mm: the quarter points of 120 and 78 mm chords, 340 mm apart in front
    expect(tailVolume(plane)).to.be.closeTo(240 * 78 * (340 + 78 / 4 - 120 / 4) / (660 * 120 * 120), 2e-3);
    // two fins of 70 by 70 mm, rear edges flush with the tailplane's 418 mm behind the wing's front edge
    const arm = 418 - 0.75 * 70 - plane.balance * 1000;
    expect(finVolume(plane, design)).to.be.closeTo(2 * 70 * 70 * arm / (660 * 120 * 660), 2e-4);
  });

  it('of a plane without fins is nothing', () => {
    const {plane, design} = checkOf(steady);
    expect(finVolume(plane, {...design, tail: {...design.tail, fins: {...design.tail.fins, count: 0}}})).to.equal(0);
  });
});

describe('values of the flight', () => {
  it('are found by name and agree with the flight itself', async () => {
    const design = withValues(defaultDesign, steady);
    const flight = flightOf(design);
    if (!flight.ok || !flight.value.trim.ok) throw new Error('no flight');
    const value = async (name: string): Promise<number> => {
      const found = (await derivedValue(`flight.${name}`))?.of(design);
      return found?.ok ? found.value : NaN;
    };
    expect(await value('speed')).to.equal(flight.value.trim.value.glide.speed);
    expect(await value('glideRatio')).to.equal(flight.value.trim.value.glide.ratio.usual);
    expect(await value('stallSpeed')).to.equal(flight.value.stall);
    expect(await value('bestSpeed')).to.equal(flight.value.best.speed);
    expect(await value('staticMargin')).to.equal(flight.value.plane.margin);
    const motion = motionOf(design);
    if (!motion.ok) throw new Error('no motion');
    expect(await value('phugoidPeriod')).to.equal(motion.value.phugoid[0]?.period);
    expect(await derivedValue('flight.unheardOf')).to.equal(undefined);
  });

  it('of an unstable plane give a reason, except for its margin, neutral point and fins', () => {
    const numbers = Object.entries(flightValues).filter(([, value]) => value.of(defaultDesign).ok).map(([name]) => name);
    expect(numbers).to.deep.equal(['staticMargin', 'neutralPoint', 'finVolume']);
  });
});
