/** A job goes in with one line. What was understood of it is shown part by part, to change before it goes in. */
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type Lexicon, type ReadLine, readLine } from '#jobs';
import { ChoiceField, PickField, TickField } from '../../parts/choice-fields.tsx';
import { ConditionsFields } from '../../parts/conditions-fields.tsx';
import { Refused } from '../../parts/field.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { dayInWords } from '../../parts/in-words.ts';
import { consequenceName } from '../../parts/mark.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { SetUpNeedsField } from '../../parts/set-up-needs-field.tsx';
import { DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import { consequences } from '../../reading/open-work.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address, goTo } from '../../shell/route.ts';
import './put-in.css';
import {
  nothingRead,
  type PutInDraft,
  type PutInFault,
  readPutIn,
  trustedAsUsual,
  understood,
  usualOfRig,
} from './put-in-draft.ts';
import type { PutInByRecipe, SaidByRecipe } from './recipe-offer.tsx';

const RecipeOffer = onDemand(() => import('./recipe-offer.tsx'));

const longest = 2000;

export default function PutIn() {
  const book = useOpenBook();
  const today = todayAt(book);
  const [line, setLine] = useState('');
  const [changes, setChanges] = useState<Partial<PutInDraft>>({});
  const [faults, setFaults] = useState<Faults<PutInFault>>({});
  const [last, setLast] = useState<{ readonly title: string; readonly href: string } | null>(null);
  const [mark, setMark] = useState(0);
  const [recipe, setRecipe] = useState(false);
  const byRecipe = useRef<PutInByRecipe | null>(null);
  const takeBy = useCallback((take: PutInByRecipe | null) => {
    byRecipe.current = take;
  }, []);
  const { run, refusal } = useRun();
  const field = useRef<HTMLTextAreaElement>(null);
  const parts = useRef<HTMLDivElement>(null);
  useEffect(() => field.current?.focus(), []);
  useEffect(() => {
    if (Object.keys(faults).length > 0)
      parts.current?.querySelector<HTMLElement>('[aria-invalid], fieldset input')?.focus();
  }, [faults]);

  const said = line.replace(/\s+/g, ' ').trim();
  const { zones, fittings, setUps, outings } = book;
  const lexicon: Lexicon = useMemo(
    () => ({ zones, fittings, setUps, outings, today }),
    [zones, fittings, setUps, outings, today],
  );
  const read = useMemo(() => (said === '' ? nothingRead : readLine(said.slice(0, longest), lexicon)), [said, lexicon]);
  const { what, title, consequence } = { ...understood(read), ...changes };
  const draft: PutInDraft = { ...trustedAsUsual({ ...understood(read), what, title, consequence }, today), ...changes };
  const set = <K extends keyof PutInDraft>(key: K, value: PutInDraft[K]) => setChanges({ ...changes, [key]: value });

  /** What the recipe says of the job, where the line did not. */
  const fillIn = (by: SaidByRecipe | null) => {
    setRecipe(by !== null);
    if (by === null) return;
    setChanges({
      ...changes,
      ...(draft.consequence === '' ? { consequence: by.consequence } : {}),
      ...(draft.zone === '' && by.zone !== null ? { zone: by.zone } : {}),
    });
  };

  const putIn = async (then: 'open' | 'next') => {
    const records = readPutIn(draft, said, today);
    setFaults(records.kind === 'refused' ? records.faults : {});
    if (records.kind === 'refused') return;
    const outcome =
      records.kind === 'jury rig'
        ? await run('addJuryRig', records.rig)
        : byRecipe.current
          ? await byRecipe.current(records.job, run)
          : await run('addJob', records.job);
    if (outcome === null || outcome.kind === 'refused') return;
    const href = records.kind === 'job' && outcome.id !== null ? address('work', 'job', outcome.id) : address('work');
    if (then === 'open') {
      goTo(href, true);
      return;
    }
    setLast({ title: draft.title, href });
    setLine('');
    setChanges({});
    setMark(mark + 1);
    setRecipe(false);
    field.current?.focus();
  };

  return (
    <div className="put-in">
      <p className="job-back no-print">
        <a className="button words" href={address('work')}>
          ‹ Work
        </a>
      </p>
      <h1>Put in a job</h1>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void putIn('open');
        }}
      >
        <TextField
          label="In one line, typed or dictated"
          note="What is wrong, where, how long, what happens if it is left. Such as: tiller bolt is bent, change it, 20 min, stops sailing."
          rows={3}
          value={line}
          onChange={setLine}
          take={field}
          spoken
          refused={
            said.length > longest
              ? `Only the first ${longest} characters are read. Put the rest in as another job.`
              : null
          }
        />
        {last && (
          <p role="status" className="put-in-last">
            In the book: <a href={last.href}>{last.title}</a>
          </p>
        )}
        {said !== '' && (
          <div ref={parts}>
            <h2>What was understood</h2>
            <p className="soft small">
              What happens if it is left is its consequence; a fix that only stands in for the work is a jury rig.
            </p>
            <Parts book={book} read={read} draft={draft} set={set} faults={faults} today={today} />
            {draft.what === 'job' && (
              <RecipeOffer key={mark} book={book} said={said} onChoose={fillIn} onTake={takeBy} />
            )}
            {draft.what === 'job' && !recipe && draft.likely.trim() === '' && (
              <p className="soft small">
                Without minutes it goes in without a step, and the planner leaves it out until it has one.
              </p>
            )}
          </div>
        )}
        <div className="put-in-foot at-foot">
          <div role="alert">
            <RefusalLine refusal={refusal} />
            {Object.keys(faults).length > 0 && <Refused text="Not in yet: see the marked parts." />}
          </div>
          <button type="submit" className="main" disabled={said === ''}>
            Put it in
          </button>
          <button type="button" disabled={said === ''} onClick={() => void putIn('next')}>
            and the next
          </button>
        </div>
      </form>
    </div>
  );
}

type Book = ReturnType<typeof useOpenBook>;

function Parts({
  book,
  read,
  draft,
  set,
  faults,
  today,
}: {
  readonly book: Book;
  readonly read: ReadLine;
  readonly draft: PutInDraft;
  readonly set: <K extends keyof PutInDraft>(key: K, value: PutInDraft[K]) => void;
  readonly faults: Faults<PutInFault>;
  readonly today: string;
}) {
  const from = (...found: readonly ({ readonly words: string } | null)[]) => {
    const words = found.flatMap((one) => (one ? [one.words] : []));
    return words.length === 0 ? undefined : `from ‘${words.join('’ and ‘')}’`;
  };
  const rig = draft.what === 'jury rig';
  const rows: readonly { readonly key: string; readonly seen: boolean; readonly part: ReactNode }[] = [
    {
      key: 'what',
      seen: read.temporary !== null,
      part: (
        <PickField
          label="It is"
          value={draft.what}
          onChange={(what) => set('what', what)}
          options={[
            { value: 'job', name: 'a job' },
            { value: 'jury rig', name: 'a jury rig, temporary' },
          ]}
        />
      ),
    },
    {
      key: 'title',
      seen: true,
      part: (
        <TextField
          label={rig ? 'What holds what' : 'What is to be done'}
          rows={2}
          value={draft.title}
          onChange={(text) => set('title', text)}
          refused={faults.title}
        />
      ),
    },
    {
      key: 'consequence',
      seen: !rig,
      part: !rig && (
        <PickField
          label={`If it is left${read.consequence ? `, ${from(read.consequence)}` : ''}`}
          value={draft.consequence}
          onChange={(value) => set('consequence', value)}
          options={consequences.map((value) => ({ value, name: consequenceName[value] }))}
          refused={faults.consequence}
        />
      ),
    },
    {
      key: 'minutes',
      seen: !rig,
      part: !rig && (
        <div className="field-row">
          <NumberField
            label="Hands-on, likely"
            unit="min"
            whole
            note={from(read.minutes)}
            value={draft.likely}
            onChange={(text) => set('likely', text)}
            refused={faults.likely}
          />
          {(read.minutes?.value.low != null || draft.low !== '' || draft.high !== '') && (
            <>
              <NumberField
                label="low"
                unit="min"
                whole
                value={draft.low}
                onChange={(text) => set('low', text)}
                refused={faults.low}
              />
              <NumberField
                label="high"
                unit="min"
                whole
                value={draft.high}
                onChange={(text) => set('high', text)}
                refused={faults.high}
              />
            </>
          )}
        </div>
      ),
    },
    {
      key: 'zone',
      seen: read.zone !== null,
      part: (
        <ChoiceField
          label="Zone"
          note={from(read.zone)}
          value={draft.zone}
          onChange={(zone) => set('zone', zone)}
          none="no zone"
          options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
        />
      ),
    },
    {
      key: 'fitting',
      seen: read.fitting !== null,
      part: Object.keys(book.fittings).length > 0 && (
        <ChoiceField
          label="Fitting"
          note={from(read.fitting)}
          value={draft.fitting}
          onChange={(fitting) => set('fitting', fitting)}
          none="none"
          options={Object.entries(book.fittings).map(([value, { name }]) => ({ value, name }))}
        />
      ),
    },
    {
      key: 'due',
      seen: read.due !== null || rig,
      part: (
        <DayField
          label={rig ? 'Trusted until' : 'By a date of its own'}
          note={from(read.due) ?? (rig && usualOfRig(draft, today)) ?? undefined}
          value={draft.due}
          onChange={(day) => set('due', day)}
          refused={faults.due}
        />
      ),
    },
    {
      key: 'outing',
      seen: read.outing !== null,
      part: !rig && (
        <ChoiceField
          label="Needed for an outing"
          note={from(read.outing)}
          value={draft.outing}
          onChange={(outing) => set('outing', outing)}
          none="no outing"
          options={Object.entries(book.outings).map(([value, outing]) => ({
            value,
            name: `${outing.title}, ${dayInWords(outing.date, today)}`,
          }))}
        />
      ),
    },
    {
      key: 'hands',
      seen: read.hands !== null || read.notAlone !== null,
      part: !rig && (
        <>
          <NumberField
            label="Pairs of hands"
            unit="1 to 8"
            whole
            note={from(read.hands)}
            value={draft.hands}
            onChange={(text) => set('hands', text)}
            refused={faults.hands}
          />
          <TickField
            label={`Not to be done alone${read.notAlone ? `, ${from(read.notAlone)}` : ''}`}
            value={draft.notAlone}
            onChange={(on) => set('notAlone', on)}
          />
        </>
      ),
    },
    {
      key: 'set-ups',
      seen: read.setUps.length > 0,
      part: !rig && (
        <SetUpNeedsField
          book={book}
          label={`How she must stand${read.setUps.length > 0 ? `, ${from(...read.setUps)}` : ''}`}
          needs={draft.setUps}
          onChange={(needs) => set('setUps', needs)}
          {...(read.setUps.length > 0 ? { only: read.setUps.map(({ value }) => value.setUp) } : {})}
        />
      ),
    },
    {
      key: 'needs',
      seen: read.conditions.length > 0 || rig,
      part: (
        <fieldset className="field">
          <legend>
            {rig ? 'Trusted within' : 'Weather it needs'}
            {read.conditions.length > 0 && `, ${from(...read.conditions)}`}
          </legend>
          {rig ? (
            <>
              <NumberField
                label="Up to a wind of"
                unit="knots"
                note="Empty: no such limit."
                value={draft.needs.wind}
                onChange={(wind) => set('needs', { ...draft.needs, wind })}
                refused={faults.wind}
              />
              <TickField
                label="Not on the road"
                value={draft.notOnRoad}
                onChange={(notOnRoad) => set('notOnRoad', notOnRoad)}
              />
            </>
          ) : (
            <ConditionsFields fold draft={draft.needs} onChange={(needs) => set('needs', needs)} faults={faults} />
          )}
        </fieldset>
      ),
    },
  ];
  const folded = rows.filter(({ seen, part }) => !seen && part);
  return (
    <>
      {rows
        .filter(({ seen }) => seen)
        .map(({ key, part }) => (
          <div key={key}>{part}</div>
        ))}
      {folded.length > 0 && (
        <details className="field-group">
          <summary>
            Not said <span className="soft">{rig ? 'zone, limits' : 'zone, date, hands, set-ups, weather'}</span>
          </summary>
          {folded.map(({ key, part }) => (
            <div key={key}>{part}</div>
          ))}
        </details>
      )}
    </>
  );
}
