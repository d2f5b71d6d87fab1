import {topic} from '../topic.js';

/** What stands there before anything was thrown. */
export const trimAdviceWords = topic('trim-advice', {
  heading: 'After a throw: what to change',
  waiting: 'What to change is worked out as soon as the flight model has arrived.',
  begin: (a: {speed: string; angle: string}) => `Throw it into still air at **about ${a.speed}**, ${a.angle}. Then say below **what it did**.`,
  beginAside: 'From shoulder height, as fast as it glides and no faster. One change at a time, and a throw after each.',
  beginCalls: {
    slower: (by: string) => `That is faster than it has to fly: raise the tail’s rear edge about ${by} first, and it flies slower and flatter.`,
    faster: (by: string) => `That is close to its stall: lower the tail’s rear edge about ${by} first, and a slow throw or a bump does not make it drop.`,
  },
  beginAfter: 'Then throw it into still air and say below **what it did**. One change at a time, and a throw after each.',
  thrownAgain: 'Throw it **again, just as it is**, and say what it does now.',
  changedNow: (what: string) => `Now **throw it again** and say what it does. Changed: ${what}.`,
  thrownSo: (what: string) => `Now **throw it again**, and say what it does: ${what}.`,
  measuredNow: '**Put in what you measured** where it is another number than on this page. Then throw it again, and say what it does.',
  legend: 'What did it do?',
  sights: {
    good: 'glided well, straight and flat', dives: 'dived at once', swoops: 'swooped up, stalled, swooped again', zooms: 'zoomed up, then stalled once', drops: 'dropped flat',
    left: 'turned left', right: 'turned right', rolls: 'rolled over', wags: 'wagged its tail', flutters: 'fluttered, boards shook',
  },
  measured: 'If you measured it', distance: 'How far it flew', time: 'How long',
  changedIt: 'I changed it', measuredIt: 'I measured it', throwSo: 'Next throw like that', threwAgain: 'Next throw, nothing changed', fastened: 'I fastened it', takeBack: 'Take back the last', startOver: 'Start over',
  remedyTail: (a: {change: string; effect: string}) => `Set the tail first; nothing else is worth trying before: ${a.change}. ${a.effect}`,
  remedyUnlike: '**What you saw counts more than what was reckoned.** If it did not fly so badly, measure the plane before you change it: the edges of the tail, the hollow of the wing, where it balances.',
  notYet: (why: string) => `**Do not throw it yet.** ${why}`,
  leftAlone: 'The glider’s numbers were left as they are: what this change had set has been changed since.',
  thread: 'Throws so far', thrown: 'Nothing changed', empty: 'Leave empty what you did not measure.',
  flew: (distance: string) => `flew ${distance}`, lasted: (time: string) => `for ${time}`,
  caution: 'Throw away from faces, eyes, people and roads, with nobody in front of you. Check before each throw that the nose weight is held fast. Local rules and supervision come first.',
});
