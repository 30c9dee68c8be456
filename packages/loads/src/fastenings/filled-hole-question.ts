import { inUnit } from '#units';
import { count, length, question } from '#working';
import { boltField, fasteningCautions } from './fastening-fields.ts';
import { assumedFillingOver, filledHole } from './filled-hole.ts';
import { requiredCell } from './size-cell.ts';

export function filledHoleQuestion() {
  return question({
    id: 'loads.filled-hole',
    title: 'How big to drill through a cored deck, and how much filling?',
    fields: {
      size: boltField(),
      upper: length('mm', 0.5, 30, 'upper skin'),
      core: length('mm', 3, 60, 'core'),
      holes: count(1, 60, 'holes'),
    },
    answer: ({ size, upper, core, holes }) => {
      const hole = filledHole(size, inUnit('length', upper, 'mm'), inUnit('length', core, 'mm'));
      return {
        kind: 'found',
        results: [
          {
            symbol: 'D',
            meaning: 'drill through the upper skin and the core, not the lower skin',
            value: hole.drill_mm,
            unit: 'mm',
          },
          {
            symbol: 'V',
            meaning: 'filling to mix for all of them',
            value: assumedFillingOver * holes * hole.fill_ml,
            unit: 'ml',
          },
          { symbol: 'd', meaning: 'drill again, through filling and lower skin', value: hole.again_mm, unit: 'mm' },
          { symbol: 'F', meaning: 'the plug bears under the head', value: hole.bears_N / 1000, unit: 'kN' },
          {
            symbol: 'order',
            meaning: 'how it is done',
            value:
              'drill over size; tape below; wet the walls with unthickened epoxy; fill without bubbles; leave it to cure; drill again; countersink; bed',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'V one',
            meaning: 'one hole, nothing lost',
            value: hole.fill_ml,
            unit: 'ml',
            formula: 'π/4·D²·(skin + core)',
          },
          {
            symbol: 'over',
            meaning: 'mixed over what the holes take',
            value: assumedFillingOver,
            unit: '',
            formula: 'our assumption',
          },
          {
            symbol: 'washer',
            meaning: 'a large washer reaches past the plug by',
            value: Math.max(0, (requiredCell('washer large', size).value - hole.drill_mm) / 2),
            unit: 'mm',
            formula: '(washer − D)/2',
          },
        ],
        sources: [
          {
            title: 'twice the bolt and 5 mm all round at the least; filling bears 40 N/mm² for years',
            seen: 'our assumption',
          },
          { title: 'drill over size, fill, drill again: boatbuilders’ way with cored decks', seen: 'common practice' },
        ],
        limits: [
          'A wet core is dried or cut out first: filling does not stick to it, and frost and rot go on.',
          'The plug keeps water out and stops crushing; the pull still goes into the skins: ask loads.bolt-pattern with the lower skin.',
        ],
        cautions: [
          fasteningCautions.drilling,
          fasteningCautions.dust,
          'Epoxy and its hardener stay off the skin: gloves, and a mix no bigger than can be used before it warms in the pot.',
        ],
      };
    },
  });
}
