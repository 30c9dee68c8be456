import { inBase } from '#units';
import { assuming, choice, length, question, temperatureDifference } from '#working';
import {
  movementClasses_pct,
  movementSheets_pct,
  saidOfSealants,
  sealantBook,
  skinRecalled_h,
} from '../tables/sealants.read-2026-11.ts';
import {
  articlesOnSealants,
  sealantClasses,
  sealantHandbook,
  sealantSheets,
  sealantTrade,
  tinWins,
} from './bedding-sources.ts';
import { materialSaid } from './joint.ts';
import {
  beadDepth_mm,
  endMovement_mm,
  type GrowingMaterial,
  growth_per_MK,
  jointWidth_mm,
  type MovingJointKind,
  movingJointKinds,
} from './moving-joint.ts';

type Sealant = keyof typeof sealantBook | 'hybrid';
const sealantNames: Readonly<Record<Sealant, string>> = {
  acrylic: 'acrylic',
  butyl: 'butyl',
  latex: 'latex, water-based',
  polysulphide: 'polysulphide',
  polyurethane: 'polyurethane',
  hybrid: 'hybrid (silane)',
  silicone: 'silicone',
};

/** The question what a kind of sealant is like. */
export function sealantQuestion() {
  return question({
    id: 'materials.sealant',
    title: 'What is this kind of sealant like?',
    fields: {
      sealant: choice<Sealant>(
        (Object.keys(sealantNames) as Sealant[]).map((id) => ({ id, title: sealantNames[id] })),
        'kind of sealant',
      ),
    },
    answer: ({ sealant }) => {
      const printed = sealant === 'hybrid' ? null : sealantBook[sealant];
      const { takes_pct, wide } = movingJointKinds[sealant];
      const band =
        sealant in movementSheets_pct ? movementSheets_pct[sealant as keyof typeof movementSheets_pct] : null;
      const skin = sealant in skinRecalled_h ? skinRecalled_h[sealant as keyof typeof skinRecalled_h] : null;
      const said = sealant in saidOfSealants ? saidOfSealants[sealant as keyof typeof saidOfSealants] : {};
      return {
        kind: 'found',
        results: [
          {
            symbol: 'takes',
            meaning: 'the most a joint may move, either way, of its width',
            value: takes_pct,
            ...(band ? { low: band[0], high: band[1] } : {}),
            unit: '%',
          },
          { symbol: 'wide', meaning: 'times the movement a joint is to be wide', value: wide, unit: '' },
          ...(skin === null
            ? []
            : [
                {
                  symbol: 'skin',
                  meaning: 'dry to the touch, marine kinds of one part: plan with the longer',
                  value: skin[1],
                  low: skin[0],
                  high: skin[1],
                  unit: 'h',
                },
              ]),
          ...(printed === null
            ? []
            : [
                {
                  symbol: 'tack-free',
                  meaning: 'dry to the touch, building kinds',
                  value: printed.tackFree_h,
                  unit: 'h',
                },
                { symbol: 'shrinks', meaning: 'as it sets', value: printed.shrinks_pct, unit: '%' },
                { symbol: 'water', meaning: 'fit for standing under water', value: printed.water, unit: '' },
                { symbol: 'paintable', meaning: 'takes paint', value: printed.paint, unit: '' },
              ]),
        ],
        working: Object.entries(said as Readonly<Record<string, { readonly words: string }>>).map(
          ([symbol, { words }]) => ({
            symbol,
            meaning: saidMeans[symbol] ?? symbol,
            value: words,
            unit: '',
            formula: 'said',
          }),
        ),
        sources: [
          ...(printed ? [sealantHandbook] : [sealantClasses]),
          articlesOnSealants,
          sealantTrade,
          ...(skin || band ? [sealantSheets] : []),
        ],
        limits: [tinWins, 'Sources differ on paint over polysulphide and polyurethane: try it on a dab.'],
        cautions: [],
      };
    },
  });
}

const saidMeans: Readonly<Record<string, string>> = {
  attacks: 'what it attacks',
  safe: 'what it is safe on',
  removable: 'whether it comes off',
  plastics: 'on plastics',
  cure: 'how it stays',
  paint: 'before painting',
  acetoxy: 'the kind that smells of vinegar',
};

const kindNames: Readonly<Record<MovingJointKind, string>> = {
  ...sealantNames,
  'class-25': 'a tube marked class 25',
  'class-20': 'a tube marked class 20',
  'class-12-5': 'a tube marked class 12.5',
  'class-7-5': 'a tube marked class 7.5',
};

/** The question how wide and deep a moving joint must be. */
export function movingJoint() {
  return question({
    id: 'materials.moving-joint',
    title: 'How wide and deep must a joint be that moves?',
    fields: {
      movement: length('mm', 0, 50, 'how far it moves, there and back'),
      sealant: choice<MovingJointKind>(
        (Object.keys(kindNames) as MovingJointKind[]).map((id) => ({ id, title: kindNames[id] })),
        'kind of sealant, or the class on its tube',
      ),
    },
    answer: ({ movement, sealant }) => {
      const { takes_pct, wide } = movingJointKinds[sealant];
      const width_mm = jointWidth_mm(sealant, 1000 * movement);
      const depth_mm = beadDepth_mm(width_mm);
      const byClass = sealant in movementClasses_pct;
      return {
        kind: 'found',
        results: [
          { symbol: 'w', meaning: 'least width of the joint', value: width_mm, unit: 'mm' },
          { symbol: 'h', meaning: 'depth of the bead', value: depth_mm, unit: 'mm' },
        ],
        working: [
          {
            symbol: 'takes',
            meaning: 'movement it takes, either way',
            value: takes_pct,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'wide',
            meaning: 'times the movement',
            value: wide,
            unit: '',
            formula: byClass ? '100/takes' : 'printed',
          },
          { symbol: 'w', meaning: 'least width', value: width_mm, unit: 'mm', formula: 'wide·movement' },
          { symbol: 'ratio', meaning: 'depth to width', value: 0.5, unit: '', formula: 'practice' },
          {
            symbol: 'h',
            meaning: 'depth of the bead',
            value: depth_mm,
            unit: 'mm',
            formula: 'the more of 6 mm and w/2',
          },
        ],
        sources: [
          byClass || sealant === 'hybrid' ? sealantClasses : sealantHandbook,
          { title: 'depth to width 1 to 2, at least 6 mm', seen: 'common practice' },
        ],
        limits: [
          'A seam of two faces: laid over foam cord or tape, so that it sticks to the faces and not to its floor.',
        ],
        cautions: [],
      };
    },
  });
}

const growing = (meaning: string) =>
  choice<GrowingMaterial>(
    (Object.keys(growth_per_MK) as GrowingMaterial[]).map((id) => ({ id, title: materialSaid(id) })),
    meaning,
  );

/** The question how far two parts move in the heat. */
export function jointMovement() {
  return question({
    id: 'materials.joint-movement',
    title: 'How far do these two move against each other in the heat?',
    fields: {
      a: growing('one part, fast at its middle'),
      b: growing('what it is fast to'),
      length: length('mm', 10, 10_000, 'its length'),
      span: assuming(
        temperatureDifference('°C', 1, 120, 'from its coldest to its hottest'),
        inBase('temperature difference', 60, '°C'),
        '60 °C',
        'a frosty night to a dark pane in the sun; our assumption',
      ),
    },
    answer: ({ a, b, length: long, span }) => {
      const value = endMovement_mm(a, b, 1000 * long, span);
      return {
        kind: 'found',
        results: [{ symbol: 'm', meaning: 'at each end, from coldest to hottest', value, unit: 'mm' }],
        working: [
          ...(['a', 'b'] as const).map((symbol) => {
            const material = { a, b }[symbol];
            return {
              symbol,
              meaning: `growth of ${materialSaid(material)}`,
              value: growth_per_MK[material],
              unit: '10⁻⁶/°C',
              formula: 'recalled',
            };
          }),
          { symbol: 'm', meaning: 'movement at each end', value, unit: 'mm', formula: '|a − b|·length·span/2' },
        ],
        sources: [{ title: 'growth of materials with heat: data sheets', seen: 'recalled' }],
        limits: [
          'Timber moves more across its grain with damp than any of these with heat; rubber gives and is left out.',
        ],
        cautions: [],
      };
    },
  });
}
