import type * as American from './american.js';
import type {Topic} from './topic.js';

/** Other languages than English, each loaded when a page first asks for it. */
const packs: Readonly<Record<string, () => Promise<{default: Readonly<Record<string, unknown>>}>>> = {
  de: () => import('./de/index.js'),
};

/** Words by language and topic. */
const loaded = new Map<string, Readonly<Record<string, unknown>>>();

/** How American English spells the same words, once it has been asked for. */
let american: typeof American.american | undefined;

const isAmerican = (lang: string): boolean => /^en-us\b/i.test(lang);

const primary = (lang: string): string => lang.toLowerCase().split('-')[0] ?? 'en';

/** The words of a topic in a language; in English until that language has been loaded. */
export function wordsFor<T>(topic: Topic<T>, lang: string): T {
  const respell = isAmerican(lang) ? american : undefined;
  if (respell) return respell(topic);
  return (loaded.get(primary(lang))?.[topic.name] as T | undefined) ?? topic.en;
}

/** Fetches words that are missing, and tells when they have arrived; nothing where there is nothing to wait for. */
export function loadLanguage(lang: string): Promise<boolean> | undefined {
  if (isAmerican(lang)) {
    return american ? undefined : import('./american.js').then((module) => {
      ({american} = module);
      return true;
    });
  }
  const key = primary(lang);
  const pack = packs[key];
  if (!pack || loaded.has(key)) return undefined;
  return pack().then(({default: words}) => {
    loaded.set(key, words);
    return true;
  });
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
