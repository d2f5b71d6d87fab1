import {html, nothing} from 'lit';
import type {ReactiveController, TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import type {Outcome} from '../../calc/problem.js';
import {mostPages} from '../../calc/sheet/tiling.js';
import type {TemplateJob} from '../../drawing/pdf/job.js';
import {planTemplates, type TemplatePlan} from '../../drawing/pdf/plan.js';
import {sheetTemplateWords} from '../../messages/en/sheet-templates.js';
import type {GliderElement} from '../base/element.js';
import {explain} from '../base/explain.js';
import type {Found} from './found.js';
import {LengthField} from './length-field.js';
import {papers, paperOf, type PaperId} from './papers.js';
import {sheetTitle} from './picture.js';
import {fileName, fileOf, type SavedFile} from './saved-file.js';
import {written} from './sizes.js';
import {measuredBox, templateJob, titleOf, type TemplateChoice} from './template-job.js';
import {NotLoaded, writeFile, type FileKind} from './writers.js';

/** Where the making of a file has got to. */
type Progress =
  | {readonly at: 'loading'} | {readonly at: 'writing'; readonly page: number; readonly of: number}
  | {readonly at: 'stopped' | 'not-loaded' | 'failed'}
  | {readonly at: 'ready'; readonly kind: FileKind; readonly file: SavedFile; readonly missing: string};

/** A printer further off than this has scaled the page, which no correction should hide. */
const furthest = 0.1;

/** The choice of paper, the correction for a printer that is off, and the buttons that make files of the sheets as they are laid out. */
export class Templates implements ReactiveController {
  readonly #host: GliderElement;
  readonly #settle: () => void;
  #paper: PaperId | undefined;
  #overlap: number | undefined;
  #printed = {across: 1, up: 1};
  #plan: number | undefined;
  #progress: Progress | undefined;
  #writing: AbortController | undefined;
  #known: {readonly of: readonly unknown[]; readonly job: TemplateJob; readonly plan: Outcome<TemplatePlan>} | undefined;
  readonly #overlapField: LengthField;
  readonly #sideFields: readonly {readonly side: 'across' | 'up'; readonly field: LengthField}[];

  /** `settle` is told before a file is made. */
  constructor(host: GliderElement, settle: () => void) {
    this.#host = host;
    this.#settle = settle;
    host.addController(this);
    this.#overlapField = new LengthField(host, 'overlap', {
      get: () => this.#choice.overlap, set: (value) => { this.#overlap = value; }, least: () => 0, most: () => 0.06,
    });
    this.#sideFields = (['across', 'up'] as const).map((side) => {
      const box = (): number => measuredBox[host.system][side];
      return {side, field: new LengthField(host, `printed-${side}`, {
        get: () => this.#printed[side] * box(), set: (value) => { this.#printed = {...this.#printed, [side]: value / box()}; },
        least: () => (1 - furthest) * box(), most: () => (1 + furthest) * box(),
      })};
    });
  }

  hostDisconnected(): void { this.#drop(); }

  get #choice(): TemplateChoice & {readonly id: PaperId} {
    const inches = this.#host.system === 'inch';
    const id = this.#paper ?? (inches ? 'letter' : 'a4');
    return {id, paper: paperOf(id), overlap: this.#overlap ?? (inches ? 0.375 * 0.0254 : 0.01), printed: this.#printed, plan: this.#plan};
  }

  /** The templates as they are asked for now, and how they lie on their pages: worked out again only when something in them changes. */
  #current(found: Found): {readonly job: TemplateJob; readonly plan: Outcome<TemplatePlan>} {
    const host = this.#host;
    const words = host.say(sheetTemplateWords);
    const choice = this.#choice;
    if (choice.plan !== undefined && choice.plan >= found.cut.plans.length) this.#plan = undefined;
    const of = [found.cut, choice.paper, choice.overlap, choice.printed, this.#plan, host.speech, host.system, words, titleOf(host), host.state.design.board.thickness];
    if (this.#known && of.every((each, i) => each === this.#known?.of[i])) return this.#known;
    // a file of what was asked before is no longer what is asked for
    this.#drop();
    const job = templateJob(host, found.cut, {...choice, plan: this.#plan});
    this.#known = {of, job, plan: planTemplates(job, mostPages)};
    return this.#known;
  }

  #drop(): void {
    this.#writing?.abort();
    this.#writing = undefined;
    if (this.#progress?.at === 'ready') this.#progress.file.letGo();
    this.#progress = undefined;
  }

  render(found: Found, holds: boolean): TemplateResult {
    const words = this.#host.say(sheetTemplateWords);
    const {job, plan} = this.#current(found);
    if (!holds) this.#drop();
    const empty = found.cut.plans.length === 0;
    const wrong = this.#overlapField.problem ?? this.#sideFields.find(({field}) => field.problem)?.field.problem;
    const busy = this.#writing !== undefined;
    const cannot = !holds || empty || busy;
    const {leftOut} = found.cut;
    return html`<p class="source">${words.intro}${found.cut.kits > 1 ? ` ${words.oneForAll}` : ''}</p>
      <div class="fields">${this.#paperField()}
        ${this.#choice.id === 'whole' ? nothing : this.#overlapField.render(words.overlap, false, this.#overlapField.problem ?? (plan.ok ? undefined : plan.problems.find(({path}) => path === 'overlap')))}
        ${found.cut.plans.length > 1 ? this.#planField(found) : nothing}</div>
      <details class="more"><summary>${words.printer}</summary><p class="source">${words.printerHelp}</p>
        <div class="fields">${this.#sideFields.map(({side, field}) => field.render(words.side(this.#host.write(measuredBox[this.#host.system][side], 'length')), false))}</div></details>
      ${holds ? this.#said(found, job, plan, empty) : html`<p class="problem" part="problem">${words.stale}</p>`}
      ${leftOut.length > 0 && holds ? html`<p class="problem" part="problem">${words.leftOut(leftOut.map(({id}) => id))}</p>` : nothing}
      <p class="make">
        <button type="button" part="button" ?disabled=${cannot || !plan.ok || wrong !== undefined} @click=${() => { if (plan.ok) void this.#make('pdf', job, plan.value); }}>${words.makePdf}</button>
        <button type="button" part="button" ?disabled=${cannot} @click=${() => { void this.#make('svg', job); }}>${words.saveSvg}</button>
        <button type="button" part="button" ?disabled=${cannot} @click=${() => { void this.#make('dxf', job); }}>${words.saveDxf}</button>
        ${busy ? html`<button type="button" part="button" @click=${() => { this.#stop(); }}>${words.stop}</button>` : nothing}</p>
      <div role="status">${this.#renderProgress()}</div>`;
  }

  #paperField(): TemplateResult {
    const words = this.#host.say(sheetTemplateWords);
    const {id} = this.#choice;
    const nameOf = (paper: (typeof papers)[number]): string => (paper.id === 'whole' ? words.whole : paper.name);
    return html`<div class="field" part="field"><label for="field-paper">${words.paper}</label>
      <span class="q"><select id="field-paper" .value=${live(id)} @change=${(e: Event) => {
        this.#paper = papers.find((paper) => paper.id === (e.target as HTMLSelectElement).value)?.id;
        this.#host.requestUpdate();
      }}>${papers.map((paper) => html`<option value=${paper.id} ?selected=${paper.id === id}>${nameOf(paper)}</option>`)}</select></span><span></span></div>`;
  }

  #planField({cut}: Found): TemplateResult {
    const words = this.#host.say(sheetTemplateWords);
    const chosen = this.#plan === undefined ? '' : String(this.#plan);
    return html`<div class="field" part="field"><label for="field-which">${words.which}</label>
      <span class="q"><select id="field-which" .value=${live(chosen)} @change=${(e: Event) => {
        const {value} = e.target as HTMLSelectElement;
        this.#plan = value === '' ? undefined : Number(value);
        this.#host.requestUpdate();
      }}><option value="" ?selected=${chosen === ''}>${words.all}</option>
        ${cut.plans.map((plan, i) => html`<option value=${i} ?selected=${chosen === String(i)}>${sheetTitle(this.#host, plan, cut)}</option>`)}</select></span><span></span></div>`;
  }

  /** How many pages it takes, or why it cannot be done. */
  #said({cut}: Found, {paper}: TemplateJob, plan: Outcome<TemplatePlan>, empty: boolean): TemplateResult {
    const host = this.#host;
    const words = host.say(sheetTemplateWords);
    if (empty) return html`<p class="problem" part="problem">${words.nothing}</p>`;
    if (!plan.ok) return html`${plan.problems.filter(({path}) => path !== 'overlap').map((problem) => html`<p class="problem" part="problem">${explain(host, problem)}</p>`)}`;
    const {pages, paper: {width, height}} = plan.value;
    const {id} = this.#choice;
    const name = papers.find((each) => each.id === id)?.name ?? '';
    return html`<p class="source">${paper && cut.plans.length > 0 ? words.pages({pages: pages.length, paper: name})
      : words.plotter({pages: pages.length, size: written(host, width / 1000, height / 1000)})}</p>`;
  }

  #renderProgress(): TemplateResult | typeof nothing {
    const words = this.#host.say(sheetTemplateWords);
    const progress = this.#progress;
    switch (progress?.at) {
      case undefined: return nothing;
      case 'loading': return html`<p class="source">${words.loading}</p>`;
      case 'writing': return html`<p class="source">${words.writing(progress)}</p>`;
      case 'stopped': return html`<p class="source">${words.stopped}</p>`;
      case 'not-loaded': return html`<p class="problem" part="problem">${words.notLoaded}</p>`;
      case 'failed': return html`<p class="problem" part="problem">${words.failed}</p>`;
      case 'ready': return html`<p class="source"><a class="file" href=${progress.file.address} download=${progress.file.name}>${words.ready(progress.file.name)}</a>.
        ${progress.kind === 'pdf' ? words.readyPdf : words.readyCut}</p>
        ${progress.missing === '' ? nothing : html`<p class="problem" part="problem">${words.letters(progress.missing)}</p>`}`;
    }
  }

  #stop(): void {
    this.#drop();
    this.#show({at: 'stopped'});
  }

  #show(progress: Progress): void {
    this.#progress = progress;
    this.#host.requestUpdate();
  }

  async #make(kind: FileKind, job: TemplateJob, plan?: TemplatePlan): Promise<void> {
    this.#settle();
    this.#drop();
    const writing = this.#writing = new AbortController();
    const {signal} = writing;
    this.#show({at: 'loading'});
    const name = `${fileName(job.words.title)}-${kind === 'pdf' ? this.#choice.id : 'sheet'}.${kind}`;
    try {
      const {content, missing} = await writeFile(kind, {job, plan, signal, onPage: (page, of) => { if (!signal.aborted) this.#show({at: 'writing', page, of}); }});
      if (signal.aborted) return;
      this.#show({at: 'ready', kind, file: fileOf(name, content), missing});
    } catch (error) {
      if (signal.aborted) return;
      this.#show({at: error instanceof NotLoaded ? 'not-loaded' : 'failed'});
      if (!(error instanceof NotLoaded)) console.error(error);
    } finally {
      if (this.#writing === writing) this.#writing = undefined;
    }
    await this.#host.updateComplete;
    // the link stays, for a browser that saves nothing unasked
    this.#host.renderRoot.querySelector<HTMLAnchorElement>('a.file')?.click();
  }
}
