import { inBase } from '#units';
import { assuming, force, length, number, type Question, question } from '#working';
import { inMillimetres } from '../path/loads-fields.ts';
import { sourceOf } from '../path/printed.ts';
import {
  endsField,
  laidField,
  rigSources,
  stayLengthField,
  tensionField,
  threadField,
  wireSizeField,
} from './rig-fields.ts';
import { takenUpByTurn_mm } from './rigging-screw.ts';
import { slackBySway_m, stayLoadByPull, tensionBySidewaysPull } from './stay-sideways.ts';
import { breakingLines, loadFigures, newWire, noBreaking, stayCautions } from './stay-stretch-questions.ts';
import { shareSays, stayLoadByTension, stiffness_N, stretchSources } from './wire-stretch.ts';

/** The questions about a stay's tension by turns of its rigging screw and by a pull sideways. */
export function stayScrewQuestions(): readonly Question[] {
  return [stayByTurnsQuestion(), stayByPullQuestion(), staySlackQuestion()];
}

const nothingGives =
  'Mast, hull and terminals give as the wire does: on a small boat half of what a turn takes up may go there. Measure what came of it.';

function stayByTurnsQuestion() {
  return question({
    id: 'loads.stay-by-turns',
    title: 'What tension do turns of the rigging screw bring at most?',
    fields: {
      laid: laidField(),
      size: wireSizeField(),
      length: stayLengthField(),
      thread: threadField(),
      ends: endsField(),
      turns: number('turns', -40, 40, 'whole turns of the body, tightening; below zero easing'),
      before: tensionField('tension before'),
    },
    answer: ({ laid, size, length: long, thread, ends, turns, before }) => {
      const size_mm = inMillimetres(size);
      const byTurn_mm = takenUpByTurn_mm({ thread, ends });
      const taken_mm = turns * byTurn_mm;
      const perMm_N = stiffness_N(laid, size_mm) / (1000 * long);
      const stiff_N = before + taken_mm * perMm_N;
      // where nothing gives, and where nothing comes of it: the truth is between
      const [a, b] = [Math.max(0, stiff_N), before];
      const [low_N, high_N] = [Math.min(a, b), Math.max(a, b)];
      const load = stayLoadByTension(laid, size_mm, { tension_N: a, low_N, high_N });
      const [tension, share] = loadFigures(load);
      return {
        kind: 'found',
        results: [
          { ...tension!, meaning: 'tension where nothing but the wire gives' },
          share!,
          ...(load.share_pct === null
            ? []
            : [{ symbol: 'says', meaning: 'as set at rest', value: shareSays(load.share_pct.value), unit: '' }]),
        ],
        working: [
          {
            symbol: 'turn',
            meaning: 'one turn takes up',
            value: byTurn_mm,
            unit: 'mm',
            formula: ends === 'both' ? '2·pitch' : 'pitch',
          },
          { symbol: 'taken up', meaning: 'by all of them', value: taken_mm, unit: 'mm', formula: 'turns·turn' },
          {
            symbol: 'a turn',
            meaning: 'brings at most',
            value: byTurn_mm * perMm_N,
            unit: 'N',
            formula: 'E·(π/4)·d²·turn/L',
          },
          ...breakingLines(load),
        ],
        sources: [
          rigSources.hooke,
          stretchSources.modulus,
          rigSources.threads,
          rigSources.tuning,
          ...(load.breaking === null ? [] : [sourceOf(load.breaking)]),
        ],
        limits: [nothingGives, ...(load.breaking === null ? [noBreaking] : [])],
        cautions: stayCautions,
      };
    },
  });
}

function stayByPullQuestion() {
  return question({
    id: 'loads.stay-by-pull',
    title: 'What tension is in a stay that a known pull draws aside so far?',
    fields: {
      laid: laidField(),
      size: wireSizeField(),
      length: stayLengthField(),
      'pulled-at': length('m', 0.2, 15, 'from the nearer end to where it is pulled'),
      pull: force('N', 5, 1000, 'pull square to the stay, by a spring balance'),
      aside: length('mm', 1, 1000, 'how far it came aside there'),
    },
    conflict: ({ length: long, 'pulled-at': at, aside }) => {
      if (at > long / 2 + 1e-9)
        return {
          where: 'pulled-at',
          wrong: `pulled ${at} m from its nearer end, of a stay of ${long} m`,
          right: `give ${long / 2} m or less`,
        };
      if (aside > at / 5)
        return {
          where: 'aside',
          wrong: `${Math.round(1000 * aside)} mm aside, pulled ${at} m from the end, is too far to tell by`,
          right: `pull less, to ${Math.round(200 * at)} mm or less`,
        };
      return null;
    },
    answer: ({ laid, size, length: long, 'pulled-at': at, pull, aside }) => {
      const size_mm = inMillimetres(size);
      const pulled = { length_m: long, pulledAt_m: at, pull_N: pull, aside_m: aside };
      const found = tensionBySidewaysPull(pulled, stiffness_N(laid, size_mm));
      const load = stayLoadByPull(laid, size_mm, pulled);
      const shown = {
        working: [
          {
            symbol: 'T pulled',
            meaning: 'while it is pulled',
            value: found.pulled_N,
            unit: 'N',
            formula: 'F/(δ/√(a² + δ²) + δ/√(b² + δ²))',
          },
          {
            symbol: 'more',
            meaning: 'of it from the pull itself',
            value: found.pulled_N - found.atRest_N,
            unit: 'N',
            formula: 'T pulled − (T pulled·L − E·(π/4)·d²·l)/(L + l), l what it is longer',
          },
          ...breakingLines(load),
        ],
        sources: [
          rigSources.geometry,
          stretchSources.modulus,
          rigSources.tuning,
          ...(load.breaking === null ? [] : [sourceOf(load.breaking)]),
        ],
        limits: [
          'Ends that give, and stiff wire pulled close to an end, make it read too low or too high; the band is for a millimetre and a twentieth of the pull.',
          ...(load.breaking === null ? [noBreaking] : []),
        ],
        cautions: stayCautions,
      };
      const [tension, share] = loadFigures(load);
      if (found.atRest_N <= 0)
        return {
          kind: 'truth',
          statement: 'It is slack at rest',
          because: `it came aside ${Math.round(1000 * aside)} mm before it held ${Math.round(pull)} N: the pull itself made it taut`,
          results: [tension!, share!],
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          tension!,
          share!,
          ...(load.share_pct === null
            ? []
            : [{ symbol: 'says', meaning: 'as set at rest', value: shareSays(load.share_pct.value), unit: '' }]),
        ],
        ...shown,
      };
    },
  });
}

function staySlackQuestion() {
  return question({
    id: 'loads.stay-slack',
    title: 'How many turns bring a stay back that has gone slack?',
    fields: {
      laid: laidField(),
      size: wireSizeField(),
      length: stayLengthField(),
      thread: threadField(),
      ends: endsField(),
      before: tensionField('tension it had, as set'),
      now: assuming(tensionField('tension it has now'), inBase('force', 0, 'N'), '0 N', 'it hangs slack'),
      sway: assuming(
        length('mm', 0, 1000, 'slack: how far its middle can be moved to either side before it comes taut'),
        inBase('length', 0, 'mm'),
        '0 mm',
        'not loose enough to move',
      ),
    },
    conflict: ({ now, sway, length: long }) =>
      now > 0 && sway > 0
        ? {
            where: 'sway',
            wrong: `a stay that moves ${Math.round(1000 * sway)} mm by itself holds no ${Math.round(now)} N`,
            right: 'give 0 N for what it has now, or 0 mm',
          }
        : sway > long / 10
          ? {
              where: 'sway',
              wrong: `${Math.round(1000 * sway)} mm to either side, of a stay of ${long} m, is no stay set up`,
              right: `give ${Math.round(100 * long)} mm or less`,
            }
          : null,
    answer: ({ laid, size, length: long, thread, ends, before, now, sway }) => {
      const size_mm = inMillimetres(size);
      const byTurn_mm = takenUpByTurn_mm({ thread, ends });
      const elastic_mm = (1000 * long * (before - now)) / stiffness_N(laid, size_mm);
      const loose_mm = 1000 * slackBySway_m(long, sway);
      const lost_mm = elastic_mm + loose_mm;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'turns',
            meaning: lost_mm >= 0 ? 'to tighten, at least' : 'to ease (below zero)',
            value: lost_mm / byTurn_mm,
            unit: 'turns',
          },
          { symbol: 'lost', meaning: 'the stay is too long by', value: lost_mm, unit: 'mm' },
        ],
        working: [
          {
            symbol: 'δ',
            meaning: 'by which the wire has sprung back',
            value: elastic_mm,
            unit: 'mm',
            formula: '(T before − T now)·L/(E·(π/4)·d²)',
          },
          {
            symbol: 'loose',
            meaning: 'by which it hangs',
            value: loose_mm,
            unit: 'mm',
            formula: '2·√((L/2)² + s²) − L',
          },
          {
            symbol: 'turn',
            meaning: 'one turn takes up',
            value: byTurn_mm,
            unit: 'mm',
            formula: ends === 'both' ? '2·pitch' : 'pitch',
          },
        ],
        sources: [rigSources.hooke, stretchSources.modulus, rigSources.threads, rigSources.geometry],
        limits: [
          nothingGives,
          'Find out why first: a pulled chainplate, a strand gone in a terminal or a mast step that has sunk looks the same.',
          newWire,
        ],
        cautions: stayCautions,
      };
    },
  });
}
