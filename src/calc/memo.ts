/**
 * Remembers the answer of a pure function of frozen objects by the identity of those objects.
 *
 * A design is frozen and shares its unchanged parts from revision to revision, so a stage that is given only the parts
 * it reads is not worked out again when something else changes. Inputs that change most often go last: what is remembered under them is let
 * go with them.
 */
export function memo<A extends readonly object[], R>(stage: (...inputs: A) => R): (...inputs: A) => R {
  // what is reached last needs no map of what follows
  interface Node { next?: WeakMap<object, Node>; answer?: {value: R} }
  const root: Node = {};
  return (...inputs) => {
    let node = root;
    for (const input of inputs) {
      const known = node.next ??= new WeakMap<object, Node>();
      let next = known.get(input);
      if (!next) known.set(input, next = {});
      node = next;
    }
    return (node.answer ??= {value: stage(...inputs)}).value;
  };
}
