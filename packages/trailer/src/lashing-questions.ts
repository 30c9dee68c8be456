import { inBase } from '#units';
import { angle, assuming, choice, force, length, mass, number, type Question, question } from '#working';
import {
  acrossOver,
  breakingOverCapacity,
  codeOfPractice,
  directHolds_N,
  directLashings,
  frictionShare,
  handForce_N,
  road,
  shareAsked,
  strapsOver,
  unmarkedWeb_kg,
  type Way,
  webCapacity_N,
  webLimits_pct,
} from './lashing.ts';
import { cautions, sources } from './trailer-fields.ts';

/** The questions about what keeps a boat on her trailer. */
export function lashingQuestions(): readonly Question[] {
  return [strapsOverQuestion(), directQuestion(), webQuestion()];
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const ways: readonly Way[] = ['forward', 'sideways', 'rearward'];
const shareLines = ways.flatMap((way) => [
  {
    symbol: `c ${way}`,
    meaning: `share of the weight, ${way}, by the standard`,
    value: road[way].share,
    unit: 'g',
    formula: 'printed',
  },
  {
    symbol: `c ${way}, code`,
    meaning: `share of the weight, ${way}, by the British code`,
    value: codeOfPractice[way],
    unit: 'g',
    formula: 'printed',
  },
]);
const printedLines = [
  ...shareLines,
  {
    symbol: 'c down',
    meaning: 'share of the weight that presses down',
    value: road.down,
    unit: 'g',
    formula: 'printed',
  },
  {
    symbol: 'c tipping',
    meaning: 'sideways, for what would tip first',
    value: road.tipping,
    unit: 'g',
    formula: 'printed',
  },
  {
    symbol: 'k',
    meaning: 'how tension goes over to the other side',
    value: acrossOver.revised,
    unit: '',
    formula: 'printed',
  },
  {
    symbol: 'k of 2003',
    meaning: 'the same in the older standard',
    value: acrossOver.of2003,
    unit: '',
    formula: 'printed: not used',
  },
] as const;

const wayField = () =>
  choice(
    ways.map((id) => ({ id, title: id })),
    'which way the road pulls her',
  );
const massField = () => mass('kg', 1, 5000, 'mass of boat and all that is in her');
const frictionField = () =>
  assuming(
    number('', 0, 1, 'µ between hull and supports'),
    0,
    '0',
    'on rollers nothing rubs; enter it for bunks only where it is known',
  );
const shareField = () =>
  assuming<number | null>(
    number('', 0.1, 2, 'share of the weight that is to be held'),
    null,
    'the larger of standard and code',
    'the safe side',
  );
const aboveField = (degrees: number) =>
  assuming(angle('°', 0, 90, 'strap above level'), inBase('angle', degrees, '°'), `${degrees}°`, 'as usual');

const notAll = 'Forward she is held by the bow post and its chock: no strap stands in for it.';

function strapsOverQuestion() {
  return question({
    id: 'trailer.straps-over',
    title: 'How many straps over her?',
    fields: {
      mass: massField(),
      way: wayField(),
      friction: frictionField(),
      tension: assuming(
        force('N', 100, 20_000, 'tension each ratchet gives (STF on its label)'),
        inBase('force', 2_500, 'N'),
        '2 500 N',
        'a small ratchet; its label wins',
      ),
      'strap-angle': aboveField(90),
      share: shareField(),
    },
    answer: ({ mass: mass_kg, way, friction, tension, 'strap-angle': up, share: given }) => {
      const share = given ?? shareAsked(way);
      const n = strapsOver(mass_kg, share, friction, road[way].factor, tension, radians(up));
      const shown = {
        working: [
          {
            symbol: 'c',
            meaning: 'share of the weight to be held',
            value: share,
            unit: 'g',
            formula: given === null ? 'larger of standard and code' : 'given',
          },
          { symbol: 'f', meaning: 'safety factor', value: road[way].factor, unit: '', formula: 'printed' },
          {
            symbol: 'n formula',
            meaning: 'straps over the top',
            value: Number.isFinite(n) ? n : 'no end of them',
            unit: '',
            formula: '(c − µ)·m·g·f/(k·µ·sin α·F)',
          },
          ...printedLines,
        ],
        sources: [sources.road, sources.roadRecalled, sources.code, sources.practice],
        limits: [
          notAll,
          'A strap over a boat presses on her gunwales: the tension is lost at every edge it runs over.',
        ],
        cautions: [cautions.lashing, cautions.hull, cautions.web, cautions.guidance],
      };
      if (!Number.isFinite(n))
        return {
          kind: 'truth',
          statement: 'Straps over her hold nothing here',
          because:
            'they hold by pressing her on what she stands on, and on rollers nothing rubs: she needs lashings that pull against the way she would go',
          results: [],
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 'straps', meaning: 'over her, whole', value: Math.ceil(n), unit: 'straps' },
          { symbol: 'n', meaning: 'as worked out', value: n, unit: 'straps' },
        ],
        ...shown,
      };
    },
  });
}

function directQuestion() {
  return question({
    id: 'trailer.direct-lashings',
    title: 'How many lashings that pull against the way she would go?',
    fields: {
      mass: massField(),
      way: wayField(),
      friction: frictionField(),
      capacity: force(
        'N',
        100,
        50_000,
        'the least of the strap’s capacity (LC) and what its places on hull and trailer bear',
      ),
      'strap-angle': aboveField(30),
      'aside-angle': assuming(
        angle('°', 0, 89, 'strap aside from straight against it, seen from above'),
        inBase('angle', 0, '°'),
        '0°',
        'straight against it',
      ),
      share: shareField(),
    },
    answer: ({ mass: mass_kg, way, friction, capacity, 'strap-angle': up, 'aside-angle': aside, share: given }) => {
      const share = given ?? shareAsked(way);
      const n = directLashings(mass_kg, share, friction, capacity, radians(up), radians(aside));
      return {
        kind: 'found',
        results: [
          {
            symbol: 'lashings',
            meaning: 'whole',
            value: Number.isFinite(n) ? Math.ceil(n) : 'none holds: they point away',
            unit: Number.isFinite(n) ? 'straps' : '',
          },
          ...(Number.isFinite(n) ? [{ symbol: 'n', meaning: 'as worked out', value: n, unit: 'straps' }] : []),
        ],
        working: [
          {
            symbol: 'c',
            meaning: 'share of the weight to be held',
            value: share,
            unit: 'g',
            formula: given === null ? 'larger of standard and code' : 'given',
          },
          {
            symbol: 'fµ',
            meaning: 'share of the friction that counts',
            value: frictionShare,
            unit: '',
            formula: 'printed',
          },
          {
            symbol: 'each',
            meaning: 'one lashing holds',
            value: directHolds_N(capacity, radians(up), radians(aside), friction),
            unit: 'N',
            formula: 'F·(cos α·cos β + µ·fµ·sin α)',
          },
          ...printedLines,
        ],
        sources: [sources.road, sources.roadRecalled, sources.code, sources.practice, sources.allow],
        limits: [notAll],
        cautions: [cautions.lashing, cautions.hull, cautions.web, cautions.guidance],
      };
    },
  });
}

function webQuestion() {
  return question({
    id: 'trailer.webbing',
    title: 'What does a strap hold?',
    fields: {
      width: choice(
        [
          { id: '25', title: '25 mm' },
          { id: '35', title: '35 mm' },
          { id: '50', title: '50 mm' },
        ],
        'width of the webbing',
      ),
      stretched: assuming(
        length('m', 0.1, 20, 'length of the strap'),
        inBase('length', 3, 'm'),
        '3 m',
        'over a small boat',
      ),
    },
    answer: ({ width, stretched }) => {
      const capacity = webCapacity_N[Number(width) as 25 | 35 | 50];
      return {
        kind: 'found',
        results: [
          {
            symbol: 'LC',
            meaning: width === '50' ? 'as sold, straight' : 'as sold, straight, recalled',
            value: capacity.low / 10,
            low: capacity.low / 10,
            high: capacity.high / 10,
            unit: 'daN',
          },
          {
            symbol: 'stretch',
            meaning: 'at its capacity, at most',
            value: 10 * webLimits_pct.stretch * stretched,
            unit: 'mm',
          },
        ],
        working: [
          {
            symbol: 'SHF',
            meaning: 'hand force the label speaks of',
            value: handForce_N / 10,
            unit: 'daN',
            formula: 'printed',
          },
          {
            symbol: 'breaking',
            meaning: 'of the strap as assembled, over its capacity',
            value: breakingOverCapacity,
            unit: '',
            formula: 'printed',
          },
          {
            symbol: 'stretch most',
            meaning: 'of its length at its capacity',
            value: webLimits_pct.stretch,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'cut most',
            meaning: 'of its width, then it is thrown away',
            value: webLimits_pct.cut,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'unmarked 45',
            meaning: 'unmarked webbing of 45 mm, American rule',
            value: unmarkedWeb_kg[45],
            unit: 'kg',
            formula: 'printed',
          },
          {
            symbol: 'unmarked 50',
            meaning: 'unmarked webbing of 50 mm, American rule',
            value: unmarkedWeb_kg[50],
            unit: 'kg',
            formula: 'printed',
          },
        ],
        sources: [sources.webbing, sources.webbingRecalled, sources.unmarked],
        limits: [
          'The label decides; the lower end is taken where it cannot be read. A strap without a label is not trusted at all.',
        ],
        cautions: [cautions.web, cautions.lashing, cautions.guidance],
      };
    },
  });
}
