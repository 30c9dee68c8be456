/** One rode in an anchorage: what to veer, drawn to scale, moved with sliders, each figure with how it is worked out. */
import { type ReactNode, useDeferredValue, useMemo, useState } from 'react';
import type { AnchorageRecord, Book, Id, RodeRecord } from '#boat-book';
import { type GroundFigure, groundTold, rodeLength_m } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { RefusalLine } from '../../../../parts/form.tsx';
import { Mark } from '../../../../parts/mark.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { AnchorageSliders } from './anchorage-sliders.tsx';
import { CircleDrawing } from './circle-drawing.tsx';
import { FigureRows, FigureSheet } from './figure-rows.tsx';
import { GroundDrawing } from './ground-drawing.tsx';
import { RodeActs } from './rode-acts.tsx';

const RodeSheet = onDemand(() => import('./rode-sheet.tsx'));

/** Where nothing is kept yet: values to move from, in sight on the sliders. */
const toMoveFrom: AnchorageRecord = { depth_m: 4, rise_m: 0, fall_m: 0, wind_kn: 20, current_kn: 0 };

interface OfOne {
  readonly book: Book;
  readonly id: Id;
  readonly rode: RodeRecord;
  /** the way to put in another */
  readonly add: ReactNode;
}

export function RodeView({ book, id, rode, add }: OfOne) {
  return (
    <>
      <h1>{rode.name}</h1>
      <BelowHeading>
        <RodeBelow book={book} id={id} rode={rode} add={add} />
      </BelowHeading>
    </>
  );
}

function RodeBelow({ book, id, rode, add }: OfOne) {
  const { boat } = book;
  // what was moved here lies over what the book keeps, which may still come in from another device or the last visit
  const [moved, setMoved] = useState<Partial<AnchorageRecord>>({});
  const anchorage = useMemo(() => ({ ...(rode.anchorage ?? toMoveFrom), ...moved }), [rode.anchorage, moved]);
  const [out_m, setOut] = useState<number | null>(null);
  const [open, setOpen] = useState<GroundFigure['of'] | null>(null);
  const [changing, setChanging] = useState(false);
  const { run, refusal } = useRun();
  // the sliders move with the finger; what follows from them is reckoned and drawn after that
  const followed = useDeferredValue(anchorage);
  const followedOut_m = useDeferredValue(out_m);
  const told = useMemo(() => groundTold(book, rode, followed, followedOut_m), [book, rode, followed, followedOut_m]);
  const kept = rode.anchorage !== null && same(rode.anchorage, anchorage);
  const move = (change: Partial<AnchorageRecord>) => setMoved((before) => ({ ...before, ...change }));
  const keep = async () => {
    const outcome = await run('changeRode', { id, anchorage });
    if (outcome.kind === 'done') setMoved({});
  };
  const shown = told.kind === 'told' ? told.figures.find(({ of }) => of === open) : undefined;
  return (
    <div className="ground">
      <div className="ground-head">
        <p className="ground-verdict loads-verdict" role="status">
          {told.kind === 'told' ? (
            <>
              <Mark of={told.holds ? 'go' : 'danger'} said={told.holds ? 'in order:' : 'danger:'} /> {told.verdict}
            </>
          ) : (
            <>
              <Mark of="danger" said="danger:" /> {sentence(told.wrong)} {sentence(told.right)}
            </>
          )}
        </p>
        {told.kind === 'told' && told.against.map((words) => <p key={words}>{words}</p>)}
      </div>
      {told.kind === 'told' && (
        <figure className="ground-figure">
          <GroundDrawing
            boat={boat}
            drawn={told.drawing}
            longest_m={rodeLength_m(rode)}
            said={`${rode.name}, to scale. ${told.verdict}`}
          />
          <figcaption className="soft small">
            To scale, at high water; dashed: at low. Heavy: chain; thin: rope.
          </figcaption>
        </figure>
      )}
      <AnchorageSliders
        rode={rode}
        anchorage={anchorage}
        out_m={out_m ?? (told.kind === 'told' ? told.out_m : null)}
        byItself={out_m === null}
        onMove={move}
        onOut={setOut}
      />
      {told.kind === 'told' && <FigureRows figures={told.figures} onOpen={setOpen} />}
      <div className="ground-acts">
        <RefusalLine refusal={refusal} />
        <div className="boat-acts no-print">
          {!kept && (
            <button type="button" className="main" onClick={() => void keep()}>
              Keep this anchorage
            </button>
          )}
          {told.kind === 'told' && <RodeActs book={book} rode={rode} told={told} />}
          <button type="button" onClick={() => setChanging(true)}>
            Change the rode
          </button>
          {add}
        </div>
      </div>
      {told.kind === 'told' && (
        <section className="ground-care" aria-labelledby="ground-care">
          <h2 id="ground-care">Take care</h2>
          {told.cautions.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      )}
      {changing && <RodeSheet book={book} id={id} onClose={() => setChanging(false)} />}
      {shown && (
        <FigureSheet figure={shown} onClose={() => setOpen(null)}>
          {shown.of === 'circle' && told.kind === 'told' && <CircleDrawing boat={boat} {...told.circle} />}
        </FigureSheet>
      )}
    </div>
  );
}

const same = (a: AnchorageRecord, b: AnchorageRecord) =>
  (Object.keys(a) as (keyof AnchorageRecord)[]).every((key) => a[key] === b[key]);

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
