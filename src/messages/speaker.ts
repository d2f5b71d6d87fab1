import {american} from './american.js';
import type {Topic} from './topic.js';

/** Other languages than English, each loaded when a page first asks for it. */
const packs: Readonly<Record<string, () => Promise<{default: Readonly<Record<string, unknown>>}>>> = {
  de: () => import('./de/index.js'),
};

const loaded = new Map<string, Readonly<Record<string, unknown>>>();

const primary = (lang: string): string => lang.toLowerCase().split('-')[0] ?? 'en';

/** The words of a topic in a language; in English until that language has been loaded. */
export function wordsFor<T>(topic: Topic<T>, lang: string): T {
  if (/^en-us\b/i.test(lang)) return american(topic);
  return (loaded.get(primary(lang))?.[topic.name] as T | undefined) ?? topic.en;
}

/** Resolves true once words that were missing have arrived; at once false where there is nothing to wait for. */
export async function loadLanguage(lang: string): Promise<boolean> {
  const key = primary(lang);
  const pack = packs[key];
  if (!pack || loaded.has(key)) return false;
  loaded.set(key, (await pack()).default);
  return true;
}

/** The reader's own decimal mark. */
export function decimalMark(lang: string): '.' | ',' {
  try {
    return new Intl.NumberFormat(lang).format(0.5).includes(',') ? ',' : '.';
  } catch {
    return '.';   // a language tag that means nothing
  }
}
