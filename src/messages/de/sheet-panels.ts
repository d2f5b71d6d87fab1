import type {sheetPanelWords} from '../en/sheet-panels.js';

const words: typeof sheetPanelWords.en = {
  marking: 'Anreißen mit Bleistift und Maßband',
  cutting: 'Schnitt für Schnitt',
  sheet: 'Welche Platte',
  notLoaded: 'Diese Liste ließ sich nicht laden. Noch einmal öffnen, sobald die Seite erreichbar ist.',
};

export default words;
