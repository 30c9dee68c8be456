import { ask, figureOf, type Question } from '#working';
import { markdownTable } from '../checks/markdown-table.ts';

type Given = Readonly<Record<string, string | number>>;

/** An iron plate on its pivot, as such a boat of five or six metres could have it. Invented. */
const plate: Given = {
  density: 7200,
  'mass-along': 0.62,
  'mass-square': 0.02,
  'attached-along': 1.02,
  'attached-square': 0.12,
  'lead-aft': 0.78,
  'lead-up': 0.62,
  'down-to': 62,
  'up-to': 0,
};
/** Two plain lead blocks, two parts, a small winch. Invented. */
const gear: Given = {
  leads: 2,
  bearing: 'plain',
  gear: 'both',
  'moving-sheaves': 1,
  'fixed-sheaves': 1,
  'end-at': 'fixed',
  'winch-gear': 1,
  handle: 140,
  drum: 50,
  width: 30,
};
const [before_kg, after_kg] = [60, 90];
const crankLimit_N = 120;

/** The worked page of a board made half as heavy again: every figure in it is asked of the questions when it is made. */
export function heavierBoard(questions: readonly Question[]): string {
  const figures = (id: string, given: Given) => {
    const found = questions.find((each) => each.id === id);
    if (!found) throw new RangeError(`there is no question ${id}`);
    const asked = ask(found, given);
    if (asked.kind !== 'answered')
      throw new RangeError(asked.faults.map(({ where, wrong }) => `${where}: ${wrong}`).join('; '));
    return (symbol: string): number => {
      const value = figureOf(asked.answer, symbol)?.value;
      if (typeof value !== 'number') throw new RangeError(`${id} has no figure ${symbol}`);
      return value;
    };
  };
  const hoisted = (mass: number, water: 'air' | 'sea', cord_mm: number) =>
    figures('loads.board-hoist', { ...plate, ...gear, mass, water, wire: cord_mm });
  const rows = [before_kg, after_kg].flatMap((mass) =>
    (['air', 'sea'] as const).map((water) => ({ mass, water, of: hoisted(mass, water, 8) })),
  );
  const wire = figures('loads.wire', { laid: '7x19', size: 4 });
  const bend = figures('loads.bend', { ratio: 45 / 4 });
  const wireLeft_N = 1000 * wire('F') * (bend('k') / 100);
  const atLead_N = (mass: number) => hoisted(mass, 'air', 8)('T') * 1.09 ** 2;
  const knot = figures('loads.ending', { ending: 'bowline' })('crew');
  const cords = [8, 6].map((size) => {
    const of = hoisted(after_kg, 'air', size);
    const bears_N = 1000 * figures('loads.rope', { fibre: 'polyester-braid', size })('F') * (knot / 100);
    // two plain leads, then two parts over two plain sheaves: K²·(K − 1)/(K² − 1) of what comes to the tackle
    const inCord_N = (atLead_N(after_kg) * 1.09 ** 2) / 2.09;
    return { size, of, bears_N, times: bears_N / inCord_N };
  });
  const [thick, thin] = [cords[0]!, cords[1]!];
  const third = figures('loads.board-hoist', {
    ...plate,
    ...gear,
    ...{ 'moving-sheaves': 1, 'fixed-sheaves': 2, 'end-at': 'moving' },
    ...{ mass: after_kg, water: 'air', wire: 8 },
  });
  const vang = figures('loads.vang', { lift: 300, 'lift-at': 2.4, along: 0.8, below: 0.7 });
  const [light, heavy] = [rows[0]!.of, rows[2]!.of];
  return [
    '# A board made half as heavy again',
    '',
    'Made by `npm run check -- --readme`: every figure below is asked of the questions anew, and a test fails when the page is',
    `out of date. The boat is invented: an iron plate of ${before_kg} kg, 1.2 by 0.36 m, that turns 62° on its pivot. A 4 mm 7x19 wire`,
    'runs from it over two plain lead blocks of 45 mm to a tackle of two parts. Its cord, 8 mm braided polyester, is wound by a',
    `small winch: no gears, a 140 mm crank, a 50 mm drum 30 mm wide. One person is asked for ${crankLimit_N} N at a crank, again and again:`,
    'our assumption. Common practice, no source: iron centreplates of boats of 5 to 6 m weigh 60 to 100 kg and want a winch or a',
    'purchase, and wire is preferred to rope for the pendant.',
    '',
    '## What the hand feels',
    '',
    ...markdownTable(
      [
        { head: 'plate' },
        { head: 'where' },
        ...['in the wire, N', 'hoisting, N', 'holding, N', 'lowering, N', 'against 120 N'].map((head) => ({
          head,
          right: true as const,
        })),
      ],
      rows.map(({ mass, water, of }) => [
        `${mass} kg`,
        water === 'air' ? 'on the trailer' : 'afloat',
        whole(of('T')),
        whole(of('F hoisting')),
        whole(of('F holding')),
        whole(of('F lowering')),
        of('F hoisting') <= crankLimit_N ? 'within' : 'too much',
      ]),
    ),
    '',
    `Hoisting is hardest ${whole(heavy('at'))}° below level. Half as heavy again asks half as much again everywhere: from ${whole(light('F hoisting'))} N to`,
    `${whole(heavy('F hoisting'))} N on the trailer, ${heavy('F hoisting') > crankLimit_N ? 'more than' : 'within'} what one person is asked for. Afloat the water bears a seventh of iron. Friction helps no one to hold: with the pawl off, the`,
    'crank wants what stands under *holding*, and a wet or oiled sheave gives nothing of it back.',
    '',
    '## What holds if the clutch slips',
    '',
    `Then ${whole(heavy('if it slips'))} N come on whatever holds the cord, at ${after_kg} kg: ${whole(heavy('turns to hold'))} turns round a cleat hold it with 50 N on the tail. If nothing`,
    `does, the plate comes down with ${whole(heavy('work gained'))} J. So: a pin through the plate or a strop on it, before a hand goes near the case.`,
    '',
    '## The wire',
    '',
    `4 mm 7x19 of 316 breaks at ${two(wire('F'))} kN new and straight (recalled). Round 45 mm, eleven times its thickness, it keeps ${whole(bend('k'))} %.`,
    `At its last lead it bears ${whole(atLead_N(before_kg))} N with ${before_kg} kg and ${whole(atLead_N(after_kg))} N with ${after_kg} kg: breaking load over load falls from ${one(wireLeft_N / atLead_N(before_kg))} to ${one(wireLeft_N / atLead_N(after_kg))}.`,
    'Five is asked for hoisting (Machinery Directive 2006/42/EC, recalled), so the wire stays; its sheaves are small for it: twenty',
    'times is wanted, and what is bent harder tires, strand by strand, at the same place.',
    '',
    '## What thinner cord gains and loses',
    '',
    ...markdownTable(
      [
        { head: `cord, ${after_kg} kg on the trailer` },
        ...['crank, N', 'turns of the crank', 'in layer', 'bears, N', 'times what comes on it'].map((head) => ({
          head,
          right: true as const,
        })),
      ],
      cords.map(({ size, of, bears_N, times }) => [
        `${size} mm`,
        whole(of('F hoisting')),
        whole(of('crank')),
        whole(of('layer')),
        whole(bears_N),
        one(times),
      ]),
    ),
    '',
    `Thinner cord ends in layer ${whole(thin.of('layer'))} instead of ${whole(thick.of('layer'))}, nearer to the drum’s middle: ${whole(thick.of('F hoisting') - thin.of('F hoisting'))} N less at the crank, for ${whole(thin.of('crank'))} turns instead of`,
    `${whole(thick.of('crank'))}. It loses ${whole(100 * (1 - thin.bears_N / thick.bears_N))} % of its strength, a bowline in either. Seven times is asked of rope for hoisting: both have it.`,
    `A third part in the tackle, with the 8 mm cord, asks ${whole(third('F hoisting'))} N and ${whole(third('crank'))} turns.`,
    'A bare hand would lose by it too: we count 25 N of grip a millimetre up to 8 mm (our assumption), 150 N on 6 mm.',
    '',
    '## The vang, either end moved',
    '',
    'The same boat, another line. The leech lifts the boom with 300 N, 2.4 m out; the vang is 0.8 m out on the boom and 0.7 m down',
    `the mast. It bears ${whole(vang('T'))} N and thrusts the boom on the gooseneck with ${whole(vang('thrust'))} N.`,
    '',
    ...markdownTable(
      [
        { head: 'moved by 100 mm' },
        { head: 'in the vang, N', right: true },
        { head: 'thrust on the gooseneck, N', right: true },
      ],
      [
        ['as it is', whole(vang('T')), whole(vang('thrust'))],
        ['out along the boom', whole(vang('T boom')), whole(vang('thrust boom'))],
        ['down the mast', whole(vang('T mast')), whole(vang('thrust mast'))],
      ],
    ),
    '',
    '## Asked by yourself',
    '',
    '```',
    command('loads.board-hoist', { ...plate, ...gear, mass: after_kg, water: 'air', wire: 8 }),
    command('loads.vang', { lift: 300, 'lift-at': 2.4, along: 0.8, below: 0.7 }),
    '```',
    '',
    'Nobody stands, kneels or reaches under a board that hangs on this. Guidance only: no friction at the pivot or in the case, no',
    'water flowing past and no jerk is in these sums, and what is marked on the gear, its maker and a rigger come first.',
    '',
  ].join('\n');
}

const whole = (value: number) => String(Math.round(value));
const one = (value: number) => value.toFixed(1);
const two = (value: number) => value.toFixed(2);
const command = (id: string, given: Given) =>
  [`npx fettle ask ${id}`, ...Object.entries(given).map(([field, value]) => `--${field} ${value}`)].join(' ');
