import type {Airframe} from './airframe.js';
import type {CrookedPlane} from './crooked.js';
import type {Rates} from './dormand-prince.js';

/** Of the state: over the ground along the throw, to the right, and up; speeds forwards, right and down; their rates of turn; bank, pitch and heading; what drag and sideslip have taken. */
export const turningScale = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0.1] as const;
export const [AT_HEIGHT, AT_BANK, AT_PITCH] = [2, 9, 10] as const;

/**
 * The motion of a stiff plane in all its six ways to move, in axes that are along the glide's path when it leaves the hand: B. Etkin and L. D. Reid, Dynamics of
 * Flight, equations 4.7,1 to 4.7,4, with the air's inertia as their 4.9,18. Up and down the loads are those of a throw, stall included; to the side they are straight in
 * sideslip, rates and crookedness, grow with the speed, and are those of the glide's lift.
 */
export function turningRates({lateral: d, steady, glide, boards, aside: off, heavy, plane: {mass}}: CrookedPlane, airframe: Airframe): Rates {
  const {gravity, pitching} = airframe;
  const pitchInertia = pitching?.inertia ?? 1, {roll: ix, yaw: iz} = heavy;
  const ixz = d.xzOverRoll * ix, both = 1 / (1 - d.xzOverRoll * d.xzOverYaw);
  const attack = glide.setting.attack;
  return (state, rates) => {
    const u = state[3] as number, v = state[4] as number, w = state[5] as number, p = state[6] as number, q = state[7] as number, r = state[8] as number;
    const bank = state[9] as number, pitch = state[10] as number, heading = state[11] as number;
    const speed = Math.sqrt(u * u + v * v + w * w), more = Math.atan2(w, u), k = speed / steady.speed;
    const sb = Math.sin(bank), cb = Math.cos(bank), sp = Math.sin(pitch), cp = Math.cos(pitch), sh = Math.sin(heading), ch = Math.cos(heading);
    const sa = Math.sin(more), ca = Math.cos(more);
    const {lift, drag, moment} = airframe.loads(speed, attack + more, q);

    const along = r * v - q * w - gravity * sp, down = q * u - p * v + gravity * cp * cb;
    // only speed across the boards moves air along
    const share = Math.cos(attack + more) ** 2, lagging = (pitching?.lagLift ?? 0) * share;
    const across = (down * ca - along * sa - lift / mass) / (1 + lagging / mass);
    const whole = lift + lagging * across;
    rates[3] = along + (whole * sa - drag * ca) / mass;
    const aside = k * (d.yv * v + d.yp * p + d.yr * r) + k * k * boards.side;
    rates[4] = p * w - r * u + gravity * cp * sb + aside;
    rates[5] = down - (whole * ca + drag * sa) / mass;

    const turning = moment + (pitching?.lagMoment ?? 0) * share * across - (pitching?.crossFlow ?? 0) * q * Math.abs(q);
    const l = k * (d.lv * v + d.lp * p + d.lr * r) + k * k * boards.roll + (lift * off + (pitchInertia - iz) * q * r + ixz * p * q) / ix;
    const n = k * (d.nv * v + d.np * p + d.nr * r) + k * k * boards.yaw + ((ix - pitchInertia) * p * q - drag * off - ixz * q * r) / iz;
    rates[6] = both * (l + d.xzOverRoll * n);
    rates[7] = (turning + (iz - ix) * p * r - ixz * (p * p - r * r)) / pitchInertia;
    rates[8] = both * (n + d.xzOverYaw * l);

    const swing = (q * sb + r * cb) / cp;
    rates[9] = p + sp * swing;
    rates[10] = q * cb - r * sb;
    rates[11] = swing;

    // from the plane's axes to the ground's
    const level = u * cp + (v * sb + w * cb) * sp, right = v * cb - w * sb;
    rates[0] = level * ch - right * sh;
    rates[1] = level * sh + right * ch;
    rates[2] = u * sp - (v * sb + w * cb) * cp;
    rates[12] = drag * Math.sqrt(u * u + w * w) - mass * aside * v;
  };
}
