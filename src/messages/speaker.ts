import type * as American from './american.js';
import type {Topic} from './topic.js';

/**
 * The words of a language by topic, in the shape that the topic has in English: the words themselves where every element says them, the way to
 * them where only some do.
 */
export type Pack = Readonly<Record<string, object | (() => Promise<{readonly default: object}>)>>;

/** Other languages than English, each loaded when a page first asks for it. */
const packs: Readonly<Record<string, () => Promise<{readonly default: Pack}>>> = {
  de: () => import('./de/index.js'),
};

/** What has been loaded, by language and topic; undefined where a language has no words for a topic. */
const loaded = new Map<string, Record<string, object | undefined>>();

let arrived = 0;

/** How often words have arrived so far: what was written before the latest of them is to be written anew. */
export const arrivals = (): number => arrived;

/** How American English spells the same words, once it has been asked for. */
let american: typeof American.american | undefined;

const isAmerican = (lang: string): boolean => /^en-us\b/i.test(lang);

const primary = (lang: string): string => lang.toLowerCase().split('-')[0] ?? 'en';

/** The words of a topic in a language; in English until they have been loaded, or where there are none. */
export function wordsFor<T>(topic: Topic<T>, lang: string): T {
  const respell = isAmerican(lang) ? american : undefined;
  if (respell) return respell(topic);
  return (loaded.get(primary(lang))?.[topic.name] as T | undefined) ?? topic.en;
}

/** What is on its way, by language and topic. */
const coming = new Map<string, Promise<boolean>>();

/** Fetches words that are missing, and tells whether any have arrived; the same promise until then, nothing where there is nothing to wait for. */
export function loadWords({name}: Topic<unknown>, lang: string): Promise<boolean> | undefined {
  if (isAmerican(lang)) return american ? undefined : once('en-us', loadAmerican);
  const language = primary(lang);
  const pack = packs[language];
  const had = loaded.get(language);
  return !pack || (had && name in had) ? undefined : once(`${language} ${name}`, async () => {
    const found = (await pack()).default[name];
    const words = typeof found === 'function' ? (await (found as () => Promise<{readonly default: object}>)()).default : found;
    loaded.set(language, {...loaded.get(language), [name]: words});
    return words !== undefined;
  });
}

async function loadAmerican(): Promise<boolean> {
  ({american} = await import('./american.js'));
  return true;
}

/** However often they are asked for, words are fetched once; anew where that failed. */
function once(key: string, load: () => Promise<boolean>): Promise<boolean> {
  let loading = coming.get(key);
  if (!loading) {
    coming.set(key, loading = load().then((any) => {
      arrived++;
      return any;
    }).finally(() => { coming.delete(key); }));
  }
  return loading;
}

const marks = new Map<string, '.' | ','>();

/** The reader's own decimal mark. Asked for with every number, so it is found out once for each language. */
export function decimalMark(lang: string): '.' | ',' {
  let mark = marks.get(lang);
  if (mark === undefined) marks.set(lang, mark = foundMark(lang));
  return mark;
}

function foundMark(lang: string): '.' | ',' {
  try {
    return new Intl.NumberFormat(lang).format(0.5).includes(',') ? ',' : '.';
  } catch {
    return '.';   // a language tag that means nothing
  }
}
