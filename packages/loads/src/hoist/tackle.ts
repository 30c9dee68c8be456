/** What is done with a load: friction works against the hand only when it hoists. */
export type Handling = 'hoisting' | 'holding' | 'lowering';

/** Blocks by how their sheaves run, with what the rope gains in tension over each sheave it is pulled across. */
export const bearings = {
  ball: { title: 'ball or roller bearing', factor: 1.04 },
  plain: { title: 'plain bearing', factor: 1.09 },
  old: { title: 'wooden, dry or stiff', factor: 1.15 },
} as const;
export type Bearing = keyof typeof bearings;

/** How a tackle is rove. Turning blocks after it count apart. */
export interface Reeving {
  /** sheaves in the block that moves with the load. 0–8 */
  readonly movingSheaves: number;
  /** sheaves in the block that stands. 0–8 */
  readonly fixedSheaves: number;
  /** where the rope's end is made fast: to the becket of one of the blocks, or beside it */
  readonly endAt: 'moving' | 'fixed';
}

/** A tackle as it works on what its moving block carries. */
export interface Tackle {
  /** parts of rope at the moving block. ≥ 1 */
  readonly parts: number;
  /** sheaves the rope runs over, those that only turn the fall among them. ≥ parts − 1 */
  readonly sheaves: number;
  /** of one sheave. ≥ 1 */
  readonly factor: number;
}

/** A reeving as it works, or what is wrong with it. */
export type Rove =
  | {
      readonly kind: 'rove';
      /** parts of rope at the moving block */
      readonly parts: number;
      /** sheaves the rope runs over within the tackle */
      readonly sheaves: number;
      readonly pulledFrom: 'moving' | 'fixed';
    }
  | { readonly kind: 'does not reeve'; readonly wrong: string; readonly right: string };

/**
 * Follows the rope through a tackle from its fast end: it goes to the other block, and on from block to block until
 * all sheaves are used. A moving sheave has two parts at the moving block, an end made fast there one.
 */
export function rove({ movingSheaves, fixedSheaves, endAt }: Reeving): Rove {
  const atMoving = endAt === 'moving';
  // from the moving block the rope goes first to a sheave that stands, and turn and turn about
  const less = atMoving ? movingSheaves : fixedSheaves;
  const more = atMoving ? fixedSheaves : movingSheaves;
  if (more !== less && more !== less + 1) {
    const other = atMoving ? 'standing' : 'moving';
    return {
      kind: 'does not reeve',
      wrong: `with its end at the ${atMoving ? 'moving' : 'standing'} block a rope cannot run over ${movingSheaves} moving and ${fixedSheaves} standing sheaves in turn`,
      right: `give as many ${other} sheaves as the other block has, or one more; blocks that only turn the fall count apart`,
    };
  }
  const sheaves = movingSheaves + fixedSheaves;
  if (sheaves === 0)
    return {
      kind: 'does not reeve',
      wrong: 'there is no sheave',
      right: 'give 1 sheave or more, or ask without a tackle',
    };
  return {
    kind: 'rove',
    parts: 2 * movingSheaves + (atMoving ? 1 : 0),
    sheaves,
    // the last sheave is at the block that has one more, or at the fast end's own
    pulledFrom: (more === less + 1) === atMoving ? 'fixed' : 'moving',
  };
}

/** What the tension grows by over each sheave towards the hand, by what is done with the load. 1: nothing counted on. */
export function towardsHand(factor: number, handling: Handling): number {
  if (handling === 'hoisting') return factor;
  return handling === 'holding' ? 1 : 1 / factor;
}

/**
 * Force on the fall of a tackle. Hoisting, every sheave takes its share from the hand; lowering, from the load;
 * holding, none is counted: friction is not a brake.
 *
 * Formula: load ÷ fall = Σ K^(−j) over the parts at the moving block, j the sheaves between the part and the fall; with N
 * parts and S sheaves (K^N − 1)/(K^S·(K − 1)). Sheave factor K 1.04 for ball, 1.09 for plain bearings: as printed beside
 * the block and tackle approximation of an engineering formula collection (formula recalled).
 *
 * @param load_N   on the moving block. ≥ 0
 * @param parts    at the moving block. ≥ 1
 * @param sheaves  the rope runs over, those that only turn the fall among them. ≥ parts − 1
 * @param factor   of one sheave. ≥ 1
 */
export function fallForce_N(
  load_N: number,
  parts: number,
  sheaves: number,
  factor: number,
  handling: Handling,
): number {
  const k = towardsHand(factor, handling);
  if (Math.abs(k - 1) < 1e-12) return load_N / parts;
  return (load_N * k ** sheaves * (k - 1)) / (k ** parts - 1);
}

/** Share of the hand's work that reaches the load, hoisting. 0–1 */
export function tackleEfficiency(parts: number, sheaves: number, factor: number): number {
  return 1 / (parts * fallForce_N(1, parts, sheaves, factor, 'hoisting'));
}
