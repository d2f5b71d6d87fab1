import type {GliderElement} from './element.js';

const arrived = new WeakMap<object, {readonly module: unknown}>();

/**
 * What only some readers need, loaded when it is first needed: undefined until it has arrived, when the element renders again. `load` must be the
 * same function each time, since what it brings is kept by it.
 */
export function later<T>(host: GliderElement, load: () => Promise<T>): T | undefined {
  const kept = arrived.get(load);
  if (kept) return kept.module as T;
  host.await(load().then((module) => {
    arrived.set(load, {module});
    host.requestUpdate();
  }, () => undefined));   // not to be had: the element goes on without
  return undefined;
}
