import type {GliderDesign} from '../../calc/design/design.js';
import type {ThrowStudy} from '../../calc/flight/simulation/throw-study.js';
import type {Advice} from '../../calc/trim-advice/advice.js';
import type {Change} from '../../calc/trim-advice/change.js';
import type {Past} from '../../calc/trim-advice/seen.js';
import type {Made} from '../../calc/trim-advice/taken-back.js';

/** A throw of this session with the change that followed it, and what would take that change back. */
export interface Told extends Past, Made {
  readonly change?: Change;
}

/** What is known after the throws told so far. */
export interface Advised {
  /** Missing as long as nobody has said what the last throw did. */
  readonly advice: Advice | undefined;
  readonly thread: readonly Told[];
  readonly design: GliderDesign;
  /** How it flies as it is, and the throw that it wants. */
  readonly study: ThrowStudy;
}
