import {expect} from '@open-wc/testing';
import {gravity, usualAir} from '../../../src/calc/aero/air.js';
import {amountsOf, total} from '../../../src/calc/aero/plane-loads.js';
import {defaultDesign, withValues} from '../../../src/calc/design/design.js';
import {wingStrength, type WingStrength} from '../../../src/calc/flight/wing-strength.js';
import {codesOf, planeOf, trim, trimmedAt, valueOf, balancedWith} from './planes.js';

const steady = trimmedAt(5.5);
const strength = (values: Parameters<typeof withValues>[1] = {}): WingStrength => valueOf(wingStrength(withValues(steady, values)));

describe('whether the wing will fold', () => {
  it('bends it in the middle as its share of the weight out on each half does', () => {
    const {places: [middle]} = strength();
    const plane = planeOf(steady), wing = plane.masses.parts.filter(({id}) => id.startsWith('wing')).reduce((sum, {mass}) => sum + mass, 0);
    // an elliptic half wing carries at 0.424 of its length; a square-cut one a little further out; the tail takes or gives a tenth
    const lever = (middle?.glide ?? NaN) / ((plane.mass - wing) * gravity / 2) / (plane.aero.shape.wing.span / 2);
    expect(lever).to.be.within(0.38, 0.52);
  });

  it('bends it with forces square to each panel, however steep the V', () => {
    const steep = trimmedAt(5.5, balancedWith(0.2, withValues(defaultDesign, {'wing.joints': [{angle: 0.5, at: 0}]})));
    const {glide} = trim(steep), plane = planeOf(steep), amounts = amountsOf(glide.setting);
    const wing = plane.masses.parts.filter(({id}) => id.startsWith('wing')).reduce((sum, {mass}) => sum + mass, 0);
    const pressure = usualAir.density * glide.speed ** 2 / 2;
    const byHand = plane.aero.strips.filter(({group}) => group === 0)
      .reduce((sum, {along, width, circulation}) => sum + 2 * pressure * total(circulation, amounts) * width * along, 0) * (1 - wing / plane.mass);
    expect(valueOf(wingStrength(steep)).places[0]?.glide).to.be.closeTo(byHand, 1e-9);
  });

  it('bends four times as much at twice the speed', () => {
    for (const {glide, fast} of strength().places) expect(fast).to.equal(4 * glide);
  });

  it('bends less further out, and nothing at the tip', () => {
    const joints = [{angle: 0.05, at: 0.1}, {angle: 0.05, at: 0.2}, {angle: 0.05, at: 0.3}];
    const moments = strength({'wing.joints': joints}).places.map(({glide}) => glide);
    expect(moments).to.have.length(4);
    expect(moments).to.deep.equal([...moments].sort((a, b) => b - a));
    expect((moments[3] ?? NaN) / (moments[0] ?? NaN)).to.be.lessThan(0.05);
  });

  it('holds with both skins and may not without', () => {
    expect(strength().holds).to.equal('yes');
    const bare = strength({'wing.peeled': 'both'});
    expect(bare.weakest.at).to.equal(0);
    expect(bare.weakest.reserve.usual).to.be.lessThan(strength({'wing.peeled': 'above'}).weakest.reserve.usual);
    expect(bare.holds).not.to.equal('yes');
  });

  it('is weaker at a joint than beside it, and a joint in the middle is the place to tape', () => {
    const joined = strength({'wing.joints': [{angle: 0.1, at: 0}]});
    expect(joined.weakest).to.deep.include({at: 0, joint: true});
    expect(joined.places).to.have.length(1);
    expect(joined.weakest.takes.usual).to.be.lessThan(strength().places[0]?.takes.usual ?? NaN);
  });

  it('takes what a sandwich takes: skin force, thickness, width', () => {
    // 2500 N/m of paper on 5 mm of board 120 mm wide
    expect(strength().places[0]?.takes.usual).to.be.closeTo(2500 * 0.005 * 0.12, 1e-12);
  });

  it('is refused where there is no glide', () => {
    expect(codesOf(wingStrength(withValues(balancedWith(0.2), {'arrangement.tailIncidence': 0.1})))).to.deep.equal(['trim-dives']);
    expect(trim(steady).speed.usual).to.be.closeTo(5.5, 0.01);
  });
});
