import type {GliderFlightLog} from '../../../src/components/flight-log/define.js';
import {until} from '../../until.js';

export const tidy = (written: string | null | undefined): string => (written ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
export const text = (element: GliderFlightLog, part: string): string => tidy(element.shadowRoot?.querySelector(`[part=${part}]`)?.textContent);
export const whole = (element: GliderFlightLog): string => tidy(element.shadowRoot?.textContent);

export function there<E>(found: E | null | undefined): E {
  if (!found) throw new Error('not there');
  return found;
}

// as querySelector itself: the caller says what it looks for
// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters
export const node = <E extends Element = HTMLElement>(element: GliderFlightLog, selector: string): E => there(element.shadowRoot?.querySelector<E>(selector));

export async function type(element: GliderFlightLog, name: string, written: string): Promise<void> {
  const input = node<HTMLInputElement>(element, `#field-${name}`);
  input.value = written;
  input.dispatchEvent(new Event('input', {bubbles: true, composed: true}));
  input.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

export async function choose(element: GliderFlightLog, name: string, value: string): Promise<void> {
  const select = node<HTMLSelectElement>(element, `#field-${name}`);
  select.value = value;
  select.dispatchEvent(new Event('change', {bubbles: true}));
  await element.updateComplete;
}

export async function press(element: GliderFlightLog, label: string): Promise<void> {
  there([...element.shadowRoot?.querySelectorAll('button') ?? []].find((one) => tidy(one.getAttribute('aria-label') ?? one.textContent) === label)).click();
  await element.updateComplete;
}

/** Writes a throw down as a person would. */
export async function log(element: GliderFlightLog, distance: string, time = ''): Promise<void> {
  await type(element, 'distance', distance);
  await type(element, 'time', time);
  await press(element, 'Write this throw down');
}

export async function openAll(element: GliderFlightLog): Promise<void> {
  for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
  await until(() => element.shadowRoot?.querySelector('.open, .working p') !== null);
  await element.updateComplete;
}

/** Gives a file to the element as a person would. */
export async function give(element: GliderFlightLog, name: string, content: string | Uint8Array<ArrayBuffer>): Promise<void> {
  const input = node<HTMLInputElement>(element, 'input[type=file]');
  const files = new DataTransfer();
  files.items.add(new File([content], name));
  input.files = files.files;
  input.dispatchEvent(new Event('change', {bubbles: true}));
  await until(() => input.value === '');
  await element.updateComplete;
}
