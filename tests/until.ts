/**
 * Waits for a condition, for as long as this machine needs: the limit only names what never comes before mocha ends the test.
 *
 * @param holds asked again and again; what it is true of may still be replaced, so it looks things up anew.
 * @param what named when it never comes.
 * @param most s; more for what works for many seconds on a machine with nothing else to do.
 */
export async function until(holds: () => unknown, what = holds.toString(), most = 30): Promise<void> {
  const start = performance.now();
  while (!holds()) {
    if (performance.now() - start > most * 1000) throw new Error(`did not come within ${String(most)} s: ${what}`);
    await new Promise((resolve) => { setTimeout(resolve, 20); });
  }
}
