import type {Problem} from '../../calc/problem.js';
import type {QuantityKind} from '../../calc/units/kinds.js';
import type {GliderElement} from './element.js';
import {later} from './later.js';

const loadWords = () => import('../../messages/en/problems.js');

/** Arguments that are no lengths; the kind that a problem names under `kind` comes before this. */
const kindOfArgument: Readonly<Record<string, QuantityKind | 'plain'>> = {
  joints: 'plain', blocks: 'plain', version: 'plain', known: 'plain', count: 'plain', low: 'ratio', high: 'ratio', margin: 'ratio',
  angle: 'angle', fold: 'angle', mass: 'mass', camber: 'ratio',
};

/** A problem as a sentence in the reader's language and units; nothing for the moment in which the sentences are fetched. */
export function explain(host: GliderElement, {code, args = {}}: Problem): string {
  const words = later(host, loadWords);
  if (!words) return '';
  const own = args['kind'] as QuantityKind | undefined;
  const said: Record<string, string> = {};
  for (const [name, value] of Object.entries(args)) {
    if (typeof value === 'string') { said[name] = value; continue; }
    const kind = own ?? (code.startsWith('list-too') || code.startsWith('text-too') ? 'plain' : kindOfArgument[name] ?? 'length');
    said[name] = kind === 'plain' ? String(value) : host.write(value, kind);
  }
  return host.say(words.problemWords)[code]?.(said) ?? code;
}
