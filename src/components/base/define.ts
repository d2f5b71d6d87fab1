interface Versioned { readonly version?: string }

/**
 * Registers an element once. A second copy of the same version is silent; a copy of another version warns and leaves the
 * first in place, since an element's class cannot be exchanged.
 */
export function define(tag: string, element: CustomElementConstructor & Versioned, registry = globalThis.customElements as CustomElementRegistry | undefined): void {
  const standing = registry?.get(tag) as (CustomElementConstructor & Versioned) | undefined;
  if (!standing) registry?.define(tag, element);
  else if (standing !== element && standing.version !== element.version) {
    console.warn(`<${tag}> is registered in version ${standing.version ?? 'unknown'}; version ${element.version ?? 'unknown'} is not used.`);
  }
}
