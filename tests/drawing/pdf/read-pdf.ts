/** A point of a page, in points (1/72 in) from its lower left corner. */
export interface PdfPoint { readonly x: number; readonly y: number }

/** A path that is stroked or filled, through these points, and how wide its line is on the page. */
export interface PdfPath { readonly points: readonly PdfPoint[]; readonly width: number; readonly dashed: boolean }

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PdfPath[];
  /** What is written, in order of writing. */
  readonly texts: readonly string[];
  /** Where what is written begins. */
  readonly places: readonly PdfPoint[];
}

export interface PdfFile { readonly catalog: string; readonly fonts: readonly string[]; readonly pages: readonly PdfPage[] }

type Matrix = readonly [number, number, number, number, number, number];

/** First `a`, then `b`. */
const after = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[1] * b[2], a[0] * b[1] + a[1] * b[3], a[2] * b[0] + a[3] * b[2], a[2] * b[1] + a[3] * b[3],
  a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5],
];

const latin = new TextDecoder('windows-1252');

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'));
  return latin.decode(await new Response(stream).arrayBuffer());
}

/** Reads pages, paths and texts of a PDF as the file itself has them: enough of the format for what jsPDF writes (ISO 32000-1, sections 7 and 8). */
export async function readPdf(pdf: Blob): Promise<PdfFile> {
  const bytes = new Uint8Array(await pdf.arrayBuffer());
  // one letter for each byte, so that places in the text are places in the file
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  const objects = new Map<string, {readonly head: string; readonly begin: number}>();
  for (const found of text.matchAll(/(\d+) 0 obj\n/g)) {
    const begin = found.index + found[0].length;
    objects.set(found[1] ?? '', {begin, head: text.slice(begin, text.indexOf('endobj', begin))});
  }
  const heads = [...objects.values()].map(({head}) => head);
  const kids = /\/Kids \[([^\]]*)\]/.exec(heads.find((head) => head.includes('/Type /Pages')) ?? '')?.[1] ?? '';
  const pages: PdfPage[] = [];
  for (const [, id = ''] of kids.matchAll(/(\d+) 0 R/g)) {
    const head = objects.get(id)?.head ?? '';
    const [, , width = NaN, height = NaN] = (/\/MediaBox \[([^\]]*)\]/.exec(head)?.[1] ?? '').split(' ').map(Number);
    const content = objects.get(/\/Contents (\d+) 0 R/.exec(head)?.[1] ?? '');
    if (!content) throw new Error(`page ${id} has no content`);
    const length = Number(/\/Length (\d+)/.exec(content.head)?.[1]);
    const begin = content.begin + content.head.indexOf('stream\n') + 'stream\n'.length;
    pages.push({width, height, ...drawn(await inflated(bytes.slice(begin, begin + length)))});
  }
  return {
    pages, catalog: heads.find((head) => head.includes('/Type /Catalog')) ?? '',
    fonts: heads.flatMap((head) => /\/BaseFont \/(\S+)/.exec(head)?.[1] ?? []),
  };
}

/** Follows the operators of a page. */
function drawn(content: string): Pick<PdfPage, 'paths' | 'texts' | 'places'> {
  const paths: PdfPath[] = [], texts: string[] = [], places: PdfPoint[] = [];
  interface State { readonly matrix: Matrix; readonly width: number; readonly dashed: boolean }
  let state: State = {matrix: [1, 0, 0, 1, 0, 0], width: 1, dashed: false};
  const saved: State[] = [];
  let path: PdfPoint[] = [], operands: string[] = [];
  const at = (x: number, y: number, [a, b, c, d, e, f]: Matrix = state.matrix): PdfPoint => ({x: a * x + c * y + e, y: b * x + d * y + f});
  const numbers = (): readonly number[] => operands.filter((operand) => /^[-+.\d]/.test(operand)).map(Number);
  for (const [token] of content.matchAll(/\((?:\\[^]|[^\\)])*\)|\[[^\]]*\]|[^\s()[\]]+/g)) {
    if (/^[-+.\d([/]/.test(token)) { operands.push(token); continue; }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers();
    switch (token) {
      case 'q': saved.push(state); break;
      case 'Q': state = saved.pop() ?? state; break;
      case 'cm': state = {...state, matrix: after([a, b, c, d, e, f], state.matrix)}; break;
      case 'w': state = {...state, width: a}; break;
      case 'd': state = {...state, dashed: /\d/.test(operands[0] ?? '')}; break;
      case 'm': case 'l': path.push(at(a, b)); break;
      case 'c': path.push(at(e, f)); break;
      case 're': path.push(at(a, b), at(a + c, b), at(a + c, b + d), at(a, b + d)); break;
      case 'n': path = []; break;
      case 'S': case 's': case 'f': case 'f*': case 'B': case 'B*': case 'b': {
        const [m0, m1, m2, m3] = state.matrix;
        paths.push({points: path, width: state.width * Math.sqrt(Math.abs(m0 * m3 - m1 * m2)), dashed: state.dashed});
        path = [];
        break;
      }
      case 'Tm': places.push(at(e, f)); break;
      case 'Tj': texts.push((operands[0] ?? '').slice(1, -1).replace(/\\([()\\])/g, '$1')); break;
    }
    operands = [];
  }
  return {paths, texts, places};
}

export const pointsPerMm = 72 / 25.4;

/** The bounds of a path, in mm. */
export function sizeOf({points}: PdfPath): readonly [width: number, height: number] {
  const xs = points.map(({x}) => x), ys = points.map(({y}) => y);
  return [(Math.max(...xs) - Math.min(...xs)) / pointsPerMm, (Math.max(...ys) - Math.min(...ys)) / pointsPerMm];
}
