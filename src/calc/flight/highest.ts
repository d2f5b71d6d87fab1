const golden = (Math.sqrt(5) - 1) / 2;

/** Where a function with one hill in a range is highest, by golden section to a thousandth of the range. */
export function highest(height: (x: number) => number, [from, to]: readonly [number, number]): number {
  let a = from, b = to;
  let x1 = b - golden * (b - a), x2 = a + golden * (b - a);
  let h1 = height(x1), h2 = height(x2);
  for (let i = 0; i < 14; i++) {
    if (h1 > h2) {
      [b, x2, h2] = [x2, x1, h1];
      x1 = b - golden * (b - a);
      h1 = height(x1);
    } else {
      [a, x1, h1] = [x1, x2, h2];
      x2 = a + golden * (b - a);
      h2 = height(x2);
    }
  }
  return (a + b) / 2;
}
