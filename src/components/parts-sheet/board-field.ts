import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {live} from 'lit/directives/live.js';
import {sheetSizes, type SheetSize} from '../../../shared/sheet-sizes.js';
import {sheetWords} from '../../messages/en/sheet.js';
import type {GliderElement} from '../base/element.js';
import {written} from './sizes.js';

const sizes: readonly SheetSize[] = sheetSizes;

/** Sizes in which board is sold, to choose from; any other is typed beside it. */
export function boardField(host: GliderElement, disabled: boolean): TemplateResult {
  const words = host.say(sheetWords);
  const {length, width} = host.state.design.board;
  const chosen = sizes.find((each) => Math.abs(each.length - length) < 1e-6 && Math.abs(each.width - width) < 1e-6);
  const systems = host.system === 'inch' ? ['inch', 'metric'] as const : ['metric', 'inch'] as const;
  return html`<div class="field choice" part="field"><label for="field-board">${words.board}</label>
    <span class="q"><select id="field-board" .value=${live(chosen?.id ?? '')} ?disabled=${disabled} @change=${(e: Event) => {
      const to = sizes.find(({id}) => id === (e.target as HTMLSelectElement).value);
      if (!to) return;
      host.ask([{path: 'board.length', value: to.length}, {path: 'board.width', value: to.width}]);
      host.dispatchEvent(new Event('change', {bubbles: true}));
    }}>
      ${chosen ? nothing : html`<option value="" selected>${words.ownSize}</option>`}
      ${systems.map((system) => html`<optgroup label=${words.systems[system]}>${sizes.filter((each) => each.system === system).map((each) =>
        html`<option value=${each.id} ?selected=${each === chosen}>${nameOf(host, each)}</option>`)}</optgroup>`)}
    </select></span><span></span></div>`;
}

/** A size is its own name where that has figures in it; otherwise they stand beside it. */
const nameOf = (host: GliderElement, {name, length, width}: SheetSize): string =>
  name.includes('×') ? name : `${name}, ${written(host, length, width)}`;
