import {topic} from '../topic.js';

/** Which way a hand throws, the same in every element. */
export const throwingWords = topic('throwing', {
  level: 'level', up: (angle: string) => `**${angle}** above level`, down: (angle: string) => `**${angle}** below level`,
  downAt: (a: {angle: string; ground: string}) => `**${a.angle}** below level, aimed at the ground **${a.ground}** ahead`,
});
