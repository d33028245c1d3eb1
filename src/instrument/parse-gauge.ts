/** What readers type for a gauge. It looks into the drawer, which what reads other quantities has no need of. */
import { thousandths } from '../physics/index.ts';
import { nearestGauge } from './drawer.ts';
import type { Family } from './family-names.ts';
import { bad, entryOf, good, readNumber, thousandthsOf, type Parsed } from './parse.ts';
import type { Gauge } from './schema.ts';
import { typicalRange } from './typical.ts';

/** A gauge of a family's strings, in its drawer or between: "10", ".010", "0.25" (mm), "9.5", "46w", "46 wound". `kind` serves when the text does not say. */
export function parseGauge(text: string, kind: Gauge['kind'], family?: Family): Parsed<Gauge> {
  const read = readNumber(text);
  const kinds: Readonly<Record<string, Gauge['kind']>> = {
    '': kind,
    w: 'wound',
    wound: 'wound',
    p: 'plain',
    plain: 'plain',
  };
  const [, length = '', rest = ''] =
    /^(mm|in|inch|inches|"|″)?\s*(.*)$/i.exec(read?.unit ?? '') ?? [];
  const said = read && entryOf(kinds, rest);
  if (!read || !said) return bad('Type a gauge in thousandths, such as 10, .010 or 46w, or in mm.');
  const thou = thousandthsOf(read.value, length.toLowerCase());
  // Typed in mm, whether or not that was said, it is a rounded one.
  const isMetric = Math.abs(thou - read.value) > 1e-9 && thou < 500 * read.value;
  const near = nearestGauge(said, thou, family);
  // A gauge in mm is a rounded one: half a hundredth of a millimetre either way is the same string.
  const slack = isMetric ? thousandths(5.1e-6) : 0.01;
  const gauge = Math.abs(near - thou) <= slack ? near : Number(thou.toFixed(2));
  const { min, max } = typicalRange(said, family);
  if (gauge < min || gauge > max) {
    const other: Gauge['kind'] = said === 'plain' ? 'wound' : 'plain';
    const range = typicalRange(other, family);
    const instead = gauge >= range.min && gauge <= range.max;
    const message = `${said === 'plain' ? 'Plain' : 'Wound'} strings here go from ${min} to ${max}.`;
    if (!instead) return bad(message);
    const near = nearestGauge(other, thou, family);
    const meant = Math.abs(near - thou) <= slack ? near : gauge;
    return { ok: false, message, offer: `${meant} ${other}` };
  }
  return good({ kind: said, gauge, ...(family && { family }) });
}
