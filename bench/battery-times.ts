/** What the battery's page waits for: the estimate from few readings and from very many, and the odds of three nights. */
import { type BatteryHistory, estimateBattery } from '#battery';
import { type CircuitDraw, endurance } from '#power';

export const batteryTimeHead = [
  '| what | first | median | worst | budget | kept |',
  '| --- | --- | --- | --- | --- | --- |',
];

const hour = 3_600_000;
const noon = Date.parse('2026-06-20T10:00:00Z');

export function batteryTimes(): string[] {
  return [
    row('three nights, 1,000 runs of the weather by the minute', 100, nights),
    row('estimate from 20 readings over two days', 50, (seed) => estimateBattery(history(20, 48), { seed })),
    row('estimate from 200,000 readings over a year', 1000, (seed) =>
      estimateBattery(history(200_000, 8760), { seed }),
    ),
  ];
}

/** An invented battery of 17 Ah with a lamp on: its volts fall evenly from full and are brought up again each second day. */
function history(count: number, hours: number): BatteryHistory {
  const to = noon + hours * hour;
  const days = Math.ceil(hours / 48);
  return {
    battery: { chemistry: 'agm', nominal_Ah: 17, nominal_V: 12, age_years: 2 },
    from: noon,
    to,
    flows: Array.from({ length: days }, (_, n) => [
      {
        from: noon + n * 48 * hour,
        to: Math.min(to, noon + (n * 48 + 40) * hour),
        low_A: 0.16,
        likely_A: 0.2,
        high_A: 0.24,
        source: 'lamp',
      },
      ...(n === days - 1
        ? []
        : [
            {
              from: noon + (n * 48 + 40) * hour,
              to: noon + (n + 1) * 48 * hour,
              low_A: -1.4,
              likely_A: -1.2,
              high_A: -0.9,
              source: 'charger',
            },
          ]),
    ]).flat(),
    readings: Array.from({ length: count }, (_, n) => {
      const at = noon + ((n + 1) / (count + 1)) * hours * hour;
      const into = ((at - noon) / hour) % 48;
      return { at, volts: into < 40 ? 12.75 - 0.01 * into : 13.4, meter: 'a meter', current_A: null };
    }),
    temperatures: [{ at: noon, air_C: 15 }],
  };
}

const lamp: CircuitDraw = {
  name: 'lamp',
  watts: 2.5,
  duty_pct: 100,
  use: { kind: 'sun', from: 'sunset', to: 'sunrise' },
};

function nights(seed: number): void {
  const [draws, hours] = [1000, 24 * 5];
  endurance({
    chemistry: 'agm',
    nominal_V: 12,
    states: { charge_pct: new Float64Array(240).fill(90), capacity_Ah: new Float64Array(240).fill(17) },
    floor_pct: 50,
    circuits: [lamp, { name: 'regulator', watts: 0.1, duty_pct: 100, use: { kind: 'always' } }],
    aboard: null,
    place: { latitude_deg: 54.4, longitude_deg: 10.2, zone: 'Europe/Berlin' },
    from: noon,
    nights: 3,
    sun: {
      draws,
      hours,
      from: Date.parse('2026-06-20T00:00:00Z'),
      amps: Float64Array.from({ length: draws * hours }, (_, i) => (i % 24 >= 6 && i % 24 < 18 ? 0.4 : 0)),
    },
    chargers: [],
    runs: 1000,
    seed,
  });
}

/** By processor time. The first call is told apart: nothing of it is compiled yet. */
function row(what: string, budget_ms: number, call: (seed: number) => unknown): string {
  const spent = (seed: number) => {
    const from = process.cpuUsage();
    call(seed);
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1000;
  };
  const first = spent(1);
  for (let n = 0; n < 8; n++) call(n);
  const took = Array.from({ length: 21 }, (_, n) => spent(n + 10)).sort((a, b) => a - b);
  const shown = (ms: number) => `${ms.toFixed(0)} ms`;
  const median = took[10]!;
  return `| ${what} | ${shown(first)} | ${shown(median)} | ${shown(took.at(-1)!)} | ${budget_ms} ms | ${median <= budget_ms ? 'yes' : 'NO'} |`;
}
