import type {DerivedValue} from '../derived-value.js';
import type {GliderDesign} from '../design/design.js';
import {good, type Outcome} from '../problem.js';
import {motionOf} from './motion.js';

/** How a plane moves when something has disturbed it: apart from the other values of its flight, which need far less of the model. */
export const motionValues: Readonly<Record<string, DerivedValue>> = {
  /** Seconds; nothing but a number, for want of a unit of time. */
  phugoidPeriod: {kind: 'count', about: true, digits: 1, of: phugoidPeriod},
};

function phugoidPeriod(design: GliderDesign): Outcome<number> {
  const motion = motionOf(design);
  if (!motion.ok) return motion;
  const period = motion.value.phugoid.find(({period}) => period !== undefined)?.period;
  return period === undefined ? {ok: false, problems: [{code: 'no-such-value', args: {name: 'flight.phugoidPeriod'}}]} : good(period);
}
