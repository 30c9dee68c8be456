/**
 * What is said among keepers of small batteries, and what the sums of this project say of it. Common practice, no published
 * source: nothing passes or fails by it.
 */
import { type BatteryHistory, estimateBattery, type Flow } from '#battery';
import { ask, type Figure, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { markdownTable } from '../markdown-table.ts';
import { dischargeOf, type MeasuredRun, measuredFiles } from './measured-run.ts';

const hour = 3_600_000;
const noon = Date.UTC(2026, 4, 16, 12);
const temperature_C = 15;
const size_Ah = 17;
const place = { latitude: 50, longitude: 0, zone: 'UTC', day: '2026-05-16' };

interface Claim {
  readonly said: string;
  readonly atRest: string;
  readonly otherwise: string;
  readonly because: string;
}

/** @param folder  of measured runs, to hold one claim against */
export function claimsInMarkdown(folder: string): string[] {
  const runs = measuredFiles(folder).filter(
    (file): file is MeasuredRun => file.kind === 'run' && file.nominal_Ah === size_Ah,
  );
  return markdownTable(
    [{ head: 'said' }, { head: 'at rest' }, { head: 'under load, on charge or over a night' }, { head: 'because' }],
    claims(runs).map(({ said, atRest, otherwise, because }) => [said, atRest, otherwise, because]),
  );
}

function claims(runs: readonly MeasuredRun[]): Claim[] {
  const [may, november] = ['2026-05-16', '2026-11-16'].map((day) => night(day));
  const overcast = figure('solar.day', { ...place, watts: 10, sky: 'overcast' });
  return [
    {
      said: '10 Ah of deep cycle with LED lights lasts a night at anchor',
      atRest: 'from 95 %, 50 % as the floor',
      otherwise: `${may} of 100 in May, ${november} in November: lamp of 2.5 W all night, 4 W in the cabin to 22:30, at 50° N`,
      because:
        'true of short nights: in November the lamp and the cabin take nearly half; a battery that has aged holds less than its label',
    },
    {
      said: 'stop at about 12.05 V',
      atRest: rested(12.05),
      otherwise: `${underLoad(12.05)}. Measured: ${measured(runs, 12.05)}`,
      because: 'a load takes tenths of a volt off what it would show at rest: the same figure means more under load',
    },
    {
      said: 'about 12.9 V soon after charging is 95 %',
      atRest: rested(12.9),
      otherwise: `an hour after the charger: ${afterCharge(12.9)}`,
      because: 'charge sits on the plates for a day and reads high; the surer the longer it stood',
    },
    {
      said: '12.7 V is 90 %',
      atRest: rested(12.7),
      otherwise: underLoad(12.7),
      because: 'tables of AGM differ by a fifth of the battery here; a flooded one that shows it is full',
    },
    {
      said: '12.2 V is 60 to 70 %',
      atRest: rested(12.2),
      otherwise: underLoad(12.2),
      because: 'what is said fits a reading under a small load better than one at rest',
    },
    {
      said: 'an overcast day with a small panel lifts it from 70 to 90 %',
      atRest: `a panel of 10 W, level, brings ${band(overcast)} Ah of an overcast day in May at 50° N`,
      otherwise: `of 10 Ah that is ${points(overcast, 10)} points, of 17 Ah ${points(overcast, 17)}`,
      because: '20 points of 10 Ah are 2 Ah: that takes twice the panel, or a bright overcast',
    },
    {
      said: 'volts seen while the panel charges read high',
      atRest: `13.2 V taken as if rested: ${rested(13.2)}`,
      otherwise: `with 0.5 A going in: ${onCharge(13.2)}`,
      because: 'the charge lifts the volts over what the battery would show, the more the fuller it is',
    },
  ];
}

function figure(id: string, given: Readonly<Record<string, unknown>>): Figure {
  const question = questions().find((each) => each.id === id);
  if (question === undefined) throw new Error(`there is no question ${id}`);
  const asked = ask(question, given);
  if (asked.kind !== 'answered') throw new Error(`${id}: ${asked.faults.map(({ wrong }) => wrong).join('; ')}`);
  const [first] = asked.answer.results;
  if (first === undefined) throw new Error(`${id} says nothing`);
  return figureOf(asked.answer, first.symbol)!;
}

const shown = (value: number | string | undefined, digits: number) => Number(value).toFixed(digits);
const band = ({ value, low, high }: Figure) => `${shown(value, 1)} (${shown(low, 1)} to ${shown(high, 1)})`;
const points = ({ low, high }: Figure, holds_Ah: number) =>
  `${shown((100 * Number(low)) / holds_Ah, 0)} to ${shown((100 * Number(high)) / holds_Ah, 0)}`;

function rested(volts: number): string {
  const percent = (chemistry: string) =>
    figure('battery.rest-charge', { chemistry, volts, temperature: temperature_C });
  return ['agm', 'flooded']
    .map((chemistry) => {
      const { value, low, high } = percent(chemistry);
      return `${chemistry === 'agm' ? 'AGM' : chemistry} ${shown(value, 0)} % (${shown(low, 0)} to ${shown(high, 0)})`;
    })
    .join(', ');
}

function night(day: string): string {
  const lasts = figure('power.night', {
    ...place,
    day,
    chemistry: 'agm',
    holds: 10,
    charge: 95,
    'anchor-light': 2.5,
    evening: 4,
  });
  return shown(lasts.value, 0);
}

/** What is believed of a 17 Ah AGM of unknown age after one reading, with what flowed before it. */
function believed(volts: number, hours: number, flows: readonly Flow[], current_A: number | null): string {
  const to = noon + hours * hour;
  const history: BatteryHistory = {
    battery: { chemistry: 'agm', nominal_Ah: size_Ah, nominal_V: 12, age_years: null },
    from: noon,
    to,
    flows,
    readings: [{ at: to, volts, meter: 'a meter', current_A }],
    temperatures: [{ at: noon, air_C: temperature_C }],
  };
  const { low, likely, high } = estimateBattery(history, { seed: 1 }).soc_pct;
  return `AGM of ${size_Ah} Ah ${likely.toFixed(0)} % (${low.toFixed(0)} to ${high.toFixed(0)})`;
}

const flow = (from_h: number, to_h: number, amps: number): Flow => ({
  from: noon + from_h * hour,
  to: noon + to_h * hour,
  low_A: amps - 0.1 * Math.abs(amps),
  likely_A: amps,
  high_A: amps + 0.1 * Math.abs(amps),
  source: 'it',
});

const underLoad = (volts: number) => `with 2 A on for an hour: ${believed(volts, 1, [flow(0, 1, 2)], 2)}`;
const afterCharge = (volts: number) => believed(volts, 7, [flow(0, 6, -1)], 0);
const onCharge = (volts: number) => believed(volts, 2, [flow(0, 2, -0.5)], -0.5);

/** Share of what a measured run gave that was still to come when it first showed so many volts under load. */
function measured(runs: readonly MeasuredRun[], volts: number): string {
  const shares = runs.flatMap((run): string[] => {
    const discharge = dischargeOf(run);
    if ('none' in discharge) return [];
    const { first, last, out_Ah, amps } = discharge;
    // the first minutes dip
    let row = first;
    while (row < last && (run.hours[row]! < run.hours[first]! + 0.2 || run.volts[row]! > volts)) row++;
    const whole = out_Ah[last - first]!;
    return [`${((100 * (whole - out_Ah[row - first]!)) / whole).toFixed(0)} % at ${amps.toFixed(0)} A`];
  });
  return `${shares.join(', ')} still to come of what it gave`;
}
