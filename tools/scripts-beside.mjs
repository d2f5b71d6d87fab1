/** What stands at the head of a bundle: loads another script from where this one came from, as soon as it is wanted. */
const loader = `const scriptsCameFrom = document.currentScript?.src, scriptsNonce = document.currentScript?.nonce;
function scriptBeside(file, name) {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = new URL(file, scriptsCameFrom).href;
    script.nonce = scriptsNonce;
    script.onload = () => { resolve(globalThis[name]); };
    script.onerror = () => { script.remove(); reject(new Error(file + ' was not found beside the script that needs it')); };
    document.head.append(script);
  });
}`;

/** The global name under which a script beside the main one leaves what it exports. */
const globalOf = (name) => `gliderElements${name[0].toUpperCase()}${name.slice(1)}`;

/**
 * A classic script cannot import what it needs only at times: browsers refuse modules from `file://`. So what is named here,
 * by the module at its head, becomes a script of its own beside the main one. Gives Rollup's configurations.
 *
 * `scripts` maps a name to the module; `file` is the main script.
 */
export function withScriptsBeside(config, scripts) {
  const {output} = config;
  const fileOf = (name) => output.file.split('/').at(-1).replace(/\.js$/, `-${name}.js`);
  const beside = {
    name: 'scripts-beside',
    async resolveDynamicImport(specifier, importer) {
      const id = typeof specifier === 'string' ? (await this.resolve(specifier, importer))?.id : undefined;
      const name = Object.keys(scripts).find((each) => id?.endsWith(scripts[each]));
      return name ? {id: fileOf(name), external: true} : null;
    },
    renderDynamicImport({targetModuleId}) {
      const name = Object.keys(scripts).find((each) => targetModuleId?.endsWith(fileOf(each)));
      return name ? {left: 'scriptBeside(', right: `, '${globalOf(name)}')`} : null;
    },
  };
  // no module lies beside a classic script, so nothing that is started by a module's address can be
  const addressless = {name: 'addressless', resolveImportMeta: (property) => (property === 'url' ? 'undefined' : null)};
  return [
    {...config, plugins: [beside, addressless, ...config.plugins], output: {...output, intro: loader}},
    ...Object.keys(scripts).map((name) => ({
      ...config, input: scripts[name], plugins: [addressless, ...config.plugins],
      // a variable at the top would be taken for unused when the script is made smaller
      output: {...output, file: output.file.replace(/\.js$/, `-${name}.js`), name: globalOf(name), outro: `globalThis.${globalOf(name)} = exports;`},
    })),
  ];
}
