import type {GliderDesign} from '../../calc/design/design.js';
import type {Advice} from '../../calc/trim-advice/advice.js';
import type {CauseId} from '../../calc/trim-advice/causes.js';
import type {Change, Values} from '../../calc/trim-advice/change.js';
import type {Past} from '../../calc/trim-advice/seen.js';

/** A throw of this session with the change that followed it, and what would take that change back. */
export interface Told extends Past {
  readonly change?: Change;
  /** What that change was made against. */
  readonly cause?: CauseId;
  readonly before: Values;
}

/** What is known after the throws told so far. */
export interface Advised {
  /** Missing as long as nobody has said what the last throw did. */
  readonly advice: Advice | undefined;
  readonly thread: readonly Told[];
  readonly design: GliderDesign;
}
