/**
 * What holds a rope that runs round a post, cleat or drum: the friction of its turns, T = F·e^(µα) (Euler, Eytelwein;
 * as in engineering mechanics exercises).
 *
 * @param pull_N   on the rope. ≥ 0
 * @param friction  µ between rope and post. 0–1
 * @param turn_rad  how far round it goes. ≥ 0
 * @returns         the least force on the tail that still holds it [N]
 */
export function tailForce_N(pull_N: number, friction: number, turn_rad: number): number {
  return pull_N * Math.exp(-friction * turn_rad);
}

/** Turns that hold a pull with a given tail. Infinity where nothing rubs or nobody holds. */
export function turnsToHold(pull_N: number, tail_N: number, friction: number): number {
  if (pull_N <= tail_N) return 0;
  return Math.log(pull_N / tail_N) / (2 * Math.PI * friction);
}
