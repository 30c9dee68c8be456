/** What a line of plain talk about one piece of work can hold, and what the reader needs to know of the boat. */

export type LineConsequence = 'danger' | 'unlawful' | 'stops-sailing' | 'worsens' | 'comfort';

/** What a line asks of the weather; the same keys and units as a step's conditions. */
export interface LineConditions {
  readonly dry?: true;
  readonly wind_max_kn?: number;
  readonly air_min_C?: number;
  readonly air_max_C?: number;
  readonly humidity_max_pct?: number;
  readonly daylight?: true;
}

/** Names to look for. The maps are those of a boat book, by id. */
export interface Lexicon {
  readonly zones: Readonly<Record<string, { readonly name: string; readonly words: readonly string[] }>>;
  readonly fittings: Readonly<Record<string, { readonly name: string; readonly zone: string }>>;
  readonly setUps: Readonly<
    Record<
      string,
      { readonly name: string; readonly states: readonly { readonly id: string; readonly name: string }[] }
    >
  >;
  readonly outings: Readonly<Record<string, { readonly title: string; readonly date: string }>>;
  /** YYYY-MM-DD at the boat's place */
  readonly today: string;
}

/** One thing understood, with the words of the line it came from: [from, to) in UTF-16 units of the line. */
export interface Understood<T> {
  readonly value: T;
  readonly from: number;
  readonly to: number;
  readonly words: string;
  /** these words also stand in the title */
  readonly inTitle: boolean;
}

/** Hands-on time. [min], 1–1440. Low and high only where the line gave a range; likely is then their middle. */
export interface LineMinutes {
  readonly likely: number;
  readonly low: number | null;
  readonly high: number | null;
}

export interface ReadLine {
  /** what is left of the line when the rest is understood, tidied; empty when nothing is left */
  readonly title: string;
  readonly zone: Understood<string> | null;
  readonly fitting: Understood<string> | null;
  readonly minutes: Understood<LineMinutes> | null;
  readonly hands: Understood<number> | null;
  readonly notAlone: Understood<true> | null;
  readonly setUps: readonly Understood<{ readonly setUp: string; readonly state: string }>[];
  readonly conditions: readonly Understood<LineConditions>[];
  readonly consequence: Understood<LineConsequence> | null;
  /** to be done by the end of this day, YYYY-MM-DD */
  readonly due: Understood<string> | null;
  readonly outing: Understood<string> | null;
  /** a temporary fix: a jury rig */
  readonly temporary: Understood<true> | null;
}
