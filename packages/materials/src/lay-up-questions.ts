import {
  area,
  assuming,
  choice,
  count,
  type Figure,
  number,
  type Question,
  question,
  type Source,
  volume,
} from '#working';
import { geometry, more } from './amount-sources.ts';
import { clothResin_kg } from './amounts.ts';
import {
  type Cloth,
  glassShare,
  laminateThickness_m,
  middle,
  type Resin,
  resinDensity_kg_l,
  resinToCloth,
  type Thickener,
  type Thickness,
  thickeners,
  thickMix,
} from './lay-up.ts';

/** The questions about cloth, resin and what thickens it. */
export function layUpQuestions(): readonly Question[] {
  return [clothResin(), clothRatio(), thickener()];
}

const practice: Source = { title: 'resin to cloth by weight, lay-up practice', seen: 'common practice' };
const layUpNotes: Source = { title: 'resin calculation notes of a seller: mat at 2 to 2.5', seen: 'read second-hand' };
const densities: Source = { title: 'densities of resins, glass and thickeners: data sheets', seen: 'recalled' };
const pot = 'Do not leave a full pot of resin standing: it heats itself until it smokes.';
const resinField = () =>
  choice<Resin>(
    [
      { id: 'polyester', title: 'polyester' },
      { id: 'epoxy', title: 'epoxy' },
    ],
    'the resin',
  );

function clothResin() {
  return question({
    id: 'materials.cloth-resin',
    title: 'How much resin for cloth?',
    fields: {
      area: area('m²', 0.001, 200, 'area'),
      weight: number('g/m²', 20, 3000, 'weight of the cloth'),
      layers: count(1, 30, 'layers'),
      ratio: number('', 0.5, 4, 'resin to cloth by weight: about 1 with epoxy on woven cloth, 2 to 2.5 on chopped mat'),
      resin: assuming(resinField(), 'polyester', 'polyester', 'not said; only its volume hangs on it'),
    },
    answer: (given) => {
      const weight = given.weight / 1000;
      const resin = clothResin_kg(given.area, weight, given.layers, given.ratio);
      const cloth = given.area * weight * given.layers;
      const { value, low, high } = resinDensity_kg_l[given.resin];
      const litres = { value: resin / value, low: resin / high, high: resin / low };
      return {
        kind: 'found',
        results: [
          { symbol: 'resin', meaning: 'resin it takes', value: resin, unit: 'kg' },
          { symbol: 'litres', meaning: 'that is', ...litres, unit: 'l' },
          { symbol: 'laminate', meaning: 'what is added to her', value: resin + cloth, unit: 'kg' },
          {
            symbol: 'thickness',
            meaning: 'cured, all layers',
            value: 1000 * laminateThickness_m(weight * given.layers, given.ratio),
            unit: 'mm',
          },
        ],
        working: [
          { symbol: 'cloth', meaning: 'cloth', value: cloth, unit: 'kg', formula: 'area·weight·layers' },
          { symbol: 'resin', meaning: 'resin', value: resin, unit: 'kg', formula: 'cloth·ratio' },
        ],
        sources: [geometry, practice, densities],
        limits: [more],
        cautions: [pot],
      };
    },
  });
}

function clothRatio() {
  return question({
    id: 'materials.cloth-ratio',
    title: 'How much resin to how much cloth?',
    fields: {
      cloth: choice<Cloth>(
        [
          { id: 'mat', title: 'chopped strand mat' },
          { id: 'woven', title: 'woven or stitched cloth' },
        ],
        'the cloth',
      ),
      resin: resinField(),
    },
    answer: ({ cloth, resin }) => {
      const { value, low, high } = resinToCloth[cloth][resin];
      const density = resinDensity_kg_l[resin];
      const ofMat = cloth === 'mat' && resin === 'polyester';
      return {
        kind: 'found',
        results: [
          { symbol: 'ratio', meaning: 'resin to cloth by weight, laid up by hand', value, low, high, unit: '' },
          { symbol: 'glass', meaning: 'share of glass by weight', value: 100 * glassShare(value), unit: '%' },
          { symbol: 'density', meaning: 'of the resin as it is poured', ...density, unit: 'kg/l' },
        ],
        working: [
          {
            symbol: 'glass',
            meaning: 'share of glass',
            value: 100 * glassShare(value),
            unit: '%',
            formula: '1/(1 + ratio)',
          },
          ...(ofMat
            ? [
                {
                  symbol: 'seller',
                  meaning: 'for 100 ft² of one ¾ oz and two 1½ oz mats a seller reckons, more than 3 to 1',
                  value: 8.6,
                  unit: 'US gal',
                  formula: 'printed',
                },
              ]
            : []),
        ],
        sources: [ofMat ? layUpNotes : { ...practice, seen: 'recalled' }, densities],
        limits: [
          'A dry patch is weak and a pool is weight: rolled out till it is wet through and no more.',
          ...(cloth === 'mat' && resin === 'epoxy'
            ? ['The binder of most mat wants styrene to soften it: with epoxy only mat that is sold for it, or cloth.']
            : []),
        ],
        cautions: [pot],
      };
    },
  });
}

function thickener() {
  return question({
    id: 'materials.thickener',
    title: 'What goes into thickened epoxy?',
    fields: {
      volume: volume('ml', 1, 20_000, 'how much thickened'),
      thickener: choice<Thickener>(
        (Object.keys(thickeners) as Thickener[]).map((id) => ({ id, title: thickeners[id].title })),
        'what thickens it',
      ),
      thickness: choice<Thickness>(
        [
          { id: 'stands', title: 'stands in peaks: fillets, filling' },
          { id: 'sags', title: 'sags a little: glue on a slope' },
          { id: 'runs', title: 'runs slowly: glue on a flat' },
        ],
        'how thick',
      ),
    },
    answer: (given) => {
      const { bulk, solid } = thickeners[given.thickener];
      const mix = thickMix(given.thickener, given.thickness, 1000 * given.volume);
      const epoxy: Figure = { symbol: 'epoxy', meaning: 'mixed epoxy', value: mix.resin_ml, unit: 'ml' };
      return {
        kind: 'found',
        results: [
          epoxy,
          { symbol: 'filler', meaning: 'stirred in, as it lies in its tub', value: mix.filler_ml, unit: 'ml' },
          { symbol: 'weight', meaning: 'of that', value: mix.filler_g, unit: 'g' },
          { symbol: 'density', meaning: 'of the mix', value: mix.density_kg_l, unit: 'kg/l' },
        ],
        working: [
          {
            symbol: 'bulk',
            meaning: 'weight of a tub of it',
            value: middle(bulk),
            low: bulk[0],
            high: bulk[1],
            unit: 'kg/m³',
            formula: 'recalled',
          },
          { symbol: 'solid', meaning: 'weight of the stuff itself', value: solid, unit: 'kg/m³', formula: 'recalled' },
          { ...epoxy, formula: 'volume/(1 + tubs·bulk/solid)' },
        ],
        sources: [densities, { title: 'a half and a quarter of it for thinner mixes', seen: 'our assumption' }],
        limits: ['Stirred in till it stands as wanted: heat thins the epoxy, and makes differ.'],
        cautions: ['Filler dust: a mask till it is wet.', pot],
      };
    },
  });
}
