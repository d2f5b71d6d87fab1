import type {LaidOut} from '../laid-out.js';

/** Pieces left over are told apart by so many steps of a sheet: less is not worth another picture. */
const steps = 50;

/** How good a layout is, most important first: the less the better. */
function rankOf({leftOut, parts, sheets, sheetArea, plans}: LaidOut): readonly number[] {
  const missing = leftOut.reduce((sum, {id, count}) => sum + count * (parts.find((part) => part.id === id)?.area ?? 0), 0);
  const largest = Math.max(0, ...plans.map(({leftover}) => (leftover ? leftover.length * leftover.width : 0)));
  const sheet = plans[0] ? plans[0].sheet.length * plans[0].sheet.width : 1;
  return [missing, sheets, sheetArea, -Math.floor(steps * largest / sheet + 1e-9)];
}

/** Whether a layout is better than another: more placed, fewer sheets, less board, a larger piece left over. */
export function isBetter(laid: LaidOut, than: LaidOut): boolean {
  const rank = rankOf(laid), other = rankOf(than);
  const i = rank.findIndex((each, k) => Math.abs(each - (other[k] ?? 0)) > 1e-9);
  return i >= 0 && (rank[i] ?? 0) < (other[i] ?? 0);
}
