/** The board's hoist: what it asks of hand, wire and cord, drawn as it goes up, and what would change it. */
import { useMemo, useState } from 'react';
import type { BoardHoistRecord, Book, Id } from '#boat-book';
import { type HoistedIn, type HoistFigureTold, hoistTold } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { PickField } from '../../../../parts/choice-fields.tsx';
import { Mark } from '../../../../parts/mark.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../../parts/opened.tsx';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { address } from '../../../../shell/route.ts';
import './hoist.css';
import { ChangesPart } from './changes-part.tsx';
import { HeavierPart } from './heavier-part.tsx';
import { HoistTravelPart } from './hoist-travel.tsx';
import { PullsPart } from './pulls-part.tsx';

const HoistSheet = onDemand(() => import('./hoist-sheet.tsx'));
const FigureSheet = onDemand(() => import('./figure-sheet.tsx'));

type Open = { readonly sheet: 'change' } | { readonly sheet: 'figure'; readonly figure: HoistFigureTold };

export default function HoistPage({ id }: { readonly id: Id | undefined }) {
  const book = useOpenBook();
  const [adding, setAdding] = useState(false);
  const ids = Object.keys(book.boardHoists);
  const shown = id ?? (ids.length === 1 ? ids[0] : undefined);
  const record = shown === undefined ? undefined : book.boardHoists[shown];
  if (shown !== undefined && record) return <Hoist key={shown} book={book} id={shown} record={record} />;
  return (
    <>
      <h1>The board’s hoist</h1>
      {id !== undefined && <p>That one is not in the book any more.</p>}
      <ul>
        {ids.map((each) => (
          <MarkedLine
            key={each}
            href={address('boat', 'loads', 'hoist', each)}
            title={book.boardHoists[each]!.name}
            note="what it asks of hand, wire and cord"
          />
        ))}
      </ul>
      {ids.length === 0 && (
        <p>
          What it takes to lift the board, in the wire and at the hand, over its whole travel: put in her plate, where
          its wire pulls, and what the wire runs through.
        </p>
      )}
      <p>
        <button type="button" className="main" onClick={() => setAdding(true)}>
          Put in a board’s hoist
        </button>
      </p>
      {adding && <HoistSheet book={book} id={null} onClose={() => setAdding(false)} />}
    </>
  );
}

interface OfOne {
  readonly book: Book;
  readonly id: Id;
  readonly record: BoardHoistRecord;
}

function Hoist({ book, id, record }: OfOne) {
  return (
    <div className="hoist">
      <h1>{record.name}</h1>
      <BelowHeading>
        <HoistBelow book={book} id={id} record={record} />
      </BelowHeading>
    </div>
  );
}

function HoistBelow({ book, id, record }: OfOne) {
  const [hoistedIn, setHoistedIn] = useState<HoistedIn>('air');
  const told = useMemo(() => hoistTold(record, hoistedIn), [record, hoistedIn]);
  const sheet = useOpened<Open>();
  return (
    <>
      {told.kind === 'cannot' ? (
        <p className="loads-verdict">
          <Mark of="danger" /> It cannot be hoisted so. {told.wrong} {told.right}
        </p>
      ) : (
        <p className="loads-verdict">
          {told.short.length > 0 && <Mark of="danger" />} {told.verdict}
        </p>
      )}
      <p className="loads-caution">
        <b>Take care.</b> {told.cautions[0]}
      </p>
      <PickField
        label="She lies"
        value={hoistedIn}
        onChange={setHoistedIn}
        options={[
          { value: 'air', name: 'on the trailer' },
          { value: 'sea', name: 'afloat' },
        ]}
      />
      <div className="hoist-sides">
        <div className="hoist-moves">
          {told.kind === 'told' && <HoistTravelPart key={hoistedIn} record={record} told={told} />}
        </div>
        <div className="hoist-says">
          {told.kind === 'told' && (
            <section aria-labelledby="hoist-figures">
              <h2 id="hoist-figures">What it asks</h2>
              <ul className="hoist-figures">
                {told.figures.map((figure) => (
                  <li key={figure.label}>
                    <button
                      type="button"
                      className="prints"
                      aria-label={`${figure.label}: ${figure.figure}, how it is worked out`}
                      onClick={() => sheet.open({ sheet: 'figure', figure })}
                    >
                      <span>{figure.label}</span>
                      <b>{figure.figure}</b>
                    </button>
                    {figure.wrong && (
                      <p className="hoist-wrong">
                        <Mark
                          of={figure.wrong.includes('sheave') || figure.wrong.includes('known') ? 'worsens' : 'danger'}
                        />{' '}
                        {figure.wrong}
                      </p>
                    )}
                  </li>
                ))}
              </ul>
              {told.slipped.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </section>
          )}
          <section aria-labelledby="hoist-made">
            <h2 id="hoist-made">How it is made</h2>
            {told.made.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {record.note && <p className="soft">{record.note}</p>}
            <p>
              <button type="button" onClick={() => sheet.open({ sheet: 'change' })}>
                Change it
              </button>
            </p>
          </section>
          <section aria-labelledby="hoist-heavier">
            <h2 id="hoist-heavier">A heavier or lighter board</h2>
            <HeavierPart book={book} id={id} record={record} />
          </section>
          <section aria-labelledby="hoist-pulls">
            <h2 id="hoist-pulls">What it was seen to pull</h2>
            <PullsPart book={book} id={id} record={record} />
          </section>
        </div>
        <div className="hoist-more">
          {told.kind === 'told' && (
            <section aria-labelledby="hoist-changes">
              <h2 id="hoist-changes">What each change would do</h2>
              <ChangesPart id={id} changes={told.changes} />
            </section>
          )}
          <section aria-labelledby="hoist-care">
            <h2 id="hoist-care">Take care</h2>
            {told.cautions.slice(1).map((line) => (
              <p key={line}>{line}</p>
            ))}
          </section>
        </div>
      </div>
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {open.sheet === 'change' && <HoistSheet book={book} id={id} onClose={sheet.close} />}
            {open.sheet === 'figure' && (
              <FigureSheet figure={open.figure} caution={told.cautions[0] ?? ''} onClose={sheet.close} />
            )}
          </>
        )}
      </OpenedSheet>
    </>
  );
}
