import { inBase } from '#units';
import { type Answer, assuming, length, number, type Question, question, type WorkingLine } from '#working';
import { cautions } from '../cautions.ts';
import { inMillimetres } from '../path/loads-fields.ts';
import { sourceOf } from '../path/printed.ts';
import { laidField, rigCautions, rigSources, wireSizeField } from './rig-fields.ts';
import {
  modulus_kN_mm2,
  type StayLoad,
  shareSays,
  stayLoadByStretch,
  stiffness_N,
  stretchByRule_m,
  stretchSources,
  usualShares,
  wireCell,
} from './wire-stretch.ts';

/** The questions about a stay's tension by how far its wire stretches. */
export function stayStretchQuestions(): readonly Question[] {
  return [stayByStretchQuestion(), stayStretchQuestion()];
}

export const stayCautions = [rigCautions.stored, cautions.recoil, cautions.guidance];

/** What a stay's load is, as figures. */
export function loadFigures(load: StayLoad): Answer['results'] {
  return [
    { symbol: 'T', meaning: 'tension', value: load.tension_N, low: load.low_N, high: load.high_N, unit: 'N' },
    load.share_pct === null
      ? { symbol: 'share', meaning: 'of its breaking load when new', value: 'unknown', unit: '' }
      : { symbol: 'share', meaning: 'of its breaking load when new', ...load.share_pct, unit: '%' },
  ];
}

/** Its breaking load and what is usual, as working. */
export function breakingLines(load: Pick<StayLoad, 'breaking'>): readonly WorkingLine[] {
  const { caps, lightMasthead, most } = usualShares;
  const middle = ({ low, high }: { readonly low: number; readonly high: number }) => ({
    value: (low + high) / 2,
    low,
    high,
  });
  return [
    ...(load.breaking === null
      ? []
      : [
          {
            symbol: 'F',
            meaning: `breaking load when new, ${load.breaking.seen}`,
            value: load.breaking.force_N,
            unit: 'N',
            formula: 'the lowest printed: loads.wire',
          },
        ]),
    { symbol: 'usual caps', meaning: 'cap shrouds are set to', ...middle(caps), unit: '%', formula: 'tuning practice' },
    {
      symbol: 'usual light',
      meaning: 'the same, masthead rig on a light hull',
      ...middle(lightMasthead),
      unit: '%',
      formula: 'tuning practice',
    },
    { symbol: 'most', meaning: 'no stay is set beyond', value: most, unit: '%', formula: 'tuning practice' },
  ];
}

export const noBreaking = 'No table of ours has wire of this size: its tension is known, not its share.';
export const newWire =
  'New wire settles and stretches more at first; terminals and eyes are left out of the measured length.';

function stayByStretchQuestion() {
  return question({
    id: 'loads.stay-by-stretch',
    title: 'What tension is in a stay whose wire has stretched so far?',
    fields: {
      laid: laidField(),
      size: wireSizeField(),
      stretch: length('mm', 0, 60, 'stretch from slack, on the measured length'),
      measured: assuming(
        length('m', 0.5, 12, 'length of wire it was measured on'),
        inBase('length', 2, 'm'),
        '2 m',
        'a folding rule taped to the wire',
      ),
    },
    conflict: ({ stretch, measured }) =>
      stretch / measured > 0.01
        ? {
            where: 'stretch',
            wrong: `${1000 * stretch} mm on ${measured} m would break the wire`,
            right: `give ${Math.round(10 * measured)} mm or less, measured on the wire alone`,
          }
        : null,
    answer: ({ laid, size, stretch, measured }) => {
      const size_mm = inMillimetres(size);
      const load = stayLoadByStretch(laid, size_mm, stretch / measured);
      const [tension, share] = loadFigures(load);
      return {
        kind: 'found',
        results: [
          tension!,
          share!,
          ...(load.share_pct === null
            ? []
            : [{ symbol: 'says', meaning: 'as set at rest', value: shareSays(load.share_pct.value), unit: '' }]),
        ],
        working: [
          ...(load.byRule_pct === null
            ? []
            : [
                {
                  symbol: 'share by rule',
                  meaning: 'by the folding rule, whatever the diameter',
                  value: load.byRule_pct,
                  unit: '%',
                  formula: '5 % for 1 mm in 2 m',
                },
              ]),
          {
            symbol: 'T by modulus',
            meaning: 'by the wire’s stiffness',
            value: load.byModulus_N,
            unit: 'N',
            formula: 'E·(π/4)·d²·δ/L',
          },
          {
            symbol: 'E',
            meaning: 'modulus on the full circle, recalled',
            value: modulus_kN_mm2[laid],
            unit: 'kN/mm²',
            formula: 'rigging-trade value',
          },
          ...breakingLines(load),
        ],
        sources: [
          stretchSources.modulus,
          ...(load.byRule_pct === null ? [] : [stretchSources.rule]),
          rigSources.tuning,
          ...(load.breaking === null ? [] : [sourceOf(load.breaking)]),
        ],
        limits: [
          laid === '1x19'
            ? 'The folding rule and the modulus lie some 7 % apart; the truth is between or near them.'
            : 'The folding rule is for 1x19 alone: 10 % either way is our assumption for this wire.',
          ...(load.breaking === null ? [noBreaking] : []),
          newWire,
        ],
        cautions: stayCautions,
      };
    },
  });
}

function stayStretchQuestion() {
  return question({
    id: 'loads.stay-stretch',
    title: 'How far is a stay to stretch for a share of its breaking load?',
    fields: {
      laid: laidField(),
      size: wireSizeField(),
      share: number('%', 0, 60, 'of its breaking load'),
      measured: assuming(
        length('m', 0.5, 30, 'length of wire it is measured on'),
        inBase('length', 2, 'm'),
        '2 m',
        'a folding rule taped to the wire',
      ),
    },
    answer: ({ laid, size, share, measured }) => {
      const size_mm = inMillimetres(size);
      const breaking = wireCell(laid, size_mm);
      const byRule_mm = laid === '1x19' ? 1000 * stretchByRule_m(measured, share / 100) : null;
      const byModulus_mm =
        breaking === null ? null : (1000 * measured * (share / 100) * breaking.force_N) / stiffness_N(laid, size_mm);
      const roads = [byRule_mm, byModulus_mm].filter((each) => each !== null);
      const shown = {
        sources: [
          stretchSources.modulus,
          ...(byRule_mm === null ? [] : [stretchSources.rule]),
          rigSources.tuning,
          ...(breaking === null ? [] : [sourceOf(breaking)]),
        ],
        limits: [...(breaking === null ? [noBreaking] : []), newWire],
        cautions: stayCautions,
        working: [
          ...(byRule_mm === null
            ? []
            : [
                {
                  symbol: 'δ by rule',
                  meaning: 'by the folding rule',
                  value: byRule_mm,
                  unit: 'mm',
                  formula: '1 mm in 2 m for 5 %',
                },
              ]),
          ...(byModulus_mm === null
            ? []
            : [
                {
                  symbol: 'δ by modulus',
                  meaning: 'by the wire’s stiffness',
                  value: byModulus_mm,
                  unit: 'mm',
                  formula: 'share·F·L/(E·(π/4)·d²)',
                },
              ]),
          ...breakingLines({ breaking }),
        ],
      };
      if (roads.length === 0)
        return {
          kind: 'truth',
          statement: 'Unknown: no table of ours has this size',
          because: `the breaking load of ${laid} wire of ${size_mm} mm is not known, and the folding rule is for 1x19`,
          results: [],
          ...shown,
        };
      const [low, high] = [Math.min(...roads), Math.max(...roads)];
      return {
        kind: 'found',
        results: [{ symbol: 'δ', meaning: 'stretch from slack', value: (low + high) / 2, low, high, unit: 'mm' }],
        ...shown,
      };
    },
  });
}
