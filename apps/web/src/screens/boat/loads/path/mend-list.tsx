/** What was found in a load path, what fails first: each with what would be right, and its job with what is to get, in one tap. */
import { memo } from 'react';
import type { Book, Id } from '#boat-book';
import {
  type LoadPathTold,
  type PathFinding,
  type PathMending,
  pathJob,
  pathToGet,
  pathWantsInWords,
} from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { Mark } from '../../../../parts/mark.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { address } from '../../../../shell/route.ts';
import { takeToGet } from '../../take-to-get.ts';

export const MendList = memo(function MendList({
  book,
  path,
  told,
  mendings,
  onChange,
}: {
  readonly book: Book;
  readonly path: Id;
  readonly told: LoadPathTold;
  readonly mendings: readonly PathMending[];
  readonly onChange: (part: Id) => void;
}) {
  const others = told.findings.filter(({ wrong }) => !mendings.some((mending) => mending.wrong.includes(wrong)));
  const nameOf = (part: Id | undefined) => told.parts.find(({ id }) => id === part)?.name ?? 'the part';
  if (mendings.length === 0 && others.length === 0)
    return (
      <p>
        <Mark of="go" /> Nothing was found that fails or does not fit.
      </p>
    );
  return (
    <ul className="path-found">
      {mendings.map((mending) => (
        <li key={mending.mend}>
          <Mark of={mending.gravity === 'fails' ? 'danger' : 'worsens'} />
          <div>
            <p>
              <b>{mending.gravity === 'fails' ? 'Does not hold.' : 'Look to it.'}</b> {mending.wrong}{' '}
              <span className="path-right">Right would be: {small(mending.right)}</span>
            </p>
            {mending.toGet !== null && <p className="soft small">To get: {pathWantsInWords(mending.toGet)}.</p>}
            <div className="path-acts">
              <MendButton book={book} path={path} mending={mending} />
              <button
                type="button"
                className="words"
                aria-label={`Change: ${nameOf(mending.part)}`}
                onClick={() => onChange(mending.part)}
              >
                Change
              </button>
            </div>
          </div>
        </li>
      ))}
      {others.map((finding) => (
        <li key={finding.wrong}>
          {finding.gravity === 'not known' ? (
            <span className="path-unknown" aria-hidden="true">
              ?
            </span>
          ) : (
            <Mark of={finding.gravity === 'look to it' ? 'worsens' : 'danger'} />
          )}
          <div>
            <p>
              <b>{gravityName[finding.gravity]}</b> {finding.wrong}{' '}
              <span className="path-right">Wanted: {small(finding.right)}</span>
            </p>
            <button
              type="button"
              className="words"
              aria-label={`Change: ${nameOf(finding.parts[0])}`}
              onClick={() => finding.parts[0] !== undefined && onChange(finding.parts[0])}
            >
              Change
            </button>
          </div>
        </li>
      ))}
    </ul>
  );
});

/** After a colon a sentence goes on small. */
const small = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);

const gravityName: Readonly<Record<PathFinding['gravity'], string>> = {
  'does not go together': 'Does not hold.',
  'not known': 'Not known.',
  'look to it': 'Look to it.',
};

/** Makes the job, and puts what is to get on the list; where there is the job already, leads to it. */
function MendButton({
  book,
  path,
  mending,
}: {
  readonly book: Book;
  readonly path: Id;
  readonly mending: PathMending;
}) {
  const { run, refusal } = useRun();
  const record = book.loadPaths[path]!;
  const { title } = pathJob(record, mending, null);
  const does = small(mending.mend);
  const there = Object.entries(book.jobs).find(([, job]) => job.title === title && job.state === 'open');
  const make = async () => {
    const thing = pathToGet(record, mending);
    const taken = await takeToGet(book, thing === null ? [] : [thing], run);
    if (taken !== null) await run('addJob', pathJob(record, mending, taken[0] ?? null));
  };
  return (
    <>
      {there ? (
        <a className="button words" href={address('work', 'job', there[0])}>
          Job: {does}
        </a>
      ) : (
        <button type="button" className="words" onClick={() => void make()}>
          Make a job of it: {does}
        </button>
      )}
      <RefusalLine refusal={refusal} />
    </>
  );
}
