import type {balanceWorkingWords} from '../en/balance-working.js';

const words: typeof balanceWorkingWords.en = {
  items: {
    'wing': 'Flügel', 'wing-glue': 'Kleber in seinen Falzen', 'body': 'Rumpf', 'body-glue': 'Kleber zwischen seinen Lagen', 'tailplane': 'Höhen\u00adleitwerk', 'fins': 'Seiten\u00adleitwerk',
    'tail-glue': 'Kleber am Leitwerk', 'tail': 'Leitwerk, ganz', 'bands': 'Gummi\u00adringe', 'tape': 'Klebe\u00adband', 'plane': 'Gleiter ohne den Ballast, gemessen', 'weight': 'Ballast',
  },
  moments: {caption: 'Momente um die Nase', item: 'Was', mass: 'Masse', at: 'Ab Nase', moment: 'Moment', total: 'Alles', weighed: 'gewogen', about: 'geschätzt'},
  because: {
    balance: 'Im Schwerpunkt heben sich die Momente aller Massen auf: Er liegt bei ihrer Summe, geteilt durch die ganze Masse.',
    measured: 'Als Ganzes gemessen: Die Teile müssen nicht zusammengezählt werden.',
    slopes: 'Auftriebsanstieg: wie schnell der Auftrieb wächst, wenn sich die Nase hebt. Formel von Helmbold (1942), Pfeilung nach Lowry und Polhamus, NACA TN 3911 (1957). A ist die Streckung, Spannweite durch mittlere Profiltiefe; Λ die Pfeilung bei halber Tiefe.',
    plates: 'Seitenleitwerke an den Enden des Höhenleitwerks wirken als Endscheiben und lassen es wie ein längeres arbeiten: Hoerner, Fluid-Dynamic Drag (1965). h ist ihre Höhe, b die Spannweite des Höhenleitwerks.',
    downwash: 'Abwind: Der Flügel lenkt die Luft nach unten, deshalb spürt das Leitwerk nur einen Teil jeder Drehung der Nase. USAF Stability and Control DATCOM, 4.4.1: K mit A steht für die Streckung, mit λ für die Zuspitzung, mit H dafür, wie weit hinten das Leitwerk sitzt; l von Viertellinie zu Viertellinie.',
    volume: 'Leitwerksvolumen: wie viel Leitwerk es gibt und wie weit hinten, bezogen auf den Flügel. S sind Flächen wie im Flug, c̄ ist die mittlere Profiltiefe des Flügels.',
    neutral: 'Neutralpunkt: wo zusätzlicher Auftrieb angreift, wenn eine Bö die Nase hebt. Liegt der Schwerpunkt davor, fängt sich der Gleiter von selbst. Etkin und Reid, Dynamics of Flight; a ist der Auftriebsanstieg des ganzen Gleiters, η = 0,9 für Luft, die der Flügel gebremst hat.',
    model: (a) =>
      `Die Antwort nimmt den Neutralpunkt aus dem Flugmodell, einem Wirbelgitter mit dem Rumpf: ${a.model} hinter der Flügelvorderkante. Die Handbuchformeln oben, ohne den Rumpf, sind eine Probe daneben: ${a.handbook}, ${a.apart} der mittleren Profiltiefe entfernt; bis ${a.usual} ist üblich.`,
    band: (band) => `Beides ist auf etwa ${band} nach vorn und hinten genau, also anfangs sanft werfen.`,
    target: 'Stabilitätsmaß: wie weit der Schwerpunkt vor dem Neutralpunkt liegt, in mittleren Profiltiefen. Für Einsteiger passen 15 bis 30 % (allgemeine Praxis).',
    back: (back, chord) => `Die mittlere Profiltiefe ist ${chord}; ihre Vorderkante liegt ${back} hinter der Vorderkante in der Mitte, von der aus mit den Fingern gemessen wird.`,
    off: 'Weniger als nichts: so viel kommt dort weg.',
    add: 'Momente um den gewünschten Schwerpunkt, alle Orte ab der Nase: x jetzt, x mit T gewünscht, w die Mitte des Ballasts, M die Masse des Gleiters.',
    pieces: 'Mit ganzen Stücken steht die Masse fest, dieselbe Gleichung wird also nach dem Ort aufgelöst.',
  },
  source: 'Die Formeln sind aus dem Gedächtnis nach den genannten Büchern zitiert und an deren veröffentlichten Beispielen geprüft.',
  spoken: {
    balance: (at) => `der Schwerpunkt ist die Summe der Momente durch die ganze Masse: ${at} ab der Nase`,
    slope: (a) => `Auftriebsanstieg ${a.of}: zwei Pi A durch zwei plus Wurzel aus vier plus A Quadrat durch Kosinus Quadrat der Pfeilung, ${a.slope} je Radiant`,
    wing: 'des Flügels', tail: 'des Leitwerks',
    plates: (aspect) => `Streckung des Höhenleitwerks mit seinen Endscheiben: ${aspect}`,
    downwashPlace: (value) => `Faktor für den Ort des Leitwerks: eins durch die Kubikwurzel aus zweimal Hebelarm durch Spannweite, ${value}`,
    downwash: (value) => `Änderung des Abwinds mit dem Anstellwinkel: ${value}`,
    volume: (value) => `Leitwerksvolumen: Leitwerksfläche mal Hebelarm durch Flügelfläche mal mittlere Profiltiefe, ${value}`,
    neutral: (at) => `Neutralpunkt: ein Viertel plus Leitwerksvolumen mal Eta mal Verhältnis der Auftriebsanstiege mal eins minus Änderung des Abwinds, ${at} mittlere Profiltiefen`,
    margin: (margin) => `Stabilitätsmaß jetzt: ${margin}`,
    add: (a) => `nötiger Ballast: ganze Masse mal Weg des Schwerpunkts durch den Hebelarm des Ballasts, ${a.mass}`,
    place: (at) => `Ort der Stücke: ${at} ab der Nase`,
  },
  rows: {
    now: 'Schwerpunkt jetzt, hinter der Flügelvorderkante', then: 'Schwerpunkt danach', from: 'Ziel ab', to: 'Ziel bis', neutral: 'Neutralpunkt', margin: 'Stabilitätsmaß jetzt', marginThen: 'Stabilitätsmaß danach',
    mass: 'Masse jetzt', massThen: 'Masse danach', place: 'Ballast, ab der Nase', weight: 'Ballast', wing: 'Flächenbelastung danach', cube: 'Kubische Flächenbelastung danach', volume: 'Leitwerksvolumen',
  },
};

export default words;
