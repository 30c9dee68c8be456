/** The road trailer under her, seen from the side, in the boat's own metres: x from her stem, y from her waterline. */
import type { HullForm } from './hull-form.ts';
import { at, circle, curved, type Line, shape, straight } from './line.ts';
import { rudderDepth } from './steering-profile.ts';

export interface TrailerSizes {
  /** from her stem forward to the ball of the coupling */
  readonly couplingAhead_m: number;
  /** from her stem aft to the axle, or to the middle between two */
  readonly axleFromBow_m: number;
  readonly axles: 1 | 2;
  /** over all */
  readonly wheel_m: number;
  /** the lowest of her that is fixed, over the road */
  readonly keelUp_m: number;
}

export interface OnTrailer {
  readonly lines: readonly Line[];
  readonly sizes: TrailerSizes;
  readonly guessed: readonly (keyof TrailerSizes)[];
  /** height of the ground. [m] from the waterline, below 0 */
  readonly ground_m: number;
  /** of the frame's upper edge */
  readonly frame_m: number;
  /** where the ball is, and the axle's middle */
  readonly coupling: { readonly x: number; readonly y: number };
  readonly axle: { readonly x: number; readonly y: number };
}

/**
 * The trailer drawn under her.
 *
 * @param form   her hull
 * @param known  what is known of the trailer. [m]; what is not is guessed: the axle under six tenths of her length, the ball
 *               a quarter of her length ahead of her stem, which is our judgement
 */
export function onTrailer(
  form: HullForm,
  known: { readonly [Name in keyof TrailerSizes]?: TrailerSizes[Name] | undefined } = {},
): OnTrailer {
  const { sizes: boat, bottom, sheer, transomFoot } = form;
  const { length_m: length } = boat;
  // what is fixed under her stands clear of the road
  const under = Math.max(boat.draft_m, form.body_m);
  const clear = Math.max(
    form.body_m + 0.6,
    under + 0.24,
    boat.rudder === 'under the hull' ? rudderDepth(form) + 0.15 : 0,
  );
  const usual: TrailerSizes = {
    couplingAhead_m: Math.round((0.16 * length + 0.45) * 100) / 100,
    axleFromBow_m: Math.round(0.61 * length * 100) / 100,
    axles: length > 7 ? 2 : 1,
    wheel_m: length > 5 ? 0.58 : 0.54,
    keelUp_m: Math.round((clear - under) * 100) / 100,
  };
  const names = Object.keys(usual) as (keyof TrailerSizes)[];
  const guessed = names.filter((name) => known[name] === undefined);
  const sizes: TrailerSizes = {
    ...usual,
    ...Object.fromEntries(names.filter((name) => known[name] !== undefined).map((name) => [name, known[name]])),
  };
  const ground = -under - sizes.keelUp_m;
  const frame = Math.min(ground + 0.46, -form.body_m - 0.12);
  const radius = sizes.wheel_m / 2;
  const axle = at(sizes.axleFromBow_m, ground + radius);
  const coupling = at(-sizes.couplingAhead_m, ground + 0.45);
  const deep = 0.09;
  const rear = Math.min(transomFoot.x - 0.05 * length, length);
  const kneeX = -0.02 * length;
  const beam = shape('trailer frame', [
    [at(coupling.x + 0.16, coupling.y + 0.02), at(kneeX, frame)],
    [at(kneeX, frame), at(rear, frame)],
    [at(rear, frame), at(rear, frame - deep)],
    [at(rear, frame - deep), at(kneeX, frame - deep)],
    [at(kneeX, frame - deep), at(coupling.x + 0.16, coupling.y - deep + 0.04)],
  ]);
  const head = shape('coupling', [
    [
      at(coupling.x + 0.24, coupling.y + 0.045),
      at(coupling.x + 0.06, coupling.y + 0.06),
      at(coupling.x - 0.05, coupling.y + 0.035),
      at(coupling.x - 0.07, coupling.y - 0.04),
    ],
    [at(coupling.x - 0.07, coupling.y - 0.04), at(coupling.x + 0.24, coupling.y - 0.07)],
  ]);
  // the bow post stands under the bow eye, with its stop against the stem
  const eyeY = 0.42 * sheer(0);
  const stem = stemAt(form, eyeY);
  const post = at(Math.min(stem.x - 0.17, -0.06), eyeY + 0.02);
  const heel = at(
    post.x - 0.32,
    frame + (coupling.y - frame) * Math.max(0, Math.min(1, (kneeX - (post.x - 0.32)) / (kneeX - coupling.x))),
  );
  const lines: Line[] = [
    straight('bow post', 'heavy', [heel, post]),
    straight('bow post brace', 'outline', [
      at(post.x + 0.06, heel.y - 0.02),
      at(heel.x + (post.x - heel.x) * 0.55, heel.y + (post.y - heel.y) * 0.55),
    ]),
    circle('winch', 'outline', at(post.x - 0.1, post.y - 0.12), 0.07),
    straight('winch line', 'thin', [at(post.x - 0.04, post.y - 0.07), at(stem.x + 0.02, eyeY - 0.1)]),
    shape('bow stop', [
      [at(post.x, post.y - 0.02), at(stem.x - 0.015, eyeY + 0.09)],
      [at(stem.x - 0.015, eyeY + 0.09), at(stemAt(form, eyeY - 0.05).x - 0.015, eyeY - 0.05)],
      [at(stemAt(form, eyeY - 0.05).x - 0.015, eyeY - 0.05), at(post.x, post.y - 0.07)],
    ]),
  ];
  for (const [i, share] of [0.2, 0.4, 0.6, 0.8, 0.94].entries()) {
    const x = share * length;
    const roller = Math.min(0.05, Math.max(0.02, (bottom(x) - frame) / 3));
    const y = bottom(x) - roller;
    if (y > frame + roller) lines.push(straight(`roller post ${i + 1}`, 'outline', [at(x, frame), at(x, y)]));
    lines.push(circle(`roller ${i + 1}`, 'outline', at(x, y), roller));
  }
  lines.push(beam, head);
  const wheelsAt = sizes.axles === 2 ? [axle.x - radius * 1.12, axle.x + radius * 1.12] : [axle.x];
  for (const [i, x] of wheelsAt.entries()) {
    lines.push(circle(`wheel ${i + 1}`, 'outline', at(x, axle.y), radius));
    lines.push(circle(`rim ${i + 1}`, 'thin', at(x, axle.y), radius * 0.6));
    lines.push(circle(`hub ${i + 1}`, 'thin', at(x, axle.y), radius * 0.17));
  }
  const guard = (angle: number, out: number, centre: number) =>
    at(centre + (radius + out) * Math.cos(angle), axle.y + (radius + out) * Math.sin(angle));
  const arc = (centre: number, from: number, to: number) =>
    Array.from({ length: 7 }, (_, i) => guard(from + ((to - from) * i) / 6, 0.07, centre));
  lines.push(
    wheelsAt.length === 1
      ? curved('mudguard', 'outline', arc(axle.x, 2.95, 0.19))
      : curved('mudguard', 'outline', [...arc(wheelsAt[0]!, 2.95, 1.45), ...arc(wheelsAt[1]!, 1.69, 0.19)]),
  );
  const jockey = at(coupling.x + 0.5, ground + 0.11);
  lines.push(
    straight('jockey leg', 'outline', [at(jockey.x, coupling.y + 0.25), at(jockey.x, jockey.y)]),
    circle('jockey wheel', 'outline', jockey, 0.11),
  );
  lines.push(
    shape('light board', [
      [at(length + 0.03, frame + 0.3), at(length + 0.08, frame + 0.3)],
      [at(length + 0.08, frame + 0.3), at(length + 0.08, frame + 0.14)],
      [at(length + 0.08, frame + 0.14), at(length + 0.03, frame + 0.14)],
    ]),
    straight('light board arm', 'outline', [at(rear - 0.02, frame - 0.02), at(length + 0.03, frame + 0.2)]),
  );
  return { lines, sizes, guessed, ground_m: ground, frame_m: frame, coupling, axle };
}

/** Where the stem is at a height over the water. */
function stemAt({ underside }: HullForm, y: number): { readonly x: number; readonly y: number } {
  for (let i = 1; i < underside.length; i++) {
    const [above, under] = [underside[i - 1]!, underside[i]!];
    if (above.y >= y && under.y <= y) {
      const share = (above.y - y) / (above.y - under.y || 1);
      return at(above.x + (under.x - above.x) * share, y);
    }
  }
  return underside[0]!;
}
