/** The boat: her picture, how she stands, her zones, and what is known of her. */
import type { Book, Id } from '#boat-book';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { PickField } from '../../parts/choice-fields.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { countInWords, listInWords } from '../../parts/in-words.ts';
import { meaningName } from '../../parts/mark.tsx';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../parts/opened.tsx';
import { useRun } from '../../parts/use-run.ts';
import { beddedInWords } from '../../reading/bedded-in-words.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { guessedInWords } from './boat-draft.ts';
import { LoadsSection } from './loads/loads-section.tsx';
import { LogSection } from './log/log-section.tsx';
import { BoatPicture } from './picture/boat-picture.tsx';
import { workByZone } from './zone-work.ts';

const SizesSheet = onDemand(() => import('./sizes-sheet.tsx'));
const ZoneSheet = onDemand(() => import('./zone-sheet.tsx'));
const FittingSheet = onDemand(() => import('./fitting-sheet.tsx'));
const PlaceSheet = onDemand(() => import('./place-sheet.tsx'));
const SetUpSheet = onDemand(() => import('./set-up-sheet.tsx'));
const BatterySheet = onDemand(() => import('./battery/battery-sheet.tsx'));
const WeightsSheet = onDemand(() => import('./weights-sheet.tsx'));
const BoatFile = onDemand(() => import('./boat-file.tsx'));

type Open =
  | { readonly sheet: 'sizes' | 'weights' | 'battery' }
  | { readonly sheet: 'zone' | 'fitting' | 'place' | 'set-up'; readonly id: Id | null };

export function BoatPage() {
  const book = useOpenBook();
  const { boat } = book;
  return (
    <div className="boat">
      <h1>{boat.name}</h1>
      <p className="soft">
        {boat.length_m} m{boat.keeper && `, kept by ${boat.keeper}`}
      </p>
      <BelowHeading>
        <BoatBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function BoatBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const { boat } = book;
  const { run, refusal } = useRun();
  const sheet = useOpened<Open>();
  const work = workByZone(book, today);
  const { close } = sheet;

  return (
    <>
      <div className="boat-sides">
        <div>
          <BoatPicture book={book} today={today} />
          <a className="button words no-print" href={address('boat', 'picture')}>
            The picture on a page of its own, to print
          </a>
        </div>
        <div className="boat-side">
          <section aria-labelledby="boat-stands">
            <h2 id="boat-stands">How she stands</h2>
            <p className="soft small">Her set-ups as they are now: the plan begins from them.</p>
            <RefusalLine refusal={refusal} />
            {Object.entries(book.setUps).map(([id, setUp]) => (
              <div key={id} className="boat-stand">
                <PickField
                  label={setUp.name}
                  value={setUp.now}
                  onChange={(state) => void run('setUpStands', { setUp: id, state })}
                  options={setUp.states.map((state) => ({ value: state.id, name: state.name }))}
                />
                <button
                  type="button"
                  className="words"
                  aria-label={`Change the set-up: ${setUp.name}`}
                  onClick={() => sheet.open({ sheet: 'set-up', id })}
                >
                  Change
                </button>
              </div>
            ))}
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'set-up', id: null })}>
              Add a set-up
            </button>
          </section>
          <section aria-labelledby="boat-zones">
            <h2 id="boat-zones">Zones</h2>
            <p className="soft small">A zone is a place of hers where work is done.</p>
            <ul>
              {Object.entries(book.zones)
                .sort(([, a], [, b]) => a.along - b.along)
                .map(([id, zone]) => {
                  const here = work.find((one) => one.zone === id);
                  return (
                    <MarkedLine
                      key={id}
                      mark={here?.gravest ?? null}
                      said={here ? meaningName[here.gravest] : ''}
                      href={address('boat', 'zone', id)}
                      title={zone.name}
                      note={here ? here.things.map(({ title }) => title).join('; ') : 'nothing open'}
                    />
                  );
                })}
            </ul>
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'zone', id: null })}>
              Add a zone
            </button>
          </section>
        </div>
        <div className="boat-rest">
          <section className="no-print" aria-labelledby="boat-batteries">
            <h2 id="boat-batteries">Batteries</h2>
            <ul>
              {Object.entries(book.batteries).map(([id, { name, nominal_Ah, nominal_V }]) => (
                <MarkedLine
                  key={id}
                  href={address('boat', 'battery', id)}
                  title={name}
                  note={`${nominal_Ah} Ah, ${nominal_V} V: how full, the nights ahead`}
                />
              ))}
              <MarkedLine
                href={address('boat', 'circuits')}
                title="Circuits"
                note="wires, fuses, volts lost, what is wrong"
              />
            </ul>
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'battery' })}>
              Add a battery
            </button>
          </section>
          <LoadsSection />
          <section className="no-print" aria-labelledby="boat-trailer">
            <h2 id="boat-trailer">Trailer</h2>
            <ul>
              <MarkedLine
                href={address('boat', 'trailer')}
                title="Trailer"
                note="what presses on ball and axle, what to move; its papers, tyres, lashings"
              />
            </ul>
          </section>
          <LogSection />
          <section aria-labelledby="boat-fittings">
            <h2 id="boat-fittings">Fittings</h2>
            <ul>
              {Object.entries(book.fittings).map(([id, fitting]) => (
                <MarkedLine
                  key={id}
                  title={fitting.name}
                  note={[book.zones[fitting.zone]?.name, fitting.size, beddedInWords(fitting, today), fitting.note]
                    .filter(Boolean)
                    .join(' · ')}
                  figure={
                    <button
                      type="button"
                      className="words"
                      aria-label={`Change the fitting: ${fitting.name}`}
                      onClick={() => sheet.open({ sheet: 'fitting', id })}
                    >
                      Change
                    </button>
                  }
                >
                  <a
                    className="button words"
                    href={address('boat', 'log', 'fitting', id)}
                    aria-label={`All of ${fitting.name}`}
                  >
                    All of it
                  </a>
                </MarkedLine>
              ))}
            </ul>
            {Object.keys(book.fittings).length === 0 && (
              <p className="soft">
                Write down what is fitted, its size and what it was bedded with, the next time it is off.
              </p>
            )}
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'fitting', id: null })}>
              Add a fitting
            </button>
          </section>
          <section aria-labelledby="boat-places">
            <h2 id="boat-places">Places</h2>
            <ul>
              {Object.entries(book.places).map(([id, place]) => (
                <MarkedLine
                  key={id}
                  title={place.name}
                  note={[
                    place.features.length === 0 ? 'no water, no mains' : listInWords(place.features),
                    place.sheltered ? 'under a roof' : 'in the open',
                    place.timeZone,
                  ].join(' · ')}
                  figure={
                    <button
                      type="button"
                      className="words"
                      aria-label={`Change the place: ${place.name}`}
                      onClick={() => sheet.open({ sheet: 'place', id })}
                    >
                      Change
                    </button>
                  }
                />
              ))}
            </ul>
            {Object.keys(book.places).length === 0 && (
              <p className="soft">None yet. The planner needs one for its daylight and its clock.</p>
            )}
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'place', id: null })}>
              Add a place
            </button>
          </section>
          <section aria-labelledby="boat-known">
            <h2 id="boat-known">Sizes and weights</h2>
            <p>
              {boat.length_m} m long, {boat.beam_m} m wide, mast {boat.mastHeight_m} m, boom {boat.boom_m} m, freeboard{' '}
              {boat.freeboard_m} m, draught {boat.draft_m} m, {boat.draftBoardDown_m} m with the board down.
            </p>
            {(boat.guessed?.length ?? 0) > 0 && <p className="soft">{guessedInWords(boat)}</p>}
            <p>
              <button type="button" onClick={() => sheet.open({ sheet: 'sizes' })}>
                Change her sizes
              </button>
            </p>
            <p className="soft">
              By consequence, the planner weighs a danger {book.weights.danger}, unlawful {book.weights.unlawful}, stops
              sailing {book.weights['stops-sailing']}, gets worse {book.weights.worsens}, comfort {book.weights.comfort}
              : our judgement, yours to change. {countInWords(Object.keys(book.mixes).length, 'mix', 'mixes')} in the
              book.
            </p>
            <p>
              <button type="button" className="words" onClick={() => sheet.open({ sheet: 'weights' })}>
                Weights and mixes
              </button>
            </p>
          </section>
          <BoatFile book={book} />
        </div>
      </div>
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {open.sheet === 'sizes' && <SizesSheet book={book} onClose={close} />}
            {open.sheet === 'battery' && <BatterySheet book={book} id={null} onClose={close} />}
            {open.sheet === 'weights' && <WeightsSheet book={book} onClose={close} />}
            {open.sheet === 'zone' && <ZoneSheet book={book} id={open.id} onClose={close} />}
            {open.sheet === 'fitting' && <FittingSheet book={book} id={open.id} onClose={close} />}
            {open.sheet === 'place' && <PlaceSheet book={book} id={open.id} onClose={close} />}
            {open.sheet === 'set-up' && <SetUpSheet book={book} id={open.id} onClose={close} />}
          </>
        )}
      </OpenedSheet>
    </>
  );
}
