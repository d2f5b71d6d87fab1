import {expect} from '@open-wc/testing';
import {eigenvalues, type Complex, type Matrix} from '../../src/calc/flight/eigenvalues.js';
import {longitudinalMatrix, phugoidPeriod} from '../../src/calc/flight/motion-equations.js';
import {spiralRule} from '../../src/calc/flight/spiral.js';

const deg = Math.PI / 180;

/** The eigenvalues with an imaginary part not below 0, quickest first. */
const modes = (matrix: Matrix): Complex[] => eigenvalues(matrix).filter(({im}) => im >= 0);

describe('eigenvalues of published aircraft', () => {
  it('are those of a Boeing 747 in the plane of symmetry', () => {
    // Etkin and Reid, Dynamics of Flight, third edition, equation 6.2,1; matrix read in a course problem, eigenvalues from memory
    const [short, phugoid] = modes([[-0.006868, 0.01395, 0, -32.2], [-0.09055, -0.3151, 773.98, 0], [0.0001187, -0.001026, -0.4285, 0], [0, 0, 1, 0]]);
    expect(phugoid?.re).to.be.closeTo(-0.003289, 0.00001);
    expect(phugoid?.im).to.be.closeTo(0.06723, 0.00002);
    expect(short?.im).to.be.closeTo(0.8875, 0.0001);
  });

  it('are those of a Boeing 747 to the side', () => {
    // Etkin and Reid, equation 6.7,1 and table; matrix and eigenvalues from memory
    const matrix = [[-0.0558, 0, -774, 32.2], [-0.003865, -0.4342, 0.4136, 0], [0.001086, -0.006112, -0.1458, 0], [0, 1, 0, 0]];
    const [dutch, roll, spiral] = modes(matrix);
    expect(dutch?.re).to.be.closeTo(-0.033011, 0.000005);
    expect(dutch?.im).to.be.closeTo(0.94655, 0.00001);
    expect(roll?.re).to.be.closeTo(-0.56248, 0.00001);
    expect(spiral?.re).to.be.closeTo(-0.0072973, 0.000001);
  });

  it('are those of the Navion', () => {
    // Nelson, Flight Stability and Automatic Control, example 4.2 and 4.3; from memory
    const [short, phugoid] = modes([[-0.045, 0.036, 0, -32.2], [-0.369, -2.02, 176, 0], [0.0019, -0.0396, -2.948, 0], [0, 0, 1, 0]]);
    expect(phugoid?.re).to.be.closeTo(-0.0171, 0.0003);
    expect(short?.re).to.be.closeTo(-2.5, 0.02);
    expect(short?.im).to.be.closeTo(2.59, 0.015);
  });

  it('are those of the DC-8 on approach, from its derivatives', () => {
    // derivatives: Schmidt, Introduction to Aircraft Flight Dynamics (1998), appendix B.4, condition 1 (read); eigenvalue by another program, a cross-check
    const speed = 243, gravity = 32.17;
    const [short] = modes(longitudinalMatrix(
      {xu: -0.0291, xw: 15.32 / speed, zu: -0.251, zw: -152.8 / speed, zwDot: 0, zq: 0, mu: 0, mw: -2.118 / speed, mwDot: -0.26 / speed, mq: -0.792},
      {speed, pathAngle: 0, gravity},
    ));
    expect(short?.re).to.be.closeTo(-0.845, 0.0005);
    expect(short?.im).to.be.closeTo(1.3807, 0.0005);
  });
});

describe('rules beside the equations', () => {
  it('has Lanchester’s period 14 % too long for the 747', () => {
    // 106.8 s against 93.4 s; air that is compressed, and a change of lift with speed of its own
    expect(phugoidPeriod(773.98 * 0.3048)).to.be.closeTo(106.8, 0.2);
  });

  it('has the classic spiral rule with its degrees', () => {
    // Drela, Basic Aircraft Design Rules (2006): B = (l_v/b)(Γ°/C_L): 0.45 m, 0.8 m, 8°, 0.6 gives 7.5, well above the neutral 5
    expect(spiralRule(0.45 / 0.8, 8 * deg, 0.6)).to.be.closeTo(7.5, 0.001);
  });
});
