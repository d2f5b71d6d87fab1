// Whether a layout may stand, checked with none of the code that made it. Lengths in m.
const near = 1e-7;

const boundsOf = (outline) => {
  const xs = outline.map(({x}) => x), ys = outline.map(({y}) => y);
  return {left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys)};
};

const twiceArea = (outline) => outline.reduce((sum, q, i) => {
  const p = outline.at(i - 1);
  return sum + p.x * q.y - q.x * p.y;
}, 0);

/** The part of a triangle inside another, corner by corner. */
function clippedArea(subject, clip) {
  const sign = Math.sign(twiceArea(clip));
  let left = subject;
  clip.forEach((a, i) => {
    const b = clip[(i + 1) % clip.length];
    const side = (p) => sign * ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
    left = left.flatMap((p, j) => {
      const before = left.at(j - 1);
      const s = side(before), t = side(p);
      const crossing = s < 0 !== t < 0 ? [{x: before.x + s / (s - t) * (p.x - before.x), y: before.y + s / (s - t) * (p.y - before.y)}] : [];
      return t < 0 ? crossing : [...crossing, p];
    });
  });
  return Math.abs(twiceArea(left)) / 2;
}

const fan = ([o, ...rest]) => rest.slice(1).map((q, i) => [o, rest[i], q]).filter((triangle) => twiceArea(triangle) !== 0);

/** The area that two outlines share: each is a signed sum of triangles. */
function sharedArea(a, b) {
  let area = 0;
  for (const s of fan(a)) for (const t of fan(b)) area += Math.sign(twiceArea(s) * twiceArea(t)) * clippedArea(s, t);
  return Math.abs(area);
}

/** Whether upright boxes can be parted by cuts that run edge to edge of what is in hand. */
function isParted(boxes) {
  if (boxes.length < 2) return true;
  return [['left', 'right'], ['low', 'high']].some(([from, to]) => {
    const sorted = [...boxes].sort((a, b) => a[from] - b[from]);
    let end = sorted[0][to];
    for (let i = 1; i < sorted.length; i++) {
      if (sorted[i][from] >= end - near) return isParted(sorted.slice(0, i)) && isParted(sorted.slice(i));
      end = Math.max(end, sorted[i][to]);
    }
    return false;
  });
}

/** Throws where pieces overlap, lie off the board, are not the parts asked for, or cannot be cut as they should. */
export function check({sheets, unplaced}, {parts, boards: [board], cuts}) {
  const fail = (what) => { throw new Error(`a layout that cannot stand: ${what}`); };
  if (unplaced.length > 0) fail('parts are missing');
  const all = sheets.flatMap(({cutouts}) => cutouts.flatMap(({pieces}) => pieces));
  for (const {id, count, outline, mayTurn, mayTurnHalf} of parts) {
    const own = all.filter((piece) => piece.id === id);
    if (own.length !== count) fail(`${own.length} of ${count} of ${id}`);
    for (const piece of own) {
      if (piece.mirrored || !mayTurn && piece.turn !== 0 && !(mayTurnHalf && piece.turn === 180)) fail(`${id} lies against orders`);
      const c = [1, 0, -1, 0][piece.turn / 90], s = [0, 1, 0, -1][piece.turn / 90];
      const lying = outline.map(({x, y}) => ({x: c * x - s * y, y: s * x + c * y}));
      const from = boundsOf(lying), to = boundsOf(piece.outline);
      const same = lying.every((p) => piece.outline.some((q) => Math.hypot(q.x - to.left - p.x + from.left, q.y - to.low - p.y + from.low) < near));
      if (!same) fail(`${id} is not itself`);
    }
  }
  for (const {cutouts, length, width} of sheets) {
    if (length > board.length + near || width > board.width + near) fail('the sheet is no board');
    const outlines = cutouts.flatMap(({pieces}) => pieces.map((piece) => ({id: piece.id, outline: piece.outline, box: boundsOf(piece.outline)})));
    for (const {id, box} of outlines) if (box.left < -near || box.low < -near || box.right > length + near || box.high > width + near) fail(`${id} is off the board`);
    outlines.forEach((a, i) => {
      for (const b of outlines.slice(i + 1)) {
        const apart = Math.max(b.box.left - a.box.right, a.box.left - b.box.right, b.box.low - a.box.high, a.box.low - b.box.high);
        if (apart < -near && sharedArea(a.outline, b.outline) > 1e-9) fail(`${a.id} and ${b.id} overlap`);
      }
    });
    if (cuts === 'straight' && !isParted(outlines.map(({box}) => box))) fail('not to be cut edge to edge');
  }
}
