/** So many nodes are converted at a time. Most of what that takes goes to text, each of which the converter measures on a canvas of its own. */
const most = 30;

/** A drawing as several that make it one upon another, so that none of them takes long to convert. */
export function inBatches(svg: SVGSVGElement): readonly SVGSVGElement[] {
  const all = [...svg.children];
  const patterns = all.filter(({localName}) => localName === 'pattern'), drawn = all.filter((node) => !patterns.includes(node));
  return Array.from({length: Math.ceil(drawn.length / most)}, (_, i) => {
    const batch = svg.cloneNode(false) as SVGSVGElement;
    batch.append(...patterns.map((pattern) => pattern.cloneNode(true)), ...drawn.slice(i * most, (i + 1) * most));
    return batch;
  });
}
