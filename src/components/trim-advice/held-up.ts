import type {NoGlide} from '../../calc/trim-advice/no-glide.js';
import type {Problem} from '../../calc/problem.js';

export const isNoGlide = (code: string): code is NoGlide => code === 'trim-dives' || code === 'trim-stalls';

/** What comes before any advice, with a remedy of its own. */
export const heldUp = ({code}: Problem): boolean => code === 'balance-behind-limit' || isNoGlide(code);
