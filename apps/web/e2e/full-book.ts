/** An invented book with so many of everything that its prints are long: jobs on one day, things to get, dues, circuits. */
import type { Book, DueRecord, JobDay } from '#boat-book';
import { addDays } from '#units';
import { demoBook } from '../../../examples/demo-book.ts';
import { bookOf, hoursOf, jobOf, stepOf } from './one-job-book.ts';

/**
 * @param today  a day
 * @param lines  jobs of one step each, all on one day; each takes one thing that is to be got
 */
export function fullBook(today: string, lines: number): Book {
  const demo = demoBook(today);
  const place = Object.keys(demo.places)[0]!;
  const date = addDays(today, 4);
  const each = Array.from({ length: lines }, (_, n) => n + 1);
  const day: JobDay = {
    date,
    from: '06:00',
    to: '22:00',
    place,
    setOut_min: 0,
    clearUp_min: 0,
    breaks: [],
    hands: [],
    endsIn: [],
  };
  const due: DueRecord = Object.values(demo.dues)[0]!;
  const lighting = Object.values(demo.circuits)[0]!;
  return {
    ...bookOf(today, 'Sandpiper', {
      jobs: Object.fromEntries(each.map((n) => [`job-${n}`, jobOf(today, `Rebed fitting number ${n}`)])),
      steps: Object.fromEntries(
        each.map((n) => [
          `step-${n}`,
          stepOf(`job-${n}`, 1, `Bed fitting number ${n} on the foredeck`, 4, { stores: [`thing-${n}`] }),
        ]),
      ),
      jobDays: { day },
      weather: { w: hoursOf(place, date, 0, 24) },
      stores: Object.fromEntries(
        each.map((n) => [
          `thing-${n}`,
          {
            name: `Machine screw M6 × ${20 + n} A4`,
            keptAt: '',
            onHand: false,
            expected: addDays(today, 2),
            lead_days: 1,
            note: '',
            unit: '' as const,
            price: 2,
            from: n % 2 === 0 ? 'the chandler' : null,
          },
        ]),
      ),
    }),
    dues: Object.fromEntries(
      each.map((n) => [`due-${n}`, { ...due, title: `Look at fitting number ${n}`, zone: null, fitting: null }]),
    ),
    circuits: {
      ...demo.circuits,
      ...Object.fromEntries(
        each
          .slice(0, Math.max(0, Math.min(40, lines) - Object.keys(demo.circuits).length))
          .map((n) => [`more-${n}`, { ...lighting, name: `Lamp number ${n}` }]),
      ),
    },
  };
}
