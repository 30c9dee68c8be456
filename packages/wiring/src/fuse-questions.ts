import { inBase, standardGravity_m_s2 } from '#units';
import { amount, assuming, choice, type Field, mass, type Question, question } from '#working';
import {
  type BatteryKind,
  batteryKinds,
  bladeColours,
  faultCurrent_A,
  fuseFor,
  fuseKinds,
  fuseReach_m,
  fuseThatBreaks,
  loadShare,
} from './fuse.ts';
import { cautions, currentField, nominalField, sheathedField, sources } from './wiring-fields.ts';

/** The questions about fuses, and how cable and battery are held. */
export function fuseQuestions(): readonly Question[] {
  return [fuseQuestion(), heldFastQuestion()];
}

/** The words of the answer where no standard fuse stands between load and conductor. */
const noneFits = 'no fuse fits: thicker cable needed';
const readColours = [3, 7.5, 10, 15, 30];

function fuseQuestion() {
  return question({
    id: 'wiring.fuse',
    title: 'What fuse, and where?',
    fields: {
      load: currentField('steady current of all that is after it'),
      capacity: amount('current', 'A', 0.5, 1000, 'what the smallest conductor after it may carry'),
      battery: assuming(
        choice(
          batteryKinds.map((id) => ({ id, title: id === 'lifepo4' ? 'LiFePO4' : id === 'agm' ? 'AGM' : id })),
          'what the battery is made of',
        ) as Field<BatteryKind>,
        'lifepo4' as BatteryKind,
        'LiFePO4',
        'it gives the most into a short: the safe side',
      ),
      size: assuming(
        amount('charge', 'Ah', 1, 1000, 'capacity on the battery’s label'),
        inBase('charge', 100, 'Ah'),
        '100 Ah',
        'the safe side for a small boat; a smaller battery gives less into a short',
      ),
      'fault-current': assuming<number | null>(
        amount('current', 'A', 10, 100_000, 'short-circuit current on the battery’s sheet'),
        null,
        'by kind and size',
        'the maker’s sheet was not given',
      ),
      volts: nominalField(),
      sheathed: sheathedField(),
    },
    answer: ({ load, capacity, battery, size, 'fault-current': stated, volts, sheathed }) => {
      const found = fuseFor(load, capacity);
      const fault = stated ?? faultCurrent_A(battery, size, volts);
      const kind = fuseThatBreaks(fault);
      const reach = sheathed === 'yes' ? fuseReach_m.sheathed : fuseReach_m.open;
      const shown = {
        working: [
          { symbol: 'I least', meaning: 'least rating', value: found.least_A, unit: 'A', formula: '1.25·load' },
          {
            symbol: 'k load',
            meaning: 'over the steady load',
            value: loadShare,
            unit: '× load',
            formula: 'trade rule',
          },
          {
            symbol: 'k capacity',
            meaning: 'of what the smallest conductor may carry, at most',
            value: 1,
            unit: '× ampacity',
            formula: 'load ≤ fuse ≤ capacity',
          },
          {
            symbol: 'k of the American rule',
            meaning: 'of table 5 below 50 V, at most: not used, ours is lower',
            value: 150,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'I fault',
            meaning:
              stated === null ? 'into a dead short, our assumption by kind and size' : 'into a dead short, given',
            value: fault,
            unit: 'A',
            formula: stated === null ? 'charged volts over the least likely resistance' : 'given',
          },
          {
            symbol: 'reach by ISO',
            meaning: 'way from the battery, in the open',
            value: 1000 * fuseReach_m.open,
            unit: 'mm',
            formula: 'printed',
          },
          { symbol: 'reach, American rule', meaning: 'in the open', value: 7, unit: 'in', formula: 'printed' },
          {
            symbol: 'reach sheathed, American rule',
            meaning: 'in a sheath all the way, not from a battery',
            value: 40,
            unit: 'in',
            formula: 'printed',
          },
        ],
        sources: [
          sources.fuseRule,
          sources.fuseLoad,
          sources.fuseUs,
          sources.blades,
          sources.bladesRecalled,
          sources.breaking,
          ...(stated === null ? [sources.fault] : []),
        ],
        limits: ['Motors that start hard, windlass and starter follow the maker’s sheet.'],
        cautions: [
          cautions.before,
          cautions.atTheBattery,
          cautions.protects,
          ...(battery === 'lifepo4' ? [cautions.lithium] : []),
          cautions.tools,
          cautions.guidance,
        ],
      };
      const place = {
        symbol: 'place',
        meaning: 'way from the battery or bus bar, at most',
        value: 1000 * reach,
        unit: 'mm',
      } as const;
      const breaks = {
        symbol: 'breaking capacity',
        meaning: kind
          ? `a ${fuseKinds[kind].title} fuse breaks ${fuseKinds[kind].breaks_A} A, as recalled`
          : 'no fuse of the list breaks it: ask the battery’s maker',
        value: Math.ceil(fault / 100) * 100,
        unit: 'A',
      };
      if (found.kind === 'none fits')
        return {
          kind: 'truth',
          statement: 'No fuse fits',
          because: `${found.least_A.toFixed(1)} A is asked for, the next standard is ${Number.isFinite(found.next_A) ? `${found.next_A} A` : 'above the list'}, and the conductor carries ${capacity} A`,
          results: [{ symbol: 'In', meaning: 'fuse', value: noneFits, unit: '' }, place, breaks],
          ...shown,
        };
      const colour = bladeColours[found.rating_A];
      return {
        kind: 'found',
        results: [
          { symbol: 'In', meaning: 'fuse', value: found.rating_A, unit: 'A' },
          place,
          breaks,
          {
            symbol: 'room',
            meaning: 'what the conductor may carry over the fuse',
            value: capacity / found.rating_A,
            unit: '×',
          },
          ...(colour
            ? [
                {
                  symbol: 'colour',
                  meaning: `as a blade${readColours.includes(found.rating_A) ? '' : ', recalled'}`,
                  value: colour,
                  unit: '',
                },
              ]
            : []),
        ],
        ...shown,
      };
    },
  });
}

function heldFastQuestion() {
  const printed = 'printed';
  return question({
    id: 'wiring.held-fast',
    title: 'How are cable and battery held?',
    fields: { battery: mass('kg', 0.5, 200, 'mass of the battery') },
    answer: ({ battery }) => {
      const twice_N = 2 * battery * standardGravity_m_s2;
      const test_N = Math.min(twice_N, 90 * 4.4482216152605);
      return {
        kind: 'found',
        results: [
          { symbol: 'pull', meaning: 'pull it by this, from every side', value: test_N, unit: 'N' },
          { symbol: 'may move', meaning: 'at most, under twice its weight', value: 10, unit: 'mm' },
          { symbol: 'support', meaning: 'cable held at least every', value: 450, unit: 'mm' },
          { symbol: 'support at battery', meaning: 'battery leads held at least every', value: 300, unit: 'mm' },
        ],
        working: [
          { symbol: 'F', meaning: 'twice its weight', value: twice_N, unit: 'N', formula: '2·m·g' },
          { symbol: 'pull most', meaning: 'more is not asked', value: 90, unit: 'lbf', formula: printed },
          { symbol: 'may move, American rule', meaning: 'at most', value: 1, unit: 'in', formula: printed },
          {
            symbol: 'above the battery',
            meaning: 'metal fuel parts this near above it are covered with something that does not conduct',
            value: 300,
            unit: 'mm',
            formula: printed,
          },
          {
            symbol: 'first support',
            meaning: 'of a battery lead, from the terminal, at most',
            value: 1000,
            unit: 'mm',
            formula: printed,
          },
        ],
        sources: [
          { title: 'ISO 10133:2012 5.2, 5.7, 7.3, 7.4', seen: 'read second-hand' },
          { title: '33 CFR 183.420(a)', seen: 'read' },
        ],
        limits: ['A trailerable boat shakes more on the road than at sea: strap the battery down for towing.'],
        cautions: [cautions.tools, cautions.guidance],
      };
    },
  });
}
