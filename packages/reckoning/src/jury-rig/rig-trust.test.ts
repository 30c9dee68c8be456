import { describe, expect, it } from 'vitest';
import type { Book, JuryRig, RigTrustRecord, UseRecord } from '#boat-book';
import { job, smallBook } from '../testing/small-book.ts';
import { rigHistory, rigLimitsInWords, seenFirst, standingRigs } from './rig-trust.ts';

const rig = (part: Partial<JuryRig> = {}): JuryRig => ({
  title: 'Lashing',
  job: null,
  zone: null,
  reason: '',
  made: '2027-01-01',
  trustedUntil: '2027-06-01',
  wind_max_kn: null,
  sails_max: null,
  notOnRoad: false,
  state: 'standing',
  ...part,
});
const use = (kind: UseRecord['use'], on: string, clock = '18:00'): UseRecord => ({
  use: kind,
  on,
  count: 1,
  entered: `${on}T${clock}:00Z`,
  note: '',
});
const looked = (on: string, part: Partial<RigTrustRecord> = {}): RigTrustRecord => ({
  rig: 'r',
  on,
  trustedUntil: '2027-06-01',
  wind_max_kn: null,
  sails_max: 2,
  notOnRoad: true,
  reason: 'looked over, no chafe',
  entered: `${on}T12:00:00Z`,
  ...part,
});
const bookWith = (parts: Partial<Book>): Book => ({ ...smallBook(), juryRigs: { r: rig() }, ...parts });
const first = (parts: Partial<Book>, today = '2027-05-10') => standingRigs(bookWith(parts), today)[0]!;

describe('the jury rigs that stand', () => {
  const danger = (state: 'open' | 'done'): Book['jobs'] => ({
    d: { ...job('Make it safe'), consequence: 'danger', state },
  });

  it('past its trust, or standing in for a danger, comes first; its last trusted day is still trusted', () => {
    const juryRigs = {
      fine: rig({ trustedUntil: '2027-05-10' }),
      past: rig({ trustedUntil: '2027-05-09' }),
      forDanger: rig({ trustedUntil: '2027-09-01', job: 'd' }),
      out: rig({ state: 'removed', trustedUntil: '2020-01-01' }),
    };
    const trusts = standingRigs(bookWith({ juryRigs, jobs: danger('open') }), '2027-05-10');
    expect(trusts.map(({ id }) => id)).toEqual(['past', 'forDanger', 'fine']);
    expect(trusts.map(seenFirst)).toEqual([true, true, false]);
    expect(trusts.map(({ daysPast }) => daysPast)).toEqual([1, -114, 0]);
  });

  it('a danger that is done no longer puts its rig first, and the rig can come out', () => {
    const trust = first({ juryRigs: { r: rig({ job: 'd' }) }, jobs: danger('done') });
    expect(seenFirst(trust)).toBe(false);
    expect(trust.jobClosed).toBe(true);
  });

  it('says its limits', () => {
    expect(rigLimitsInWords(rig({ wind_max_kn: 12, sails_max: 1, notOnRoad: true }))).toEqual([
      'up to 12 knots',
      'for one sail',
      'not on the road',
    ]);
  });
});

describe('what a jury rig was used for beyond its trust', () => {
  const limited = { r: rig({ sails_max: 2, notOnRoad: true }) };

  it.each<[string, UseRecord[], string[]]>([
    ['one sail of two', [use('sail', '2027-02-01')], []],
    ['two of two', [use('sail', '2027-02-01'), use('sail', '2027-02-02')], ['She was sailed 2 times since']],
    ['a sail before it was made', [use('sail', '2026-12-31'), use('sail', '2027-02-02')], []],
    ['a tow', [use('tow', '2027-02-01')], ['She was towed on Monday 1 February']],
    ['a night at anchor', [use('night', '2027-02-01')], []],
  ])('%s', (_, uses, said) => {
    const { beyond } = first({ juryRigs: limited, uses: Object.fromEntries(uses.entries()) });
    expect(beyond).toEqual(said.map((words) => expect.stringContaining(words)));
  });

  it('counts from the last time it was looked at, of that day only what was entered after', () => {
    const uses = { a: use('sail', '2027-02-01'), b: use('sail', '2027-02-03', '09:00'), c: use('sail', '2027-02-03') };
    const again = { t: looked('2027-01-01'), u: looked('2027-02-03') };
    expect(first({ juryRigs: limited, uses }).beyond).toHaveLength(1);
    expect(first({ juryRigs: limited, uses, rigTrusts: again }).beyond).toEqual([]);
  });

  it('one that is not to be sailed with is past its trust after one sail', () => {
    const juryRigs = { r: rig({ sails_max: 0 }) };
    expect(seenFirst(first({ juryRigs }))).toBe(false);
    const trust = first({ juryRigs, uses: { a: use('sail', '2027-02-01') } });
    expect(trust.beyond).toEqual(['She was sailed since Friday 1 January, and it is not to be sailed with.']);
    expect(seenFirst(trust)).toBe(true);
  });
});

describe('the history of a trust', () => {
  it('stands in the order of its days; what two devices both kept of an older rig stands once', () => {
    const rigTrusts = {
      late: looked('2027-03-01', { order: 1 }),
      first: looked('2027-01-01', { order: 2, reason: 'as it was made' }),
      again: looked('2027-01-01', { order: 5, reason: 'as it was made' }),
      other: looked('2027-02-01', { rig: 'another' }),
    };
    expect(rigHistory(bookWith({ rigTrusts }), 'r').map(({ on }) => on)).toEqual(['2027-01-01', '2027-03-01']);
  });

  it('of a rig from before it was kept is what the rig says, since it was made', () => {
    expect(rigHistory(bookWith({}), 'r')).toMatchObject([{ on: '2027-01-01', trustedUntil: '2027-06-01' }]);
  });
});
