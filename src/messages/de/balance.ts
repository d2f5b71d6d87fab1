import type {balanceWords} from '../en/balance.js';
import {where} from './weights.js';

type Now = Parameters<typeof balanceWords.en.onTarget>[0];

/** Coins by their id; each of them is feminine, and "n" makes several of one. */
const coins: Readonly<Record<string, string>> = {
  'eur-0.01': 'Ein-Cent-Münze', 'eur-0.02': 'Zwei-Cent-Münze', 'eur-0.05': 'Fünf-Cent-Münze', 'eur-0.10': 'Zehn-Cent-Münze', 'eur-0.20': 'Zwanzig-Cent-Münze',
  'eur-0.50': 'Fünfzig-Cent-Münze', 'eur-1': 'Ein-Euro-Münze', 'eur-2': 'Zwei-Euro-Münze',
  'usd-0.01': 'US-Ein-Cent-Münze', 'usd-0.05': 'US-Fünf-Cent-Münze', 'usd-0.10': 'US-Zehn-Cent-Münze', 'usd-0.25': 'US-Vierteldollar-Münze',
  'usd-0.50': 'US-Halbdollar-Münze', 'usd-1': 'US-Dollar-Münze',
  'gbp-0.01': 'Penny-Münze', 'gbp-0.02': 'Zwei-Pence-Münze', 'gbp-0.05': 'Fünf-Pence-Münze', 'gbp-0.10': 'Zehn-Pence-Münze', 'gbp-0.20': 'Zwanzig-Pence-Münze',
  'gbp-0.50': 'Fünfzig-Pence-Münze', 'gbp-1': 'Ein-Pfund-Münze', 'gbp-2': 'Zwei-Pfund-Münze',
};

const balances = ({at, ahead}: Pick<Now, 'at' | 'ahead'>): string => `Der Schwerpunkt liegt **${at}** ${ahead ? 'vor' : 'hinter'} der Vorderkante des Flügels`;

const words: typeof balanceWords.en = {
  heading: 'Schwerpunkt: wo er liegt und welcher Ballast fehlt',
  piece: (id, count) => {
    const [, size] = /^washer-m(\d+)$/.exec(id) ?? [];
    const one = size === undefined ? coins[id] : `M${size}-Unterlegscheibe`;
    return one === undefined ? id : count === 1 ? one : `${one}n`;
  },
  pieces: (count, name, mass) => `${count} ${name} (${mass})`,
  clay: (mass, ball) => `${mass} Knete (Kugel von ${ball})`,
  grams: (mass) => mass,
  range: (from, to) => `${from} bis ${to}`,
  onTarget: (a) => `${balances(a)}, im Zielbereich von **${a.target}**: Ballast ist nicht nötig.`,
  change: (a) => `${balances(a)}; ${a.doing}, dann liegt er bei **${a.then}**, ${a.middle ? 'mitten im' : 'im'} Zielbereich von ${a.target}.`,
  put: (a) => `**${a.what}** ${where(a)}${a.like === undefined ? '' : ` (das wirkt ${a.like.about ? 'etwa ' : ''}wie ${a.like.mass} ${where(a.like)})`} anbringen`,
  noWay: (a) => `${balances(a)}, der Gleiter ist ${a.heavy === 'nose' ? 'kopflastig' : 'schwanzlastig'}: Der Schwerpunkt soll bei **${a.target}** liegen.`,
  off: {tail: (d) => `Das ist ${d} zu weit hinten: Der Gleiter ist schwanzlastig.`, nose: (d) => `Das ist ${d} zu weit vorn: Der Gleiter ist kopflastig.`},
  margin: (margin) => `Das Stabilitätsmaß ist ${margin} der mittleren Profiltiefe.`,
  loading: (a) => `${a.with ? 'Damit' : 'So'} wiegt der Gleiter ${a.mass}; Flächenbelastung ${a.wing}, kubische Flächenbelastung ${a.cube} (Flügel wie im Flug).`,
  moved: {
    'of-no-use': {nose: 'Der angegebene Platz für Ballast liegt hinter dem Ziel, deshalb kommt der Ballast nach vorn an die Nase.', tail: 'Ballast fehlt hinter dem Ziel, deshalb kommt er nach hinten ans Leitwerk.'},
    'off-body': {nose: 'Der angegebene Platz für Ballast liegt vor dem Rumpf, deshalb kommt der Ballast an die Spitze.', tail: 'Der angegebene Platz für Ballast liegt hinter dem Rumpf, deshalb kommt der Ballast ans Rumpfende.'},
  },
  otherWays: 'Andere Wege',
  least: (mass, edge, place) => `Mit ${mass} ${where(place)} ist gerade der Rand des Zielbereichs erreicht, ${edge}.`,
  ball: (mass, across, place) => `Knete passt überall: ${mass}, eine Kugel von ${across} Durchmesser, ${where(place)} ergeben die Mitte.`,
  onlyThere: 'Ganze Stücke gehen nur an der genannten Stelle genau auf; anderswo eine andere Anzahl nehmen oder Knete.',
  perMass: (a) => `Je ${a.step} ${where(a)} wandert der Schwerpunkt anfangs um ${a.shift} nach ${a.forward ? 'vorn' : 'hinten'}.`,
  slide: (a) => `Oder den Ballast lassen, wie er ist, und den Flügel um ${a.by} nach ${a.back ? 'hinten' : 'vorn'} schieben, auf ${a.to} hinter der Nase: Dann liegt der Schwerpunkt bei ${a.then}, mitten im Zielbereich, der dann gilt.`,
  noSlide: 'Den Flügel zu schieben reicht allein nicht: Er käme vom Rumpf herunter oder stieße ans Leitwerk.',
  takeOff: {
    weight: (mass, at) => `Oder vom Ballast ${at} hinter der Nase ${mass} wegnehmen.`,
    tailplane: (mass, of) => `Oder das Leitwerk, jetzt ${of}, um ${mass} leichter machen: auf einer Seite die Deckschicht abziehen.`,
  },
  stack: (height) => `In einem Stapel sind sie ${height} hoch; auf beide Seiten des Rumpfs verteilen.`,
  fit: 'Diesen Ballast anbringen', takeNow: 'Das abnehmen', changeNow: 'Den Ballast so ändern', slideNow: 'Den Flügel dorthin schieben', clear: 'Allen Ballast abnehmen',
  atHand: 'Vorhandener Ballast', howMany: 'Wie viele', asNeeded: 'so viele wie nötig',
  anyClay: 'Knete', anyMass: 'alles, was sich wiegen lässt',
  groups: {weighs: 'Was die Teile wiegen', size: 'Wie der Gleiter gebaut ist', steady: 'Wie stabil er sein soll'},
  caution: 'Jeden Ballast so festkleben, dass er nicht wegfliegen kann; Münzen und Kleinteile gehören nicht in die Hände kleiner Kinder. Die ersten Würfe über Gras, weg von Menschen; Regeln vor Ort und Aufsicht gehen vor.',
  picture: (a) => `Seitenansicht des Gleiters, Nase links. Der Schwerpunkt liegt ${a.now} hinter der Vorderkante des Flügels; er soll bei ${a.target} liegen.`,
  pictureChange: (a) => `Zu tun: ${a.doing}. Dann liegt er bei ${a.then}.`,
  now: (at) => `jetzt ${at}`,
  then: (at) => `dann ${at}`,
  here: (target) => `Ziel: ${target}`,
  hereShort: 'Ziel',
  neutral: 'Neutralpunkt',
  doubt: (apart) => `Bei diesem Gleiter liegen Flugmodell und Handbuch um ${apart} der mittleren Profiltiefe auseinander, mehr als üblich: mit dem Schwerpunkt weit vorn beginnen.`,
};

export default words;
