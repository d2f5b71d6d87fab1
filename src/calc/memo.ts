/**
 * Remembers the answer of a pure function of frozen objects by the identity of those objects.
 *
 * A design is frozen and shares its unchanged parts from revision to revision, so a stage that is given only the parts
 * it reads is not worked out again when something else changes.
 */
export function memo<A extends readonly object[], R>(stage: (...inputs: A) => R): (...inputs: A) => R {
  interface Node { next: WeakMap<object, Node>; answer?: {value: R} }
  const root: Node = {next: new WeakMap()};
  return (...inputs) => {
    let node = root;
    for (const input of inputs) {
      let next = node.next.get(input);
      if (!next) node.next.set(input, next = {next: new WeakMap()});
      node = next;
    }
    return (node.answer ??= {value: stage(...inputs)}).value;
  };
}
