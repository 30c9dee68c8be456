/** The step or set-up change in hand, readable at arm's length: what, where, cautions, what to have, the answers. */
import { useEffect, useRef, useState } from 'react';
import type { Book, Id, Step } from '#boat-book';
import {
  conditionsInWords,
  followByTin,
  keptInWords,
  setUpInWords,
  storeOfLine,
  takeInWords,
  takesByTin,
  waitsByTin,
} from '#reckoning';
import { RefusalLine } from '../../parts/form.tsx';
import { minutesInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import { PhotoStrip } from '../../photos/photo-strip.tsx';
import { photosOf } from '../../photos/photos-of.ts';
import { TakePhotos } from '../../photos/take-photos.tsx';
import { lawInWords, whoseInWords } from '../../reading/step-in-words.ts';
import { address } from '../../shell/route.ts';
import { DonePanel, LongerPanel, SkyPanel } from './answers.tsx';
import { estimate, handsInWords } from './block-sheet.tsx';
import { type InHandProps, type Item, isUnderWay } from './in-hand.ts';
import { MixPart } from './mix-part.tsx';
import { itemName } from './now-words.ts';
import { clockAt, whenInWords } from './place-time.ts';

const LeaveWord = onDemand(() => import('./leave-word-panel.tsx'));

export function StepInHand({ leading, ...props }: InHandProps & { readonly leading: boolean }) {
  const { item, book, problem, now } = props;
  const [asked, setAsked] = useState<'done' | 'longer' | 'sky' | null>(null);
  const [leaving, setLeaving] = useState(false);
  const asks = useRef<HTMLDivElement>(null);
  // the answers stay in reach of the thumb: what one of them asks is brought beside them
  useEffect(() => {
    if (asked !== null) asks.current?.scrollIntoView({ block: 'nearest' });
  }, [asked]);
  const { run, refusal } = useRun();
  const raining = problem.hours[Math.floor(now / 60)]?.rain ?? false;
  const underWay = isUnderWay(item);
  const name = itemName(item, problem);
  const Heading = leading ? 'h1' : 'h2';
  const start = () => {
    if (item.kind !== 'step') return;
    const started = Date.now();
    void run('startStep', {
      id: item.planned.step,
      started: new Date(started).toISOString(),
      expected: new Date(started + (item.planned.finish - item.planned.start) * 60_000).toISOString(),
      hands: item.planned.hands,
    });
  };
  const answer = (what: 'done' | 'longer' | 'sky') => setAsked(asked === what ? null : what);
  return (
    <section className={leading ? 'days-in-hand' : 'days-in-hand days-in-hand-beside'}>
      {!leading && <p className="small soft">At the same time, {handsInWords(problem, item.planned.hands)}</p>}
      <Heading>{name}</Heading>
      <p className="soft">{whatItIsOf(props)}</p>
      <p className="soft">{whenAndHowLong(props)}</p>
      {cautionsOf(item, book).map((caution) => (
        <p key={caution} className="days-caution">
          <b>Take care:</b> {caution}
        </p>
      ))}
      {item.kind === 'step' && item.planned.batchOf === null && (
        <MixPart book={book} step={item.step.id} problem={problem} now={now} />
      )}
      <ToHave {...props} />
      {!underWay && item.kind === 'step' && (
        <button type="button" className="days-start" onClick={start}>
          Start it now
        </button>
      )}
      <div className="days-answers at-foot">
        <button type="button" className="main" aria-expanded={asked === 'done'} onClick={() => answer('done')}>
          Done
        </button>
        {item.kind === 'step' && (
          <button type="button" aria-expanded={asked === 'longer'} onClick={() => answer('longer')}>
            Took longer
          </button>
        )}
        {leading && (
          <button type="button" aria-expanded={asked === 'sky'} onClick={() => answer('sky')}>
            {raining ? 'Dry again' : 'Rain'}
          </button>
        )}
      </div>
      <RefusalLine refusal={refusal} />
      <div ref={asks} className="days-asked">
        {asked === 'done' && <DonePanel {...props} onClose={() => setAsked(null)} />}
        {asked === 'longer' && item.kind === 'step' && (
          <LongerPanel {...props} item={item} onClose={() => setAsked(null)} />
        )}
        {asked === 'sky' && <SkyPanel {...props} rain={!raining} onClose={() => setAsked(null)} />}
      </div>
      {item.kind === 'step' && <StepPhotos book={book} job={item.step.job} step={item.step.id} />}
      {leading && (
        <p>
          <button type="button" className="words" aria-expanded={leaving} onClick={() => setLeaving(!leaving)}>
            Leave word: if you don’t hear from me by …
          </button>
        </p>
      )}
      {leaving && <LeaveWord {...props} />}
    </section>
  );
}

/** The photographs of the step, and one of the work before or after in a tap. */
function StepPhotos({ book, job, step }: { readonly book: Book; readonly job: Id; readonly step: Id }) {
  return (
    <div className="days-photos">
      <TakePhotos
        of={{ job, step }}
        ways={[
          { name: 'Photograph before', shows: 'before' },
          { name: 'after', shows: 'after' },
        ]}
      />
      <PhotoStrip book={book} photos={photosOf(book, { job, step })} />
    </div>
  );
}

/** The job as a way to it, the zone, and which of its steps this is; nothing for a set-up change. */
function whatItIsOf({ item, book }: InHandProps) {
  if (item.kind === 'change') return null;
  const job = book.jobs[item.step.job];
  const ofJob = Object.entries(book.steps)
    .filter(([, step]) => step.job === item.step.job)
    .sort(([, a], [, b]) => a.order - b.order);
  const place = ofJob.findIndex(([id]) => id === item.step.id) + 1;
  const zone = item.step.zone === null ? undefined : book.zones[item.step.zone]?.name;
  const said = [
    zone && !job?.title.toLowerCase().includes(zone.toLowerCase()) ? zone : null,
    ofJob.length > 1 ? `step ${place} of ${ofJob.length}` : null,
  ].filter((part) => part !== null);
  return (
    <>
      {job && <a href={address('work', 'job', item.step.job)}>{job.title}</a>}
      {said.length > 0 && ` · ${said.join(' · ')}`}
    </>
  );
}

/** `planned 11:20 to 11:55, 35 min likely, 25 to 50 min` */
function whenAndHowLong({ item, book, problem, now }: InHandProps): string {
  const when = isUnderWay(item)
    ? `Started ${clockAt(problem, item.planned.start)}, expected done ${whenInWords(problem, item.planned.finish, now)}`
    : `Planned ${whenInWords(problem, item.planned.start, now)} to ${clockAt(problem, item.planned.finish)}`;
  const planned = item.planned.finish - item.planned.start;
  const record = item.kind === 'step' ? book.steps[item.step.id] : undefined;
  // what a step under way has grown to says nothing that its end does not
  return `${when}, ${record ? estimate(record.minutes, isUnderWay(item) ? record.minutes.likely : planned) : minutesInWords(planned)}`;
}

function cautionsOf(item: Item, book: Book): readonly string[] {
  if (item.kind === 'step') return book.steps[item.step.id]?.cautions ?? [];
  const { aspect, from, to } = item.planned;
  return book.setUps[aspect]?.changes.find((c) => c.from === from && c.to === to)?.cautions ?? [];
}

/** How much the step takes of a store, and whose coverage says so; null: nobody said. */
function takeSaid(book: Book, step: Id, store: Id): string | null {
  const take = takesByTin(book, book.steps[step] ?? {}).find((each) => each.store === store);
  return take === undefined ? null : takeInWords(take);
}

/** `within 18 h, from the tin of Hull varnish`; empty where this step has no window of its own. */
const windowsSaid = (book: Book, { follows }: Step): string =>
  (follows ?? [])
    .flatMap((said) => {
      const { follow, tin } = followByTin(book, said);
      if (follow.greatest_min === null) return [];
      return [
        `within ${minutesInWords(follow.greatest_min)}${tin === null ? '' : `, from the tin of ${tin.tin.name}`}`,
      ];
    })
    .join('; ');

/** Each wait after it, how long by its product, and whose figure that is. */
const waitsSaid = (book: Book, step: Step): string =>
  waitsByTin(book, step)
    .map(({ wait, tin }) =>
      wait.law.kind === 'set time'
        ? `${wait.title}, ${lawInWords(wait.law)}`
        : `${wait.title}, ${lawInWords(wait.law)}, ${whoseInWords(wait.law.from, tin?.tin ?? null)}`,
    )
    .join('; ');

/** What to have in hand before it is begun: tools and stores with their places, what to mix, how she must stand. */
function ToHave({ item, book, problem }: InHandProps) {
  const rows: [string, string][] = [];
  const add = (name: string, words: string) => {
    if (words !== '') rows.push([name, words]);
  };
  if (item.planned.hands.length > 1) add('hands', handsInWords(problem, item.planned.hands));
  if (item.kind === 'step') {
    const { step, planned } = item;
    if (step.notAlone) add('company', 'not to be done alone');
    add('set-ups', step.setUps.map((need) => setUpInWords(problem, need.aspect, need.states)).join(', '));
    add('weather', conditionsInWords(step.needs));
    for (const { tool } of step.tools) {
      const known = book.tools[tool];
      if (known) add(known.name, keptInWords(book.stowages, known) ?? 'place not noted');
    }
    for (const line of step.stores) {
      const id = storeOfLine(line, book);
      const known = book.stores[id];
      if (known)
        add(
          known.name,
          [
            takeSaid(book, step.id, id),
            known.onHand && line === id ? (keptInWords(book.stowages, known) ?? 'place not noted') : 'not in stores',
          ]
            .filter((words) => words !== null)
            .join('; '),
        );
    }
    const mix = step.mix === null ? undefined : book.mixes[step.mix];
    if (mix && planned.batchOf !== null) add(mix.name, 'the batch already mixed');
    if (planned.abrade_min > 0) add('abrade first', minutesInWords(planned.abrade_min));
    const record = book.steps[step.id];
    if (record) {
      add('over the coat below', windowsSaid(book, record));
      add('afterwards it waits', waitsSaid(book, record));
    }
  } else {
    const change = book.setUps[item.planned.aspect]?.changes.find(
      (c) => c.from === item.planned.from && c.to === item.planned.to,
    );
    if (change) {
      add('weather', conditionsInWords(change.needs));
      add('set-ups', change.setUps.map((need) => setUpInWords(problem, need.setUp, need.states)).join(', '));
    }
  }
  if (rows.length === 0) return null;
  return (
    <div className="days-have">
      <h2>What it takes</h2>
      <dl>
        {rows.map(([name, words]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
