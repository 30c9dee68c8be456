/** The papers that are kept with the boat: registration, insurance, manuals, receipts. */
import { useRef, useState } from 'react';
import type { Book, Id, PaperRecord } from '#boat-book';
import { assumedToRenew_d } from '#reckoning';
import { daysBetween } from '#units';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dateInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address, goTo } from '../../../shell/route.ts';
import { paperKindName } from './log-words.ts';
import { type LookedPaper, lookedPaper } from './paper-file.ts';

const PaperSheet = onDemand(() => import('./paper-sheet.tsx'));

/** @param openId  the paper whose sheet is open */
export default function PapersPage({ openId }: { readonly openId: string | undefined }) {
  const book = useOpenBook();
  return (
    <div className="log">
      <h1>Papers</h1>
      <BelowHeading>
        <PapersBelow book={book} openId={openId} />
      </BelowHeading>
    </div>
  );
}

function PapersBelow({ book, openId }: { readonly book: Book; readonly openId: string | undefined }) {
  const today = todayAt(book);
  const chooser = useRef<HTMLInputElement>(null);
  const [fresh, setFresh] = useState<(LookedPaper & { readonly kind: 'paper' }) | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const papers = Object.entries(book.papers).sort(
    ([, a], [, b]) => runsOut(a).localeCompare(runsOut(b)) || a.title.localeCompare(b.title),
  );
  const taken = async (file: File | undefined) => {
    if (file === undefined) return;
    const looked = lookedPaper(file.name, new Uint8Array(await file.arrayBuffer()));
    if (looked.kind === 'refused') return setRefused(looked.because);
    setRefused(null);
    setFresh(looked);
  };
  const open: Id | null = openId !== undefined && book.papers[openId] !== undefined ? openId : null;
  return (
    <>
      <p className="soft">
        Registration, insurance, manuals, receipts: kept on this device and in the boat file, there without a network.
      </p>
      <div className="boat-acts">
        <button type="button" className="main" onClick={() => chooser.current?.click()}>
          Choose a file
        </button>
      </div>
      <input
        ref={chooser}
        type="file"
        hidden
        aria-label="File of a paper"
        accept="application/pdf,image/jpeg,image/png,text/plain"
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = '';
          void taken(file);
        }}
      />
      {refused !== null && (
        <p role="alert" className="field-refused">
          ▲ {refused}
        </p>
      )}
      {papers.length === 0 && (
        <p>None yet. A PDF, a picture of a page or plain text will do, up to 20 MB each and 60 MB together.</p>
      )}
      <ul>
        {papers.map(([id, paper]) => (
          <MarkedLine
            key={id}
            mark={markOf(paper, today)}
            href={address('boat', 'papers', id)}
            title={paper.title}
            note={[
              paperKindName[paper.kind],
              paper.expires !== null && expiryInWords(paper.expires, today),
              paper.fitting !== null && book.fittings[paper.fitting]?.name,
              paper.note,
            ]
              .filter(Boolean)
              .join(' · ')}
          />
        ))}
      </ul>
      {fresh !== null && <PaperSheet key="new" book={book} id={null} fresh={fresh} onClose={() => setFresh(null)} />}
      {fresh === null && open !== null && (
        <PaperSheet
          key={open}
          book={book}
          id={open}
          fresh={null}
          onClose={() => goTo(address('boat', 'papers'), true)}
        />
      )}
    </>
  );
}

const runsOut = ({ expires }: PaperRecord): string => expires ?? '9999';

function markOf({ expires }: PaperRecord, today: string): 'unlawful' | 'wait' | null {
  if (expires === null) return null;
  if (expires < today) return 'unlawful';
  return daysBetween(today, expires) <= assumedToRenew_d ? 'wait' : null;
}

const expiryInWords = (expires: string, today: string): string =>
  expires < today ? `ran out ${dateInWords(expires, today)}` : `good until ${dateInWords(expires, today)}`;
