import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {CutSketch} from '../../drawing/figures/sheet-layout.js';
import {sheetPanelWords} from '../../messages/en/sheet-panels.js';
import type {Found} from './found.js';
import type {LaidOut} from './laid-out.js';
import type * as Lists from './lists.js';
import type {GliderPartsSheet} from './parts-sheet.js';
import {sheetTitle} from './picture.js';

type Name = 'marking' | 'cutting';

/** The lists that are loaded when they are opened: marking out, and cut by cut. */
export class Panels {
  readonly #host: GliderPartsSheet;
  #lists: typeof Lists | 'asked' | 'not loaded' | undefined;
  #plan = 0;
  #step: number | undefined;
  #of: LaidOut | undefined;
  /** The cut that the picture points out. */
  cut: CutSketch | undefined;

  constructor(host: GliderPartsSheet) { this.#host = host; }

  render(name: Name, found: Found): TemplateResult | typeof nothing {
    const host = this.#host;
    this.#keepUp(found.cut);
    return host.shows(name)
      ? html`<details class="panel ${name}" part=${name} @toggle=${this.#ask}><summary>${host.say(sheetPanelWords)[name]}</summary>${this.#content(name, found)}</details>` : nothing;
  }

  #content(name: Name, {cut}: Found): TemplateResult | typeof nothing {
    const host = this.#host;
    const lists = this.#lists;
    if (lists === undefined || lists === 'asked') return nothing;
    if (lists === 'not loaded') return html`<p class="problem" part="problem">${host.say(sheetPanelWords).notLoaded}</p>`;
    const plan = cut.plans[this.#plan];
    if (!plan) return nothing;
    const {gap} = cut.stock;
    return html`<div class="opened">${cut.plans.length > 1 ? this.#planField(name, cut) : nothing}${name === 'marking' ? lists.markingList(host, plan)
      : lists.cuttingList(host, plan, gap, {step: this.#step, goTo: (step) => { this.#goTo(step); }})}</div>`;
  }

  #planField(name: Name, cut: LaidOut): TemplateResult {
    const id = `field-${name}-sheet`;
    return html`<div class="field" part="field"><label for=${id}>${this.#host.say(sheetPanelWords).sheet}</label>
      <span class="q"><select id=${id} .value=${live(String(this.#plan))} @change=${(e: Event) => {
        this.#plan = Number((e.target as HTMLSelectElement).value);
        this.#goTo(undefined);
      }}>${cut.plans.map((plan, i) => html`<option value=${i} ?selected=${i === this.#plan}>${sheetTitle(this.#host, plan, cut)}</option>`)}</select></span></div>`;
  }

  #goTo(step: number | undefined): void {
    const lists = this.#lists;
    const plan = this.#of?.plans[this.#plan];
    const at = plan && step !== undefined && typeof lists === 'object' ? lists.stepsOf(plan, this.#of?.stock.gap ?? 0)[step] : undefined;
    this.#step = at ? step : undefined;
    this.cut = at && typeof lists === 'object' ? lists.cutSketch(at, this.#plan) : undefined;
    this.#host.requestUpdate();
  }

  /** Another layout is cut another way. */
  #keepUp(cut: LaidOut): void {
    if (this.#of === cut) return;
    this.#of = cut;
    if (this.#plan >= cut.plans.length) this.#plan = 0;
    this.#step = undefined;
    this.cut = undefined;
  }

  readonly #ask = (): void => {
    if (this.#lists !== undefined && this.#lists !== 'not loaded') return;
    this.#lists = 'asked';
    this.#host.await(import('./lists.js').then((lists) => { this.#lists = lists; }, () => { this.#lists = 'not loaded'; })
      .finally(() => { this.#host.requestUpdate(); }));
  };
}
