/**
 * Two searches of one problem side by side, each on a core of its own, that tell each other their best plan. Neither
 * end knows how what it says crosses to the other: in messages of plain data, in the order they were said.
 */
import type { Plan, Worth } from './plan.ts';
import type { Problem } from './problem.ts';
import { type Search, type SearchStart, startSearch } from './search.ts';
import { compareWorth } from './worth.ts';

/** What the search beside is told. `search` counts the searches begun, so that nothing late is taken for another's. */
export type ToldBeside =
  | {
      readonly kind: 'begin';
      readonly search: number;
      readonly problem: Problem;
      readonly start: Pick<SearchStart, 'seed' | 'plan'>;
    }
  | { readonly kind: 'plan'; readonly search: number; readonly plan: Plan }
  | { readonly kind: 'end' };

/** What the search beside says: each better plan it finds. */
export interface FoundBeside {
  readonly search: number;
  readonly plan: Plan;
}

/** A search and what the other is known to know of it. */
class Exchange {
  private readonly search: Search;
  private known: Worth | null = null;

  constructor(search: Search) {
    this.search = search;
  }

  hear(plan: Plan): void {
    if (this.search.adopt(plan)) this.known = this.search.best()!.worth;
  }

  /** The best plan, where the other does not know one as good; else null. */
  news(): Plan | null {
    const best = this.search.best();
    if (best === null || (this.known !== null && compareWorth(best.worth, this.known) >= 0)) return null;
    this.known = best.worth;
    return best.plan;
  }
}

/** The far end: the search beside, which does nothing until it is told to begin. */
export class SearchBeside {
  private readonly say: (found: FoundBeside) => void;
  private running: { readonly id: number; readonly search: Search; readonly exchange: Exchange } | null = null;

  constructor(say: (found: FoundBeside) => void) {
    this.say = say;
  }

  hear(told: ToldBeside): void {
    switch (told.kind) {
      case 'begin': {
        const search = startSearch(told.problem, { ...told.start, isBeside: true });
        this.running = { id: told.search, search, exchange: new Exchange(search) };
        return;
      }
      case 'plan':
        if (this.running?.id === told.search) this.running.exchange.hear(told.plan);
        return;
      case 'end':
        this.running = null;
    }
  }

  /**
   * Tries so many more plans, and says the best where it is news. whole, ≥ 0
   *
   * @returns false where there is nothing to look for: none is begun, or nothing better is to be found
   */
  advance(iterations: number): boolean {
    const { running } = this;
    if (running === null) return false;
    const { finished } = running.search.advance(iterations);
    const plan = running.exchange.news();
    if (plan !== null) this.say({ search: running.id, plan });
    if (finished) this.running = null;
    return !finished;
  }
}

/** The near end: what one search has of the other beside it. */
export class BesideLine {
  private readonly tell: (told: ToldBeside) => void;
  private search = 0;
  private exchange: Exchange | null = null;
  private found: Plan | null = null;

  constructor(tell: (told: ToldBeside) => void) {
    this.tell = tell;
  }

  /**
   * Begins a search beside one of the same problem.
   *
   * @param start  as the search itself was started; the one beside has another seed
   */
  begin(search: Search, problem: Problem, { seed, plan }: Pick<SearchStart, 'seed' | 'plan'>): void {
    this.search++;
    this.found = null;
    this.exchange = new Exchange(search);
    const start = plan === undefined ? { seed: seed + 1 } : { seed: seed + 1, plan };
    this.tell({ kind: 'begin', search: this.search, problem, start });
  }

  hear({ search, plan }: FoundBeside): void {
    if (search === this.search) this.found = plan;
  }

  /** Gives the search the best plan found beside it, and tells what it has itself; nothing where none is begun. */
  swap(): void {
    const { exchange, found } = this;
    if (exchange === null) return;
    if (found !== null) exchange.hear(found);
    this.found = null;
    const plan = exchange.news();
    if (plan !== null) this.tell({ kind: 'plan', search: this.search, plan });
  }

  /** Ends the search beside; what it says later is not heard. */
  end(): void {
    if (this.exchange === null) return;
    this.search++;
    this.exchange = null;
    this.found = null;
    this.tell({ kind: 'end' });
  }
}
