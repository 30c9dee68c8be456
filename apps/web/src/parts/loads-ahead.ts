/**
 * In what order what is loaded on demand is loaded ahead. What a shown component brought along may be asked for by the next
 * tap, and what that brings by the tap after: both come before all else, one straight after another. The rest comes in the
 * order in which it was brought along.
 */
export type Load = () => Promise<unknown>;

export class LoadsAhead {
  /** what has not been asked for yet */
  readonly #waiting = new Set<Load>();
  /** of that, what is to come before the rest, in this order */
  #sooner: readonly Load[] = [];
  /** what a shown component brought along: what it brings in turn comes sooner too */
  readonly #near = new Set<Load>();
  /** what each brought along that was loaded */
  readonly #broughtBy = new Map<Load, readonly Load[]>();

  /** true: nothing is left to load */
  get isEmpty(): boolean {
    return this.#waiting.size === 0;
  }

  add(load: Load): void {
    this.#waiting.add(load);
  }

  /** It is being loaded; what is added from now until `came` is what it brings along. */
  begin(load: Load): () => void {
    this.#waiting.delete(load);
    const before = new Set(this.#waiting);
    return () => {
      const brought = [...this.#waiting].filter((other) => !before.has(other));
      this.#broughtBy.set(load, brought);
      if (this.#near.has(load)) this.#sooner = [...this.#sooner, ...brought];
    };
  }

  /** It stands on the page. */
  shown(load: Load): void {
    if (this.isEmpty) return;
    const near = this.#broughtBy.get(load) ?? [];
    for (const one of near) this.#near.add(one);
    this.#sooner = [...near, ...near.flatMap((one) => this.#broughtBy.get(one) ?? []), ...this.#sooner];
  }

  /** These come before all else; what they bring along waits its turn. */
  first(loads: readonly Load[]): void {
    this.#sooner = [...loads, ...this.#sooner];
  }

  /** What is to be loaded next, and whether it is likely to be asked for soon; null: nothing is left. */
  next(): { readonly load: Load; readonly soon: boolean } | null {
    this.#sooner = this.#sooner.filter((load) => this.#waiting.has(load));
    const [load] = [...this.#sooner, ...this.#waiting];
    return load === undefined ? null : { load, soon: this.#sooner.length > 0 };
  }
}
