import {html, nothing} from 'lit';
import type {TemplateResult} from 'lit';
import {commonWords} from '../../messages/en/common.js';
import type {GliderElement} from './element.js';
import {explain} from './explain.js';

/** Why the page's own glider could not be read, and that the numbers here are about another; nothing otherwise. */
export function unreadGlider(host: GliderElement): TemplateResult | typeof nothing {
  const {unread, notices} = host.state;
  return unread ? html`<p class="problem" part="problem">${[...notices.map((notice) => explain(host, notice)), host.say(commonWords).standIn].join(' ')}</p>` : nothing;
}
