import {
  type Answer,
  type Figure,
  force,
  number,
  type Question,
  question,
  type Source,
  type WorkingLine,
} from '#working';
import { cautions } from '../cautions.ts';
import type { uses } from './factor.ts';
import { fitOf, type Misfit } from './fit.ts';
import { type CaseBorne, caseBorne, type PathBears, pathBears, placesUnknown } from './load-path.ts';
import { purposeField } from './loads-fields.ts';
import { partInWords } from './part-in-words.ts';
import type { LoadPart } from './part-strength.ts';
import { partsField } from './parts-field.ts';
import { shacklesThatFit } from './shackle-that-fits.ts';
import { stepped } from './step-size.ts';

/** The questions about load paths: what one bears, and what in it does not fit what. */
export function pathQuestions(): readonly Question[] {
  return [pathQuestion(), fitQuestion()];
}

const limits = [
  'Tables are for new gear: what age and wear take from it is a stated share, mostly our assumption.',
  'A steady pull in line. Jerks, waves, pulling aside and bent eyes take more, and are not counted.',
  'What an anchor holds in the ground is not its strength.',
];

const said = (parts: readonly LoadPart[], i: number): string => `${i + 1}, ${partInWords(parts[i]!)}`;
const places = (n: number): string => (n === 1 ? '1 place' : `${n} places`);
const kN = (symbol: string, meaning: string, force_N: number): Figure => ({
  symbol,
  meaning,
  value: force_N / 1000,
  unit: 'kN',
});

/** Each part with the share of its working load, or why it has none. */
function partFigures(parts: readonly LoadPart[], path: PathBears, { shares }: CaseBorne): readonly Figure[] {
  return parts.map((_, i): Figure => {
    const { strength, times } = path.parts[i]!;
    const meaning = `part ${said(parts, i)}: of its working load`;
    const share = shares[i];
    if (share != null) return { symbol: `u ${i + 1}`, meaning, value: 100 * share, unit: '%' };
    const value =
      strength.kind === 'unknown' || strength.kind === 'replace'
        ? `${strength.kind}: ${strength.because}`
        : times === null
          ? 'unknown: what it carries is not known'
          : strength.kind;
    return { symbol: `u ${i + 1}`, meaning, value, unit: '' };
  });
}

const workingOf = (parts: readonly LoadPart[], path: PathBears): readonly WorkingLine[] =>
  path.parts.flatMap(({ strength, times }, i): WorkingLine[] =>
    strength.kind !== 'known'
      ? []
      : [
          ...strength.working.map((line) => ({ ...line, symbol: `${line.symbol}, ${i + 1}` })),
          {
            ...kN(`W ${i + 1}`, `part ${said(parts, i)} may work at`, strength.working_N),
            formula: 'F·k/n, or as marked',
          },
          ...(times === null || times === 1
            ? []
            : [
                {
                  symbol: `t ${i + 1}`,
                  meaning: 'times the load of the path it carries',
                  value: times,
                  unit: '',
                  formula: '2·sin(turn/2); over the ratio of a winch',
                },
              ]),
        ],
  );

const sourcesOf = (path: PathBears): readonly Source[] => {
  const all = path.parts.flatMap(({ strength }) =>
    strength.kind === 'known' ? strength.sources : strength.kind === 'replace' ? [strength.whose] : [],
  );
  return [...new Map(all.map((source) => [`${source.title} ${source.seen}`, source])).values()];
};

/** What the next sizes of the weakest part would make of the path. */
function stepFigures(parts: readonly LoadPart[], path: PathBears, use: keyof typeof uses): readonly Figure[] {
  const { weakest } = path;
  if (weakest === null) return [];
  return (['up', 'down'] as const).flatMap((way) => {
    const step = stepped(parts, weakest, way, use);
    return step === null || step.path.atMost_N === null
      ? []
      : [
          kN(
            `W ${way}`,
            `the same with part ${step.at + 1} a size ${way}: ${partInWords(step.part)}, new`,
            step.path.atMost_N,
          ),
        ];
  });
}

const verdictWords = (parts: readonly LoadPart[], path: PathBears, { verdict, shares }: CaseBorne): string =>
  verdict.kind === 'holds'
    ? 'It holds'
    : verdict.kind === 'unknown'
      ? `Unknown at ${places(verdict.places)}`
      : `It does not hold: ${verdict.parts
          .map((i) => {
            const share = shares[i];
            const why = path.replace.includes(i)
              ? 'to be replaced'
              : share != null && share > 1
                ? `${Math.round(100 * share)} % of its working load`
                : 'does not fit';
            return `part ${said(parts, i)}: ${why}`;
          })
          .join('; ')}`;

function becauseOf(parts: readonly LoadPart[], path: PathBears): string {
  const unknown = path.unknown.map((i) => {
    const { strength } = path.parts[i]!;
    return `part ${said(parts, i)}: ${strength.kind === 'unknown' ? strength.because : 'what it carries is not known'}`;
  });
  const gaps = path.gaps.map(({ after, because }) => `after part ${after + 1}: ${because}`);
  const gone = path.replace.map((i) => {
    const { strength } = path.parts[i]!;
    return `part ${said(parts, i)}: ${strength.kind === 'replace' ? strength.because : ''}`;
  });
  const apart = path.misfits.filter(({ gravity }) => gravity !== 'look to it').map(({ what }) => what);
  const first = path.weakest === null ? [] : [`part ${said(parts, path.weakest)} is the first of those that are known`];
  return [...gone, ...apart, ...unknown, ...gaps, ...first].join('; ');
}

function pathQuestion() {
  return question({
    id: 'loads.path',
    title: 'Does this load path hold, and which part is first?',
    fields: {
      parts: partsField(),
      use: purposeField(),
      load: force('N', 0.1, 1_000_000, 'load on the path'),
      wind: number('kn', 0, 120, 'wind that load is for; 0 where it is not the wind’s'),
    },
    answer: ({ parts, use, load, wind }): Answer => {
      const path = pathBears(parts, use);
      const borne = caseBorne(path, { name: 'load', force_N: load, wind_kn: wind === 0 ? null : wind });
      const results: [Figure, ...Figure[]] = [
        { symbol: 'verdict', meaning: 'under this load', value: borne.verdict.kind, unit: '' },
        path.weakest === null || path.atMost_N === null
          ? {
              symbol: 'W',
              meaning: 'load at which the first part reaches its working load',
              value: 'unknown',
              unit: '',
            }
          : kN(
              'W',
              `load at which part ${said(parts, path.weakest)} reaches its working load, the first of those known`,
              path.atMost_N,
            ),
        { symbol: 'unknown', meaning: 'places where nothing is known', value: placesUnknown(path), unit: '' },
        {
          symbol: 'not looked at',
          meaning: 'parts counted as sound that nobody looked at',
          value: path.notLookedAt.length,
          unit: '',
        },
        ...(borne.goodTo_kn === null
          ? []
          : [{ symbol: 'good to', meaning: 'wind at which that part reaches it', value: borne.goodTo_kn, unit: 'kn' }]),
        ...partFigures(parts, path, borne),
        ...stepFigures(parts, path, use),
        ...misfitFigures(path.misfits),
      ];
      const shown = {
        results,
        working: workingOf(parts, path),
        sources: [...sourcesOf(path), fitSource],
        limits,
        cautions:
          use === 'hoist'
            ? [cautions.under, cautions.slip, cautions.recoil, cautions.persons, cautions.guidance]
            : [cautions.recoil, cautions.persons, cautions.guidance],
      };
      return borne.verdict.kind === 'holds'
        ? { kind: 'found', ...shown }
        : { kind: 'truth', statement: verdictWords(parts, path, borne), because: becauseOf(parts, path), ...shown };
    },
  });
}

const fitSource: Source = {
  title:
    'pins, jaws, links and thimbles where they were not measured: RR-C-271, DIN 766 and sellers’ sheets read; stainless shackles recalled',
  seen: 'recalled',
};

const misfitFigures = (misfits: readonly Misfit[]): readonly Figure[] =>
  misfits.map(({ at, gravity, what, right }) => ({
    symbol: at.map((i) => i + 1).join('–'),
    meaning: `${gravity}; right: ${right}`,
    value: what,
    unit: '',
  }));

function fitQuestion() {
  return question({
    id: 'loads.fit',
    title: 'What does not fit what in this load path?',
    fields: { parts: partsField() },
    answer: ({ parts }): Answer => {
      const misfits = fitOf(parts);
      const worst = (['does not go together', 'not known'] as const).find((each) =>
        misfits.some(({ gravity }) => gravity === each),
      );
      const shackles = parts.flatMap((part, i): Figure[] => {
        if (part.kind !== 'shackle' || !misfits.some(({ at, gravity }) => at.includes(i) && gravity !== 'look to it'))
          return [];
        const found = shacklesThatFit(parts, i, 'hoist', null)[0];
        return [
          {
            symbol: `instead of ${i + 1}`,
            meaning: 'a shackle that goes there, by the tables',
            value: found === undefined ? 'none of the tables goes there' : partInWords(found.part),
            unit: '',
          },
        ];
      });
      const shown = {
        working: [],
        sources: [
          fitSource,
          { title: 'Toss, The Complete Rigger’s Apprentice, sheaves', seen: 'read second-hand' as const },
        ],
        limits: ['Thickness and width only: whether there is room for the hand that puts the pin in is for the eye.'],
        cautions: [cautions.recoil, cautions.guidance],
      };
      const results: [Figure, ...Figure[]] = [
        { symbol: 'fit', meaning: 'of the path as a whole', value: worst ?? 'goes together', unit: '' },
        ...misfitFigures(misfits),
        ...shackles,
      ];
      return worst === undefined
        ? { kind: 'found', results, ...shown }
        : {
            kind: 'truth',
            statement: worst === 'not known' ? 'Whether it fits is not known' : 'It does not fit',
            because: misfits
              .filter(({ gravity }) => gravity === worst)
              .map(({ what }) => what)
              .join('; '),
            results,
            ...shown,
          };
    },
  });
}
