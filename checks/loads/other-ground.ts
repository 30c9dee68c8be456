import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const cases = 1000;
const gravity = 9.80665;

/**
 * Rodes by another way: the chain link by link and the rope step by step from the bow down instead of by the catenary's
 * formula; and the rode of least energy instead of the one in balance.
 */
export function otherGround(): OtherCheck[] {
  const drawn = rodes();
  return [
    errorsOf(
      {
        subject: 'loads',
        what: 'chain to veer for a level pull',
        kind: 'derived twice',
        against: 'the chain summed link by link',
        unit: '',
        allowed: 1e-3,
        why: 'links of a finite length',
      },
      levelChains(),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'chain and stretching rope: pull at the bow and reach',
        kind: 'derived twice',
        against: 'pieces of a finite length from the bow down, each in balance',
        unit: '',
        allowed: 1e-3,
        why: 'pieces of a finite length',
      },
      drawn.map((rode) => bySteps(rode)),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'chain and stretching rope: lift at the anchor and reach',
        kind: 'derived twice',
        against: 'the rode’s complementary energy at its least, and its slope',
        unit: '',
        allowed: 1e-3,
        why: 'energy summed over a finite number of places, and its slope taken over a small step',
      },
      drawn.map((rode) => byEnergy(rode)),
    ),
  ];
}

interface Drawn {
  readonly given: Readonly<Record<string, string | number>>;
  readonly load: number;
  readonly height: number;
  /** from the anchor up: length, weight of a metre under water, stretch of a metre for a newton */
  readonly pieces: readonly { readonly l: number; readonly w: number; readonly c: number }[];
  readonly found: Readonly<Record<'bow' | 'anchor' | 'reach' | 'angle' | 'grounded', number>>;
}

const question = (id: string) => questions().find((each) => each.id === id)!;
const inWater = (density: number) => 1 - 1025 / density;

/** Rodes of chain and rope drawn at random, and what the program answers; those that are refused are drawn again. */
function rodes(): Drawn[] {
  const random = seeded(61);
  const between = (low: number, high: number) => low + (high - low) * random();
  const pick = <T>(all: readonly T[]): T => all[Math.floor(all.length * random())]!;
  const asked = question('loads.rode');
  const all: Drawn[] = [];
  for (let tries = 0; all.length < cases && tries < 20 * cases; tries++) {
    const depth = between(1, 20);
    const bow = between(0.3, 1.5);
    const scope = between(1.2, 9);
    const share = random();
    const chain = pick([
      ['5', 0.5],
      ['6', 0.85],
      ['8', 1.45],
      ['10', 2.3],
    ] as const);
    const rope = pick(['nylon', 'polyester', 'polypropylene'] as const);
    const given = {
      load: 10 ** between(1.7, 4),
      depth,
      bow,
      chain: chain[0],
      'chain-length': share * scope * (depth + bow),
      rope,
      'rope-size': pick(['8', '10', '12', '16'] as const),
      'rope-length': (1 - share) * scope * (depth + bow),
      boat: 6,
    };
    const answered = ask(asked, given);
    if (answered.kind !== 'answered' || answered.answer.kind !== 'found') continue;
    const figure = (symbol: string) => {
      const value = figureOf(answered.answer, symbol)?.value;
      return typeof value === 'number' ? value : Number.NaN;
    };
    const w = chain[1] * gravity * inWater(7850);
    const ropeWeight = figure('w rope');
    const c = ropeStretch(rope, Number(given['rope-size']));
    all.push({
      given,
      load: given.load,
      height: depth + bow,
      pieces: [
        { l: given['chain-length'], w, c: 0 },
        { l: given['rope-length'], w: ropeWeight, c },
      ],
      found: {
        bow: figure('T bow'),
        anchor: figure('T anchor'),
        reach: figure('reach'),
        angle: figure('α'),
        grounded: figure('grounded'),
      },
    });
  }
  return all;
}

/** Stretch of a metre for a newton, from the printed breaking loads and the share they stretch by. */
function ropeStretch(rope: 'nylon' | 'polyester' | 'polypropylene', size: number): number {
  const strongest = {
    // kN, the highest printed or recalled
    nylon: { 8: 17.652, 10: 27.4586, 12: 29.42, 16: 51.98 },
    polyester: { 8: 10, 10: 15.69064, 12: 22.6, 16: 40.207265 },
    polypropylene: { 8: 9.41, 10: 14.0235, 12: 19.91, 16: 34.32 },
  }[rope] as Readonly<Record<number, number>>;
  const stretch = { nylon: 16, polyester: 6, polypropylene: 8 }[rope];
  return stretch / 15 / (1000 * strongest[size]!);
}

/** Links summed from a level pull on: each hangs a little steeper by the weight of the ones below it. */
function levelChains(): number[] {
  const random = seeded(62);
  return Array.from({ length: cases }, () => {
    const [load, height] = [50 + 3000 * random(), 1 + 11 * random()];
    const weight = 1.45 * gravity * inWater(7850);
    const link = height / 1000;
    let [up, length, hanging] = [0, 0, 0];
    while (up < height && length < 1000) {
      const vertical = hanging + (weight * link) / 2;
      up += (link * vertical) / Math.sqrt(load ** 2 + vertical ** 2);
      hanging += weight * link;
      length += link;
    }
    const asked = ask(question('loads.rode-to-veer'), {
      load,
      depth: height,
      bow: 0,
      chain: '8',
      'chain-length': 150,
      rope: 'none',
      boat: 6,
      limit: 0,
    });
    const found = asked.kind === 'answered' ? figureOf(asked.answer, 'L')?.value : undefined;
    return typeof found === 'number' ? found / length - 1 : Number.NaN;
  });
}

/** From the bow down with the pull found there: the rode must end on the seabed, at the anchor. */
function bySteps({ load, height, pieces, found }: Drawn): number {
  let vertical = Math.sqrt(Math.max(0, found.bow ** 2 - load ** 2));
  let [down, along] = [0, 0];
  for (const { l, w, c } of [...pieces].reverse()) {
    const steps = 1000;
    const step = l / steps;
    for (let n = 0; n < steps; n++) {
      const middle = vertical - (w * step) / 2;
      // lies on the seabed from where nothing more hangs
      const hangs = Math.max(0, middle);
      const pull = Math.hypot(load, hangs);
      down += (step * (1 + c * pull) * hangs) / pull;
      along += (step * (1 + c * pull) * load) / pull;
      vertical = w > 0 ? Math.max(0, vertical - w * step) : vertical - w * step;
    }
  }
  return Math.max(Math.abs(down / height - 1), Math.abs(along / found.reach - 1));
}

/**
 * The complementary energy of a rode with a level pull H and a vertical pull V at its foot is the sum of T + cT²/2 along
 * it, less V times the height: it is least where the rode is in balance, and its slope in H is the reach.
 */
function byEnergy({ load, height, pieces, found }: Drawn): number {
  const places = 60;
  const weight = pieces.reduce((sum, { l, w }) => sum + l * Math.max(0, w), 0);
  const energy = (level: number, foot: number) => {
    let [sum, vertical] = [-foot * height, foot];
    for (const { l, w, c } of pieces) {
      const step = l / places;
      for (let n = 0; n < places; n++) {
        const middle = vertical + (w * step) / 2;
        // a foot that would be pulled down lies on the seabed instead
        const pull = Math.sqrt(level ** 2 + Math.max(0, middle) ** 2);
        sum += step * (pull + (c * pull ** 2) / 2);
        vertical += w * step;
      }
    }
    return sum;
  };
  const least = (level: number) => {
    let [low, high] = [-weight, Math.max(1, level) * 8];
    const golden = (Math.sqrt(5) - 1) / 2;
    let [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    let [atA, atB] = [energy(level, a), energy(level, b)];
    for (let n = 0; n < 50; n++) {
      if (atA < atB) {
        [high, b, atB] = [b, a, atA];
        a = high - golden * (high - low);
        atA = energy(level, a);
      } else {
        [low, a, atA] = [a, b, atB];
        b = low + golden * (high - low);
        atB = energy(level, b);
      }
    }
    return { foot: (low + high) / 2, energy: energy(level, (low + high) / 2) };
  };
  const step = 1e-3 * load;
  const reach = (least(load + step).energy - least(load - step).energy) / (2 * step);
  const { foot } = least(load);
  const lift = load * Math.tan((found.angle * Math.PI) / 180);
  return Math.max(Math.abs(reach / found.reach - 1), Math.abs(Math.max(0, foot) - lift) / Math.hypot(load, lift));
}
