import { describe, expect, it } from 'vitest';
import { type Lexicon, readLine } from '#jobs';
import { readPutIn, trustedAsUsual, understood } from './put-in-draft.ts';

const lexicon: Lexicon = {
  zones: { rudder: { name: 'Rudder', words: ['tiller'] } },
  fittings: {},
  setUps: {
    mast: {
      name: 'mast',
      states: [
        { id: 'up', name: 'up' },
        { id: 'down', name: 'down' },
      ],
    },
  },
  outings: {},
  today: '2027-04-10',
};

describe('a job put in from a line', () => {
  it('goes in with all that the line said', () => {
    const line = 'tiller bolt bent, change it, mast down, 20 min, stops sailing';
    const records = readPutIn(understood(readLine(line, lexicon)), line, lexicon.today);
    expect(records).toMatchObject({
      kind: 'job',
      job: {
        zone: 'rudder',
        consequence: 'stops-sailing',
        said: line,
        steps: [
          { minutes: { low: 20, likely: 20, high: 20 }, hands: 1, setUps: [{ setUp: 'mast', states: ['down'] }] },
        ],
      },
    });
  });

  it('is refused without its consequence, which nobody can guess', () => {
    const records = readPutIn(understood(readLine('tiller bolt bent, 20 min', lexicon)), 'x', lexicon.today);
    expect(records).toEqual({ kind: 'refused', faults: { consequence: 'Choose what happens if it is left.' } });
  });

  it('goes in without a step where no minutes were said', () => {
    const records = readPutIn(understood(readLine('tiller bolt bent, comfort', lexicon)), 'x', lexicon.today);
    expect(records).toMatchObject({ kind: 'job', job: { steps: [] } });
  });

  it('what the keeper changed wins over what was read', () => {
    const draft = { ...understood(readLine('tiller bolt bent, 20 min, comfort', lexicon)), likely: '45', high: '60' };
    expect(readPutIn(draft, 'x', lexicon.today)).toMatchObject({
      kind: 'job',
      job: { steps: [{ minutes: { low: 45, likely: 45, high: 60 } }] },
    });
  });

  it('a temporary fix is trusted as is usual of its kind, and otherwise where that was said', () => {
    const draft = trustedAsUsual(understood(readLine('tiller lashed, temporary', lexicon)), lexicon.today);
    // a lashing is good for 30 days, in place of what stops sailing for 14: the shorter
    expect(readPutIn(draft, 'x', lexicon.today)).toMatchObject({
      kind: 'jury rig',
      rig: { trustedUntil: '2027-04-24', wind_max_kn: 15, trustedBecause: 'as is usual for a lashing' },
    });
    const own = readPutIn({ ...draft, due: '2027-04-20' }, 'x', lexicon.today);
    expect(own).toMatchObject({ rig: { trustedUntil: '2027-04-20' } });
    expect(own).not.toHaveProperty('rig.trustedBecause');
  });

  it('a temporary fix needs the day it is trusted until', () => {
    const draft = understood(readLine('tiller lashed, temporary', lexicon));
    expect(draft.what).toBe('jury rig');
    expect(readPutIn(draft, 'x', lexicon.today)).toMatchObject({
      kind: 'refused',
      faults: { due: expect.stringMatching(/no date/) },
    });
    expect(readPutIn({ ...draft, due: '2027-04-09' }, 'x', lexicon.today)).toMatchObject({ kind: 'refused' });
    expect(readPutIn({ ...draft, due: '2027-05-01' }, 'x', lexicon.today)).toMatchObject({
      kind: 'jury rig',
      rig: { trustedUntil: '2027-05-01', zone: 'rudder', reason: 'x' },
    });
  });
});
