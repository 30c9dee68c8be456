import { balanceOf, type Carried, mendsOf } from '#trailer';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/**
 * Trailers by another way: the load on ball and axle as the two supports of a beam that is shorn and bent station by station
 * from the tail forward, and what is moved to mend the ball load by weighing her again.
 */
export function otherBalance(): OtherCheck[] {
  const random = seeded(31);
  const trailers = Array.from({ length: 1000 }, () => {
    const ballAhead_m = 2 + 4 * random();
    const carried: Carried[] = Array.from({ length: 2 + Math.floor(12 * random()) }, (_, i) => ({
      name: `thing ${i}`,
      mass_kg: 400 * random() ** 3,
      ahead_m: -3 + 6 * random(),
    }));
    return { ballAhead_m, carried };
  });
  const ofTheWhole = (error_kg: number, carried: readonly Carried[]) =>
    error_kg / carried.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const bent = trailers.map(({ ballAhead_m, carried }) =>
    ofTheWhole(balanceOf(carried, ballAhead_m).ball_kg.likely - ballByBending_kg(carried, ballAhead_m), carried),
  );
  const mended = trailers.flatMap(({ ballAhead_m, carried }) => {
    const laden = carried.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
    const wanted = { low_kg: 0.05 * laden, high_kg: 0.07 * laden };
    const movable = carried.map(({ name }) => ({ name, aftmost_m: -3, foremost_m: 3 }));
    return mendsOf(carried, movable, ballAhead_m, wanted)
      .filter(({ enough }) => enough)
      .map(({ name, forward_m }) => {
        const after = carried.map((each) =>
          each.name === name ? { ...each, ahead_m: each.ahead_m + forward_m } : each,
        );
        const ball = ballByBending_kg(after, ballAhead_m);
        return ofTheWhole(Math.max(wanted.low_kg - ball, ball - wanted.high_kg, 0), carried);
      });
  });
  const check = {
    subject: 'trailer',
    kind: 'derived twice',
    unit: '',
    allowed: 1e-9,
    why: 'none should remain',
  } as const;
  return [
    errorsOf(
      {
        ...check,
        what: 'ball load of trailers with 2 to 13 things on them, over the laden mass',
        against: 'shear and bending summed from the tail: the axle’s push that leaves none at the ball',
      },
      bent,
    ),
    errorsOf(
      {
        ...check,
        what: 'what is left to the wanted ball load after one thing was moved, over the laden mass',
        against: 'the same beam with it moved',
      },
      mended,
    ),
  ];
}

/** Bending at the ball is linear in the axle’s push: two tries find the push that leaves none, and the rest is the ball’s. */
function ballByBending_kg(carried: readonly Carried[], ballAhead_m: number): number {
  const atBall = (push_kg: number) => {
    const loads = [
      ...carried.map(({ mass_kg, ahead_m }) => ({ at: ahead_m, down: mass_kg })),
      { at: 0, down: -push_kg },
    ]
      .concat({ at: ballAhead_m, down: 0 })
      .sort((a, b) => a.at - b.at);
    let [shear, bending, place] = [0, 0, loads[0]!.at];
    let there = Number.NaN;
    for (const { at, down } of loads) {
      bending += shear * (at - place);
      place = at;
      if (at === ballAhead_m && Number.isNaN(there)) there = bending;
      shear += down;
    }
    // what stands ahead of the ball bends it too
    const ahead = loads
      .filter(({ at }) => at > ballAhead_m)
      .reduce((sum, { at, down }) => sum + down * (at - ballAhead_m), 0);
    return there - ahead;
  };
  const [none, one] = [atBall(0), atBall(1)];
  const push = none / (none - one);
  return carried.reduce((sum, { mass_kg }) => sum + mass_kg, 0) - push;
}
