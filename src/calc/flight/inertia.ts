import type {MassId, MassItem} from '../balance/mass-item.js';
import type {GliderDesign} from '../design/design.js';
import {memo} from '../memo.js';
import type {PlaneShape} from '../aero/plane-shape.js';
import type {Surface} from '../aero/lattice/surface.js';
import type {FlyingPlane} from './flying-plane.js';

/** How a part's mass is spread about its own centre: squares of radii of gyration, m², and the height of that centre over the wing's middle, m. */
interface Spread {
  readonly z: number;
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
}

/** Moments of inertia about the balance point, kg m²; x backwards, y to the right, z up. */
export interface Inertia {
  readonly roll: number;
  readonly pitch: number;
  readonly yaw: number;
  /** Σ m x z, x and z from the balance point. */
  readonly xz: number;
  /** Of the balance point over the wing's middle, m: less than 0. */
  readonly z: number;
}

const point = (z: number): Spread => ({z, xx: 0, yy: 0, zz: 0});

/**
 * The inertia of a plane from its actual parts: each board evenly heavy over its flown shape, glue and tape where their board is, weights as
 * points half-way up the body. A plane that was weighed or balanced whole keeps its parts' shape, scaled to its mass. Parallel axes; sections of straight-edged
 * boards.
 */
export const inertiaOf = memo((plane: FlyingPlane, body: GliderDesign['body']): Inertia => {
  const spreads = spreadsOf(plane.aero.shape, body);
  const fitted = plane.masses.items.filter(({id}) => id === 'weight');
  const parts = plane.masses.parts;
  const whole = plane.masses.items.reduce((sum, {mass}) => sum + mass, 0);
  const weights = fitted.reduce((sum, {mass}) => sum + mass, 0), ofParts = parts.reduce((sum, {mass}) => sum + mass, 0);
  const scale = ofParts > 0 ? (whole - weights) / ofParts : 0;
  const all = [...parts.map((item) => ({...item, mass: item.mass * scale})), ...fitted];
  return about(all, spreads, plane.balance + plane.wingAt, whole);
});

function about(items: readonly MassItem[], spreads: Readonly<Record<MassId, Spread>>, balance: number, whole: number): Inertia {
  const z = items.reduce((sum, {id, mass}) => sum + mass * spreads[id].z, 0) / whole;
  let roll = 0, pitch = 0, yaw = 0, xz = 0;
  for (const {id, mass, at} of items) {
    const own = spreads[id], dx = at - balance, dz = own.z - z;
    roll += mass * (own.yy + own.zz + dz * dz);
    pitch += mass * (own.xx + own.zz + dx * dx + dz * dz);
    yaw += mass * (own.xx + own.yy + dx * dx);
    xz += mass * dx * dz;
  }
  return {roll, pitch, yaw, xz, z};
}

function spreadsOf({surfaces: [wing, tailplane, fin]}: PlaneShape, {length, height}: GliderDesign['body']): Readonly<Record<MassId, Spread>> {
  const ofWing = wing ? spreadOver(wing) : point(0), ofTail = tailplane ? spreadOver(tailplane) : point(0), ofFins = fin ? spreadOver(fin) : point(0);
  const inBody = -height / 2;
  const ofBody: Spread = {z: inBody, xx: length * length / 12, yy: 0, zz: height * height / 12};
  return {
    'wing': ofWing, 'wing-glue': ofWing, 'body': ofBody, 'body-glue': ofBody, 'tailplane': ofTail, 'fins': ofFins, 'tail-glue': ofTail, 'tail': ofTail,
    'bands': point(0), 'tape': point(0), 'plane': ofBody, 'weight': point(inBody),
  };
}

/** A board evenly heavy over a surface and its mirror image: integrals over each stretch by Simpson's rule, exact for its straight edges. */
function spreadOver({ribs, inMiddle}: Surface): Spread {
  let area = 0, sx = 0, sz = 0, xx = 0, yy = 0, zz = 0;
  ribs.forEach((outer, i) => {
    const inner = ribs[i - 1];
    if (!inner) return;
    const width = Math.hypot(outer.y - inner.y, outer.z - inner.z);
    for (const [t, weight] of [[0, 1 / 6], [0.5, 4 / 6], [1, 1 / 6]] as const) {
      const at = (pick: 'x' | 'y' | 'z' | 'chord'): number => inner[pick] + t * (outer[pick] - inner[pick]);
      const chord = at('chord'), x = at('x') + chord / 2, y = inMiddle ? 0 : at('y'), z = at('z'), piece = weight * width * chord;
      area += piece;
      sx += piece * x;
      sz += piece * z;
      xx += piece * (x * x + chord * chord / 12);
      yy += piece * y * y;
      zz += piece * z * z;
    }
  });
  if (!(area > 0)) return point(0);
  const x = sx / area, z = sz / area;
  return {z, xx: xx / area - x * x, yy: yy / area, zz: zz / area - z * z};
}
