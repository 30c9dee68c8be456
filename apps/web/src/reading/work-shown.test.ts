import { expect, it } from 'vitest';
import { demoBook } from '../../../../examples/demo-book.ts';
import { jobsByZone, workFromText, workShown } from './work-shown.ts';

const book = demoBook('2027-05-01');
const shown = workShown(book);

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
  expect(workFromText(JSON.stringify(shown))).toEqual(shown);
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

it('what is damaged, or of an earlier version of the program, is left alone', () => {
  expect(workFromText(null)).toBeNull();
  expect(workFromText(JSON.stringify(shown).slice(0, -1))).toBeNull();
  expect(workFromText(JSON.stringify({ ...shown, form: shown.form - 1 }))).toBeNull();
});

it('its form goes up when its shape changes', () => {
  const { form, ...rest } = shown;
  const { boat, jobs, zones, rigs, ...plain } = rest;
  expect({
    form,
    ...(shapeOf({ ...plain, zones }) as object),
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
      "form": 2,
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
