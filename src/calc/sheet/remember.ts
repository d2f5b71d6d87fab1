/**
 * Remembers the latest answers of a pure function by how its inputs read when written out, and gives the same object again.
 *
 * For stages that read a few numbers out of large parts of a design: a wing propped on another stack is another wing, but
 * it is cut from the board just the same.
 */
export function remember<A extends readonly unknown[], R>(work: (...inputs: A) => R, most = 12): (...inputs: A) => R {
  const answers = new Map<string, {readonly answer: R}>();
  return (...inputs) => {
    const key = JSON.stringify(inputs);
    const kept = answers.get(key) ?? {answer: work(...inputs)};
    answers.delete(key);
    answers.set(key, kept);   // the one used last goes last
    for (const oldest of answers.keys()) {
      if (answers.size <= most) break;
      answers.delete(oldest);
    }
    return kept.answer;
  };
}
