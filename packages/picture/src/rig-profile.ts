/** Mast, boom and stays, seen from the side: standing, or lying on deck for the road. */
import { deckHeight } from './deck-profile.ts';
import type { HullForm } from './hull-form.ts';
import { at, curved, type Line, type Point, straight } from './line.ts';

/** The mast as a straight line from foot to head. */
export interface Spar {
  readonly foot: Point;
  readonly head: Point;
}

/** how far the head stands aft of the foot, of the mast's length */
const rake = 0.012;

/** The mast standing: its foot on deck, or through it on the bottom of the boat. */
export function standingMast(form: HullForm): Spar {
  const { mastFromBow_m: x, mastHeight_m: height, mastStep } = form.sizes;
  const y = mastStep === 'deck' ? deckHeight(form, x) : form.bottom(x) + 0.3 * form.body_m;
  return { foot: at(x, y), head: at(x + rake * height, y + height * Math.sqrt(1 - rake ** 2)) };
}

/** The mast lying: its foot over the bow, its head aft past the crutch at the transom. */
export function lyingMast(form: HullForm): Spar {
  const { length_m: length, mastHeight_m: height, cabinHeight_m: cabin } = form.sizes;
  const bow = cabin > 0 ? form.sheer(0) + Math.min(0.55, 0.08 * length) : form.sheer(0) + 0.12;
  const foot = at(-0.05 * length, Math.max(bow, deckHeight(form, 0.5 * length) + 0.12) + 0.05);
  return { foot, head: at(foot.x + height * Math.sqrt(1 - 0.015 ** 2), foot.y + 0.015 * height) };
}

/** A place on a spar, 0 at its foot and 1 at its head. */
export function onSpar({ foot, head }: Spar, share: number): Point {
  return at(foot.x + (head.x - foot.x) * share, foot.y + (head.y - foot.y) * share);
}

/** Where the stays meet the mast, as a share of its length. */
export function staysMeet({ sizes: { rig } }: HullForm): number {
  return { masthead: 0.985, fractional: 0.85, gaff: 0.9, unstayed: 1 }[rig];
}

/** The boom's fore end. */
export function gooseneck(form: HullForm): Point {
  const mast = standingMast(form);
  const { mastHeight_m: height, length_m: length } = form.sizes;
  // high enough to sit under, and never below the deck
  const over = Math.max(mast.foot.y, deckHeight(form, mast.foot.x)) + Math.min(0.1 * height, 0.1 * length);
  return onSpar(mast, (over - mast.foot.y) / (mast.head.y - mast.foot.y));
}

/** Where the shrouds are fastened at the deck: beside the mast and a little aft. [m] from the stem */
export function chainplate({ sizes: { mastFromBow_m: x, length_m: length } }: HullForm): number {
  return Math.min(0.95 * length, x + 0.045 * length);
}

export function standingRig(form: HullForm): readonly Line[] {
  const { sizes, sheer, transomTop } = form;
  const { length_m: length, boom_m: boom, mastHeight_m: height, rig, mastStep } = sizes;
  if (height === 0) return [];
  const mast = standingMast(form);
  const neck = gooseneck(form);
  const end = at(neck.x + boom, neck.y - 0.015 * boom);
  const deckX = mast.foot.x;
  const deck = Math.max(mast.foot.y, deckHeight(form, deckX));
  const through = onSpar(mast, (deck - mast.foot.y) / (mast.head.y - mast.foot.y));
  const high = onSpar(mast, staysMeet(form));
  const plateX = chainplate(form);
  const plate = at(plateX, sheer(plateX) - 0.01);
  const lines: Line[] = [];
  if (mastStep === 'keel') lines.push(straight('mast, below deck', 'hidden', [mast.foot, through]));
  lines.push(straight('mast', 'heavy', [through, mast.head]));
  if (boom > 0) {
    lines.push(straight('boom', 'heavy', [neck, end]));
    lines.push(
      straight('vang', 'thin', [
        onSpar(mast, (deck + 0.05 - mast.foot.y) / height),
        at(neck.x + 0.33 * boom, neck.y - 0.005 * boom),
      ]),
    );
    const sheetX = Math.min(transomTop.x - 0.02 * length, end.x - 0.06 * boom);
    lines.push(
      straight('mainsheet', 'thin', [
        at(sheetX - 0.01 * length, neck.y - 0.014 * boom),
        at(transomTop.x - 0.03 * length, sheer(transomTop.x) + 0.01),
      ]),
    );
  }
  if (rig !== 'unstayed') {
    // swept a little aft, at half the height of the stays
    const root = onSpar(mast, staysMeet(form) * 0.53);
    const tip = at(root.x + 0.012 * length, root.y - 0.004 * height);
    const low = at(plateX + 0.02 * length, plate.y);
    lines.push(straight('forestay', 'thin', [high, at(0.012 * length, sheer(0.012 * length))]));
    lines.push(straight('shroud', 'thin', [high, tip, plate]));
    lines.push(straight('lower shroud', 'thin', [onSpar(mast, staysMeet(form) * 0.5), low]));
    lines.push(straight('spreader', 'outline', [root, tip]));
    lines.push(
      straight('shroud plate', 'outline', [at(plateX, sheer(plateX) + 0.05), at(plateX, sheer(plateX) - 0.02)]),
    );
  }
  if (rig === 'masthead' || rig === 'fractional')
    lines.push(straight('backstay', 'thin', [mast.head, at(transomTop.x - 0.01 * length, transomTop.y)]));
  if (rig === 'gaff') {
    const jaws = onSpar(mast, 0.7);
    const peak = at(jaws.x + 0.55 * boom, jaws.y + 0.36 * boom);
    lines.push(straight('gaff', 'heavy', [jaws, peak]));
    lines.push(straight('peak halyard', 'thin', [onSpar(mast, 0.97), at(jaws.x + 0.3 * boom, jaws.y + 0.2 * boom)]));
    lines.push(straight('topping lift', 'hidden', [onSpar(mast, 0.9), end]));
  } else if (boom > 0) lines.push(straight('topping lift', 'hidden', [mast.head, end]));
  return lines;
}

export function lyingRig(form: HullForm): readonly Line[] {
  const { sizes, sheer } = form;
  const { length_m: length, mastHeight_m: height, cabinHeight_m: cabin, boom_m: boom, rig } = sizes;
  if (height === 0) return [];
  const mast = lyingMast(form);
  const crutchX = Math.min(0.93 * length, mast.head.x - 0.1);
  const on = (x: number) => onSpar(mast, (x - mast.foot.x) / (mast.head.x - mast.foot.x));
  const crutch = on(crutchX);
  const lines: Line[] = [straight('mast, lying', 'heavy', [mast.foot, mast.head])];
  if (cabin <= 0)
    lines.push(straight('bow rest', 'outline', [at(0.03 * length, sheer(0.03 * length)), on(0.03 * length)]));
  lines.push(straight('crutch', 'outline', [at(crutchX, deckHeight(form, crutchX)), at(crutchX, crutch.y - 0.02)]));
  lines.push(
    straight('crutch fork', 'outline', [
      at(crutchX - 0.06, crutch.y + 0.05),
      at(crutchX, crutch.y - 0.03),
      at(crutchX + 0.06, crutch.y + 0.05),
    ]),
  );
  if (boom > 0 && on(0.2 * length + boom).x < crutchX) {
    const [fore, aft] = [on(0.2 * length), on(0.2 * length + boom)];
    lines.push(straight('boom, lashed', 'outline', [at(fore.x, fore.y - 0.07), at(aft.x, aft.y - 0.07)]));
  }
  if (rig !== 'unstayed') {
    const spreader = onSpar(mast, staysMeet(form) * 0.53);
    lines.push(straight('spreader', 'outline', [spreader, at(spreader.x - 0.05, spreader.y + 0.07)]));
    const [from, to] = [onSpar(mast, 0.08), onSpar(mast, Math.min(staysMeet(form), 0.9))];
    const sag = (share: number) =>
      at(
        from.x + (to.x - from.x) * share,
        from.y + (to.y - from.y) * share - 0.07 * Math.sin(Math.PI * share) ** 0.7 - 0.02,
      );
    lines.push(curved('stays, bundled', 'thin', [0, 0.12, 0.3, 0.5, 0.7, 0.88, 1].map(sag)));
  }
  for (const share of [0.2, 0.4, 0.58, 0.78]) {
    const { x, y } = onSpar(mast, share);
    lines.push(straight(`lashing at ${share}`, 'thin', [at(x, y + 0.035), at(x, y - 0.1)]));
  }
  return lines;
}
