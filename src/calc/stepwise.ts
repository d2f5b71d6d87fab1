/** Work done in short steps, for whoever must do something else in between. */
export type Stepwise<T> = Generator<undefined, T>;

/** Counts work done, in any unit, and says when so much has been done since the last stop that another is due. */
export function pace(most: number): (work: number) => boolean {
  let done = 0;
  return (work) => {
    done += work;
    if (done < most) return false;
    done = 0;
    return true;
  };
}

/** Does all of the work at once. */
export function finished<T>(steps: Stepwise<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
