import type {flightWorkingWords} from '../en/flight-working.js';

const words: typeof flightWorkingWords.en = {
  because: {
    loading: 'm: Masse; S: Fläche des Flügels, wie er fliegt. Die kubische Flächenbelastung teilt durch die Fläche hoch 3/2, damit sie nicht mit der Größe des Gleiters wächst.',
    margin: (band) => `x: Schwerpunkt, x mit n: Neutralpunkt, c̄: mittlere Profiltiefe. Der Neutralpunkt ist der eines Wirbelgitters über Flügel, Höhen- und Seitenleitwerk, mit dem Auftrieb des Rumpfs nach R. T. Jones, NACA Report 835 (1946); auf etwa ${band} nach vorn und hinten genau.`,
    handbook: (a) => `Eine Probe daneben: Handbuchformeln ohne den Rumpf legen den Neutralpunkt auf ${a.handbook}, das Wirbelgitter mit dem Rumpf auf ${a.lattice}.`,
    volumes: 'S mit t und f: Höhen- und Seitenleitwerk; l: wie weit hinten ihre Viertellinie steht, beim Höhenleitwerk von der des Flügels aus, beim Seitenleitwerk vom Schwerpunkt aus; b: Spannweite. Übliche Bereiche: M. Drela, Basic Aircraft Design Rules, MIT 16.01 (2006); der fürs Seitenleitwerk aus dem Gedächtnis zitiert.',
    glide: 'Gewicht, Auftrieb und Widerstand im Gleichgewicht: R. F. Stengel, Flight Dynamics (2004), Abschnitt 2.6. γ: Gleitwinkel unter der Waagerechten; ρ: Dichte der Luft bei ihrer Temperatur und Höhe über dem Meer, ISO 2533; der Auftrieb ist der, bei dem sich die Momente um den Schwerpunkt aufheben.',
    drag: (a) =>
      `Der Widerstand besteht aus Reibung und stumpfen Kanten ${a.parasite}, dem Preis der endlichen Spannweite ${a.induced} und dem Sog, der an einer scharfen Vorderkante verloren geht, ${a.suction}. An Platten ist bei solchen Geschwindigkeiten wenig gemessen: Sinken stimmt auf etwa ein Viertel, Geschwindigkeit auf etwa ein Zehntel.`,
    reynolds: 'V: Geschwindigkeit, c: mittlere Profiltiefe, ν: wie zäh die Luft ist.',
    roll: 'Γ: V-Form in Grad, gleichmäßig über die Spannweite verteilt; C mit L: Auftriebsbeiwert; l: vom Schwerpunkt bis zum Seitenleitwerk. Etwa 5 ist neutral, 3 bis 4 fliegt noch mit einem Piloten: M. Drela, nach Blaine Rawdon.',
    section: 'Das Profil der Mitte: s: Steigung jedes geraden Stücks der geknickten Platte; θ: von 0 an der Vorderkante bis π an der Hinterkante, x = c (1 − cos θ)/2. H. Glauert, The Elements of Aerofoil and Airscrew Theory (1926).',
    trim: 'α: Anstellwinkel der Rumpfoberkante; C mit m: Moment um den Schwerpunkt, auf die mittlere Profiltiefe bezogen; mit 0: bei α = 0, mit α: je Radiant. Alle vier aus dem Wirbelgitter über Flügel, Höhen- und Seitenleitwerk.',
    phugoid: (period) => `Das Schwingen eines Gleiters, der seinen Anstellwinkel behält: F. W. Lanchester, Aerodonetics (1908). ${
      period === undefined ? 'Nach den vollständigen Bewegungsgleichungen schwingt dieser Gleiter gar nicht.' : `Die vollständigen Bewegungsgleichungen ergeben ${period}: Ein leichter Gleiter behält ihn nicht.`}`,
    spiral: 'C mit l und n: Roll- und Giermoment; mit β, p und r: je Radiant Schieben, Rollen und Gieren. Über null richtet er sich aus einer Schräglage auf: B. Etkin und L. D. Reid, Dynamics of Flight, Abschnitt 6.8, mit dem Gleitwinkel.',
    bending: (place) =>
      `${place}: Dort hat der Flügel am wenigsten übrig. M: Biegemoment im Gleitflug, die Summe über die Streifen des Flügels außerhalb davon aus F, der Luftkraft auf jeden, mal y, wie weit außen sie angreift; abzüglich des Anteils, den der Flügel selbst am Gewicht hat, m mit w von m, denn den trägt er, wo er ist. M mit b: was die Platte aushält, mit der Mitte ihres Bereichs. r: das Wievielfache dessen, was den Flügel bei doppelter Wurfgeschwindigkeit biegt, also des vierfachen M; unter 1 knickt er ein.`,
    carries: {
      'skins': 'h: Dicke der Platte, c mit b: Profiltiefe dort. Beide Deckschichten sind heil: Eine wird gedrückt, eine gezogen, und die schwächere gibt bei n je Millimeter ihrer Breite nach. Elementare Theorie des Sandwichbalkens.',
      'skin-and-foam': 'h: Dicke der Platte, c mit b: Profiltiefe dort. Eine Deckschicht ist geschnitten oder abgezogen: Gebogen wird um die andere, und der Schaum trägt an der offenen Seite bis σ, zur Deckschicht hin gleichmäßig weniger. Halbes σ über h, zwei Drittel von h entfernt: ein Drittel von σ h². Elementare Balkentheorie.',
      'foam': 'h: Dicke der Platte, c mit b: Profiltiefe dort. Nur Schaum, von σ auf der einen Seite über null in der Mitte bis σ auf der anderen: ein Sechstel von σ h². Elementare Balkentheorie.',
    },
    strength: 'Biegung im Gleitflug und bei doppelter Wurfgeschwindigkeit, wo die Last viermal so groß ist. Schaum dieser Art hält 0,9 bis 2,8 bar Druck und 2,1 bis 5,2 bar Biegung aus (Herstellerangaben für leichtere und schwerere Polystyrolschäume); eine Deckschicht aus Papier 1,5 bis 4 N je Millimeter Breite (allgemeine Praxis, ohne Quelle).',
    practice: 'Bereiche mit dem Vermerk allgemeine Praxis haben keine Quelle: Dort kommen Wurfgleiter aus Schaumplatten heraus.',
  },
  strength: {caption: 'Was den Flügel biegt, in N·mm', place: 'Wo', glide: 'Im Gleitflug', fast: 'Doppelt so schnell', takes: 'Solche Platte hält', middle: 'Die Mitte', joint: (at) => `Knick bei ${at}`, peeled: (place) => `${place}, obere Deckschicht abgezogen`, whole: (place) => `${place}, Deckschichten heil`},
  spoken: {
    wing: (value) => `Flächenbelastung: Masse durch Flügelfläche, ${value}`,
    cube: (value) => `kubische Flächenbelastung: Masse durch Flügelfläche hoch drei Halbe, ${value}`,
    margin: (value) => `Stabilitätsmaß: Neutralpunkt minus Schwerpunkt, durch die mittlere Profiltiefe, ${value}`,
    tail: (value) => `Höhenleitwerksvolumen: Leitwerksfläche mal Hebelarm durch Flügelfläche mal mittlere Profiltiefe, ${value}`,
    fin: (value) => `Seitenleitwerksvolumen: Seitenleitwerksfläche mal Hebelarm durch Flügelfläche mal Spannweite, ${value}`,
    angle: (value) => `Tangens des Gleitwinkels: Widerstandsbeiwert durch Auftriebsbeiwert, ${value}`,
    speed: (value) => `Geschwindigkeit: Wurzel aus zweimal Gewicht mal Kosinus des Gleitwinkels durch Dichte mal Fläche mal Auftriebsbeiwert, ${value}`,
    sink: (value) => `Sinken: Geschwindigkeit mal Sinus des Gleitwinkels, ${value}`,
    zeroLift: (value) => `Nullauftriebswinkel: Summe über die Stücke von Steigung mal Schritt von Theta minus Schritt seines Sinus, durch Pi, ${value}`,
    sectionMoment: (value) => `Profilmoment um die Viertellinie: halbe Summe über die Stücke von Steigung mal halbem Schritt des Sinus von zweimal Theta minus Schritt des Sinus, ${value}`,
    attack: (value) => `Anstellwinkel: minus Moment beim Winkel null durch Moment je Radiant, ${value}`,
    lift: (value) => `Auftriebsbeiwert: Auftrieb beim Winkel null plus Auftrieb je Radiant mal Anstellwinkel, ${value}`,
    phugoid: (value) => `Periode nach Lanchester: Pi mal Wurzel aus zwei mal Geschwindigkeit durch Erdbeschleunigung, ${value}`,
    pair: (a) => `Teil des Spiralkriteriums: C ${a.a} mal C ${a.b} minus C ${a.c} mal C ${a.d}, ${a.value}`,
    spiral: (value) => `Spiralkriterium aus den Ableitungen von Roll- und Giermoment, ${value}`,
    reynolds: (value) => `Reynoldszahl: Geschwindigkeit mal Profiltiefe durch kinematische Zähigkeit, ${value}`,
    bending: (value) => `Biegemoment im Gleitflug: eins minus Anteil des Flügels an der Masse, mal Summe der Kräfte mal wie weit außen sie angreifen, ${value}`,
    takes: {
      'skins': (value) => `was die Platte aushält: Kraft einer Deckschicht je Millimeter mal Dicke mal Profiltiefe, ${value}`,
      'skin-and-foam': (value) => `was die Platte aushält: Spannung des Schaums mal Dicke zum Quadrat mal Profiltiefe durch drei, ${value}`,
      'foam': (value) => `was die Platte aushält: Spannung des Schaums mal Dicke zum Quadrat mal Profiltiefe durch sechs, ${value}`,
    },
    reserve: (value) => `Reserve: was die Platte aushält, durch das vierfache Biegemoment, ${value}`,
    roll: (value) => `Spiralregel: Hebelarm des Seitenleitwerks durch Spannweite, mal V-Form in Grad durch Auftriebsbeiwert, ${value}`,
  },
  change: {
    caption: 'Was eine kleine Änderung bewirkt', what: 'Änderung', speed: 'Geschwindigkeit', ratio: 'Gleitzahl', margin: 'Stabilitätsmaß',
    noseGram: 'Ein Gramm mehr an der Nase', tailMillimetre: 'Hinterkante des Leitwerks einen Millimeter höher', foldDegree: 'Flügel ein Grad weiter geknickt',
  },
};

export default words;
