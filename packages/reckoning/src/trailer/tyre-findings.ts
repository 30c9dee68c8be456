/** What the tyres’ marks, tread and pressure say. */
import type { TrailerRecord, TyresRecord } from '#boat-book';
import { leastTread_mm, tyreAge_years, tyreLoad, tyreMade, tyreSpeed, tyreYears } from '#trailer';
import type { Day } from '#units';
import type { TrailerFinding } from './trailer-finding.ts';
import { kgSaid } from './trailer-words.ts';

type Wheel = TyresRecord['wheels'][number];

/** How old a wheel’s tyre is; null: its code was not read, or says no date. */
export function wheelAge(
  { code }: Wheel,
  today: string,
): { readonly years: number; readonly atLeast: boolean; readonly made: string } | null {
  const made = code === null ? null : tyreMade(code);
  if (made === null || made.kind === 'not a date') return null;
  return {
    years: tyreAge_years(made, today as Day),
    atLeast: made.kind === 'before 2000',
    made: made.kind === 'week' ? `week ${made.week} of ${made.year}` : `week ${made.week} of a year before 2000`,
  };
}

export function tyreFindings(record: TrailerRecord, today: string): TrailerFinding[] {
  const { tyres } = record;
  if (tyres === null)
    return [
      unknown('tyres', 'The tyres are not looked at.', 'Read index, letter, code and pressure off each of them.', null),
    ];
  const aged = tyres.wheels.filter((wheel) => (wheelAge(wheel, today)?.years ?? 0) >= tyreYears.replace).length;
  return [
    ...tyres.wheels.flatMap((wheel, n) => wheelFindings(tyres, wheel, n, today, Math.min(5, Math.max(1, aged)))),
    ...(tyres.wheels.length === 0
      ? [
          unknown(
            'tyre-ages',
            'How old the tyres are is not entered.',
            'The code that begins with DOT ends in week and year.',
            tyres.readOn,
          ),
        ]
      : []),
    ...indexFindings(tyres),
    ...speedFindings(record, tyres),
    ...pressureFindings(tyres),
  ];
}

function wheelFindings(tyres: TyresRecord, wheel: Wheel, n: number, today: string, aged: number): TrailerFinding[] {
  const name = wheel.spare ? `${wheel.wheel} tyre, not on the road` : `${wheel.wheel} tyre`;
  const found: TrailerFinding[] = [];
  const age = wheelAge(wheel, today);
  const change = {
    kind: 'recipe',
    recipe: 'trailer-tyres',
    title: 'Change the trailer’s aged tyres',
    sizes: { tyres: aged },
  } as const;
  if (age === null) {
    const made = wheel.code === null ? null : tyreMade(wheel.code);
    found.push(
      unknown(
        `tyre-age-${n + 1}`,
        made?.kind === 'not a date'
          ? `${name}: ‘${wheel.code}’ says no date, ${made.because}.`
          : `${name}: its code is not read, so how old it is is not known.`,
        'The last four figures of the code that begins with DOT are week and year.',
        tyres.readOn,
      ),
    );
  } else if (age.years < -0.1) {
    found.push(
      unknown(
        `tyre-age-${n + 1}`,
        `${name}: ‘${wheel.code}’ would be made after today.`,
        'Read the code again.',
        tyres.readOn,
      ),
    );
  } else if (age.years >= tyreYears.replace) {
    const past = age.years > tyreYears.most;
    found.push({
      id: `tyre-age-${n + 1}`,
      subject: 'tyres',
      gravity: past && !wheel.spare ? 'danger' : 'worsens',
      wrong: `${name}: ${age.atLeast ? 'at least ' : ''}${age.years.toFixed(1)} years old, ${past ? `and none is used past ${tyreYears.most}` : `and at ${tyreYears.replace} it is changed`}.`,
      right: `A tyre ages in the sun before its tread is gone: change it${past ? '' : ' before the season'}.`,
      because: [`‘${wheel.code}’ on its wall: ${age.made}.`],
      from: tyres.readOn,
      mend: change,
    });
  }
  if (wheel.tread_mm !== null && wheel.tread_mm < leastTread_mm)
    found.push({
      id: `tyre-tread-${n + 1}`,
      subject: 'tyres',
      gravity: 'unlawful',
      wrong: `${name}: ${wheel.tread_mm} mm of tread; ${leastTread_mm} mm is the least in Europe.`,
      right: 'Change it.',
      because: [],
      from: tyres.readOn,
      mend: { ...change, title: 'Change the trailer’s worn tyres' },
    });
  return found;
}

function indexFindings({ loadIndex, readOn }: TyresRecord): TrailerFinding[] {
  if (loadIndex === null)
    return [
      unknown(
        'tyre-index',
        'The load index of the tyres is not read, so what they carry is not known.',
        'Two or three figures before the last letter on the wall.',
        readOn,
      ),
    ];
  return tyreLoad(loadIndex)
    ? []
    : [
        unknown(
          'tyre-index',
          `Load index ${loadIndex} is not in the table.`,
          'Read it again; of two the first is for single wheels.',
          readOn,
        ),
      ];
}

function speedFindings({ towed_km_h }: TrailerRecord, { speed, readOn }: TyresRecord): TrailerFinding[] {
  const allowed = speed === null ? null : tyreSpeed(speed);
  if (allowed === null)
    return [
      unknown(
        'tyre-speed',
        speed === null ? 'The speed letter of the tyres is not read.' : `Speed letter ${speed} is not in the table.`,
        'The letter after the load index.',
        readOn,
      ),
    ];
  if (towed_km_h === null || towed_km_h <= allowed.km_h) return [];
  return [
    {
      id: 'tyre-speed',
      subject: 'tyres',
      gravity: 'danger',
      wrong: `She is towed at up to ${towed_km_h} km/h: tyres with the letter ${speed} may go ${allowed.km_h} km/h.`,
      right: 'Slower, or tyres with a higher letter.',
      because: [],
      from: readOn,
      mend: null,
    },
  ];
}

function pressureFindings({ pressure_kPa, asked_kPa, readOn }: TyresRecord): TrailerFinding[] {
  if (pressure_kPa === null || asked_kPa === null)
    return [
      unknown(
        'tyre-pressure',
        'Whether the tyres are blown up enough is not entered.',
        'Read it cold, and what their maker or the plate asks for at this load.',
        readOn,
      ),
    ];
  if (pressure_kPa >= asked_kPa) return [];
  return [
    {
      id: 'tyre-pressure',
      subject: 'tyres',
      gravity: 'worsens',
      wrong: `The tyres were found at ${pressure_kPa} kPa: ${asked_kPa} kPa is asked for at this load.`,
      right: 'A soft tyre carries less than its index says and runs hot: blow them up cold.',
      because: [],
      from: readOn,
      mend: {
        kind: 'steps',
        title: `Blow the trailer’s tyres up to ${asked_kPa} kPa`,
        steps: [
          {
            title: 'Cold, by the gauge, the spare too; look at the valves and the walls',
            minutes: { low: 10, likely: 15, high: 30 },
            cautions: ['Not in front of an inflating tyre’s face: it bursts sideways.'],
          },
        ],
      },
    },
  ];
}

function unknown(id: string, wrong: string, right: string, from: string | null): TrailerFinding {
  return { id, subject: 'tyres', gravity: 'unknown', wrong, right, because: [], from, mend: null };
}

/** The tyres in a line or two: what they are, what they carry, how fast they may go. */
export function tyresInWords(record: TrailerRecord, today: string): string[] {
  const { tyres } = record;
  if (tyres === null) return [];
  const each = tyres.loadIndex === null ? null : tyreLoad(tyres.loadIndex);
  const speed = tyres.speed === null ? null : tyreSpeed(tyres.speed);
  return [
    `${[tyres.size, `${tyres.count} on the road`].filter((part) => part !== '').join(', ')}.${
      each
        ? ` Load index ${tyres.loadIndex}: ${kgSaid(each.kg)} each, ${kgSaid(each.kg * tyres.count)} together${each.recalled ? ' (recalled, not read again)' : ''}.`
        : ''
    }${speed ? ` ${tyres.speed}: up to ${speed.km_h} km/h${speed.recalled ? ' (recalled)' : ''}.` : ''}`,
    ...tyres.wheels.flatMap((wheel) => {
      const age = wheelAge(wheel, today);
      return age && age.years >= 0
        ? [
            `${wheel.wheel}: ${age.made}, ${age.atLeast ? 'at least ' : ''}${age.years.toFixed(1)} years old${wheel.tread_mm === null ? '' : `, ${wheel.tread_mm} mm of tread`}.`,
          ]
        : [];
    }),
  ];
}
