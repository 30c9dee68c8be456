import type { LineConsequence } from './read-line-parts.ts';

/** How long a makeshift is usually trusted by what it is made of. Common practice, our figures: the keeper's look decides. */
const kinds = [
  { kind: 'a bung or plug', days: 7, words: /bung|plug|cork|rag|stuff|matchstick/u },
  { kind: 'tape', days: 14, words: /tape|taped/u },
  { kind: 'a clamp or wedge', days: 14, words: /clamp|wedge|prop|peg|jubilee|clip/u },
  { kind: 'elastic', days: 14, words: /bungee|elastic|shock ?cord/u },
  { kind: 'cable ties', days: 30, words: /cable tie|zip tie/u },
  { kind: 'a lashing', days: 30, words: /lash|cord|rope|line|twine|strop|tied|seizing/u },
  { kind: 'wire', days: 30, words: /wire/u },
  { kind: 'glue or filler', days: 60, words: /glue|epoxy|filler|sealant|patch/u },
] as const;

/** What a makeshift is made of, as one would say it: each has a usual trust of its own. */
export const makeshifts: readonly string[] = kinds.map(({ kind }) => kind);

/** How far one trusts it by what happens if it lets go. Our judgement. */
const byConsequence: Readonly<
  Record<LineConsequence, { readonly days: number; readonly wind_kn: number | null; readonly notOnRoad: boolean }>
> = {
  danger: { days: 7, wind_kn: 10, notOnRoad: true },
  unlawful: { days: 7, wind_kn: null, notOnRoad: true },
  'stops-sailing': { days: 14, wind_kn: 15, notOnRoad: false },
  worsens: { days: 30, wind_kn: null, notOnRoad: false },
  comfort: { days: 90, wind_kn: null, notOnRoad: false },
};

export interface UsualTrust {
  /** days from the day it was made */
  readonly days: number;
  readonly wind_max_kn: number | null;
  readonly notOnRoad: boolean;
  /** what it was taken for; null: its words name nothing known */
  readonly kind: string | null;
}

/**
 * How far a makeshift is usually trusted: the shorter of what it is made of and what happens if it lets go.
 *
 * Source: common practice; the figures are our judgement. Where its strength is known in a load path, that decides.
 *
 * @param words  what holds what, as the keeper says it
 * @param consequence  of the job it stands in for; null: none is known, and it counts as `stops-sailing`
 */
export function usualTrust(words: string, consequence: LineConsequence | null): UsualTrust {
  const made = kinds.filter(({ words: of }) => of.test(words.toLowerCase()));
  // of two the weaker
  const weakest = made.reduce<(typeof kinds)[number] | null>(
    (least, each) => (!least || each.days < least.days ? each : least),
    null,
  );
  const left = byConsequence[consequence ?? 'stops-sailing'];
  return {
    days: Math.min(left.days, weakest?.days ?? left.days),
    wind_max_kn: left.wind_kn,
    notOnRoad: left.notOnRoad,
    kind: weakest?.kind ?? null,
  };
}
