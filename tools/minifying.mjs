/** How the bundles for pages are minified; terser's options. */
export const minifying = {ecma: 2020, module: true, compress: {passes: 2}, format: {comments: false}};
