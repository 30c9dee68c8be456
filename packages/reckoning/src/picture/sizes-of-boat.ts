/** Her sizes as the book has them, to draw her by, and the sizes a new boat's book begins with. */
import type { Boat, BoatBuild } from '#boat-book';
import { type CompleteSizes, completeSizes, type KeelKind, type KnownSizes } from '#picture';

/** What is under her: what was said of it, else what goes by the word for her board. */
export function keelOf({ board, build }: Pick<Boat, 'board' | 'build'>): KeelKind {
  return build?.keel ?? (board === 'keel' ? 'lifting keel' : board);
}

/** All sizes of a boat of the book, and which of them nobody gave. */
export function sizesOfBoat(boat: Boat): CompleteSizes {
  const { sizes, guessed } = completeSizes({
    length_m: boat.length_m,
    beam_m: boat.beam_m,
    freeboard_m: boat.freeboard_m,
    draft_m: boat.draft_m,
    draftBoardDown_m: boat.draftBoardDown_m,
    mastHeight_m: boat.mastHeight_m,
    mastFromBow_m: boat.mastFromBow_m,
    boom_m: boat.boom_m,
    cabin: boat.cabin,
    ...boat.build,
    ...(boat.cabin ? {} : { cabinHeight_m: 0 }),
    keel: keelOf(boat),
  });
  return {
    sizes,
    guessed: [
      ...(boat.guessed ?? []),
      ...guessed.filter((name) => boat.build?.[name as keyof BoatBuild] === undefined),
    ],
  };
}

/** What a keeper says of a boat: her length, and whatever else is known. */
export type SaidOfBoat = Pick<KnownSizes, 'length_m' | 'cabin'> & {
  readonly keel: KeelKind;
  readonly sizes: { readonly [Name in NonNullable<Boat['guessed']>[number]]?: number };
  readonly build: Omit<BoatBuild, 'keel'>;
};

type DrawnBoat = Pick<
  Boat,
  | 'length_m'
  | 'beam_m'
  | 'mastHeight_m'
  | 'mastFromBow_m'
  | 'boom_m'
  | 'freeboard_m'
  | 'draft_m'
  | 'draftBoardDown_m'
  | 'cabin'
  | 'board'
> & { readonly build: BoatBuild; readonly guessed: NonNullable<Boat['guessed']> };

/** The boat's record from what was said: the sizes nobody gave are guessed from her length, and named as guesses. */
export function drawnBoat({ length_m, cabin, keel, sizes, build }: SaidOfBoat): DrawnBoat {
  const all = completeSizes({ length_m, cabin, keel, ...build, ...sizes }).sizes;
  const names = [
    'beam_m',
    'mastHeight_m',
    'mastFromBow_m',
    'boom_m',
    'freeboard_m',
    'draft_m',
    'draftBoardDown_m',
  ] as const;
  const figures = Object.fromEntries(names.map((name) => [name, all[name]])) as Pick<DrawnBoat, (typeof names)[number]>;
  return {
    ...figures,
    length_m,
    cabin,
    board: keel === 'pivoting' || keel === 'vertical' ? keel : 'keel',
    build: { ...build, keel },
    guessed: names.filter((name) => sizes[name] === undefined),
  };
}
