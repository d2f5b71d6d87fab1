/**
 * Remembers the last few answers of a pure function by what its input says, not by which object says it: a design with another
 * weight or another angle of the tail has new objects but the same surfaces. The input must be plain data.
 */
export function recent<I, R>(stage: (input: I) => R, most = 4): (input: I) => R {
  const answers = new Map<string, R>();
  return (input) => {
    const key = JSON.stringify(input);
    const known = answers.get(key);
    const answer = known ?? stage(input);
    answers.delete(key);
    answers.set(key, answer);
    for (const oldest of answers.keys()) {
      if (answers.size <= most) break;
      answers.delete(oldest);
    }
    return answer;
  };
}
