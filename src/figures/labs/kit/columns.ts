/** What a reading consists of: each value typed in a unit of its own and kept in SI. */
import { readNumber, type Parsed } from '../../../instrument/parse.ts';

export interface Column {
  readonly key: string;
  /** As a heading: "length" */
  readonly label: string;
  readonly unit: string;
  /** What a field is called to a reader who hears it; "length in mm" when left out */
  readonly spoken?: string;
  readonly parse: (typed: string) => Parsed<number>;
  /** Without its unit */
  readonly format: (value: number) => string;
  /** What a reader might type */
  readonly example: string;
}

const trimmed = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

interface Measure {
  readonly key: string;
  readonly label: string;
  readonly example: string;
  /** SI per unit, by the unit's name in small letters; the first is the one that is shown */
  readonly units: Readonly<Record<string, number>>;
  readonly digits: number;
  readonly min: number;
  readonly max: number;
}

/** A column for a positive number with a unit that may be typed. */
export function column({ key, label, example, units, digits, min, max }: Measure): Column {
  const [first = '', per = 1] = Object.entries(units)[0] ?? [];
  const unit = first === 'hz' ? 'Hz' : first;
  const format = (value: number) => trimmed(value / per, digits);
  const allowed = `between ${format(min)} and ${format(max)} ${unit}`;
  return {
    key,
    label,
    unit,
    example,
    format,
    parse: (typed) => {
      const read = readNumber(typed);
      if (!read) return { ok: false, message: `Type a number, such as ${example}.` };
      const factor =
        read.unit === '' ? per : Object.hasOwn(units, read.unit) ? units[read.unit] : undefined;
      if (factor === undefined)
        return {
          ok: false,
          message: `“${read.unit}” isn’t a unit here; use ${Object.keys(units).join(' or ')}.`,
        };
      const value = read.value * factor;
      if (!(value >= min && value <= max))
        return {
          ok: false,
          message: `It has to be ${allowed}. You typed ${format(value)} ${unit}.`,
        };
      return { ok: true, value };
    },
  };
}

/** A column that only a file has: a plain number, every digit of it. */
export const plainColumn = (key: string, label: string, unit: string): Column => ({
  key,
  label,
  unit,
  example: '1',
  format: String,
  parse: (typed) => {
    const value = typed.trim() === '' ? NaN : Number(typed);
    return Number.isFinite(value)
      ? { ok: true, value }
      : { ok: false, message: `“${typed}” is no number.` };
  },
});

const inch = 0.0254;
const lengths = { mm: 1e-3, cm: 1e-2, m: 1, in: inch } as const;
const small = { mm: 1e-3, in: inch } as const;
const masses = { g: 1e-3, mg: 1e-6 } as const;
export const pieceLength = column({
  key: 'length',
  label: 'length',
  example: '500 mm',
  units: lengths,
  digits: 2,
  min: 0.02,
  max: 2,
});
export const hangingLength = column({
  key: 'hangingLength',
  label: 'clamp to clip',
  example: '500 mm',
  units: lengths,
  digits: 1,
  min: 0.1,
  max: 2,
});
export const pieceMass = column({
  key: 'mass',
  label: 'mass',
  example: '0.20 g',
  units: masses,
  digits: 4,
  min: 1e-6,
  max: 0.5,
});
export const hungMass = column({
  key: 'mass',
  label: 'weight on it',
  example: '2 kg',
  units: { kg: 1, g: 1e-3, lb: 0.45359237 },
  digits: 4,
  min: 0.05,
  max: 20,
});
export const asideMass = column({
  key: 'mass',
  label: 'weight on it',
  example: '200 g',
  units: { g: 1e-3, kg: 1, oz: 0.028349523125 },
  digits: 1,
  min: 0.02,
  max: 0.6,
});
export const sag = column({
  key: 'sag',
  label: 'how far it gives',
  example: '2.5 mm',
  units: { mm: 1e-3, cm: 1e-2, in: inch },
  digits: 2,
  min: 1e-4,
  max: 0.015,
});
export const heardPitch = column({
  key: 'frequency',
  label: 'pitch heard',
  example: '220 Hz',
  units: { hz: 1 },
  digits: 2,
  min: 15,
  max: 2000,
});
/** A doubt of a length, as a reader gives it: one standard deviation. */
export const lengthDoubt = column({
  key: 'lengthDoubt',
  label: 'each length within',
  example: '0.5 mm',
  units: small,
  digits: 2,
  min: 1e-5,
  max: 0.02,
});
export const balanceStep = column({
  key: 'step',
  label: 'the scale’s smallest step',
  example: '0.01 g',
  units: masses,
  digits: 4,
  min: 1e-6,
  max: 0.01,
});
export const sagDoubt = column({
  key: 'sagDoubt',
  label: 'each sag within',
  example: '0.2 mm',
  units: small,
  digits: 2,
  min: 1e-5,
  max: 2e-3,
});
