/**
 * Waits for a condition, for as long as this machine needs: the limit only keeps what never comes from being called mocha's timeout, which lies
 * just above it.
 *
 * @param holds asked again and again; what it is true of may still be replaced, so it looks things up anew.
 * @param what named when it never comes.
 */
export async function until(holds: () => unknown, what = holds.toString()): Promise<void> {
  const start = performance.now();
  while (!holds()) {
    if (performance.now() - start > 30_000) throw new Error(`did not come within 30 s: ${what}`);
    await new Promise((resolve) => { setTimeout(resolve, 20); });
  }
}
