/** Coins, washers, board, glue and clay against published figures. A value not read at its source says so. */
import {expect} from '@open-wc/testing';
import {coins, massOf, steelDensity, washers} from '../../shared/ballast.js';
import {
  beadDiameter, beadMassPerLength, boardArealMass, boards, clayDensity, coreDensity, hotMeltDensity,
} from '../../shared/materials.js';

const coin = (id: (typeof coins)[number]['id']) => coins.find((each) => each.id === id) ?? coins[0];
const grams = (id: (typeof coins)[number]['id']) => massOf(coin(id)) * 1000;
const washer = (id: (typeof washers)[number]['id']) => washers.find((each) => each.id === id) ?? washers[0];
const board = (id: (typeof boards)[number]['id']) => boards.find((each) => each.id === id) ?? boards[0];

// United States Mint, coin specifications
describe('United States coins', () => {
  const masses = {
    'usd-0.01': 2.5, 'usd-0.05': 5, 'usd-0.10': 2.268, 'usd-0.25': 5.67, 'usd-0.50': 11.34, 'usd-1': 8.1,
  } as const;
  for (const [id, mass] of Object.entries(masses)) {
    it(`${id} weighs ${mass.toString()} g`, () => { expect(grams(id as keyof typeof masses)).to.be.closeTo(mass, 0.001); });
  }
  it('a quarter is 24.26 mm across and a cent 1.52 mm thick', () => {
    expect(coin('usd-0.25').diameter * 1000).to.be.closeTo(24.26, 0.01);
    expect(coin('usd-0.01').thickness * 1000).to.be.closeTo(1.52, 0.01);
  });
});

// Council Regulation (EC) No 975/98 and euro coin specification pages
describe('euro coins', () => {
  const masses = {
    'eur-0.01': 2.3, 'eur-0.02': 3.06, 'eur-0.05': 3.92, 'eur-0.10': 4.1,
    'eur-0.20': 5.74, 'eur-0.50': 7.8, 'eur-1': 7.5, 'eur-2': 8.5,
  } as const;
  for (const [id, mass] of Object.entries(masses)) {
    it(`${id} weighs ${mass.toString()} g`, () => { expect(grams(id as keyof typeof masses)).to.be.closeTo(mass, 0.001); });
  }
  it('two euros are 25.75 mm across', () => {
    expect(coin('eur-2').diameter * 1000).to.be.closeTo(25.75, 0.001);
  });
});

// Royal Mint figures through secondary pages (not read at the Royal Mint)
describe('British coins', () => {
  const masses = {'gbp-0.01': 3.56, 'gbp-0.02': 7.12, 'gbp-0.10': 6.5, 'gbp-0.20': 5, 'gbp-1': 8.75, 'gbp-2': 12} as const;
  for (const [id, mass] of Object.entries(masses)) {
    it(`${id} weighs ${mass.toString()} g`, () => { expect(grams(id as keyof typeof masses)).to.be.closeTo(mass, 0.01); });
  }
  it('two pennies weigh as much as one twopence', () => {
    expect(2 * grams('gbp-0.01')).to.be.closeTo(grams('gbp-0.02'), 1e-9);
  });
});

describe('all coins', () => {
  it('have the density of a coin metal, so no figure has slipped a place', () => {
    for (const {mass, diameter, thickness} of coins) {
      // the thickness is taken at the raised rim: the disc is emptier than its rim says
      expect(mass / (Math.PI / 4 * diameter ** 2 * thickness)).to.be.within(5500, 9000);
    }
  });
});

// DIN 125 / ISO 7089 dimensions and mass table; steel of 7.85 g/cm³
describe('flat washers', () => {
  const masses = {'washer-m4': 0.308, 'washer-m5': 0.443, 'washer-m8': 1.83, 'washer-m12': 6.27} as const;
  for (const [id, mass] of Object.entries(masses)) {
    it(`${id} weighs ${mass.toString()} g`, () => {
      const inGrams = massOf(washer(id as keyof typeof masses)) * 1000;
      expect(Math.abs(inGrams / mass - 1)).to.be.below(0.01);
    });
  }
  it('weigh what the ring of steel weighs, to the digit', () => {
    expect(steelDensity).to.equal(7850);
    expect(massOf(washer('washer-m5')) * 1000).to.be.closeTo(0.4433522, 5e-8);
    expect(massOf(washer('washer-m12')) * 1000).to.be.closeTo(6.27327, 5e-6);
  });
  it('have the standard’s dimensions', () => {
    const {hole, diameter, thickness} = washer('washer-m8');
    expect([hole, diameter, thickness]).to.deep.equal([0.0084, 0.016, 0.0016]);
  });
});

describe('board', () => {
  // A 20 × 30 in sheet of lightweight paper-faced board weighed at 115 g, published 2013 (common practice; no standard)
  it('weighs about 297 g/m² when light', () => {
    expect(board('paper-faced-light').arealMass).to.be.closeTo(0.115 / (0.508 * 0.762), 0.001);
    expect(board('paper-faced-light').arealMass * 1000).to.be.closeTo(297.1, 1);
  });

  // 0.39 g/in² published for a heavy British board
  it('weighs about 605 g/m² when heavy', () => {
    expect(board('paper-faced-heavy').arealMass * 1000).to.be.closeTo(604.5, 8);
  });

  // 10 × 10 cm of board: two papers 0.777 + 0.768 g, foam 1.364 g
  it('has more than half its mass in its papers: peeling one saves about a quarter', () => {
    const {skinShare} = board('paper-faced');
    expect(skinShare).to.be.closeTo((0.777 + 0.768) / 2.909, 1e-9);
    expect(skinShare).to.be.closeTo(0.53, 0.005);
    expect(skinShare / 2).to.be.closeTo(0.26, 0.01);
  });

  // The same sample with a 4.5 mm core; extruded polystyrene, a maker's data sheet: 30 kg/m³ ± 5 %
  it('has a core of about 30 kg/m³', () => {
    expect(coreDensity.usual).to.be.closeTo(0.001364 / (0.01 * 0.0045), 0.3);
    expect(Math.abs(coreDensity.usual / 30 - 1)).to.be.below(0.05);
    expect(board('bare-foam').arealMass / board('bare-foam').thickness).to.be.closeTo(30, 1.5);
  });

  it('spreads over a factor of two', () => {
    expect(boardArealMass.most / boardArealMass.least).to.be.closeTo(2, 1e-9);
    for (const {arealMass, skinShare} of boards) {
      if (skinShare) expect(arealMass).to.be.within(boardArealMass.least * 0.98, boardArealMass.most * 1.02);
    }
  });
});

describe('glue and clay', () => {
  // Sticks of 11 mm; hot-melt density 0.95 g/cm³ (from memory, typical 0.93 to 0.98)
  it('an 11 mm stick 100 mm long weighs 9.03 g', () => {
    expect(beadMassPerLength(0.011) * 0.1 * 1000).to.be.closeTo(9.03, 0.05);
    expect(beadMassPerLength(0.011) * 0.1 * 1000).to.be.closeTo(9.028152, 5e-7);
  });

  // The same density: 2 mm ≈ 3.0, 3 mm ≈ 6.7, 4 mm ≈ 11.9 g/m
  it('beads weigh 3.0, 6.7 and 11.9 g/m', () => {
    const {least, usual, most} = beadDiameter;
    expect([least, usual, most].map((d) => Math.round(beadMassPerLength(d) * 10000) / 10)).to.deep.equal([3, 6.7, 11.9]);
    expect(hotMeltDensity.usual).to.equal(950);
  });

  // A physics teaching page: 100 g of plasticine fill 50 cm³; commercial modelling clays are 1.6 to 2.0 g/cm³
  it('clay weighs about 2 g/cm³', () => {
    expect(clayDensity.usual / 1000).to.be.closeTo(2, 0.2);
    expect(clayDensity.least).to.equal(1600);
  });
});
