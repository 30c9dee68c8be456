/** Her cover, seen from the side: over all of her where the mast lies under it, else a tent over the cockpit. */
import { deckHeight, houseOf } from './deck-profile.ts';
import type { HullForm } from './hull-form.ts';
import { at, curved, type Line, shape, straight } from './line.ts';
import { gooseneck, lyingMast, onSpar } from './rig-profile.ts';

export function coverLines(form: HullForm, mastUp: boolean): readonly Line[] {
  return mastUp ? tent(form) : overAll(form);
}

function overAll(form: HullForm): Line[] {
  const { sizes, sheer, transomTop } = form;
  const { length_m: length, freeboard_m: freeboard } = sizes;
  const mast = lyingMast(form);
  const ridge = (x: number) =>
    onSpar(mast, Math.max(0, Math.min(1, (x - mast.foot.x) / (mast.head.x - mast.foot.x)))).y + 0.05;
  const skirt = (x: number) => sheer(x) - 0.38 * freeboard;
  const fore = -0.022 * length;
  const aft = transomTop.x + 0.02 * length;
  const across = [0.1, 0.26, 0.42, 0.58, 0.74, 0.9];
  const hung = (share: number) => {
    const x = fore + (aft - fore) * share;
    // it hangs between its ties
    return at(x, skirt(x));
  };
  const outline = shape('cover', [
    [
      at(fore + 0.05 * length, ridge(fore)),
      at(fore + 0.12 * length, ridge(fore) - 0.01),
      at(0.5 * length, ridge(0.5 * length) - 0.015),
      at(aft - 0.08 * length, ridge(aft)),
      at(aft - 0.03 * length, ridge(aft)),
    ],
    [
      at(aft - 0.03 * length, ridge(aft)),
      at(aft - 0.004 * length, sheer(transomTop.x) + 0.05),
      at(aft, skirt(transomTop.x)),
    ],
    [hung(1), hung(0.86), hung(0.72), hung(0.58), hung(0.44), hung(0.3), hung(0.16), hung(0.035)],
    [hung(0.035), at(fore, sheer(0) + 0.02), at(fore + 0.05 * length, ridge(fore))],
  ]);
  const folds = across.map((share, i): Line => {
    const x = fore + (aft - fore) * share;
    const lean = (0.5 - share) * 0.03 * length;
    return curved(`fold ${i + 1}`, 'thin', [
      at(x + lean, ridge(x) - 0.02),
      at(x + lean * 0.6 + 0.012 * length, ridge(x) - 0.45 * (ridge(x) - skirt(x))),
      at(x, skirt(x) + 0.01),
    ]);
  });
  const ties = [0.16, 0.3, 0.44, 0.58, 0.72, 0.86].map((share, i) => {
    const { x, y } = hung(share);
    return straight(`tie ${i + 1}`, 'thin', [at(x, y), at(x - 0.006 * length, y - 0.12 * freeboard)]);
  });
  return [outline, ...folds, ...ties];
}

function tent(form: HullForm): Line[] {
  const { sizes, sheer, transomTop } = form;
  const { length_m: length, boom_m: boom } = sizes;
  const neck = gooseneck(form);
  const house = houseOf(form);
  const fore = house ? house.aft - 0.1 * length : neck.x + 0.05 * length;
  const aft = Math.min(transomTop.x - 0.01 * length, Math.max(fore + 0.2 * length, neck.x + boom * 0.98));
  const top = (x: number) => neck.y - 0.015 * (x - neck.x) + 0.05;
  const foot = (x: number) => sheer(x) - 0.03;
  const mid = (fore + aft) / 2;
  const low = house ? deckHeight(form, fore) + 0.01 : foot(fore);
  return [
    shape('cover', [
      [at(fore, low), at(fore + 0.015 * length, top(fore))],
      [at(fore + 0.015 * length, top(fore)), at(mid, top(mid) - 0.02), at(aft - 0.02 * length, top(aft))],
      [at(aft - 0.02 * length, top(aft)), at(aft, foot(aft))],
      [
        at(aft, foot(aft)),
        at(mid + 0.05 * length, foot(mid + 0.05 * length)),
        at(house ? house.aft : fore, foot(house ? house.aft : fore)),
      ],
    ]),
    ...[0.3, 0.55, 0.78].map((share, i): Line => {
      const x = fore + (aft - fore) * share;
      return curved(`fold ${i + 1}`, 'thin', [
        at(x, top(x) - 0.03),
        at(x + 0.015 * length, (top(x) + foot(x)) / 2),
        at(x + 0.008 * length, foot(x) + 0.02),
      ]);
    }),
  ];
}
