/** What pulls on her and what holds it, on the Boat place: a line for each page. */
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { address } from '../../../shell/route.ts';

/** The pages in the order of the list; `part` is the word in the address that `loads-screen.tsx` shows the page by. */
const lines: readonly { readonly part: string; readonly title: string; readonly note: string }[] = [
  { part: 'path', title: 'Load paths', note: 'every part’s strength, the weakest, what does not fit' },
  { part: 'hoist', title: 'The board’s hoist', note: 'what hand, wire and cord bear, drawn as it goes up' },
  { part: 'stays', title: 'Stays', note: 'how taut each is, before and after towing, and what slackens by itself' },
  {
    part: 'mast',
    title: 'Mast up and down',
    note: 'every force on its way, the worst place, the tackle needed; the vang',
  },
  { part: 'rode', title: 'Ground tackle', note: 'the pull at the bow, how much to veer, the circle she swings in' },
  { part: 'fastenings', title: 'Fastenings', note: 'whether bolts and screws hold; holes, torque, cored decks' },
  { part: 'gauge-card', title: 'Gauge card', note: 'a page to print: sizes to lay pins, wire, threads and grooves on' },
];

export function LoadsSection() {
  return (
    <section className="no-print" aria-labelledby="boat-loads">
      <h2 id="boat-loads">Loads</h2>
      <ul>
        {lines.map(({ part, title, note }) => (
          <MarkedLine key={part} href={address('boat', 'loads', part)} title={title} note={note} />
        ))}
      </ul>
    </section>
  );
}
