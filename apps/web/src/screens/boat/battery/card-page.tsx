/** The card of a battery, as it is printed: volts to percent, at rest and with what is on at anchor. */
import './card.css';
import type { ReactNode } from 'react';
import type { Book, Id } from '#boat-book';
import type { CardFigure, CardTable, CardTold } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dateInWords } from '../../../parts/in-words.ts';
import { Printable, SheetIs } from '../../../parts/printable.tsx';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { useCardTold } from './use-power-told.ts';

export default function CardPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const record = book.batteries[id];
  return (
    <div className="boat">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat', 'battery', id)}>
          ‹ {record?.name ?? 'The battery'}
        </a>
      </p>
      {record === undefined ? (
        <>
          <h1>No such battery</h1>
          <p>It was taken out of the book.</p>
        </>
      ) : (
        <Printable button="Print the card">
          <BelowHeading meanwhile={<HeadOnly name={record.name} />}>
            <Printed book={book} id={id} name={record.name} />
          </BelowHeading>
        </Printable>
      )}
    </div>
  );
}

/** Another heading than that of the battery's own page. */
const titleOf = (name: string) => `Card: ${name}`;

/** The card before it is worked out. */
function HeadOnly({ name, children }: { readonly name: string; readonly children?: ReactNode }) {
  return (
    <article className="paper card">
      <header>
        <h1>{titleOf(name)}</h1>
        {children}
      </header>
    </article>
  );
}

function Printed({ book, id, name }: { readonly book: Book; readonly id: Id; readonly name: string }) {
  const telling = useCardTold(book, id);
  switch (telling.state) {
    case 'working out':
      return (
        <>
          <SheetIs sheet="coming" waitsFor="Working out the card …" />
          <HeadOnly name={name} />
        </>
      );
    case 'failed':
      return (
        <HeadOnly name={name}>
          <SheetIs sheet="none" />
          <p role="alert">It could not be worked out: {telling.because}</p>
        </HeadOnly>
      );
    case 'told':
      return (
        <>
          <SheetIs sheet="whole" />
          <Card told={telling.told} boat={book.boat.name} />
        </>
      );
  }
}

function Card({ told, boat }: { readonly told: CardTold; readonly boat: string }) {
  return (
    <article className="paper card">
      <header>
        <h1>{titleOf(told.name)}</h1>
        <p>
          {boat}: {told.about}, {told.made === null ? 'age not known' : `made ${dateInWords(told.made, '')}`}. Card of{' '}
          {dateInWords(told.cardOf, '')}.
        </p>
        <p className="card-condition">{told.condition}</p>
      </header>
      <div className="card-tables">
        {told.tables.map((table) => (
          <Table key={table.title} table={table} told={told} />
        ))}
      </div>
      <section>
        <h2>How to read it</h2>
        {told.use.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </section>
      <section>
        <h2>Take care</h2>
        <p>{told.cautions.join(' ')}</p>
      </section>
      <section>
        <h2>Where the figures come from</h2>
        <p>{told.sources.join('; ')}.</p>
      </section>
    </article>
  );
}

function Table({ table, told }: { readonly table: CardTable; readonly told: CardTold }) {
  const { title, rows, floor_V } = table;
  return (
    <table>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">volts</th>
          {told.temperatures_C.map((heat) => (
            <th key={heat} scope="col">
              {heat} °C
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ volts, figures }, line) => (
          <tr key={volts}>
            <th scope="row">{volts}</th>
            {figures.map((figure, column) => (
              <Cell key={told.temperatures_C[column]} figure={figure} above={rows[line - 1]?.figures[column]} />
            ))}
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{told.floor_pct} % is</th>
          {floor_V.map((volts, column) => (
            <td key={told.temperatures_C[column]}>
              <b>{volts}</b> V
            </td>
          ))}
        </tr>
      </tfoot>
    </table>
  );
}

/** A heavy line over the first figure under the floor. */
function Cell({ figure, above }: { readonly figure: CardFigure; readonly above: CardFigure | undefined }) {
  const edge = figure.underFloor && above?.underFloor === false;
  return (
    <td className={edge ? 'card-edge' : undefined}>
      <b>{figure.likely}</b>
      {figure.band !== '' && <span> ({figure.band})</span>}
    </td>
  );
}
