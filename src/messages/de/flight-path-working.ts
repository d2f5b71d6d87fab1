import type {flightPathWorkingWords} from '../en/flight-path-working.js';

const words: typeof flightPathWorkingWords.en = {
  because: {
    speed: 'Die Geschwindigkeit, bei der Auftrieb und Widerstand im Gleitflug das Gewicht tragen: m ist die Masse, S die Flügelfläche, ρ die Dichte der Luft, γ der Gleitwinkel unter der Waagerechten, C der Auftriebsbeiwert, bei dem Nase und Leitwerk im Gleichgewicht sind.',
    ball: 'Ein waagerecht geworfener Ball fällt die Höhe h in der Zeit √(2h/g), wie schnell er auch fliegt; so weit kommt er in dieser Zeit.',
    motion: 'Der Flug selbst wird in kleinen Schritten verfolgt: Auftrieb und Widerstand biegen und bremsen den Weg, das Moment um den Schwerpunkt dreht den Gleiter. D ist der Widerstand, L der Auftrieb, θ der Nickwinkel, M das Moment und I die Trägheit.',
    steps: 'Die Schritte sind so lang, wie es ein Fehler von einem Millionstel erlaubt; was der Gleiter an Höhe und Geschwindigkeit verliert, hat der Widerstand genommen.',
    stall: 'Nach dem Strömungsabriss gelten die Platten als Tafeln, an denen die Luft nicht mehr anliegt. Wie genau es dazu kommt, ist nicht bekannt; Flüge mit Strömungsabriss sind daher gröber geschätzt als andere.',
    left: 'Nicht enthalten: Böen, die Nähe des Bodens und Platten, die sich biegen. Nur ein Gleiter, der als schief angegeben ist, fliegt eine Kurve.',
    turn: 'Die Kurve: Ein schiefes Seitenleitwerk, ein verdrehter Flügel oder ein Gewicht an der Spitze rollt und giert den Gleiter; Schieben, Rollen und Gieren tun den Rest, in allen sechs Bewegungen zugleich. Seitliche Kräfte gelten als proportional, sehr enge Kurven sind daher gröber geschätzt.',
    steady: 'In einer gleichmäßigen Kurve gehören Querlage φ, Geschwindigkeit und Radius R, der halbe Durchmesser des Kreises, zusammen; die seitliche Luftkraft an Leitwerk und Rumpf ändert das um einige Hundertstel.',
    sure: 'Geschwindigkeiten stimmen auf etwa ein Zehntel, Sinken und Weite auf etwa ein Viertel.',
  },
  source: 'R. F. Stengel, Flight Dynamics (2004), Abschnitte 2.6 und 3.1; B. Etkin und L. D. Reid, Dynamics of Flight, Gleichungen 4.7,1 bis 4.7,4 und 4.9,18; J. R. Dormand und P. J. Prince (1980) für die Schritte.',
  spoken: {
    steady: (a) => `Tangens Phi ist V Quadrat durch g R: ${a.speed} und ${a.radius} ergeben ${a.bank}`,
    speed: (speed) => `V ist die Wurzel aus zwei m g Kosinus Gamma durch Rho S C: ${speed}`,
    ball: (a) => `x ist V mal Wurzel aus zwei h durch g: ${a.speed} aus ${a.height} ergibt ${a.distance}`,
    motion: 'Die Änderung der Geschwindigkeit ist minus Widerstand durch Masse minus g Sinus Gamma; die des Bahnwinkels Auftrieb minus Gewicht mal Kosinus Gamma, durch m V; die der Nickgeschwindigkeit Moment durch Trägheit',
  },
  rows: {
    speed: 'Geschwindigkeit im Gleitflug', angle: 'Gleitwinkel', ratio: 'Gleitzahl', sink: 'Sinken', mass: 'Masse', margin: 'Stabilitätsmaß', ball: 'Der Ball landet bei', bank: 'Querlage am Ende', across: 'Kreis am Ende, Durchmesser', turned: 'Gedreht um',
  },
};

export default words;
