import type {Problem} from '../../calc/problem.js';
import type {QuantityKind} from '../../calc/units/kinds.js';
import type {GliderElement} from './element.js';
import {later} from './later.js';
import {slipWords} from './slip.js';

const loadWords = () => import('../../messages/en/problems.js');

/** Arguments that are no lengths; the kind that a problem names under `kind` comes before this. */
const kindOfArgument: Readonly<Record<string, QuantityKind | 'plain'>> = {
  joints: 'plain', blocks: 'plain', version: 'plain', known: 'plain', count: 'plain', low: 'ratio', high: 'ratio', margin: 'ratio',
  panels: 'plain', angles: 'plain', panel: 'plain', station: 'plain', creases: 'plain', sheets: 'plain', point: 'plain', aspect: 'plain',
  angle: 'angle', fold: 'angle', edge: 'length', mass: 'mass', camber: 'ratio', area: 'area', speed: 'speed',
};

/** A small limit is not rounded to nothing. */
const written = (host: GliderElement, value: number, kind: QuantityKind): string =>
  (value !== 0 && Math.abs(value) < 1e-3 && kind === 'length' ? host.write(value, kind, {digits: 2}) : host.write(value, kind));

const isLimit = (name: string): boolean => name === 'most' || name === 'least';

/** A problem as a sentence in the reader's language and units; nothing for the moment in which the sentences are fetched. */
export function explain(host: GliderElement, {code, args = {}}: Problem): string {
  const words = later(host, loadWords);
  if (!words) return '';
  const own = args['kind'] as QuantityKind | undefined;
  // a limit is of the same kind as what it limits
  const limited = /^(list|text|count)-/.test(code) ? 'plain' : Object.keys(args).map((name) => kindOfArgument[name]).find((kind) => kind !== undefined);
  const said: Record<string, string> = {};
  for (const [name, value] of Object.entries(args)) {
    if (typeof value === 'string') { said[name] = value; continue; }
    const kind = own ?? kindOfArgument[name] ?? (isLimit(name) ? limited : undefined) ?? 'length';
    said[name] = kind === 'plain' ? String(value) : name === 'edge' && code.startsWith('trim-') ? slipWords(host, value) : written(host, value, kind);
  }
  return host.say(words.problemWords)[code]?.(said) ?? code;
}
