/** One thing a walk-round proposes: the words it came from, and beside them what would go in. */
import type { Book } from '#boat-book';
import type { Proposal } from '#jobs';
import { ChoiceField, PickField, TickField } from '../../parts/choice-fields.tsx';
import { dayInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName, Mark, type Meaning } from '../../parts/mark.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { ClockField, DayField, NumberField, TextField } from '../../parts/text-fields.tsx';
import { consequences } from '../../reading/open-work.ts';
import { conditionsInWords, setUpsInWords } from '../../reading/step-in-words.ts';
import { address } from '../../shell/route.ts';
import type { Fate } from './kept-walk.ts';
import { trustedAsUsual, usualOfRig } from './put-in-draft.ts';
import type { WalkDraft, WalkFault } from './walk-draft.ts';

const kindName: Readonly<Record<Proposal['kind'], string>> = {
  job: 'job',
  'jury rig': 'jury rig',
  reading: 'reading',
  store: 'stores',
};

export function WalkProposal({
  book,
  today,
  proposal,
  draft,
  fate,
  faults,
  busy,
  onChange,
  onPutIn,
  onLeave,
  onTakeUp,
}: {
  readonly book: Book;
  readonly today: string;
  readonly proposal: Proposal;
  readonly draft: WalkDraft;
  readonly fate: Fate | null;
  readonly faults: Faults<WalkFault>;
  readonly busy: boolean;
  readonly onChange: (draft: WalkDraft) => void;
  readonly onPutIn: () => void;
  readonly onLeave: () => void;
  readonly onTakeUp: () => void;
}) {
  const title = titleOf(draft);
  const refused = Object.keys(faults).length > 0;
  return (
    <li className={fate ? 'walk-one walk-over' : 'walk-one'}>
      <blockquote className="walk-said">
        {shortened(proposal.said)}
        {'under' in proposal && proposal.under && <span className="soft small"> under ‘{proposal.under}’</span>}
      </blockquote>
      <div className="walk-makes">
        <p className="walk-title">
          <MarkOf draft={draft} />
          <b>{title || 'no title'}</b>
        </p>
        <p className="soft small walk-parts">{partsInWords(book, draft, proposal, today).join(', ')}</p>
        {fate?.kind === 'in' && (
          <p className="walk-in" role="status">
            In the book
            {draft.what === 'job' && fate.id !== null && (
              <>
                : <a href={address('work', 'job', fate.id)}>open it</a>
              </>
            )}
          </p>
        )}
        {fate?.kind === 'left' && (
          <p className="walk-left">
            <span className="soft">Left out.</span>{' '}
            <button type="button" className="words" onClick={onTakeUp}>
              Take it up again
            </button>
          </p>
        )}
        {fate === null && (
          <>
            <details className="walk-change" open={refused || undefined}>
              <summary aria-label={`Change: ${title}`}>Change it</summary>
              <Fields book={book} today={today} draft={draft} faults={faults} onChange={onChange} />
            </details>
            <div className="walk-answers">
              <button type="button" disabled={busy} onClick={onPutIn} aria-label={`Put in: ${title}`}>
                Put it in
              </button>
              <button
                type="button"
                className="words"
                disabled={busy}
                onClick={onLeave}
                aria-label={`Leave out: ${title}`}
              >
                Leave it out
              </button>
            </div>
          </>
        )}
      </div>
    </li>
  );
}

function Fields({
  book,
  today,
  draft,
  faults,
  onChange,
}: {
  readonly book: Book;
  readonly today: string;
  readonly draft: WalkDraft;
  readonly faults: Faults<WalkFault>;
  readonly onChange: (draft: WalkDraft) => void;
}) {
  const { what, work, reading, store } = draft;
  const setWork = (part: Partial<WalkDraft['work']>) => onChange({ ...draft, work: { ...work, ...part } });
  const setReading = (part: Partial<WalkDraft['reading']>) => onChange({ ...draft, reading: { ...reading, ...part } });
  const setStore = (part: Partial<WalkDraft['store']>) => onChange({ ...draft, store: { ...store, ...part } });
  const batteries = Object.entries(book.batteries);
  return (
    <>
      {what !== 'reading' && (
        <PickField
          label="It is"
          value={what}
          onChange={(value) => onChange({ ...draft, what: value, work: workAs(value, work, today) })}
          options={[
            { value: 'job', name: 'a job' },
            { value: 'jury rig', name: 'a jury rig' },
            { value: 'store', name: 'for the stores' },
          ]}
        />
      )}
      {(what === 'job' || what === 'jury rig') && (
        <>
          <TextField
            label={what === 'job' ? 'What is to be done' : 'What holds what'}
            rows={2}
            value={work.title}
            onChange={(text) => setWork({ title: text })}
            refused={faults.title}
          />
          {what === 'job' && (
            <>
              <ChoiceField
                label="If it is left"
                value={work.consequence}
                onChange={(consequence) => setWork({ consequence })}
                none="not said"
                options={consequences.map((value) => ({ value, name: consequenceName[value] }))}
                refused={faults.consequence}
              />
              <NumberField
                label="Hands-on, likely"
                unit="min"
                whole
                value={work.likely}
                onChange={(likely) => setWork({ likely, low: '', high: '' })}
                refused={faults.likely ?? faults.low ?? faults.high}
              />
            </>
          )}
          <ChoiceField
            label="Zone"
            value={work.zone}
            onChange={(zone) => setWork({ zone })}
            none="no zone"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
          <DayField
            label={what === 'job' ? 'By a date of its own' : 'Trusted until'}
            value={work.due}
            onChange={(due) => setWork({ due })}
            refused={faults.due}
          />
          {what === 'jury rig' && (
            <>
              <NumberField
                label="Trusted up to a wind of"
                unit="knots"
                note="Empty: no such limit."
                value={work.needs.wind}
                onChange={(wind) => setWork({ needs: { ...work.needs, wind } })}
                refused={faults.wind}
              />
              <TickField
                label="Not on the road"
                value={work.notOnRoad}
                onChange={(notOnRoad) => setWork({ notOnRoad })}
              />
            </>
          )}
          {what === 'job' && (
            <p className="field-note">Steps, hands, weather and set-ups are changed on its own page.</p>
          )}
        </>
      )}
      {what === 'store' && (
        <>
          <TextField
            label="What it is, with its size"
            value={store.name}
            onChange={(name) => setStore({ name })}
            refused={faults.name}
          />
          <PickField
            label="It is there"
            value={store.stands}
            onChange={(stands) => setStore({ stands })}
            options={[
              { value: 'on hand', name: 'on hand' },
              { value: 'to get', name: 'to get' },
            ]}
          />
          <TextField label="Where it is kept" value={store.keptAt} onChange={(keptAt) => setStore({ keptAt })} />
        </>
      )}
      {what === 'reading' && (
        <>
          <ChoiceField
            label="Battery"
            value={reading.battery}
            onChange={(battery) => setReading({ battery })}
            options={batteries.map(([value, { name }]) => ({ value, name }))}
            refused={faults.battery}
            {...(batteries.length === 0 ? { note: 'No battery is in the book: put one in under Boat first.' } : {})}
          />
          <NumberField
            label="Volts"
            unit="V"
            value={reading.volts}
            onChange={(volts) => setReading({ volts })}
            refused={faults.volts}
          />
          <PickField
            label="How it was read"
            value={reading.circumstance}
            onChange={(circumstance) => setReading({ circumstance })}
            options={(['rested', 'under load', 'on charge', 'not said'] as const).map((value) => ({
              value,
              name: value,
            }))}
          />
          <ClockField
            label="Read today at"
            value={reading.clock}
            onChange={(clock) => setReading({ clock })}
            refused={faults.clock}
          />
        </>
      )}
    </>
  );
}

/** As a jury rig it is trusted as is usual; as anything else that day is not said. */
function workAs(what: Proposal['kind'], work: WalkDraft['work'], today: string): WalkDraft['work'] {
  if (what === 'jury rig') return trustedAsUsual({ ...work, what }, today);
  return work.what === 'jury rig' && usualOfRig(work, today) !== null
    ? { ...work, what: 'job', due: '', notOnRoad: false, needs: { ...work.needs, wind: '' } }
    : work;
}

function MarkOf({ draft }: { readonly draft: WalkDraft }) {
  const mark: Meaning | null =
    draft.what === 'jury rig'
      ? 'jury rig'
      : draft.what === 'job' && draft.work.consequence
        ? draft.work.consequence
        : null;
  return (
    <span className="walk-kind">
      {mark && <Mark of={mark} />}
      <span>{kindName[draft.what]}</span>
    </span>
  );
}

const titleOf = ({ what, work, reading, store }: WalkDraft) =>
  what === 'store' ? store.name : what === 'reading' ? `${reading.volts || '…'} V` : work.title;

/** What would go in with it, for the keeper to see before it does. */
function partsInWords(book: Book, draft: WalkDraft, proposal: Proposal, today: string): readonly string[] {
  const { what, work, reading, store } = draft;
  if (what === 'store')
    return [store.stands === 'on hand' ? 'on hand' : 'to get', ...(store.keptAt ? [`kept: ${store.keptAt}`] : [])];
  if (what === 'reading')
    return [
      ...(reading.battery ? [book.batteries[reading.battery]?.name ?? ''] : ['which battery is not said']),
      reading.circumstance === 'not said' ? 'how it was read is not said' : reading.circumstance,
      `read at ${reading.clock}`,
    ];
  const rig = what === 'jury rig';
  const words: string[] = [];
  if (!rig) words.push(work.consequence ? consequenceName[work.consequence] : 'not said what if it is left');
  if (!rig) words.push(work.likely ? minutesInWords(Number(work.likely)) : 'no minutes');
  const zone = work.zone ? book.zones[work.zone]?.name : undefined;
  if (zone) words.push(zone);
  if (work.fitting) words.push(book.fittings[work.fitting]?.name ?? '');
  if (!rig && work.hands !== '1') words.push(`${work.hands} pairs of hands`);
  if (!rig && work.notAlone) words.push('not alone');
  if (!rig) words.push(...setUpsInWords(book, work.setUps));
  if (!rig) words.push(...weatherInWords(work.needs));
  if (work.due) words.push(`${rig ? 'trusted until' : 'by'} ${dayInWords(work.due, today)}`);
  if (rig && work.needs.wind) words.push(`up to ${work.needs.wind} knots`);
  if (rig && work.notOnRoad) words.push('not on the road');
  if (rig) words.push(usualOfRig(work, today) ?? '');
  if (work.outing) words.push(`for ${book.outings[work.outing]?.title ?? ''}`);
  if (proposal.kind === 'job' && proposal.rig !== null) words.push('a jury rig above stands in for it');
  if (proposal.kind === 'job' && proposal.followUp) words.push(`follows on: ‘${proposal.followUp}’`);
  return words.filter((word) => word !== '');
}

function weatherInWords(needs: WalkDraft['work']['needs']): readonly string[] {
  const figure = (text: string) => (text === '' ? undefined : Number(text));
  const given = {
    dry: needs.dry || undefined,
    daylight: needs.daylight || undefined,
    wind_max_kn: figure(needs.wind),
    air_min_C: figure(needs.airMin),
    air_max_C: figure(needs.airMax),
    humidity_max_pct: figure(needs.humidity),
  };
  return conditionsInWords(Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)));
}

/** A long passage loses its middle: where it begins and what it comes to are both shown. */
const shortened = (said: string) =>
  said.length > 600
    ? `‘${said.slice(0, 300).replace(/\s+\S*$/, '')} … ${said.slice(-280).replace(/^\S*\s+/, '')}’`
    : `‘${said}’`;
