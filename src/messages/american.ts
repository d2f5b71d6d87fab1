import type {Topic} from './topic.js';

const spellings: readonly (readonly [RegExp, string])[] = [
  [/\b([Cc])entre/g, '$1enter'],
  [/\b([Gg])rey/g, '$1ray'],
  [/\b([Cc])olour/g, '$1olor'],
  [/\b([Aa])erofoil/g, '$1irfoil'],
  [/\b([Aa])eroplane/g, '$1irplane'],
  [/([Mm])etre/g, '$1eter'],   // millimetres too
  [/\b([Mm])odelling/g, '$1odeling'],
  [/\b([Gg])ram(me)s?\b/g, '$1ram'],
];

const respell = (text: string): string => spellings.reduce((t, [british, usual]) => t.replace(british, usual), text);

function respelled(words: unknown): unknown {
  if (typeof words === 'string') return respell(words);
  if (typeof words === 'function') {
    return (...args: unknown[]) => respelled((words as (...a: unknown[]) => unknown)(...args));
  }
  if (typeof words === 'object' && words !== null) {
    return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, respelled(value)]));
  }
  return words;
}

const done = new WeakMap<object, unknown>();

/** The same words as an American reader spells them. */
export function american<T>(topic: Topic<T>): T {
  let words = done.get(topic);
  if (words === undefined) done.set(topic, words = respelled(topic.en));
  return words as T;
}
