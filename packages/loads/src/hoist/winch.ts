/** A small drum winch with a crank. */
export interface Winch {
  /** turns of the crank to one of the drum. ≥ 1 */
  readonly gear: number;
  /** from the shaft to the hand. > 0 */
  readonly handle_mm: number;
  /** bare drum, where the wire lies. > 0 */
  readonly drum_mm: number;
  /** between the drum's cheeks. > 0 */
  readonly width_mm: number;
  readonly wire_mm: number;
  /** share of the work lost in it, hoisting. 0–0.9 */
  readonly loss: number;
}

/** Loss of a well-kept winch at a middling load, as a sailing magazine measured it. */
export const usualWinchLoss = 0.1;

/** Middle of the wire's layer on the drum, across. `layer` from 1. */
export function layerDiameter_mm({ drum_mm, wire_mm }: Winch, layer: number): number {
  return drum_mm + (2 * layer - 1) * wire_mm;
}

/** Which layer the last of so much wire lies in, laid side by side with nothing lost between; and the turns it takes. */
export function wound(winch: Winch, length_m: number): { readonly layer: number; readonly turns: number } {
  const aLayer = Math.max(1, Math.floor(winch.width_mm / winch.wire_mm));
  let left_mm = 1000 * length_m;
  let turns = 0;
  // wire round a drum soon makes layers that hold more than any small boat has
  for (let layer = 1; layer <= 1000; layer++) {
    const round_mm = Math.PI * layerDiameter_mm(winch, layer);
    if (left_mm <= aLayer * round_mm) return { layer, turns: turns + left_mm / round_mm };
    left_mm -= aLayer * round_mm;
    turns += aLayer;
  }
  return { layer: 1000, turns };
}

/** Pull on the wire for one of force at the hand, nothing lost: gear × handle's circle ÷ the circle of the layer. */
export function powerRatio(winch: Winch, layer: number): number {
  return (winch.gear * 2 * winch.handle_mm) / layerDiameter_mm(winch, layer);
}

/** Power ratio from the drum's own diameter, as club lectures and catalogues reckon it. */
export function bareDrumRatio(gear: number, handle_mm: number, drum_mm: number): number {
  return (gear * 2 * handle_mm) / drum_mm;
}
