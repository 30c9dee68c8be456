/**
 * The terms of the trade on the page that is open, a tap from their meaning. The first place of each is underlined in the
 * text and can be tapped there; a button at the end of the page lists all of them, for keys and for whoever hears the
 * page. The text itself is left as it is: what draws it need not know of terms, and nothing of it is cut up.
 */
import { useEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { whenQuiet } from '../../shell/when.ts';
import { onDemand } from '../on-demand.tsx';
import './terms.css';
import { drawTermLines, onlyLines, type TermLines } from './term-lines.ts';
import { type TermOnPage, termsOnPage } from './terms-on-page.ts';

const TermsSheet = onDemand(() => import('./terms-sheet.tsx'));

/** After a change of the page, so long until it is looked through again. [ms] */
const settles_ms = 200;
/** A finger need not hit the word itself. [px] */
const beside = 4;
const above = 10;

type Words = readonly string[];

interface Underlined {
  readonly page: Element;
  readonly terms: readonly TermOnPage[];
  readonly lines: TermLines;
}

export default function TermsHere({ path }: { readonly path: string }) {
  const [onScreen, setOnScreen] = useState<Words>([]);
  const [onSheet, setOnSheet] = useState<{ readonly sheet: Element; readonly words: Words } | null>(null);
  /** a word that was tapped, or all of the page */
  const [asked, setAsked] = useState<string | Words | null>(null);
  const underlined = useRef<Underlined | null>(null);

  useEffect(() => {
    const stop = whenSettled(
      () => underlined.current?.lines.follow(),
      () => {
        const sheet = sheetOnTop();
        const page = sheet ?? document.querySelector('main');
        // what explains the terms itself leaves the page under it as it is
        if (page === null || page.matches('[aria-busy="true"], :has(.terms-told)')) return;
        const terms = termsOnPage(page, path);
        underlined.current?.lines.remove();
        underlined.current = { page, terms, lines: drawTermLines(page, terms) };
        const words = terms.map(({ of }) => of);
        if (sheet === null) setOnScreen((known) => (same(known, words) ? known : words));
        setOnSheet((known) => {
          if (sheet === null) return null;
          return known?.sheet === sheet && same(known.words, words) ? known : { sheet, words };
        });
      },
    );
    return () => {
      stop();
      underlined.current?.lines.remove();
      underlined.current = null;
    };
  }, [path]);
  useEffect(() => {
    const onClick = (event: MouseEvent) => {
      const of = termAt(event, underlined.current);
      if (of !== null) setAsked(of);
    };
    addEventListener('click', onClick);
    return () => removeEventListener('click', onClick);
  }, []);

  return (
    <>
      <WordsLine words={onScreen} onAsk={setAsked} />
      {onSheet && createPortal(<WordsLine words={onSheet.words} onAsk={setAsked} />, onSheet.sheet)}
      {asked !== null && <TermsSheet asked={asked} onClose={() => setAsked(null)} />}
    </>
  );
}

function WordsLine({ words, onAsk }: { readonly words: Words; readonly onAsk: (words: Words) => void }) {
  if (words.length === 0) return null;
  return (
    <p className="terms-here no-print">
      <button type="button" className="words" aria-haspopup="dialog" onClick={() => onAsk(words)}>
        Words on this page explained: {words.length}
      </button>
    </p>
  );
}

const sheetOnTop = (): Element | null => [...document.querySelectorAll('dialog[open]')].at(-1) ?? null;

/** Looks now, and again whenever the page has changed and come to rest, and follows each change; what comes back stops it. */
function whenSettled(follow: () => void, look: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let frame: number | undefined;
  let over = false;
  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(() => whenQuiet(() => !over && look()), settles_ms);
  };
  const watch = new MutationObserver((changes) => {
    if (onlyLines(changes)) return;
    frame ??= requestAnimationFrame(() => {
      frame = undefined;
      follow();
    });
    later();
  });
  const what = { subtree: true, childList: true, characterData: true, attributeFilter: ['open', 'hidden'] };
  watch.observe(document.body, what);
  later();
  return () => {
    over = true;
    clearTimeout(timer);
    if (frame !== undefined) cancelAnimationFrame(frame);
    watch.disconnect();
  };
}

/** The underlined term a tap was meant for. */
function termAt({ target, clientX, clientY }: MouseEvent, underlined: Underlined | null): string | null {
  if (!(target instanceof Element) || target.closest('a, button, label, summary, input, textarea, select')) return null;
  if (!underlined?.page.contains(target) || getSelection()?.isCollapsed === false) return null;
  const hit = underlined.terms.find(({ first }) =>
    [...(first?.getClientRects() ?? [])].some(
      ({ left, right, top, bottom }) =>
        clientX >= left - beside && clientX <= right + beside && clientY >= top - above && clientY <= bottom + above,
    ),
  );
  return hit?.of ?? null;
}

const same = (a: Words, b: Words) => a.length === b.length && a.every((word, i) => word === b[i]);
