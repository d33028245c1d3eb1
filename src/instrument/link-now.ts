/**
 * What a link tells of the instrument to be strung as it is now: its bridge, the string beyond nut and saddle (mm), and what is on
 * it, from the highest string, each with its note after a y; 0 where nobody knows: bg-sprung/by-40-25/on-p10ye4-0-w26yg3.
 */
import { bringNowFields, gaugeCode, noteCode, number } from './link.ts';

bringNowFields(({ bridge, beyond, strings }) => {
  const on = strings.map((s) => (s.on ? `${gaugeCode(s.on)}y${noteCode(s.on.note)}` : '0'));
  return [
    ...(bridge ? [`bg-${bridge}`] : []),
    ...(beyond ? [`by-${number(beyond.nut * 1000, 2)}-${number(beyond.saddle * 1000, 2)}`] : []),
    ...(on.some((code) => code !== '0') ? [`on-${on.join('-')}`] : []),
  ];
});
