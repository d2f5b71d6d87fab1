/** What a test run counts. */
export const none = () => ({passed: 0, failed: 0, skipped: 0});

export const sum = (all) => all.reduce((a, b) => ({passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped}), none());

/** The closing line of a run. */
export const closingLine = ({passed, failed, skipped}) => `${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`;
