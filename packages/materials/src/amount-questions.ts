import { inBase } from '#units';
import { area, assuming, choice, count, type Figure, length, number, type Question, question, volume } from '#working';
import { geometry, more, shelf } from './amount-sources.ts';
import {
  type BeadShape,
  beadVolume_ml,
  beddingVolume_ml,
  bottomArea_m2,
  bottomFullness,
  coatVolume_l,
  deckArea_m2,
  drilledOut_m,
  filmThickness_m,
  plugVolume_ml,
  theoreticalSpread_m2_l,
} from './amounts.ts';
import { layUpQuestions } from './lay-up-questions.ts';

/** The questions about how much of a product it takes. A function, so that an app that asks none carries none. */
export function amountQuestions(): readonly Question[] {
  return [spread(), coats(), bottomCoats(), deckCoats(), film(), bedding(), bead(), plugs(), ...layUpQuestions()];
}

const litres = (value: number): Figure => ({ symbol: 'V', meaning: 'volume it takes', value, unit: 'l' });
const millilitres = (value: number): Figure => ({ symbol: 'V', meaning: 'volume it takes', value, unit: 'ml' });
const spreadField = () => number('m²/l', 0.5, 50, 'how far a litre goes in one coat: the tin says');
const coatsField = () => number('coats', 0.1, 20, 'coats; a part coat counts as its part');

function spread() {
  return question({
    id: 'materials.spread',
    title: 'How far does a litre go?',
    fields: {
      solids: number('%', 1, 100, 'solids by volume'),
      film: number('µm', 1, 2000, 'dry film of one coat'),
    },
    answer: ({ solids, film }) => {
      const value = theoreticalSpread_m2_l(solids, film);
      return {
        kind: 'found',
        results: [
          { symbol: 's', meaning: 'area a litre covers, at best', value, low: 0.7 * value, high: value, unit: 'm²/l' },
        ],
        working: [{ symbol: 's', meaning: 'area a litre covers', value, unit: 'm²/l', formula: '10·solids/film' }],
        sources: [geometry, { title: 'paint arithmetic: 70 to 90 % of it in practice', seen: 'recalled' }],
        limits: [more],
        cautions: [],
      };
    },
  });
}

function coats() {
  return question({
    id: 'materials.coats',
    title: 'How many litres for this area?',
    fields: { area: area('m²', 0.001, 1000, 'area'), coats: coatsField(), spread: spreadField() },
    answer: (given) => ({
      kind: 'found',
      results: [litres(coatVolume_l(given.area, given.coats, given.spread))],
      working: [
        {
          symbol: 'V1',
          meaning: 'one coat',
          value: coatVolume_l(given.area, 1, given.spread),
          unit: 'l',
          formula: 'area/spread',
        },
      ],
      sources: [geometry, shelf],
      limits: [more],
      cautions: [],
    }),
  });
}

function bottomCoats() {
  return question({
    id: 'materials.bottom-coats',
    title: 'How many litres for the bottom?',
    fields: {
      length: length('m', 2, 30, 'length on the waterline; over all it comes out a little high'),
      beam: length('m', 0.5, 12, 'beam'),
      draft: length('m', 0, 6, 'draft of the hull, board up'),
      coats: coatsField(),
      spread: spreadField(),
      hull: assuming(
        choice(
          [
            { id: 'light', title: 'light: a dinghy, flat sections' },
            { id: 'full', title: 'full: a small cruiser with a board' },
            { id: 'deep', title: 'deep: a long keel' },
          ],
          'how full the bottom is',
        ),
        'full',
        'full',
        'a small cruiser with a board is nearest to it',
      ),
    },
    answer: (given) => {
      const value = bottomArea_m2(given.length, given.beam, given.draft, bottomFullness[given.hull]);
      return {
        kind: 'found',
        results: [
          litres(coatVolume_l(value, given.coats, given.spread)),
          { symbol: 'A', meaning: 'area of the bottom', value, unit: 'm²' },
        ],
        working: [
          {
            symbol: 'k',
            meaning: 'how full she is',
            value: bottomFullness[given.hull],
            unit: '',
            formula: '0.5 light, 0.75 full, 1 deep',
          },
          { symbol: 'A', meaning: 'area of the bottom', value, unit: 'm²', formula: 'k·length·(beam + draft)' },
        ],
        sources: [{ title: 'rule for the area of a bottom, from paint tins', seen: 'recalled' }, shelf],
        limits: [more, 'A rule of thumb: measure a strange shape. The board and rudder come on top.'],
        cautions: ['Antifouling is poison: gloves, none in the drain, old coats scraped wet.'],
      };
    },
  });
}

function deckCoats() {
  return question({
    id: 'materials.deck-coats',
    title: 'How many litres for the deck?',
    fields: {
      length: length('m', 2, 30, 'length over all'),
      beam: length('m', 0.5, 12, 'beam'),
      coats: coatsField(),
      spread: spreadField(),
    },
    answer: (given) => {
      const value = deckArea_m2(given.length, given.beam);
      return {
        kind: 'found',
        results: [
          litres(coatVolume_l(value, given.coats, given.spread)),
          { symbol: 'A', meaning: 'area of the deck', value, unit: 'm²' },
        ],
        working: [{ symbol: 'A', meaning: 'area of the deck', value, unit: 'm²', formula: '0.75·length·beam' }],
        sources: [{ title: 'rule for the area of a deck, from paint tins', seen: 'recalled' }, shelf],
        limits: [more, 'A rule of thumb: take off hatches and cockpit where they are large.'],
        cautions: [],
      };
    },
  });
}

function film() {
  return question({
    id: 'materials.film-thickness',
    title: 'How thick does it lie?',
    fields: { volume: volume('l', 0.001, 500, 'what went on'), area: area('m²', 0.001, 1000, 'area it went on') },
    answer: (given) => {
      const value = 1000 * filmThickness_m(given.volume, given.area);
      return {
        kind: 'found',
        results: [{ symbol: 'wet', meaning: 'thickness, wet', value, unit: 'mm' }],
        working: [{ symbol: 'wet', meaning: 'thickness, wet', value, unit: 'mm', formula: 'volume/area' }],
        sources: [geometry],
        limits: [
          'What stays in pot, roller and brush is not on her. Gelcoat wants 0.4 to 0.6 mm; paint loses its solvent.',
        ],
        cautions: [],
      };
    },
  });
}

function bedding() {
  return question({
    id: 'materials.bedding',
    title: 'How much sealant under a fitting?',
    fields: {
      length: length('mm', 1, 2000, 'length of its foot'),
      width: length('mm', 1, 2000, 'width of its foot'),
      layer: length('mm', 0.5, 10, 'thickness of the layer before it is pulled up'),
      count: assuming(count(1, 200, 'fittings alike'), 1, '1', 'one fitting'),
    },
    answer: (given) => ({
      kind: 'found',
      results: [millilitres(beddingVolume_ml(given.length, given.width, given.layer, given.count))],
      working: [
        {
          symbol: 'V1',
          meaning: 'one fitting',
          value: beddingVolume_ml(given.length, given.width, given.layer, 1),
          unit: 'ml',
          formula: 'length·width·layer',
        },
      ],
      sources: [geometry],
      limits: ['Before squeeze-out, which is wiped off and lost.', more],
      cautions: [],
    }),
  });
}

function bead() {
  return question({
    id: 'materials.bead',
    title: 'How much sealant in a bead?',
    fields: {
      length: length('m', 0.01, 500, 'length of the bead'),
      shape: choice<BeadShape>(
        [
          { id: 'round', title: 'round' },
          { id: 'fillet', title: 'a fillet in a corner, two equal sides' },
          { id: 'seam', title: 'a seam between two faces' },
        ],
        'its section',
      ),
      size: length('mm', 1, 60, 'diameter of a round one, side of a fillet, width of a seam'),
      depth: assuming(
        length('mm', 1, 60, 'depth of a seam'),
        inBase('length', 6, 'mm'),
        '6 mm',
        'the least there should be',
      ),
      tube: assuming(
        volume('ml', 20, 1000, 'what a tube holds'),
        inBase('volume', 290, 'ml'),
        '290 ml',
        'a usual cartridge',
      ),
    },
    answer: (given) => {
      const perMetre_ml = beadVolume_ml(1, given.shape, given.size, given.depth);
      const tube_ml = 1000 * given.tube;
      const value = beadVolume_ml(given.length, given.shape, given.size, given.depth);
      return {
        kind: 'found',
        results: [
          millilitres(value),
          { symbol: 'tubes', meaning: 'tubes that is, before waste', value: value / tube_ml, unit: '' },
          { symbol: 'reach', meaning: 'how far a tube goes', value: tube_ml / perMetre_ml, unit: 'm' },
        ],
        working: [
          {
            symbol: 'per metre',
            meaning: 'a metre of it',
            value: perMetre_ml,
            unit: 'ml/m',
            formula: { round: 'π·d²/4', fillet: 'a²/2', seam: 'width·depth' }[given.shape],
          },
        ],
        sources: [geometry],
        limits: [more],
        cautions: [],
      };
    },
  });
}

function plugs() {
  return question({
    id: 'materials.plugs',
    title: 'How much thick resin to fill holes?',
    fields: {
      count: count(1, 1000, 'holes'),
      diameter: length('mm', 1, 300, 'thickness of what went through them; of a hollow, its width'),
      depth: length('mm', 1, 200, 'depth of a hole'),
      opened: assuming(
        choice<'drilled' | 'as-it-is'>(
          [
            { id: 'drilled', title: 'drilled out first' },
            { id: 'as-it-is', title: 'filled as it is' },
          ],
          'how it is opened',
        ),
        'drilled',
        'drilled out first',
        'a hole that something goes through again',
      ),
    },
    answer: (given) => {
      const drilled = given.opened === 'drilled';
      const wide = drilled ? drilledOut_m(given.diameter) : given.diameter;
      return {
        kind: 'found',
        results: [millilitres(plugVolume_ml(given.count, wide, given.depth))],
        working: [
          {
            symbol: 'd',
            meaning: drilled ? 'drilled out to' : 'as wide as it is',
            value: 1000 * wide,
            unit: 'mm',
            formula: drilled ? 'the more of 2·diameter and diameter + 10' : 'diameter',
          },
          {
            symbol: 'V1',
            meaning: 'one hole',
            value: plugVolume_ml(1, wide, given.depth),
            unit: 'ml',
            formula: 'π·d²/4·depth',
          },
        ],
        sources: [
          geometry,
          ...(drilled
            ? [
                { title: 'holes drilled well oversize before they are filled', seen: 'common practice' as const },
                { title: 'twice what goes through, 5 mm all round at the least', seen: 'our assumption' as const },
              ]
            : []),
        ],
        limits: ['Core raked out round a hole comes on top.', more],
        cautions: ['Do not leave a full pot of resin standing: it heats itself until it smokes.'],
      };
    },
  });
}
