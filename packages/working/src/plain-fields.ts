import { addDays, type Day, type Instant, isDay, isTimeZone } from '#units';
import { type Field, readAs, unclear } from './field.ts';

/** A whole number. */
export function count(low: number, high: number, meaning: string): Field<number> {
  return {
    meaning,
    read: (raw) => {
      const value =
        typeof raw === 'string' && /^\s*[-−]?\d+\s*$/.test(raw) ? Number(raw.trim().replace('−', '-')) : raw;
      return typeof value === 'number' && Number.isInteger(value) && value >= low && value <= high
        ? readAs(value)
        : unclear(`'${String(raw)}' is not a whole number from ${low} to ${high}`, `give one, as in ${low}`);
    },
    control: { control: 'whole number', low, high },
    reference: { meaning, unit: '', takes: `a whole number from ${low} to ${high}`, example: String(low) },
    raw: (fc) => fc.integer({ min: low, max: high }),
  };
}

/** One of a few named things. Taken by its id in any case. */
export function choice<const Id extends string>(
  choices: readonly { readonly id: Id; readonly title: string }[],
  meaning: string,
): Field<Id> {
  const list = choices.map((each) => each.id).join(', ');
  return {
    meaning,
    read: (raw) => {
      const found = choices.find((each) => each.id.toLowerCase() === String(raw).trim().toLowerCase());
      return found ? readAs(found.id) : unclear(`there is no '${String(raw)}'`, `give one of: ${list}`);
    },
    control: { control: 'choice', choices },
    reference: { meaning, unit: '', takes: `one of: ${list}`, example: choices[0]!.id },
    raw: (fc) => fc.constantFrom(...choices.map((each) => each.id)),
  };
}

/** A day of the calendar. */
export function day(meaning: string): Field<Day> {
  return {
    meaning,
    read: (raw) =>
      typeof raw === 'string' && isDay(raw.trim())
        ? readAs(raw.trim() as Day)
        : unclear(`'${String(raw)}' is not a day there is`, 'give YYYY-MM-DD, as in 2026-05-01'),
    control: { control: 'day' },
    reference: { meaning, unit: '', takes: 'YYYY-MM-DD, years 1900 to 2199', example: '2026-05-01' },
    raw: (fc) => fc.integer({ min: -20_000, max: 60_000 }).map((n) => addDays('1970-01-01', n)),
  };
}

/** A moment, with its offset from UTC. */
export function instant(meaning: string): Field<Instant> {
  const form = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,3})?)?(Z|[+-]\d\d:\d\d)$/;
  return {
    meaning,
    read: (raw) => {
      const text = String(raw).trim();
      const right = 'give a day, a time and the offset from UTC, as in 2026-05-01T12:30:00+02:00';
      if (!form.test(text) || !isDay(text.slice(0, 10))) return unclear(`'${text}' is not a moment in time`, right);
      const value = Date.parse(text);
      return Number.isNaN(value) ? unclear(`'${text}' has no such time`, right) : readAs(value);
    },
    control: { control: 'instant' },
    reference: { meaning, unit: '', takes: 'ISO 8601 with offset', example: '2026-05-01T12:30:00+02:00' },
    raw: (fc) =>
      fc
        .integer({ min: Date.parse('1900-01-02T00:00Z') / 1000, max: Date.parse('2199-12-30T00:00Z') / 1000 })
        .map((seconds) => new Date(seconds * 1000).toISOString()),
  };
}

/** A time zone by its IANA name. */
export function timeZone(meaning: string): Field<string> {
  return {
    meaning,
    read: (raw) =>
      typeof raw === 'string' && isTimeZone(raw.trim())
        ? readAs(raw.trim())
        : unclear(
            `'${String(raw)}' is not a time zone this device knows`,
            'give an IANA name, as in Europe/Berlin or UTC',
          ),
    control: { control: 'time zone' },
    reference: { meaning, unit: '', takes: 'an IANA name', example: 'Europe/Berlin' },
    raw: (fc) => fc.constantFrom('UTC', 'Europe/Berlin', 'America/New_York', 'Asia/Kathmandu', 'Pacific/Auckland'),
  };
}
