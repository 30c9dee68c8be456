/** What two devices answered differently, or one took out while the other used it: the keeper chooses. */
import { useState } from 'react';
import type { Book, Json, OpenQuestion } from '#boat-book';
import { RefusalLine } from '../parts/form.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { useRun } from '../parts/use-run.ts';

export default function TwoAnswers({
  book,
  questions,
}: {
  readonly book: Book;
  readonly questions: readonly OpenQuestion[];
}) {
  const [open, setOpen] = useState(false);
  const { run, refusal } = useRun();
  return (
    <div className="shell-line" role="status">
      <span>
        {questions.length === 1 ? 'One thing was' : `${questions.length} things were`} answered differently on two
        devices.
      </span>
      <button type="button" className="words" onClick={() => setOpen(true)}>
        Choose
      </button>
      {open && (
        <Sheet title="Two answers" onClose={() => setOpen(false)}>
          <RefusalLine refusal={refusal} />
          <ul>
            {questions.map((question) => {
              const { collection, id, field, answers } = question;
              const removed = field === 'removed';
              return (
                <li key={`${collection} ${id} ${field}`} className="shell-question">
                  <h3>{nameOf(book, question)}</h3>
                  <p className="soft">
                    {removed ? 'It was taken out on one device while it was changed on another.' : fieldName(field)}
                  </p>
                  {(removed ? ['keep', 'remove'] : answers).map((answer) => (
                    <button
                      key={JSON.stringify(answer)}
                      type="button"
                      onClick={() => void run('chooseAnswer', { collection, id, field, answer })}
                    >
                      {removed ? (answer === 'keep' ? 'Keep it' : 'Take it out') : inWords(answer)}
                    </button>
                  ))}
                </li>
              );
            })}
          </ul>
          {questions.length === 0 && <p>All chosen.</p>}
        </Sheet>
      )}
    </div>
  );
}

function nameOf(book: Book, { collection, id }: OpenQuestion): string {
  if (collection === 'boat') return book.boat.name;
  const record: unknown = (book[collection] as Readonly<Record<string, unknown>>)[id];
  if (typeof record !== 'object' || record === null) return collection;
  if ('title' in record) return String(record.title);
  if ('name' in record) return String(record.name);
  return 'date' in record ? String(record.date) : collection;
}

/** 'wind_max_kn' is 'wind max, kn'; 'beddedWith' is 'bedded with' */
function fieldName(field: string): string {
  return field.replace(/_/g, ' ').replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}

function inWords(answer: Json): string {
  if (answer === null || answer === '') return 'nothing';
  if (typeof answer === 'boolean') return answer ? 'yes' : 'no';
  if (typeof answer !== 'object') return String(answer);
  if (Array.isArray(answer)) return answer.length === 0 ? 'none' : answer.map((one: Json) => inWords(one)).join(', ');
  return Object.entries(answer)
    .map(([key, value]) => `${fieldName(key)} ${inWords(value as Json)}`)
    .join(', ');
}
