/**
 * The elements register through `define(tag, class)`, which the analyser does not know: this adds what it would have
 * found for `customElements.define`.
 */
const definitions = () => ({
  name: 'definitions',
  analyzePhase({ts, node, moduleDoc}) {
    if (!ts.isCallExpression(node) || node.expression.getText() !== 'define' || !/\/define\.ts$/.test(moduleDoc.path)) return;
    const [tag, element] = node.arguments;
    if (!tag || !ts.isStringLiteral(tag) || !element) return;
    (moduleDoc.exports ??= []).push({
      kind: 'custom-element-definition', name: tag.text,
      declaration: {name: element.getText(), module: `${moduleDoc.path.replace(/[^/]*$/, '')}${tag.text.replace(/^glider-/, '')}.ts`},
    });
  },
});

export default {
  globs: ['src/components/**/*.ts'],
  litelement: true,
  plugins: [definitions()],
};
