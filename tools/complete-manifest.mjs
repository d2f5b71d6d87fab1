/**
 * What the analyser cannot read off the sources: the attributes that come from the table of dimensions. They are taken
 * from the compiled classes themselves, with the words that stand beside their fields. What is private is left out.
 */
import {readFileSync, writeFileSync} from 'node:fs';
import {pathToFileURL} from 'node:url';
import {elementsIn} from './elements.mjs';

const compiled = (file) => import(pathToFileURL(`build/${file}`).href);
const {attributeOf, dimensionPaths} = await compiled('src/calc/design/dimensions.js');
const {dimensionWords} = await compiled('src/messages/en/dimensions.js');
const {dimensionNotes} = await compiled('src/messages/en/dimension-notes.js');
const pathOfAttribute = new Map(dimensionPaths.map((path) => [attributeOf(path), path]));

/** An attribute named after a dimension, in full or by an element's own short name. */
function dimensionAttribute(name, element) {
  const [field, path] = Object.entries(element.shortNames ?? {}).find(([short]) => element.elementProperties.get(short)?.attribute === name)
    ?? [undefined, pathOfAttribute.get(name)];
  if (!path) return {name, type: {text: 'string'}};
  const {label} = dimensionWords.en[path];
  const note = dimensionNotes.en[path];
  return {name, type: {text: 'string'}, description: `${label} (\`${path}\`). ${note}`, ...(field ? {fieldName: field} : {})};
}

const isPublic = ({name, privacy}) => !/^[#_]/.test(name) && (privacy ?? 'public') === 'public';
const file = 'custom-elements.json';
const manifest = JSON.parse(readFileSync(file, 'utf8'));
const declarations = manifest.modules.flatMap(({declarations = []}) => declarations);
for (const declaration of declarations) declaration.members &&= declaration.members.filter(isPublic);

for (const {tag, element} of elementsIn()) {
  const declaration = declarations.find(({tagName}) => tagName === tag);
  if (!declaration) throw new Error(`${file} does not know <${tag}>: is it registered by define('${tag}', …) in its define.ts?`);
  declaration.attributes ??= [];
  for (const attribute of declaration.attributes) attribute.type ??= {text: 'string'};
  const described = new Set(declaration.attributes.map(({name}) => name));
  const made = Object.values(await compiled(element.replace(/\.ts$/, '.js'))).find((value) => value.name === declaration.name);
  for (const name of made.observedAttributes) if (!described.has(name)) declaration.attributes.push(dimensionAttribute(name, made));
}
// it describes what is published, not the sources
const published = JSON.stringify(manifest, undefined, 2).replace(/"(\/?)(src\/components\/[^"]+)\.ts"/g, '"$1dist/npm/$2.js"');
writeFileSync(file, `${published}\n`);
