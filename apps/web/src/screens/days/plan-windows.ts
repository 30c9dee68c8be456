/** In the plan worker: the hours that would suit each job, one after another, with room between for other messages. */
import { jobsByWeight, standingWindow, windowInWords } from '#reckoning';
import { localAt } from '#units';
import type { ShownWindow, WindowRequest, WindowTelling } from './window-report.ts';

/** the request in hand; an older one ends when it sees another number here */
let current = 0;

export async function tellWindows(request: WindowRequest, tell: (telling: WindowTelling) => void): Promise<void> {
  current++;
  const mine = current;
  const { book, now, place, willing } = request;
  const zone = book.places[place]?.timeZone;
  if (zone === undefined) throw new RangeError(`there is no place '${place}' in the book`);
  const today = localAt(Date.parse(now), zone).day;
  for (const job of request.job === null ? jobsByWeight(book, today) : [request.job]) {
    const window = standingWindow(book, job, { now, place, willing });
    const shown: ShownWindow = {
      job,
      title: window.title,
      found: window.kind === 'window' || window.kind === 'any hours',
      words: windowInWords(window, willing, today),
      days: window.kind === 'window' ? window.days : [],
      notAlone: window.kind === 'window' && window.helpers > 0,
    };
    tell({ kind: 'window', window: shown });
    await new Promise((resolve) => setTimeout(resolve));
    if (mine !== current) return;
  }
  tell({ kind: 'all told' });
}
