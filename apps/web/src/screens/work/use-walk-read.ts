/** What a page of plain talk is read as, while it goes on being written. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { type Lexicon, type Proposal, primeReader, readWalkRound } from '#jobs';
import { whenQuiet } from '../../shell/when.ts';

/** What goes beyond this is not read. [characters] */
export const longest = 60_000;
/** A page goes on being written: it is read when the writing rests. */
const rest_ms = 350;

/** The page as it was when the writing last rested, and what would go in of it. */
export function useWalkRead(
  text: string,
  lexicon: Lexicon,
): { readonly page: string; readonly proposals: readonly Proposal[] } {
  const page = useRested(text);
  usePrimed(lexicon);
  const proposals = useMemo(() => readWalkRound(page.slice(0, longest), lexicon).proposals, [page, lexicon]);
  return { page, proposals };
}

/** What the reader makes at its first use, made a little at a time while the keeper still talks. */
function usePrimed(lexicon: Lexicon): void {
  const first = useRef(lexicon);
  useEffect(() => {
    const priming = primeReader(first.current);
    let gone = false;
    const next = () => {
      if (!gone && !priming.next().done) whenQuiet(next);
    };
    whenQuiet(next);
    return () => {
      gone = true;
    };
  }, []);
}

function useRested(text: string): string {
  const [rested, setRested] = useState(text);
  useEffect(() => {
    if (text === '') setRested('');
    const timer = setTimeout(() => setRested(text), rest_ms);
    return () => clearTimeout(timer);
  }, [text]);
  return rested;
}
