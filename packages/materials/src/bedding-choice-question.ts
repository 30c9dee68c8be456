import { inBase } from '#units';
import {
  assuming,
  choice,
  type Figure,
  humidity,
  length,
  question,
  type Source,
  temperature,
  type WorkingLine,
} from '#working';
import { skinRecalled_h } from '../tables/sealants.read-2026-11.ts';
import { beddingChoice } from './bedding-choice.ts';
import { beddingKinds } from './bedding-kinds.ts';
import {
  articlesOnSealants,
  materialField,
  sealantHandbook,
  sealantSheets,
  sealantTrade,
  tinWins,
} from './bedding-sources.ts';
import { curePerMinute } from './cure-finish.ts';
import { cureLawOf } from './cure-laws.ts';
import { type BeddingKind, type Joint, materialSaid, touchOf } from './joint.ts';
import { leastBead_mm, movingJointKinds } from './moving-joint.ts';

/** The question what to bed, seal, glue or fill a joint with. */
export function choiceQuestion() {
  return question({
    id: 'materials.bedding-choice',
    title: 'What to bed, seal or glue this joint with?',
    fields: {
      a: materialField('one part'),
      b: materialField('the other part'),
      held: choice<Joint['held']>(
        [
          { id: 'fastened', title: 'screws or bolts hold it: it only seals' },
          { id: 'stuck', title: 'it holds by itself, with next to no load' },
          { id: 'glued', title: 'it carries a load by itself' },
          { id: 'filled', title: 'nothing is joined: it fills a hole or hollow' },
        ],
        'what holds the joint',
      ),
      apart: choice<'each-season' | 'some-day' | 'never'>(
        [
          { id: 'each-season', title: 'yes, every season' },
          { id: 'some-day', title: 'yes, some day' },
          { id: 'never', title: 'no' },
        ],
        'whether it must come apart again',
      ),
      where: choice<'indoors' | 'weather' | 'under-water' | 'fuel' | 'hot'>(
        [
          { id: 'indoors', title: 'in the dry' },
          { id: 'weather', title: 'in spray, rain and sun' },
          { id: 'under-water', title: 'under water' },
          { id: 'fuel', title: 'in fuel' },
          { id: 'hot', title: 'hot, from 80 °C' },
        ],
        'where it is',
      ),
      gap: length('mm', 0.05, 50, 'room between the parts'),
      movement: assuming(
        length('mm', 0, 20, 'how far one part moves against the other'),
        inBase('length', 0, 'mm'),
        '0',
        'bolted stiffly, and alike in heat',
      ),
      painted: assuming(
        choice(
          [
            { id: 'no', title: 'no' },
            { id: 'yes', title: 'yes' },
          ],
          'whether paint goes over its edge or near it',
        ),
        'no',
        'no',
        'not said',
      ),
      in: assuming(
        length('mm', 1, 500, 'from the air to the middle of it: half the width of a foot, the depth of a seam'),
        inBase('length', leastBead_mm, 'mm'),
        '6 mm',
        'a bead 6 mm deep',
      ),
      air: assuming(
        temperature('°C', -20, 50, 'temperature while it cures'),
        inBase('temperature', 20, '°C'),
        '20 °C',
        'a mild day',
      ),
      humidity: assuming(
        humidity('%', 5, 100, 'humidity while it cures'),
        inBase('humidity', 60, '%'),
        '60 %',
        'common outdoors',
      ),
    },
    answer: (given) => {
      const joint: Joint = {
        parts: [given.a, given.b],
        held: given.held,
        apart: given.apart === 'each-season' ? 'each season' : given.apart === 'some-day' ? 'some day' : 'never',
        where: given.where === 'under-water' ? 'under water' : given.where,
        gap_mm: 1000 * given.gap,
        movement_mm: 1000 * given.movement,
        painted: given.painted === 'yes',
      };
      const { serves, refused, widenTo_mm, cautions } = beddingChoice(joint);
      const working: WorkingLine[] = [
        ...serves.map(
          (each): WorkingLine => ({
            symbol: each.kind,
            meaning: each.title,
            value: each.because,
            unit: '',
            formula: 'does',
          }),
        ),
        ...refused.map(
          (each): WorkingLine => ({
            symbol: each.kind,
            meaning: each.title,
            value: each.because,
            unit: '',
            formula: 'wrong',
          }),
        ),
      ];
      const shown = {
        working,
        sources: choiceSources(
          joint,
          [...serves, ...refused].map(({ kind }) => kind),
        ),
        limits: [
          tinWins,
          'The widths are those of a seam that opens and shuts; faces that slide on each other ask less.',
          'By kind: the strength of a glued joint is not worked out. Faces clean, dry and roughened is most of it.',
        ],
      };
      const first = serves[0];
      if (first === undefined) {
        const widen: readonly Figure[] =
          widenTo_mm === null
            ? []
            : [{ symbol: 'width', meaning: 'room between the parts that would do', value: widenTo_mm, unit: 'mm' }];
        return {
          kind: 'truth',
          statement: 'nothing in a tube, tin or roll does for this joint',
          because: insteadOf(joint, widenTo_mm),
          results: widen,
          ...shown,
          cautions,
        };
      }
      const set = setFigures(first.kind, 1000 * given.in, given.air, given.humidity);
      const through = set.find(({ symbol }) => symbol === 'through')!;
      return {
        kind: 'found',
        results: [
          { symbol: 'best', meaning: 'to use', value: first.title, unit: '' },
          {
            symbol: 'also',
            meaning: 'that would do, best first',
            value:
              serves
                .slice(1)
                .map(({ title }) => title)
                .join('; ') || 'nothing else',
            unit: '',
          },
          ...(first.width_mm === null
            ? []
            : [{ symbol: 'width', meaning: 'least room between the parts', value: first.width_mm, unit: 'mm' }]),
          ...set,
          {
            symbol: 'attacks',
            meaning: 'what it must not touch',
            value: first.attacks.map(materialSaid).join(', ') || 'nothing of the list',
            unit: '',
          },
        ],
        ...shown,
        working: [
          ...working,
          ...(first.width_mm === null
            ? []
            : [
                {
                  symbol: 'width',
                  meaning: 'least room between the parts',
                  value: first.width_mm,
                  unit: 'mm',
                  formula: `${jointWide(first.kind)}·movement`,
                },
              ]),
          { ...through, formula: 'by its cure law, in this weather all the while' },
        ],
        cautions: [...first.mind, ...first.cautions, ...cautions],
      };
    },
  });
}

const jointWide = (kind: BeddingKind): number => {
  const { moves } = beddingKinds[kind];
  return moves === null ? 0 : movingJointKinds[moves].wide;
};

/** What to do where nothing does: the change that would help. */
function insteadOf(joint: Joint, widenTo_mm: number | null): string {
  if (widenTo_mm !== null) return `with ${Math.round(widenTo_mm * 10) / 10} mm between the parts something would`;
  if (joint.held === 'glued' && joint.apart !== 'never')
    return 'what carries a load by glue does not come apart again: screws or bolts hold it, and bedding seals';
  if (joint.held === 'glued') return 'screws or bolts hold it, and bedding seals';
  if (joint.where === 'fuel' || joint.where === 'hot')
    return 'a gasket made for it, cut to shape and bolted down, seals where nothing out of a tube does';
  if (joint.held === 'filled') return 'a piece let in, fastened and bedded, does what no filler does there';
  return 'a rubber gasket under screws or bolts seals where nothing sticks';
}

/** Skin and time through, where the kind's law and its sheets say them. */
function setFigures(kind: BeddingKind, depth_mm: number, air_C: number, humidity_pct: number): Figure[] {
  const { product, moves } = beddingKinds[kind];
  const { law, until } = cureLawOf(product);
  const skin = moves !== null && moves in skinRecalled_h ? skinRecalled_h[moves as keyof typeof skinRecalled_h] : null;
  const deep = law.kind === 'moisture' ? { ...law, depth_mm } : law;
  const rate = curePerMinute(deep, { rain: false, wind_kn: 0, air_C, surface_C: null, humidity_pct, basis: 'typed' });
  return [
    ...(skin === null
      ? []
      : [
          {
            symbol: 'skin',
            meaning: 'dry to the touch, of marine kinds, on a mild day',
            value: skin[1],
            low: skin[0],
            high: skin[1],
            unit: 'h',
          },
        ]),
    law.kind === 'never cures'
      ? { symbol: 'through', meaning: 'to wait: it never sets', value: 0, unit: 'd' }
      : rate === 0
        ? { symbol: 'through', meaning: 'till set', value: 'it does not set in this weather', unit: '' }
        : {
            symbol: 'through',
            meaning: law.kind === 'moisture' ? 'till set through' : `till ${until}`,
            value: 1 / rate / 1440,
            unit: 'd',
          },
  ];
}

function choiceSources(joint: Joint, kinds: readonly BeddingKind[]): Source[] {
  const recalled = kinds.some((kind) => joint.parts.some((material) => touchOf(kind, material).seen === 'recalled'));
  return [
    articlesOnSealants,
    ...(joint.movement_mm > 0 || joint.where === 'under water' ? [sealantHandbook] : []),
    sealantTrade,
    ...(recalled ? [{ ...sealantSheets, title: 'what it does to some materials: data sheets' }] : []),
    { title: 'which comes first, and the most room each fills', seen: 'our assumption' },
  ];
}
