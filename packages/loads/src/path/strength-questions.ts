import { type Answer, assuming, choice, type Figure, type Question, question, type WorkingLine } from '#working';
import { chainBreaking, chainMass_kg_per_m, chainWorking } from '../../tables/chain.read-2026-11.ts';
import { ropeBreaking, ropeWorking, wetNylonShare } from '../../tables/fibre-rope.read-2026-11.ts';
import { liftingShackle, shackleRules, stainlessShackle } from '../../tables/shackle.read-2026-11.ts';
import { aircraftBreaking, breakingFactors, wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import { cautions } from '../cautions.ts';
import { factorOf, type Gear, type Use } from './factor.ts';
import { inMillimetres, purposeField, sizeField } from './loads-fields.ts';
import { cellsFor, type PrintedCell, type PrintedColumn, sizesIn, sourceOf } from './printed.ts';

/** The questions about what rope, wire, chain and shackles bear when new. */
export function strengthQuestions(): readonly Question[] {
  return [ropeQuestion(), wireQuestion(), chainQuestion(), shackleQuestion()];
}

const cellLine = (cell: PrintedCell, symbol = cell.column.table): WorkingLine => ({
  symbol,
  meaning: cell.seen === 'recalled' ? 'as recalled, not read again' : 'as printed',
  value: cell.printed,
  unit: cell.column.unit,
  formula: cell.column.source,
});
const titlesOf = <Id extends string>(record: Readonly<Record<Id, unknown>>) =>
  (Object.keys(record) as Id[]).map((id) => ({ id, title: id.replaceAll('-', ' ') }));

interface Stated {
  readonly what: string;
  readonly size_mm: number;
  readonly columns: readonly PrintedColumn[];
  readonly gear: Gear;
  readonly use: Use;
  /** share of the tables' strength that is left, 0 to 1 */
  readonly share?: number;
  readonly working?: readonly WorkingLine[];
  readonly limits: readonly string[];
  readonly sources?: Answer['sources'];
}

/** Breaking and working load from the lowest cell there is, or 'unknown' where no table has the size. */
function strengthAnswer({
  what,
  size_mm,
  columns,
  gear,
  use,
  share = 1,
  working = [],
  limits,
  sources = [],
}: Stated): Answer {
  const cells = cellsFor(columns, size_mm);
  const lowest = cells[0];
  const shown = {
    working: [...cells.map((cell) => cellLine(cell)), ...working],
    limits,
    cautions: [cautions.under, cautions.recoil, cautions.guidance],
  };
  if (!lowest)
    return {
      kind: 'truth',
      statement: 'Unknown: no table of ours has this size',
      because: `${what} of ${size_mm} mm is not among ${sizesIn(columns).join(', ')} mm; nothing is interpolated: go by its mark`,
      results: [{ symbol: 'F', meaning: 'breaking load', value: 'unknown', unit: '' }],
      ...shown,
      // the tables that were looked through
      sources: [...columns.map(({ source }) => ({ title: source, seen: 'read second-hand' as const })), ...sources],
    };
  const { factor, whose } = factorOf(gear, use);
  const breaking_kN = (lowest.force_N / 1000) * share;
  return {
    kind: 'found',
    results: [
      { symbol: 'F', meaning: 'breaking load of new gear, the lowest printed', value: breaking_kN, unit: 'kN' },
      {
        symbol: 'W',
        meaning: `working load, breaking load over ${factor}`,
        value: breaking_kN / factor,
        unit: 'kN',
      },
      { symbol: 'seen', meaning: 'how the figure was come by', value: lowest.seen, unit: '' },
    ],
    ...shown,
    working: [
      ...shown.working,
      { symbol: 'n', meaning: 'breaking over working load', value: factor, unit: '', formula: whose.title },
    ],
    sources: [...cells.map(sourceOf), whose, ...sources],
  };
}

const newOnly = 'Tables are for new gear: age, sun, rust, chafe and knots take from it.';

function ropeQuestion() {
  return question({
    id: 'loads.rope',
    title: 'What does this rope bear?',
    fields: {
      fibre: choice(titlesOf(ropeBreaking), 'fibre, and how it is laid: three-strand unless it says braid'),
      size: sizeField('diameter of the rope'),
      wet: assuming(
        choice(
          [
            { id: 'yes', title: 'yes' },
            { id: 'no', title: 'no' },
          ],
          'whether it works wet',
        ),
        'yes' as 'yes' | 'no',
        'yes',
        'on a boat it does; only nylon loses by it',
      ),
      use: purposeField(),
    },
    answer: ({ fibre, size, wet, use }) => {
      const size_mm = inMillimetres(size);
      const isWet = fibre === 'nylon' && wet === 'yes';
      const round_in = (Math.PI * size_mm) / 25.4;
      const manila_lbf = 900 * round_in ** 2;
      return strengthAnswer({
        what: `${fibre.replaceAll('-', ' ')} rope`,
        size_mm,
        columns: ropeBreaking[fibre],
        gear: 'rope',
        use,
        share: isWet ? wetNylonShare : 1,
        working: [
          ...cellsFor(ropeWorking[fibre], size_mm).map((cell) => cellLine(cell)),
          { symbol: 'k wet', meaning: 'of dry nylon', value: 100 * wetNylonShare, unit: '%', formula: 'printed' },
          {
            symbol: 'F manila',
            meaning: 'a seaman’s rule, for manila; not used',
            value: manila_lbf,
            unit: 'lbf',
            formula: '900·C², C round the rope in inches',
          },
          {
            symbol: 'F nylon by rule',
            meaning: 'the same rule, for nylon; not used',
            value: 2.5 * manila_lbf,
            unit: 'lbf',
            formula: '2.5·900·C²',
          },
        ],
        sources: isWet ? [{ title: 'seamanship notes: wet nylon 80 % of dry', seen: 'read second-hand' }] : [],
        limits: [newOnly, 'A knot leaves half to three quarters: ask loads.ending.'],
      });
    },
  });
}

function wireQuestion() {
  return question({
    id: 'loads.wire',
    title: 'What does this wire bear?',
    fields: {
      laid: choice(titlesOf(wireBreaking), 'how it is laid'),
      size: sizeField('diameter of the wire'),
      make: assuming(
        choice(
          [
            { id: '316', title: '316 stainless' },
            { id: 'aircraft', title: 'aircraft cable, corrosion-resistant, inch sizes' },
          ],
          'what it is made as',
        ),
        '316' as '316' | 'aircraft',
        '316 stainless',
        'what boats have; it is the weaker',
      ),
      use: purposeField(),
    },
    answer: ({ laid, size, make, use }) => {
      const size_mm = inMillimetres(size);
      const { of, K2, K3, C2 } = breakingFactors[laid];
      const printed = (symbol: string, meaning: string, value: number | null): WorkingLine[] =>
        value === null ? [] : [{ symbol, meaning, value, unit: '', formula: 'EN 12385-4' }];
      return strengthAnswer({
        what: `${laid} wire`,
        size_mm,
        columns: make === '316' ? wireBreaking[laid] : aircraftBreaking[laid],
        gear: 'wire',
        use,
        working: [
          ...printed('K2', `factor of breaking force of ${of}, steel core`, K2),
          ...printed('K3', `the same, steel strand core`, K3),
          ...printed('C2', `metallic area over d², ${of}`, C2),
          {
            symbol: 'F by K',
            meaning: 'from diameter and 1570 N/mm², beside the tables; not used',
            value: (K2 * size_mm ** 2 * 1570) / 1000,
            unit: 'kN',
            formula: 'K2·d²·R',
          },
        ],
        sources: [{ title: 'EN 12385-4, factors as printed in Feyrer, Wire Ropes', seen: 'read second-hand' }],
        limits: [newOnly, 'A broken strand, a kink or rust at a terminal: replace it, no figure stands.'],
      });
    },
  });
}

function chainQuestion() {
  return question({
    id: 'loads.chain',
    title: 'What does this chain bear?',
    fields: {
      grade: choice(
        [
          { id: '30', title: 'grade 30, also unmarked' },
          { id: '40', title: 'grade 40' },
          { id: '43', title: 'grade 43' },
          { id: '70', title: 'grade 70' },
        ],
        'grade stamped on it',
      ),
      size: sizeField('diameter of the wire of a link'),
    },
    answer: ({ grade, size }) => {
      const size_mm = inMillimetres(size);
      const metric: readonly PrintedColumn[] = grade === '30' || grade === '40' ? chainBreaking[grade] : [];
      const rules: readonly PrintedColumn[] = grade === '40' ? [] : chainWorking[grade];
      const byGrade_kN = (2 * (Math.PI / 4) * size_mm ** 2 * 10 * Number(grade)) / 1000;
      const mass = [...Object.entries(chainMass_kg_per_m.read), ...Object.entries(chainMass_kg_per_m.recalled)].find(
        ([each]) => Number(each) === size_mm,
      );
      const working: WorkingLine[] = [
        {
          symbol: 'F by grade',
          meaning: 'from the mean stress the grade names, beside the tables',
          value: byGrade_kN,
          unit: 'kN',
          formula: '2·(π/4)·d²·10·grade (ISO 1834, recalled)',
        },
        ...(mass
          ? [{ symbol: 'm', meaning: 'mass in air', value: mass[1], unit: 'kg/m', formula: 'printed; 5 mm recalled' }]
          : []),
      ];
      const limited = cellsFor(rules, size_mm);
      const limits = ['Chain worn by a tenth of a link’s thickness, stretched or bent is replaced.', newOnly];
      const least = limited[0];
      if (cellsFor(metric, size_mm).length === 0 && least)
        return {
          kind: 'found',
          results: [
            { symbol: 'W', meaning: 'working load limit, the lowest printed', value: least.force_N / 1000, unit: 'kN' },
            { symbol: 'F', meaning: 'breaking load', value: 'unknown: the rule prints working loads', unit: '' },
            { symbol: 'seen', meaning: 'how the figure was come by', value: least.seen, unit: '' },
          ],
          working: [...limited.map((cell) => cellLine(cell)), ...working],
          sources: limited.map(sourceOf),
          limits,
          cautions: [cautions.under, cautions.guidance],
        };
      return strengthAnswer({
        what: `grade ${grade} chain`,
        size_mm,
        columns: metric.length > 0 ? metric : rules,
        gear: 'chain',
        use: 'ground-tackle',
        working,
        limits,
      });
    },
  });
}

function shackleQuestion() {
  return question({
    id: 'loads.shackle',
    title: 'What does this shackle bear?',
    fields: {
      make: choice(
        [
          { id: 'lifting', title: 'steel, forged, with a working load stamped on it' },
          { id: 'stainless', title: 'stainless D shackle, pin as thick as the body' },
        ],
        'what it is: figures of one never serve the other',
      ),
      size: sizeField('diameter of the body'),
      use: purposeField(),
    },
    answer: ({ make, size, use }) => {
      const size_mm = inMillimetres(size);
      const { designFactor, sideAt45_pct, wear_pct, inspection_months } = shackleRules;
      const rule = (symbol: string, meaning: string, value: number, unit: string): WorkingLine => ({
        symbol,
        meaning,
        value,
        unit,
        formula: 'printed',
      });
      const rules = [
        rule('n', 'breaking over working load of lifting shackles', designFactor, ''),
        rule('k 45°', 'left when pulled 45° aside', sideAt45_pct, '% of WLL'),
        rule('wear', 'of body or pin, retires it', wear_pct, '% of diameter'),
        rule('inspect', 'lifting gear is looked at every', inspection_months, 'months'),
      ];
      const limits = ['Pulled from the side a shackle bears less. Its pin is done up and moused.', newOnly];
      if (make === 'stainless')
        return strengthAnswer({
          what: 'a stainless D shackle',
          size_mm,
          columns: stainlessShackle,
          gear: 'fitting',
          use,
          limits: [...limits, 'Stainless shackles differ by half between makers: a mark on the shackle wins.'],
        });
      const least = cellsFor(liftingShackle, size_mm)[0];
      if (!least)
        return strengthAnswer({
          what: 'a steel lifting shackle',
          size_mm,
          columns: liftingShackle,
          gear: 'lifting shackle',
          use,
          working: rules,
          limits,
        });
      const working_kN = least.force_N / 1000;
      const results: [Figure, ...Figure[]] = [
        { symbol: 'W', meaning: 'working load limit', value: working_kN, unit: 'kN' },
        { symbol: 'WLL', meaning: 'as it is stamped', value: least.printed, unit: 't' },
        { symbol: 'F', meaning: 'breaking load', value: working_kN * designFactor, unit: 'kN' },
        { symbol: 'seen', meaning: 'how the figure was come by', value: least.seen, unit: '' },
      ];
      return {
        kind: 'found',
        results,
        working: rules,
        sources: [sourceOf(least), { title: 'lifting-trade guidance to BS EN 13889', seen: 'read second-hand' }],
        limits,
        cautions: [cautions.under, cautions.persons, cautions.guidance],
      };
    },
  });
}
