/** What a test run counts, and the names of the tests that failed: engine, file and test, one line each. */
export const none = () => ({passed: 0, failed: 0, skipped: 0, names: []});

export const sum = (all) => all.reduce((a, b) => ({
  passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped, names: [...a.names, ...b.names],
}), none());

/** A failure that no test tells of. */
export const failure = (name) => ({...none(), failed: 1, names: [name]});

/** How a test is named at the end of a run: on one line, whatever its name holds. */
export const nameOf = (engine, file, titles) => `${engine}, ${file}: ${titles.join(' > ')}`.replace(/\s+/g, ' ').trim();

/** The closing line of a run. */
export const closingLine = ({passed, failed, skipped}) => `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`;

/** The end of a run: what failed, once more, since a long log is cut; then the closing line. */
export const ending = (figures) => `\n${[...figures.names.map((name) => `failed: ${name}`), closingLine(figures)].join('\n')}`;
