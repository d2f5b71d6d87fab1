import {sheetQuestionWords} from '../../messages/en/sheet-question.js';
import type {GliderElement} from '../base/element.js';
import {mayBeSpliced, mostPrice, type OwnQuestions} from './own-questions.js';

export const priceUnread = (host: GliderElement): string => host.say(sheetQuestionWords).numberUnread({most: host.write(mostPrice, 'count')});

export const notSplicedSentence = (host: GliderElement, {notSpliced}: OwnQuestions): string =>
  host.say(sheetQuestionWords).notSpliced({names: notSpliced.join(' '), parts: mayBeSpliced.join(', ')});

/** What is wrong and changes no layout: the answer stands without it. Each has its place in the question, and one here where there is no question. */
export function notices(host: GliderElement, own: OwnQuestions, searches: boolean): readonly string[] {
  const words = host.say(sheetQuestionWords);
  const sheets = own.wanted === 'sheets';
  return [
    ...sheets && own.price.wrong ? [`${words.price}: ${priceUnread(host)}`] : [],
    ...sheets && searches && own.boards.unread ? [words.unreadBoards] : [],
    ...searches && own.notSpliced.length > 0 ? [notSplicedSentence(host, own)] : [],
  ];
}
