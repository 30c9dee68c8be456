/** Which tin speaks for a wait or a mix of the book, and the law or pot life that comes of it. */
import type { Book, Id, Step, TinRecord, WaitRecord } from '#boat-book';
import { type CureLaw, cureLaws, lawFromTin, type PotLife, potLives, tinSpeaksFor } from '#materials';

export interface TinOfBook {
  readonly id: Id;
  readonly tin: TinRecord;
}

/**
 * The tin that speaks for a family of products: the one named; or of those of the family, one the step takes from the
 * stores before one that is of no thing in the stores, and of several the one read last. A tin that is another thing in
 * the stores than the step takes does not speak, where the step says what it takes of that family.
 *
 * @param family  id in `cureLaws`
 * @param stores  what the step takes from the stores
 * @param named   the tin named by the wait or mix itself; null: none
 */
export function tinFor(
  book: Pick<Book, 'tins'>,
  family: string,
  stores: readonly Id[],
  named: Id | null = null,
): TinOfBook | null {
  const own = named === null ? undefined : book.tins[named];
  if (named !== null && own) return { id: named, tin: own };
  const fits = Object.entries(book.tins)
    .filter(([, tin]) => tinSpeaksFor(tin.family, family))
    .sort(([idA, a], [idB, b]) => (a.readOn === b.readOn ? (idA < idB ? -1 : 1) : a.readOn < b.readOn ? 1 : -1));
  const taken = fits.find(([, { store }]) => store !== null && stores.includes(store));
  const found = taken ?? fits.find(([, { store }]) => store === null) ?? (stores.length === 0 ? fits[0] : undefined);
  return found ? { id: found[0], tin: found[1] } : null;
}

/** The law a wait goes by: the keeper's own on the wait, the tin's, or ours. */
export interface LawOfWait {
  readonly law: CureLaw;
  /** the tin it is from; null: from the wait itself, or ours */
  readonly tin: TinOfBook | null;
}

/** The law a wait of a step goes by. What was written on the wait as 'from the tin' wins over the tin's record. */
export function lawOfWait(book: Pick<Book, 'tins'>, step: Pick<Step, 'stores'>, wait: WaitRecord): LawOfWait {
  const family = wait.law.from === 'the tin' ? null : familyOfWait(wait);
  if (family === null) return { law: wait.law, tin: null };
  const tin = tinFor(book, family, step.stores, wait.tin ?? null);
  const told = tin && lawFromTin(wait.law, family, tin.tin);
  return told ? { law: told.law, tin } : { law: wait.law, tin: null };
}

/** The family a wait is of: as written on it; or the only one of ours that has its law. */
export function familyOfWait({ family, law }: WaitRecord): string | null {
  if (family != null) return cureLaws.some(({ id }) => id === family) ? family : null;
  const same = cureLaws.filter((product) => sameLaw(product.law, law));
  return same.length === 1 ? same[0]!.id : null;
}

function sameLaw(a: CureLaw, b: CureLaw): boolean {
  const figures = (law: CureLaw) =>
    Object.entries(law)
      .filter(([key]) => key !== 'depth_mm')
      .sort(([x], [y]) => (x < y ? -1 : 1));
  return JSON.stringify(figures(a)) === JSON.stringify(figures(b));
}

/** How long a pot of a mix may be used, with where it is from. */
export interface PotLifeOfMix {
  readonly life: Pick<PotLife, 'minutes' | 'at_C' | 'of_g' | 'catalyst_pct' | 'doublesPer_C'>;
  readonly from: 'the tin' | 'the mix' | 'common practice';
  readonly tin: TinOfBook | null;
}

/** The pot life of a mix: its tin's, else what is written on the mix, taken as said of 20 °C. Null family: no law known. */
export function potLifeOfMix(book: Book, mix: Id, stores: readonly Id[]): PotLifeOfMix | null {
  const record = book.mixes[mix];
  if (!record) return null;
  const family = record.family ?? book.tins[record.tin ?? '']?.family ?? null;
  const ours = family === null ? undefined : potLives[family];
  const tin = family === null ? null : tinFor(book, family, stores, record.tin ?? null);
  const said = tin?.tin.potLife ?? null;
  // what the tin does not say of how heat shortens it stays ours
  const doublesPer_C = ours?.doublesPer_C ?? 10;
  if (said !== null)
    return {
      life: {
        minutes: said.minutes,
        at_C: said.at_C,
        of_g: said.of_g ?? ours?.of_g ?? null,
        catalyst_pct: null,
        doublesPer_C,
      },
      from: 'the tin',
      tin,
    };
  return {
    life: {
      minutes: record.potLife_min,
      at_C: 20,
      of_g: ours?.of_g ?? null,
      catalyst_pct: ours?.catalyst_pct ?? null,
      doublesPer_C,
    },
    from: 'the mix',
    tin,
  };
}
