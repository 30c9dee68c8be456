/** A walk-round: a page of plain talk, and beside the words what would go in. Only what the keeper accepts does. */
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Book } from '#boat-book';
import type { Lexicon, Proposal } from '#jobs';
import { localAt } from '#units';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { countInWords, listInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { TextField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import { consequences } from '../../reading/open-work.ts';
import { todayAt, zoneOf } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { type Fate, useKeptWalk } from './kept-walk.ts';
import { longest, useWalkRead } from './use-walk-read.ts';
import { type ForAll, type WalkDraft, type WalkFault, walkDraft, walkKeys, walkRecords } from './walk-draft.ts';
import { WalkProposal } from './walk-proposal.tsx';
import './put-in.css';
import './walk-round.css';

export default function WalkRoundPage() {
  const book = useOpenBook();
  return (
    <div className="walk">
      <p className="job-back no-print">
        <a className="button words" href={address('work')}>
          ‹ Work
        </a>
      </p>
      <h1>Walk-round</h1>
      <BelowHeading>
        <WalkBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function WalkBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const { walk, keep, clear } = useKeptWalk(book.id);
  const [changes, setChanges] = useState<Readonly<Record<string, WalkDraft>>>({});
  const [faults, setFaults] = useState<Readonly<Record<string, Faults<WalkFault>>>>({});
  const [all, setAll] = useState<ForAll>({ consequence: '' });
  const [busy, setBusy] = useState(false);
  const { run, refusal } = useRun();
  const list = useRef<HTMLDivElement>(null);
  const field = useRef<HTMLTextAreaElement>(null);

  const { zones, fittings, setUps, outings } = book;
  const lexicon: Lexicon = useMemo(
    () => ({ zones, fittings, setUps, outings, today }),
    [zones, fittings, setUps, outings, today],
  );
  const { page, proposals } = useWalkRead(walk.page, lexicon);
  const keys = useMemo(() => walkKeys(proposals), [proposals]);
  const batteries = Object.keys(book.batteries);
  const [clock] = useState(() => localAt(Date.now(), zoneOf(book)).clock);
  const draftOf = (at: number): WalkDraft =>
    changes[keys[at]!] ??
    walkDraft(proposals[at]!, {
      battery: batteries.length === 1 ? batteries[0]! : '',
      clock,
      all,
      standsFor: standsFor(at),
      today,
    });
  /** what happens if the job is left that a jury rig stands in for */
  const standsFor = (rig: number) => {
    const job = proposals.findIndex((each) => each.kind === 'job' && each.rig === rig);
    return job === -1 ? '' : draftOf(job).work.consequence;
  };
  const open = keys.flatMap((key, at) => (walk.fates[key] ? [] : [at]));
  const unsaid = open.filter((at) => draftOf(at).what === 'job' && draftOf(at).work.consequence === '').length;

  useEffect(() => {
    if (Object.keys(faults).length > 0) list.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [faults]);

  /** Puts these in, each by itself: one that is refused holds back no other. */
  const putIn = async (places: readonly number[]) => {
    setBusy(true);
    const refused: Record<string, Faults<WalkFault>> = {};
    const fates: Record<string, Fate> = {};
    for (const at of places) {
      const proposal = proposals[at]!;
      const key = keys[at]!;
      const records = walkRecords(draftOf(at), {
        said: proposal.said,
        today,
        zone: zoneOf(book),
        stowages: book.stowages,
        batteries: book.batteries,
      });
      if (records.kind === 'refused') {
        refused[key] = records.faults;
        continue;
      }
      const outcome =
        records.kind === 'job'
          ? await run('addJob', records.fields)
          : records.kind === 'jury rig'
            ? await run('addJuryRig', records.fields)
            : records.kind === 'reading'
              ? await run('enterReadings', records.fields)
              : await run('addStore', records.fields);
      if (outcome.kind === 'refused') break;
      fates[key] = { kind: 'in', id: outcome.id };
      keep((before) => ({ ...before, fates: { ...before.fates, [key]: { kind: 'in', id: outcome.id } } }));
    }
    await standIn({ ...walk.fates, ...fates });
    setFaults(refused);
    setBusy(false);
  };

  /** A jury rig that came in stands in for the job that came in with it. */
  const standIn = async (fates: Readonly<Record<string, Fate>>) => {
    for (const [at, proposal] of proposals.entries()) {
      if (proposal.kind !== 'job' || proposal.rig === null) continue;
      const job = fates[keys[at]!];
      const rig = fates[keys[proposal.rig]!];
      if (job?.kind !== 'in' || rig?.kind !== 'in' || job.id === null || rig.id === null) continue;
      const known = book.juryRigs[rig.id];
      if (known ? known.job === null : !(rig.id in book.juryRigs))
        await run('changeJuryRig', { id: rig.id, job: job.id });
    }
  };

  const leave = (key: string) => keep((before) => ({ ...before, fates: { ...before.fates, [key]: { kind: 'left' } } }));
  const takeUp = (key: string) =>
    keep((before) => ({
      ...before,
      fates: Object.fromEntries(Object.entries(before.fates).filter(([each]) => each !== key)),
    }));

  return (
    <>
      <TextField
        label="What you saw, as you would say it"
        note="Typed, dictated or pasted. What is wrong, what is to be done, what holds for now, the volts, what to get. Nothing goes in that you do not accept."
        rows={proposals.length > 0 ? 6 : 9}
        value={walk.page}
        onChange={(text) => keep((before) => ({ ...before, page: text }))}
        take={field}
        spoken
        refused={
          walk.page.length > longest
            ? `Only the first ${longest.toLocaleString('en-GB')} characters are read. Go through the rest as another page.`
            : null
        }
      />
      {page.trim() !== '' && (
        <>
          <h2>
            {proposals.length === 0 ? 'Nothing to put in was found' : foundInWords(proposals)}
            {open.length < proposals.length && (
              <span className="soft small">
                {' '}
                {open.length === 0 ? 'all gone through' : `${open.length} still open`}
              </span>
            )}
          </h2>
          {proposals.length === 0 && (
            <p>
              Say of each thing what is wrong with it or what is to be done: ‘the hatch seal leaks, new seal, an hour’.
            </p>
          )}
          {(unsaid > 0 || all.consequence !== '') && (
            <div className="walk-all">
              <ChoiceField
                label="Jobs that do not say: if left"
                note={unsaid > 0 ? `${countInWords(unsaid, 'job')} without it.` : undefined}
                value={all.consequence}
                onChange={(consequence) => setAll({ consequence })}
                none="each by itself"
                options={consequences.map((value) => ({ value, name: consequenceName[value] }))}
              />
            </div>
          )}
          <div ref={list}>
            <ol className="walk-list">
              {proposals.map((proposal, at) => (
                <WalkProposal
                  key={keys[at]}
                  book={book}
                  today={today}
                  proposal={proposal}
                  draft={draftOf(at)}
                  fate={walk.fates[keys[at]!] ?? null}
                  faults={faults[keys[at]!] ?? {}}
                  busy={busy}
                  onChange={(draft) => setChanges({ ...changes, [keys[at]!]: draft })}
                  onPutIn={() => void putIn([at])}
                  onLeave={() => leave(keys[at]!)}
                  onTakeUp={() => takeUp(keys[at]!)}
                />
              ))}
            </ol>
          </div>
        </>
      )}
      <div className="put-in-foot at-foot">
        <div role="alert">
          <RefusalLine refusal={refusal} />
          {Object.keys(faults).length > 0 && (
            <Refused text={`${Object.keys(faults).length} not in yet: see the marked parts.`} />
          )}
        </div>
        <button type="button" className="main" disabled={busy || open.length === 0} onClick={() => void putIn(open)}>
          {open.length < 2 ? 'Put all in' : `Put all ${open.length} in`}
        </button>
        <button
          type="button"
          disabled={walk.page === ''}
          onClick={() => {
            clear();
            setChanges({});
            setFaults({});
            field.current?.focus();
          }}
        >
          Clear the page
        </button>
      </div>
    </>
  );
}

/** `4 jobs, 1 jury rig and 1 reading`. */
function foundInWords(proposals: readonly Proposal[]): string {
  const count = (kind: Proposal['kind']) => proposals.filter((each) => each.kind === kind).length;
  const words = (
    [
      ['job', 'job', 'jobs'],
      ['jury rig', 'jury rig', 'jury rigs'],
      ['reading', 'reading', 'readings'],
      ['store', 'thing for the stores', 'things for the stores'],
    ] as const
  ).flatMap(([kind, one, many]) => (count(kind) > 0 ? [countInWords(count(kind), one, many)] : []));
  return listInWords(words);
}
