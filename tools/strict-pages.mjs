/** The strictest policy under which the elements must work. */
export const STRICT_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:";

/**
 * A plugin for @web/dev-server and @web/test-runner: pages under tests/pages/strict/ are served with the strict policy.
 * The runner's own page has inline scripts, so a test loads such a page in an iframe.
 */
export const strictPages = () => ({
  name: 'strict-pages',
  transform(context) {
    if (/^\/tests\/pages\/strict\/[^?]*\.html$/.test(context.path)) context.set('Content-Security-Policy', STRICT_POLICY);
  },
});
