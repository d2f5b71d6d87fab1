import type {sheetFileWords} from '../en/sheet-files.js';

const words: typeof sheetFileWords.en = {
  heading: 'Schablonen in wahrer Größe',
  notLoaded: 'Was die Dateien schreibt, ließ sich nicht laden. Noch einmal öffnen, wenn die Seite wieder erreichbar ist.',
  notToScale: 'Nicht maßstäblich. Schablonen in wahrer Größe sind eine eigene Datei: siehe die Seite selbst.',
};

export default words;
