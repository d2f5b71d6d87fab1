import type {SystemOfUnits} from '../../calc/units/kinds.js';

const composedParent = (node: Element): Element | null => {
  const parent = node.assignedSlot ?? node.parentNode;
  return parent instanceof ShadowRoot ? parent.host : parent as Element | null;
};

/** The language of the nearest `lang`, out through shadow roots. */
export function langAround(element: Element): string {
  for (let at: Element | null = element; at instanceof Element; at = composedParent(at)) {
    const lang = at.getAttribute('lang');
    if (lang) return lang;
  }
  return 'en';
}

/** Inches where the language is American English, else millimetres; an author's `units` comes before both. */
export const unitsOf = (lang: string): SystemOfUnits => (/^en-us\b/i.test(lang) ? 'inch' : 'metric');

const watchers = new Set<() => void>();
let observer: MutationObserver | undefined;

/** Hears of any change of `lang` in the document; one observer serves every element. */
export function watchLang(changed: () => void): () => void {
  watchers.add(changed);
  observer ??= new MutationObserver(() => { for (const watcher of [...watchers]) watcher(); });
  if (watchers.size === 1) observer.observe(document, {attributes: true, attributeFilter: ['lang'], subtree: true});
  return () => {
    watchers.delete(changed);
    if (watchers.size === 0) observer?.disconnect();
  };
}
