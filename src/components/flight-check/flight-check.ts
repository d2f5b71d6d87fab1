import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {dimensionPaths, type DimensionPath} from '../../calc/design/dimensions.js';
import type {FlightCheck} from '../../calc/flight/flight-check.js';
import {good, type Outcome} from '../../calc/problem.js';
import type {FlightPlot} from '../../drawing/figures/flight-check.js';
import {flightWords} from '../../messages/en/flight.js';
import {Calculator, type Answer} from '../base/calculator.js';
import {shortProperties} from '../base/element.js';
import {Figure} from '../base/figure.js';
import {later} from '../base/later.js';
import type * as Picturing from './picture.js';
import {measureStyles} from './styles.js';

const shortNames = {
  span: 'wing.span', chord: 'wing.chord', tipChord: 'wing.tipChord', creases: 'wing.creases', stack: 'wing.stack', joints: 'wing.joints',
  tailSpan: 'tail.span', tailChord: 'tail.chord', finHeight: 'tail.fins.height', bodyLength: 'body.length', noseToWing: 'arrangement.wingAt',
  noseToTail: 'arrangement.tailAt', tailIncidence: 'arrangement.tailIncidence', sheetMass: 'board.sheetMass', mass: 'measured.mass',
  balance: 'measured.balance', masses: 'ballast.masses',
} as const satisfies Readonly<Record<string, DimensionPath>>;

/** Dimensions that change nothing here: how the sheet is laid out, and the throw but for its height. */
const notRead = /^(name$|board\.(length|width|margin|gap)|launch\.(?!height)|built\.(bow|leftTip|rightTip))/;

const first = ['ballast.masses', 'arrangement.wingAt', 'arrangement.tailIncidence', 'measured.mass', 'measured.balance'] as const satisfies readonly DimensionPath[];

/** The fields behind the few that most readers need. */
const groups = {
  weighs: ['board.sheetMass', 'board.arealMass', 'wing.weighed', 'body.weighed', 'tail.weighed', 'wing.peeled'],
  size: ['wing.span', 'wing.chord', 'wing.tipChord', 'tail.span', 'tail.chord', 'tail.fins.count', 'tail.fins.height', 'body.length', 'arrangement.tailAt'],
  wing: ['wing.creases', 'wing.stack', 'wing.joints', 'wing.pressed', 'arrangement.wingIncidence'],
  steady: ['balance.marginLow', 'balance.marginHigh'],
  air: ['air.temperature', 'air.altitude'],
} as const satisfies Readonly<Record<string, readonly DimensionPath[]>>;


const loadCheck = () => import('./checked.js');
const loadWorking = () => import('./working.js');

/** Until the flight model has arrived. */
const waiting = good('waiting' as const);

/**
 * Will it fly, and how? Weight, loadings, balance, static margin, tail and fins, roll, speed, glide, sink and Reynolds number, each beside its usual
 * range, with what to change; a plot of speed and sink; and whether the wing will hold. A plane that cannot steady itself gets no speed but a remedy.
 *
 * @summary Will a glider fly, how fast and how far, and what would make it better?
 * @attr {string} span - Wing tip to wing tip, flat on the board.
 * @attr {string} chord - Wing front edge to rear edge in the middle.
 * @attr {string} tip-chord - The same at the tip.
 * @attr {string} creases - Creases behind the wing's front edge.
 * @attr {string} stack - Height of what props the wing's edge while it sets.
 * @attr {string} joints - Dihedral joints: angle @ distance from the middle.
 * @attr {string} tail-span - Tip to tip of the tailplane.
 * @attr {string} tail-chord - Front edge to rear edge of the tailplane.
 * @attr {string} fin-height - Height of a fin.
 * @attr {string} body-length - Nose to the end of the body.
 * @attr {string} nose-to-wing - Nose to the front edge of the wing.
 * @attr {string} nose-to-tail - Nose to the front edge of the tailplane.
 * @attr {string} tail-incidence - The tailplane's angle, front edge up.
 * @attr {string} sheet-mass - What a whole sheet of the board weighs.
 * @attr {string} mass - What the whole plane weighs, without the weights listed.
 * @attr {string} balance - Where that plane balances, behind the wing's front edge.
 * @attr {string} masses - Weights fitted: mass @ distance behind the nose.
 * @csspart card - The whole calculator.
 * @csspart heading - What it is about.
 * @csspart answer - The sentence to act on.
 * @csspart aside - What follows from it.
 * @csspart figure - The plot of speed and sink.
 * @csspart measures - The numbers beside their usual ranges.
 * @csspart strength - Whether the wing will hold.
 * @csspart question - The fields.
 * @csspart field - A label with its field and what is wrong with it.
 * @csspart input - The native input of a field.
 * @csspart working - The formulas.
 * @csspart problem - A sentence about something wrong.
 */
export class GliderFlightCheck extends Calculator<FlightCheck | 'waiting'> {
  static override readonly shortNames = shortNames;
  static override properties = {...Calculator.properties, ...shortProperties(shortNames)};
  static override styles = [...Calculator.styles, measureStyles];

  declare span: string | undefined;
  declare chord: string | undefined;
  declare tipChord: string | undefined;
  declare creases: string | undefined;
  declare stack: string | undefined;
  declare joints: string | undefined;
  declare tailSpan: string | undefined;
  declare tailChord: string | undefined;
  declare finHeight: string | undefined;
  declare bodyLength: string | undefined;
  declare noseToWing: string | undefined;
  declare noseToTail: string | undefined;
  declare tailIncidence: string | undefined;
  declare sheetMass: string | undefined;
  declare mass: string | undefined;
  declare balance: string | undefined;
  declare masses: string | undefined;

  protected readonly paths = dimensionPaths.filter((path) => !notRead.test(path));

  #picturing: typeof Picturing | undefined;
  readonly #figure = new Figure<FlightPlot>(this, {
    load: async () => {
      this.#picturing = await import('./picture.js');
      return this.#picturing.drawFlightPlot;
    },
    data: () => {
      const {good: check} = this;
      return check === undefined || check === 'waiting' ? undefined : this.#picturing?.flightPlot(this, check);
    },
  }, this.fields);

  protected work(): Outcome<FlightCheck | 'waiting'> { return later(this, loadCheck)?.flightCheck(this.state.design) ?? waiting; }

  protected override says(check: FlightCheck | 'waiting'): boolean { return check !== 'waiting'; }

  protected renderHeading(): string { return this.say(flightWords).heading; }

  protected answer(check: FlightCheck | 'waiting'): Answer {
    const words = check === 'waiting' ? undefined : later(this, loadCheck)?.answerWords(this, check);
    return words ?? {sentence: this.say(flightWords).waiting};
  }

  protected renderPicture(check: FlightCheck | 'waiting'): TemplateResult {
    const checked = later(this, loadCheck);
    if (check === 'waiting' || !checked) return html`${nothing}`;
    return html`${check.flight.ok ? html`${this.#figure.render(checked.pictureName(this, check))}
      <p class="source">${checked.caption(this, check)}</p>` : nothing}${checked.panel(this, check)}`;
  }

  protected renderQuestion(): TemplateResult {
    const words = this.say(flightWords);
    const of = (path: DimensionPath): TemplateResult => this.fields.of(path, {disabled: this.locked(path)});
    const group = (name: keyof typeof groups): TemplateResult => html`<details class="more" ?open=${groups[name].some((path) => this.#troubled(path))}>
      <summary>${words.groups[name]}</summary><div class="fields">${groups[name].map(of)}</div></details>`;
    return html`<div class="fields">${first.map(of)}${group('weighs')}${group('size')}${group('wing')}${group('steady')}${group('air')}</div>`;
  }

  #troubled(path: DimensionPath): boolean {
    const {refused, problems} = this.state;
    return path in refused || [...problems, ...this.fields.found].some((problem) => problem.path === path);
  }

  protected renderWorking(check: FlightCheck | 'waiting'): TemplateResult | undefined {
    return check === 'waiting' ? undefined : later(this, loadWorking)?.flightWorking(this, check);
  }
}
