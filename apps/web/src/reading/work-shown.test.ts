import { expect, it } from 'vitest';
import { localAt } from '#units';
import { demoBook } from '../../../../examples/demo-book.ts';
import { dayAtPlace, jobsByZone, keptWork, workFromText, workShown } from './work-shown.ts';

const book = demoBook('2027-05-01');
const shown = workShown(book);
const noon = Date.UTC(2027, 4, 1, 12);
const text = keptWork(book, noon);

/** Names and kinds of all that is in a value, each list by its first that is not empty. */
function shapeOf(value: unknown): unknown {
  if (value === null) return 'null';
  if (Array.isArray(value)) return value.length === 0 ? [] : [shapeOf(value[0])];
  if (typeof value !== 'object') return typeof value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, shapeOf(one)]));
}

it('what is kept is what was shown', () => {
  expect(shown.jobs.length).toBeGreaterThan(10);
  expect(Object.keys(shown.rigs.juryRigs).length).toBeGreaterThan(0);
  expect(workFromText(text)).toMatchObject(shown);
});

it('it says of each open job what the book says', () => {
  expect(shown.jobs).toHaveLength(Object.values(book.jobs).filter(({ state }) => state === 'open').length);
  for (const { id, title, minutes, steps, stepsDone } of shown.jobs) {
    const its = Object.values(book.steps).filter(({ job }) => job === id);
    expect(title).toBe(book.jobs[id]?.title);
    expect(steps).toBe(its.length);
    const open = its.filter(({ progress }) => progress.kind !== 'done');
    expect(stepsDone).toBe(its.length - open.length);
    expect(minutes).toBe(open.reduce((sum, step) => sum + step.minutes.likely, 0));
  }
  expect(
    jobsByZone(shown)
      .flatMap(({ jobs }) => jobs)
      .map(({ id }) => id)
      .sort(),
  ).toEqual(shown.jobs.map(({ id }) => id).sort());
});

it.each(['Europe/London', 'Pacific/Auckland', 'America/Sao_Paulo'])(
  'in %s the day it says is the day the clocks there show, also over a change of the clocks, long after and before',
  (timeZone) => {
    // London puts its clocks back on 2027-10-31, Auckland forward on 2027-09-26 (rules of the IANA time zone database)
    for (const kept of [noon, Date.UTC(2027, 9, 25), Date.UTC(2027, 8, 20)]) {
      const place = { ...Object.values(book.places)[0]!, timeZone };
      const read = workFromText(keptWork({ ...book, places: { home: place } }, kept))!;
      for (let hour = -30; hour < 24 * 20; hour++) {
        const now = kept + hour * 3_600_000;
        expect(dayAtPlace(read, now)).toBe(localAt(now, timeZone).day);
      }
      expect(read.days[1]!.begins).toBeGreaterThan(kept);
    }
  },
);

it('what is damaged, or of an earlier version of the program, is left alone', () => {
  expect(workFromText(null)).toBeNull();
  expect(workFromText(text.slice(0, -1))).toBeNull();
  expect(workFromText(JSON.stringify({ ...JSON.parse(text), form: 0 }))).toBeNull();
});

it('its form goes up when its shape changes', () => {
  const { form, boat, jobs, zones, days, rigs, ...plain } = workFromText(text)!;
  expect({
    form,
    ...(shapeOf({ ...plain, zones, days }) as object),
    boat: Object.keys(boat),
    job: shapeOf(jobs[0]),
    rig: shapeOf(Object.values(rigs.juryRigs)[0]),
    rigJob: shapeOf(Object.values(rigs.jobs)[0]),
    rigTrust: shapeOf(Object.values(rigs.rigTrusts)[0]),
    rigUse: shapeOf(Object.values(rigs.uses)[0]),
  }).toMatchInlineSnapshot(`
    {
      "boat": [
        "name",
        "demo",
      ],
      "closed": "number",
      "days": [
        {
          "begins": "number",
          "day": "string",
        },
      ],
      "form": 3,
      "job": {
        "consequence": "string",
        "due": "null",
        "held": "null",
        "id": "string",
        "minutes": "number",
        "outing": "string",
        "steps": "number",
        "stepsDone": "number",
        "title": "string",
        "waits": {
          "jobs": [],
          "secondHand": "boolean",
          "setUps": [],
          "stores": [],
        },
        "zone": "string",
      },
      "rig": {
        "job": "string",
        "made": "string",
        "notOnRoad": "boolean",
        "reason": "string",
        "sails_max": "number",
        "state": "string",
        "title": "string",
        "trustedUntil": "string",
        "wind_max_kn": "number",
        "zone": "string",
      },
      "rigJob": {
        "consequence": "string",
        "state": "string",
        "title": "string",
      },
      "rigTrust": {
        "entered": "string",
        "notOnRoad": "boolean",
        "on": "string",
        "order": "number",
        "reason": "string",
        "rig": "string",
        "sails_max": "number",
        "trustedUntil": "string",
        "wind_max_kn": "number",
      },
      "rigUse": {
        "count": "number",
        "entered": "string",
        "note": "string",
        "on": "string",
        "order": "number",
        "use": "string",
      },
      "timeZone": "string",
      "zones": [
        {
          "id": "string",
          "name": "string",
        },
      ],
    }
  `);
});
