/** Where what is behind a finding is: the page on which it is opened, and the fitting or zone of hers. */
import type { Book, Id } from '#boat-book';
import type { InBook } from '#fit-to-go';
import { address } from '../../shell/route.ts';

export interface PageOf {
  readonly href: string;
  readonly title: string;
}

/** null: it has no page */
export function pageOf(of: InBook | null): PageOf | null {
  switch (of?.collection) {
    case 'jobs':
      return { href: address('work', 'job', of.id), title: 'Open the job' };
    case 'juryRigs':
      return { href: address('work'), title: 'To the jury rigs' };
    case 'dues':
      return { href: address('go', 'dues', of.id), title: 'Open what falls due' };
    case 'loadPaths':
      return { href: address('boat', 'loads', 'path', of.id), title: 'Open the load path' };
    case 'rodes':
      return { href: address('boat', 'loads', 'rode', of.id), title: 'Open the rode' };
    case 'stays':
      return { href: address('boat', 'loads', 'stays', of.id), title: 'Open the stay' };
    case 'boardHoists':
      return { href: address('boat', 'loads', 'hoist', of.id), title: 'Open the hoist' };
    case 'batteries':
      return { href: address('boat', 'battery', of.id), title: 'Open the battery' };
    case 'trailers':
      return { href: address('boat', 'trailer', of.id), title: 'Open the trailer' };
    case 'papers':
      return { href: address('boat', 'papers', of.id), title: 'Open the paper' };
    case 'weather':
      return { href: address('days', 'weather'), title: 'Open the weather' };
    case 'jobDays':
      return { href: address('days'), title: 'Open the plan' };
    default:
      return null;
  }
}

/** The fitting and zone that a record names, or the job it stands in for; null where none does. */
export function whereInBook(book: Book, of: InBook | null): { readonly fitting: Id | null; readonly zone: Id | null } {
  switch (of?.collection) {
    case 'jobs':
    case 'dues': {
      const { fitting = null, zone = null } = book[of.collection][of.id] ?? {};
      return { fitting, zone };
    }
    case 'juryRigs': {
      const rig = book.juryRigs[of.id];
      const job = rig?.job == null ? undefined : book.jobs[rig.job];
      return { fitting: job?.fitting ?? null, zone: rig?.zone ?? job?.zone ?? null };
    }
    case 'loadPaths':
    case 'batteries':
    case 'trailers':
      return { fitting: null, zone: book[of.collection][of.id]?.zone ?? null };
    default:
      return { fitting: null, zone: null };
  }
}
