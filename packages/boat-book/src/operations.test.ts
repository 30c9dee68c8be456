import { describe, expect, test } from 'vitest';
import type { OperationFields, OperationName, OperationOutcome } from './operation-fields.ts';
import { operations } from './operations.ts';
import { begun, done, jobDay, place, step, zone } from './testing/devices.ts';

const plate = { title: 'Rebed the plate', consequence: 'worsens' } as const;
const mast = {
  name: 'Mast',
  states: [
    { id: 'up', name: 'Mast up', shelters: false },
    { id: 'down', name: 'Mast down', shelters: false },
  ],
  now: 'up',
  changes: [],
};

/** A book with a little of everything, and one operation asked of it. */
function asked<N extends OperationName>(name: N, fields: unknown): OperationOutcome {
  const book = begun();
  done(book.run('addPlace', { ...place, id: 'drive' }));
  done(book.run('addZone', { ...zone, id: 'foredeck' }));
  done(book.run('addSetUp', { ...mast, id: 'mast' }));
  done(book.run('addTool', { name: 'Clamp', count: 2, keptAt: 'Shed', id: 'clamp' }));
  done(
    book.run('addJob', {
      ...plate,
      id: 'j1',
      steps: [
        { ...step, id: 's1' },
        { ...step, title: 'Clean', id: 's2' },
      ],
    }),
  );
  done(
    book.run('addJob', {
      ...plate,
      title: 'Paint',
      id: 'j2',
      afterJobs: ['j1'],
      steps: [{ ...step, id: 's3', setUps: [{ setUp: 'mast', states: ['down'] }] }],
    }),
  );
  done(
    book.run('addJuryRig', {
      title: 'Lashing',
      job: 'j1',
      zone: null,
      reason: 'It weeps',
      made: '2026-05-01',
      trustedUntil: '2026-05-20',
      wind_max_kn: 14,
      sails_max: null,
      notOnRoad: true,
      id: 'r1',
    }),
  );
  const before = book.view();
  const outcome = book.run(name, fields as OperationFields<N>);
  // a refusal changes nothing, and leaves nothing to undo but what was there
  if (outcome.kind === 'refused') {
    expect(book.view()).toBe(before);
    expect(book.undoTitle()).toBe('Put in a jury rig: Lashing');
  }
  return outcome;
}

/** Each row: the operation, its fields, where it is refused, and words that must stand in what is wrong or right. */
const refusals: readonly [OperationName, unknown, string, RegExp][] = [
  ['addJob', { ...plate, title: '' }, 'title', /an empty text.*some words/],
  ['addJob', { ...plate, title: '   ' }, 'title', /some words/],
  ['addJob', { ...plate, title: 'x'.repeat(301) }, 'title', /301 characters.*at most 300/],
  ['addJob', { ...plate, consequence: 'bad' }, 'consequence', /‘bad’.*one of ‘danger’/],
  ['addJob', { title: 'No consequence' }, 'consequence', /missing.*one of/],
  ['addJob', { ...plate, zone: 'nowhere' }, 'zone', /no zone ‘nowhere’/],
  ['addJob', { ...plate, due: '2026-02-30' }, 'due', /a day there is/],
  ['addJob', { ...plate, opened: '26-5-1' }, 'opened', /YYYY-MM-DD/],
  ['addJob', { ...plate, id: 'j1' }, 'id', /a job ‘j1’ already/],
  ['addJob', { ...plate, id: '__proto__x' }, 'id', /an id of at most 100/],
  ['addJob', { ...plate, id: 'constructor' }, 'id', /an id of at most 100/],
  ['addJob', { ...plate, id: '../../etc' }, 'id', /an id of at most 100/],
  ['addJob', { ...plate, colour: 'red' }, '', /unknown: ‘colour’/],
  ['addJob', { ...plate, afterJobs: ['j9'] }, 'afterJobs › 1.', /no job ‘j9’/],
  ['addJob', { ...plate, steps: [{ title: 'x', hands: 1 }] }, 'steps › 1. › minutes', /missing/],
  [
    'addJob',
    { ...plate, steps: [{ ...step, minutes: { low: 0, likely: 5, high: 9 } }] },
    'steps › 1. › minutes › low',
    /0.*at least 1/,
  ],
  [
    'addJob',
    { ...plate, steps: [{ ...step, minutes: { low: 1, likely: 5, high: 1441 } }] },
    'steps › 1. › minutes › high',
    /1441.*at most 1440/,
  ],
  [
    'addJob',
    { ...plate, steps: [{ ...step, minutes: { low: 9, likely: 5, high: 20 } }] },
    'steps › 1. › minutes',
    /low at most likely/,
  ],
  [
    'addJob',
    { ...plate, steps: [{ ...step, minutes: { low: 1.5, likely: 5, high: 20 } }] },
    'steps › 1. › minutes › low',
    /1\.5 is not whole/,
  ],
  ['addJob', { ...plate, steps: [{ ...step, hands: Number.NaN }] }, 'steps › 1. › hands', /NaN/],
  ['addJob', { ...plate, steps: [{ ...step, hands: 1e9 }] }, 'steps › 1. › hands', /at most 20/],
  ['addStep', { ...step, job: 'j9' }, 'job', /no job ‘j9’/],
  ['addStep', { ...step, job: 'j1', tools: [{ tool: 'saw', count: 1 }] }, 'tools › 1. › tool', /no tool ‘saw’/],
  [
    'addStep',
    { ...step, job: 'j1', setUps: [{ setUp: 'mast', states: ['sideways'] }] },
    'setUps › 1.',
    /‘Mast’ has no state ‘sideways’/,
  ],
  ['addStep', { ...step, job: 'j1', setUps: [{ setUp: 'mast', states: [] }] }, 'setUps › 1. › states', /at least 1/],
  ['addStep', { ...step, job: 'j1', needs: { wind_max_kn: -3 } }, 'needs › wind_max_kn', /-3.*at least 0/],
  [
    'changeStep',
    { id: 's1', follows: [{ step: 's2', wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } }] },
    'follows',
    /wait for each other.*‘Take off the plate’|‘Clean’/,
  ],
  [
    'changeStep',
    {
      id: 's1',
      follows: [{ step: 's2', wait: 'cure', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } }],
    },
    'follows',
    /wait for each other/,
  ],
  [
    'changeStep',
    {
      id: 's2',
      follows: [{ step: 's1', wait: 'cure', least_min: 0, greatest_min: null, past: { kind: 'forbidden' } }],
    },
    'follows › 1.',
    /has no wait ‘cure’/,
  ],
  ['changeStep', { id: 's9', title: 'x' }, 'id', /no step ‘s9’/],
  ['changeJob', { id: 'j1', afterJobs: ['j2'] }, 'afterJobs', /wait for each other/],
  ['changeJob', { id: 'j1', state: 'done' }, '', /unknown: ‘state’/],
  ['moveStep', { id: 's1', to: 7 }, 'to', /7 is past the last place.*0 to 1/],
  ['stepTookLonger', { id: 's1', expected: '2026-05-02T12:00:00Z' }, 'id', /is not started.*under way/],
  [
    'startStep',
    { id: 's1', started: '2026-05-02T12:00:00Z', expected: '2026-05-02T11:00:00Z' },
    'expected',
    /before the start/,
  ],
  [
    'tickStep',
    { id: 's1', started: '2026-05-02T12:00:00Z', finished: '2026-05-02T11:00:00Z' },
    'finished',
    /before the start/,
  ],
  ['tickStep', { id: 's1', finished: '2026-05-02 11:00' }, 'finished', /an instant in UTC/],
  ['tickStep', { id: 's1', spent_min: -1 }, 'spent_min', /at least 0/],
  ['untickStep', { id: 's1' }, 'id', /is open/],
  ['reopenJob', { id: 'j1' }, 'id', /is open/],
  ['finishJob', { id: 'j1', closed: '2020-01-01' }, 'closed', /before it was put in/],
  ['holdJob', { job: 'j1', day: 'd9' }, 'day', /no job day ‘d9’/],
  ['removeZone', { id: 'z9' }, 'id', /no zone ‘z9’/],
  ['removeSetUp', { id: 'mast' }, 'id', /still named by the step ‘Take off the plate’/],
  ['changeSetUp', { id: 'mast', states: [mast.states[0]] }, 'states', /needs the state ‘down’/],
  ['changeSetUp', { id: 'mast', now: 'sideways' }, 'now', /not one of its states/],
  ['setUpStands', { setUp: 'mast', state: 'sideways' }, 'state', /not one of its states.*up, down/],
  [
    'addSetUp',
    { ...mast, changes: [{ from: 'up', to: 'up', minutes: 5, hands: 1, needs: {}, setUps: [], cautions: [] }] },
    'changes › 1.',
    /changes nothing/,
  ],
  ['addPlace', { ...place, latitude_deg: 91 }, 'latitude_deg', /91.*at most 90/],
  ['addPlace', { ...place, longitude_deg: -181 }, 'longitude_deg', /at least -180/],
  ['addPlace', { ...place, timeZone: 'Mars/Olympus' }, 'timeZone', /a time zone there is/],
  ['setBoat', { length_m: 560 }, 'length_m', /at most 30/],
  ['setBoat', { draftBoardDown_m: 0.1 }, 'draftBoardDown_m', /less than with the board up/],
  ['setWeights', { danger: 0 }, 'danger', /more than 0/],
  ['addTool', { name: 'Saw', count: -1, keptAt: '' }, 'count', /at least 0/],
  ['addJobDay', { ...jobDay, place: 'moon' }, 'place', /no place ‘moon’/],
  ['addJobDay', { ...jobDay, to: '08:00' }, 'to', /not after 09:00/],
  ['addJobDay', { ...jobDay, from: '25:00' }, 'from', /00:00 to 23:59/],
  ['addJobDay', { ...jobDay, setOut_min: 300, clearUp_min: 200 }, 'setOut_min', /500 minutes of 480/],
  ['addJobDay', { ...jobDay, breaks: [{ from: '08:00', minutes: 30 }] }, 'breaks › 1.', /09:00 or later/],
  ['addJobDay', { ...jobDay, breaks: [{ from: '16:45', minutes: 30 }] }, 'breaks › 1.', /ends after the day/],
  [
    'addJobDay',
    { ...jobDay, hands: [{ id: 'keeper', name: 'Ilka', from: '09:00', to: '10:00' }] },
    'hands › 1.',
    /stands twice/,
  ],
  [
    'addJobDay',
    { ...jobDay, hands: [{ id: 'h1', name: 'Bo', from: '12:00', to: '10:00' }] },
    'hands › 1.',
    /not after 12:00/,
  ],
  [
    'addJuryRig',
    {
      title: 'Strop',
      job: null,
      zone: null,
      reason: '',
      made: '2026-05-01',
      trustedUntil: '2026-04-01',
      wind_max_kn: null,
      sails_max: null,
      notOnRoad: false,
    },
    'trustedUntil',
    /before it was made/,
  ],
  ['trustJuryRig', { id: 'r1', trustedUntil: '2026-06-01', reason: '' }, 'reason', /some words/],
  ['enterWeather', { entries: [] }, 'entries', /at least 1/],
  [
    'enterWeather',
    {
      entries: [
        {
          place: 'drive',
          date: '2026-05-09',
          fromHour: 9,
          toHour: 9,
          rain: false,
          rainOdds_pct: null,
          wind_kn: 5,
          air_C: 12,
          surface_C: null,
          humidity_pct: 80,
          basis: 'typed',
        },
      ],
    },
    'entries › 1. › toHour',
    /not after 9/,
  ],
  [
    'enterWeather',
    {
      entries: [
        {
          place: 'drive',
          date: '2026-05-09',
          fromHour: 9,
          toHour: 12,
          rain: false,
          rainOdds_pct: null,
          wind_kn: 5,
          air_C: 12,
          surface_C: null,
          humidity_pct: 0,
          basis: 'typed',
        },
      ],
    },
    'entries › 1. › humidity_pct',
    /at least 1/,
  ],
  [
    'addOuting',
    { title: 'Round the bar', date: '2026-06-01', from: '10:00', nights: -1, place: '', wind_kn: null },
    'nights',
    /at least 0/,
  ],
  ['writeLog', { kind: 'note', text: '' }, 'text', /some words/],
  ['chooseAnswer', { collection: 'jobs', id: 'j1', field: 'due', answer: null }, 'field', /nothing to choose/],
];

test.each(refusals)('%s refuses %j', (name, fields, where, words) => {
  const outcome = asked(name, fields);
  expect(outcome.kind).toBe('refused');
  if (outcome.kind !== 'refused') return;
  expect(outcome.where).toBe(where);
  expect(`${outcome.wrong} ${outcome.right}`).toMatch(words);
});

test('an operation that there is not is refused', () => {
  expect(asked('sinkBoat' as OperationName, {})).toMatchObject({ kind: 'refused', where: 'operation' });
  expect(asked('toString' as OperationName, {})).toMatchObject({ kind: 'refused', where: 'operation' });
});

describe('the list', () => {
  test('says of each what it is called, what it does, and whether it undoes', () => {
    for (const [name, operation] of Object.entries(operations)) {
      expect(operation.title, name).toMatch(/^[A-Z]/);
      expect(operation.does, name).toMatch(/^[A-Z].*\.$/);
    }
    // what is written for good stays, and a plan follows from the book; everything else can be taken back
    expect(
      Object.entries(operations)
        .filter(([, operation]) => !operation.undoes)
        .map(([name]) => name),
    ).toEqual(['keepPlan', 'writeLog', 'keepForecast', 'keepNightAhead']);
  });
});

test('a script in a name is only text', () => {
  const outcome = asked('addJob', { ...plate, title: '<script>alert(1)</script>' });
  expect(outcome.kind).toBe('done');
});
