import {asBuiltWorkingWords} from '../../src/messages/en/as-built-working.js';
import {asBuiltWords} from '../../src/messages/en/as-built.js';
import {balanceWorkingWords} from '../../src/messages/en/balance-working.js';
import {balanceWords} from '../../src/messages/en/balance.js';
import {camberWorkingWords} from '../../src/messages/en/camber-working.js';
import {camberWords} from '../../src/messages/en/camber.js';
import {commonWords} from '../../src/messages/en/common.js';
import {dihedralFigureWords} from '../../src/messages/en/dihedral-figure.js';
import {dihedralWorkingWords} from '../../src/messages/en/dihedral-working.js';
import {dihedralWords} from '../../src/messages/en/dihedral.js';
import {dimensionNotes} from '../../src/messages/en/dimension-notes.js';
import {dimensionWords} from '../../src/messages/en/dimensions.js';
import {drawingWords} from '../../src/messages/en/drawing.js';
import {flightCheckWords} from '../../src/messages/en/flight-check.js';
import {flightLogPanelWords} from '../../src/messages/en/flight-log-panels.js';
import {flightLogWords} from '../../src/messages/en/flight-log.js';
import {flightPathWorkingWords} from '../../src/messages/en/flight-path-working.js';
import {flightPathWords} from '../../src/messages/en/flight-path.js';
import {flightWorkingWords} from '../../src/messages/en/flight-working.js';
import {flightWords} from '../../src/messages/en/flight.js';
import {problemWords} from '../../src/messages/en/problems.js';
import {reckonedWords} from '../../src/messages/en/reckoned.js';
import {sheetFileWords} from '../../src/messages/en/sheet-files.js';
import {sheetListWords} from '../../src/messages/en/sheet-lists.js';
import {sheetPanelWords} from '../../src/messages/en/sheet-panels.js';
import {sheetQuestionWords} from '../../src/messages/en/sheet-question.js';
import {sheetSearchWords} from '../../src/messages/en/sheet-search.js';
import {sheetTemplateWords} from '../../src/messages/en/sheet-templates.js';
import {sheetWords} from '../../src/messages/en/sheet.js';
import {tailShimWorkingWords} from '../../src/messages/en/tail-shim-working.js';
import {tailShimWords} from '../../src/messages/en/tail-shim.js';
import {throwingWords} from '../../src/messages/en/throwing.js';
import {trimAdviceCauseWords} from '../../src/messages/en/trim-advice-causes.js';
import {trimAdviceWorkingWords} from '../../src/messages/en/trim-advice-working.js';
import {trimAdviceWords} from '../../src/messages/en/trim-advice.js';
import {weightsWords} from '../../src/messages/en/weights.js';
import type {Topic} from '../../src/messages/topic.js';

/** Every topic there is in English; that none is missing here is checked with the languages themselves. */
export const topics: readonly Topic<unknown>[] = [
  asBuiltWords, asBuiltWorkingWords, balanceWords, balanceWorkingWords, camberWords, camberWorkingWords, commonWords, dihedralWords, dihedralFigureWords, dihedralWorkingWords,
  dimensionNotes, dimensionWords, drawingWords, flightWords, flightCheckWords, flightWorkingWords, flightPathWords, flightPathWorkingWords, problemWords, sheetWords, sheetFileWords, sheetListWords, sheetPanelWords, sheetQuestionWords, sheetSearchWords, sheetTemplateWords,
  reckonedWords, weightsWords, flightLogWords, flightLogPanelWords, tailShimWords, tailShimWorkingWords, throwingWords, trimAdviceWords, trimAdviceCauseWords, trimAdviceWorkingWords,
];
