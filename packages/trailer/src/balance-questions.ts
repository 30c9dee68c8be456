import { assuming, choice, length, mass, number, type Question, question } from '#working';
import { balanceOf, ballByScale_kg, ballGain_kg, forwardFor_m } from './balance.ts';
import {
  type Advice,
  advised_pct,
  ballLimit,
  type LimitFinding,
  ladenOverKerb_pct,
  least_pct,
  limitsLooked,
  most_pct,
  type PaperLimits,
  unbraked,
} from './limits.ts';
import { ballAheadField, cautions, notEntered, sources } from './trailer-fields.ts';

/** The questions about what presses on ball and axle. */
export function balanceQuestions(): readonly Question[] {
  return [ballLoadQuestion(), ballGainQuestion(), shiftQuestion(), scaleQuestion(), limitsQuestion()];
}

const atRest = 'Standing level: brakes, hills and bumps add to it.';

function ballLoadQuestion() {
  return question({
    id: 'trailer.ball-load',
    title: 'How much presses on the ball?',
    fields: {
      laden: mass('kg', 1, 5000, 'laden mass: trailer, boat and all that is in her'),
      'centre-ahead': length('m', -3, 5, 'centre of gravity ahead of the axle; behind it below 0'),
      'ball-ahead': ballAheadField(),
    },
    answer: ({ laden, 'centre-ahead': ahead_m, 'ball-ahead': ballAhead_m }) => {
      const { ball_kg, axle_kg, ball_pct } = balanceOf([{ name: 'all', mass_kg: laden, ahead_m }], ballAhead_m);
      return {
        kind: 'found',
        results: [
          { symbol: 'B', meaning: 'ball load', value: ball_kg.likely, unit: 'kg' },
          { symbol: 'share', meaning: 'of the laden mass', value: ball_pct ?? 0, unit: '%' },
          { symbol: 'A', meaning: 'axle load', value: axle_kg, unit: 'kg' },
        ],
        working: [
          { symbol: 'W', meaning: 'laden mass', value: laden, unit: 'kg', formula: 'given' },
          { symbol: 'x', meaning: 'centre of gravity ahead of the axle', value: ahead_m, unit: 'm', formula: 'given' },
          { symbol: 'L', meaning: 'axle to ball', value: ballAhead_m, unit: 'm', formula: 'given' },
          { symbol: 'B moments', meaning: 'ball load', value: ball_kg.likely, unit: 'kg', formula: 'W·x/L' },
          { symbol: 'A rest', meaning: 'axle load', value: axle_kg, unit: 'kg', formula: 'W − B' },
        ],
        sources: [sources.moments],
        limits: [atRest],
        cautions: [
          ...((ball_pct ?? 0) < least_pct ? [cautions.wags] : []),
          cautions.level,
          cautions.law,
          cautions.guidance,
        ],
      };
    },
  });
}

function ballGainQuestion() {
  return question({
    id: 'trailer.ball-gain',
    title: 'What does moving or adding something do to the ball load?',
    fields: {
      moved: mass('kg', 0, 2000, 'mass moved, hung on or taken in'),
      forward: length(
        'm',
        -10,
        10,
        'how far forward it goes, aft below 0; for something added its place ahead of the axle',
      ),
      'ball-ahead': ballAheadField(),
    },
    answer: ({ moved, forward, 'ball-ahead': ballAhead_m }) => ({
      kind: 'found',
      results: [
        { symbol: 'ΔB', meaning: 'what the ball gains', value: ballGain_kg(moved, forward, ballAhead_m), unit: 'kg' },
      ],
      working: [
        {
          symbol: 'ΔB moments',
          meaning: 'what the ball gains',
          value: ballGain_kg(moved, forward, ballAhead_m),
          unit: 'kg',
          formula: 'm·Δx/L',
        },
      ],
      sources: [sources.moments],
      limits: [atRest],
      cautions: [cautions.level, cautions.law, cautions.guidance],
    }),
  });
}

function shiftQuestion() {
  return question({
    id: 'trailer.shift',
    title: 'How far must it go for the ball load wanted?',
    fields: {
      gain: mass('kg', -500, 500, 'what the ball is to gain, lose below 0'),
      moved: mass('kg', 0.1, 5000, 'mass that is moved'),
      'ball-ahead': ballAheadField(),
    },
    answer: ({ gain, moved, 'ball-ahead': ballAhead_m }) => {
      const forward = forwardFor_m(gain, moved, ballAhead_m);
      return {
        kind: 'found',
        results: [{ symbol: 'Δx', meaning: 'forward, aft below 0', value: forward, unit: 'm' }],
        working: [{ symbol: 'Δx moments', meaning: 'forward', value: forward, unit: 'm', formula: 'ΔB·L/m' }],
        sources: [sources.moments],
        limits: ['Whether there is room for it to go so far is not looked at.', atRest],
        cautions: [
          'A boat is moved on her trailer afloat or by her rollers with the bow held, never pushed by hand on a slope.',
          cautions.level,
          cautions.guidance,
        ],
      };
    },
  });
}

function scaleQuestion() {
  return question({
    id: 'trailer.ball-by-scale',
    title: 'What does the bathroom scale say of the ball load?',
    fields: {
      scale: mass('kg', 0, 200, 'reading of the scale under the far end of the beam, the beam’s own share taken off'),
      ratio: number(
        '',
        0.05,
        1,
        'where the coupling presses, as a share of the beam from the block: 0.25 is a quarter along',
      ),
    },
    answer: ({ scale, ratio }) => ({
      kind: 'found',
      results: [{ symbol: 'B', meaning: 'ball load', value: ballByScale_kg(scale, ratio), unit: 'kg' }],
      working: [
        {
          symbol: 'B lever',
          meaning: 'ball load',
          value: ballByScale_kg(scale, ratio),
          unit: 'kg',
          formula: 'scale/ratio',
        },
      ],
      sources: [sources.lever],
      limits: [
        'Block and scale level with each other, the coupling at the height it tows at: the ball load changes with the slope of the trailer.',
        'Weigh the beam alone first and take that off.',
      ],
      cautions: [cautions.scale, cautions.level, cautions.guidance],
    }),
  });
}

const limitField = (meaning: string, high = 20_000) =>
  assuming<number | null>(mass('kg', 1, high, meaning), null, notEntered, 'nothing is said of what was not entered');

function limitsQuestion() {
  return question({
    id: 'trailer.limits',
    title: 'Is the trailer within its limits?',
    fields: {
      laden: mass('kg', 1, 5000, 'laden mass'),
      ball: mass('kg', -500, 500, 'ball load'),
      advice: assuming(
        choice(
          (Object.keys(advised_pct) as Advice[]).map((id) => ({ id, title: advised_pct[id].title })),
          'whose advice on the share of the ball',
        ),
        'uk' as Advice,
        'Britain and Europe',
        'the lighter ball load; towing law at home decides',
      ),
      car: limitField('ball limit of the car, in its papers', 500),
      bar: limitField('ball limit on the plate of the tow bar', 500),
      coupling: limitField('ball limit stamped on the coupling', 500),
      gross: limitField('gross mass on the trailer’s plate'),
      axle: limitField('axle load on the axle’s plate'),
      tyres: limitField('what all its tyres together may carry'),
      train: limitField('what car and trailer may weigh together'),
      'car-kerb': limitField('kerb mass of the car'),
      'car-laden': limitField('car as laden on the day'),
      brakes: assuming(
        choice(
          [
            { id: 'yes', title: 'with brakes' },
            { id: 'no', title: 'without brakes' },
          ],
          'whether the trailer has brakes',
        ),
        'no' as const,
        'without brakes',
        'the stricter rule',
      ),
    },
    answer: (given) => {
      const limits: PaperLimits = {
        braked: given.brakes === 'yes',
        ...(given.car === null ? {} : { carBall_kg: given.car }),
        ...(given.bar === null ? {} : { barBall_kg: given.bar }),
        ...(given.coupling === null ? {} : { couplingBall_kg: given.coupling }),
        ...(given.gross === null ? {} : { gross_kg: given.gross }),
        ...(given.axle === null ? {} : { axle_kg: given.axle }),
        ...(given.tyres === null ? {} : { tyres_kg: given.tyres }),
        ...(given.train === null ? {} : { train_kg: given.train }),
        ...(given['car-kerb'] === null ? {} : { carKerb_kg: given['car-kerb'] }),
        ...(given['car-laden'] === null ? {} : { carLaden_kg: given['car-laden'] }),
      };
      const { laden, ball, advice } = given;
      const looked = limitsLooked(
        { laden_kg: laden, ball_kg: { low: ball, likely: ball, high: ball }, axle_kg: laden - ball },
        limits,
        advice,
      );
      const lowest = ballLimit(limits);
      const share = (100 * ball) / laden;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'verdict',
            meaning: 'against what was entered',
            value: verdictOf(looked.findings),
            unit: '',
          },
          { symbol: 'share', meaning: 'ball load of the laden mass', value: share, unit: '%' },
          ...(lowest
            ? [
                {
                  symbol: 'B most',
                  meaning: `ball limit, the ${lowest.of}’s: the lowest`,
                  value: lowest.kg,
                  unit: 'kg',
                },
              ]
            : []),
          ...looked.findings.map((finding) => ({
            symbol: finding.kind,
            meaning: `against ${finding.limit} ${finding.unit}`,
            value: finding.is,
            unit: finding.unit,
          })),
        ],
        working: [
          {
            symbol: 'advised',
            meaning: 'share usually advised',
            value: advised_pct[advice].low,
            low: advised_pct[advice].low,
            high: advised_pct[advice].high,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'advised, Britain and Europe',
            meaning: 'share of the ball',
            value: '5–7',
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'advised, United States',
            meaning: 'share of the ball',
            value: '10–15',
            unit: '%',
            formula: 'printed',
          },
          { symbol: 'least', meaning: 'share under which she wags', value: least_pct, unit: '%', formula: 'printed' },
          { symbol: 'most', meaning: 'largest share of one handbook', value: most_pct, unit: '%', formula: 'printed' },
          {
            symbol: 'over kerb',
            meaning: 'laden over the car’s kerb mass, advised most',
            value: ladenOverKerb_pct,
            unit: '%',
            formula: 'printed',
          },
          {
            symbol: 'without brakes',
            meaning: 'laden, at most',
            value: unbraked.most_kg,
            unit: 'kg',
            formula: 'printed',
          },
          {
            symbol: 'width',
            meaning: 'largest width of a trailer in Britain',
            value: 2.55,
            unit: 'm',
            formula: 'printed',
          },
          {
            symbol: 'length',
            meaning: 'largest length behind a car in Britain, drawbar left out',
            value: 7,
            unit: 'm',
            formula: 'printed',
          },
        ],
        sources: [
          advice === 'uk' ? sources.adviceUk : sources.adviceUs,
          sources.ratio,
          sources.unbraked,
          sources.halfKerb,
        ],
        limits: [
          atRest,
          ...(looked.missing.length > 0
            ? [`Not entered, so not looked at: ${looked.missing.map((each) => limitWords[each]).join(', ')}.`]
            : []),
        ],
        cautions: [
          ...(share < least_pct ? [cautions.wags] : []),
          cautions.level,
          cautions.law,
          cautions.licence,
          cautions.guidance,
        ],
      };
    },
  });
}

/** Never a bare yes: what was not entered was not looked at. */
function verdictOf(findings: readonly LimitFinding[]): string {
  if (findings.some(({ weight }) => weight === 'past')) return 'not to be towed so';
  return findings.length > 0 ? 'within its limits, against advice' : 'nothing found against it';
}

/** The limits in words for what was not entered. */
export const limitWords: Readonly<Record<keyof PaperLimits, string>> = {
  carBall_kg: 'ball limit of the car',
  barBall_kg: 'ball limit of the bar',
  couplingBall_kg: 'ball limit of the coupling',
  gross_kg: 'gross mass',
  axle_kg: 'axle’s plate',
  tyres_kg: 'tyres',
  train_kg: 'train mass',
  carKerb_kg: 'kerb mass of the car',
  carLaden_kg: 'car as laden',
  braked: 'brakes',
};
