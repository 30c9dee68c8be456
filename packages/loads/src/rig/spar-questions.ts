import { inBase, standardGravity_m_s2 } from '#units';
import { amount, angle, assuming, force, length, mass, type Question, question } from '#working';
import { cautions } from '../cautions.ts';
import { rigSources } from './rig-fields.ts';

/** The questions about a spar on a hinge and about what a mast and its shrouds bear under sail. */
export function sparQuestions(): readonly Question[] {
  return [hingedSparQuestion(), shroudQuestion(), rightingQuestion()];
}

function hingedSparQuestion() {
  return question({
    id: 'loads.hinged-spar',
    title: 'What holds a spar on a hinge?',
    fields: {
      weight: force('N', 0, 50_000, 'weight of the spar'),
      'weight-at': length('m', 0.01, 20, 'from the hinge to the middle of its weight'),
      load: assuming(force('N', 0, 50_000, 'load hung on it'), inBase('force', 0, 'N'), '0 N', 'nothing hangs on it'),
      'load-at': assuming(
        length('m', 0.01, 20, 'from the hinge to that load'),
        inBase('length', 1, 'm'),
        '1 m',
        'nothing hangs on it',
      ),
      'line-at': length('m', 0.01, 20, 'from the hinge to where the line holds it'),
      'spar-angle': angle('°', -30, 90, 'spar above level'),
      'line-angle': assuming(
        angle('°', 1, 179, 'between spar and line, on the upper side, seen from where it holds'),
        inBase('angle', 90, '°'),
        '90°',
        'square to the spar: the least pull',
      ),
    },
    answer: ({
      weight,
      'weight-at': weightAt,
      load,
      'load-at': loadAt,
      'line-at': lineAt,
      'spar-angle': up,
      'line-angle': between,
    }) => {
      const rad = Math.PI / 180;
      const moment_N_m = (weight * weightAt + load * loadAt) * Math.cos(up * rad);
      const arm_m = lineAt * Math.sin(between * rad);
      const line_N = moment_N_m / arm_m;
      const direction = (180 + up - between) * rad;
      const [across_N, up_N] = [-line_N * Math.cos(direction), weight + load - line_N * Math.sin(direction)];
      return {
        kind: 'found',
        results: [
          { symbol: 'T', meaning: 'in the line', value: line_N, unit: 'N' },
          { symbol: 'Fx', meaning: 'of the hinge, level, outwards along the spar', value: across_N, unit: 'N' },
          { symbol: 'Fy', meaning: 'of the hinge, upwards', value: up_N, unit: 'N' },
        ],
        working: [
          {
            symbol: 'M',
            meaning: 'moment of the weights',
            value: moment_N_m,
            unit: 'N·m',
            formula: '(W·c + P·p)·cos φ',
          },
          { symbol: 'arm', meaning: 'from the hinge square to the line', value: arm_m, unit: 'm', formula: 'a·sin γ' },
        ],
        sources: [rigSources.moments, rigSources.lever],
        limits: ['At rest: no jerk, no wind, no friction at the hinge.'],
        cautions: [cautions.under, cautions.guidance],
      };
    },
  });
}

function shroudQuestion() {
  return question({
    id: 'loads.shroud',
    title: 'What does one shroud bear of a sideways force on the mast?',
    fields: {
      force: force('N', 0, 100_000, 'sideways force on the mast'),
      'force-at': length('m', 0.1, 30, 'height of that force above the mast’s foot'),
      'shroud-at': length('m', 0.5, 30, 'height of the shroud above the mast’s foot'),
      out: length('m', 0.05, 5, 'from the mast’s foot out to the chainplate'),
    },
    conflict: ({ 'force-at': forceAt, 'shroud-at': shroudAt }) =>
      forceAt > shroudAt * 1.5
        ? {
            where: 'force-at',
            wrong: `the force is ${forceAt} m up, the shroud takes hold at ${shroudAt} m: the mast above it would bend, not stand`,
            right: `give ${Math.round(150 * shroudAt) / 100} m or less`,
          }
        : null,
    answer: ({ force: side, 'force-at': forceAt, 'shroud-at': shroudAt, out }) => {
      const slant_m = Math.hypot(shroudAt, out);
      const across_N = (side * forceAt) / shroudAt;
      const shroud_N = (across_N * slant_m) / out;
      return {
        kind: 'found',
        results: [
          { symbol: 'T', meaning: 'in the shroud', value: shroud_N, unit: 'N' },
          { symbol: 'H', meaning: 'sideways at the mast’s foot', value: side - across_N, unit: 'N' },
          { symbol: 'C', meaning: 'it presses the mast down by', value: (shroud_N * shroudAt) / slant_m, unit: 'N' },
        ],
        working: [
          { symbol: 'across', meaning: 'what the shroud holds, level', value: across_N, unit: 'N', formula: 'F·d/h' },
          {
            symbol: 'angle',
            meaning: 'between mast and shroud',
            value: (180 / Math.PI) * Math.atan2(out, shroudAt),
            unit: '°',
            formula: 'atan(z/h)',
          },
        ],
        sources: [
          {
            title: 'mast and one shroud: University of Genoa, after Chapra & Canale, Numerical Methods',
            seen: 'read second-hand',
          },
        ],
        limits: [
          'One shroud alone, and the mast stands straight: no spreader, no lower, no bend, no tension set beforehand.',
        ],
        cautions: [cautions.guidance],
      };
    },
  });
}

function rightingQuestion() {
  const heel = Math.PI / 6;
  return question({
    id: 'loads.righting-moment',
    title: 'What do shrouds and mast bear when she is held down by the wind?',
    fields: {
      moment: amount('torque', 'N·m', 1, 1_000_000, 'her righting moment at 30° of heel, without crew'),
      'half-beam': length('m', 0.2, 5, 'from the mast out to the chainplates'),
      crew: assuming(mass('kg', 0, 600, 'crew sitting out'), inBase('mass', 0, 'kg'), '0 kg', 'nobody sits out'),
      'crew-out': assuming(
        length('m', 0, 4, 'from her middle out to the crew'),
        inBase('length', 1, 'm'),
        '1 m',
        'on the side deck of a small boat',
      ),
    },
    answer: ({ moment, 'half-beam': halfBeam, crew, 'crew-out': crewOut }) => {
      const byCrew_N_m = crew * standardGravity_m_s2 * crewOut * Math.cos(heel);
      const all_N_m = moment + byCrew_N_m;
      return {
        kind: 'found',
        results: [
          { symbol: 'S', meaning: 'all shrouds of one side together', value: (1.5 * all_N_m) / halfBeam, unit: 'N' },
          { symbol: 'C', meaning: 'mast pressed down', value: (2.78 * all_N_m) / halfBeam, unit: 'N' },
        ],
        working: [
          {
            symbol: 'crew',
            meaning: 'righting moment of the crew',
            value: byCrew_N_m,
            unit: 'N·m',
            formula: 'm·g·out·cos 30°',
          },
          {
            symbol: 'k',
            meaning: 'heeling beyond 30°, and what stays add',
            value: 1.5 * 1.85,
            unit: '',
            formula: '1.5·1.85, printed as 2.78',
          },
          {
            symbol: 'room',
            meaning: 'breaking over this load, as the book asks',
            value: 2.5,
            low: 2.25,
            high: 2.75,
            unit: '',
            formula: 'printed',
          },
        ],
        sources: [rigSources.book],
        limits: [
          'Made for keel boats; on a light trailer boat the crew is most of the moment, and a gust takes her before it is reached. Before sharing between cap and lower shrouds.',
        ],
        cautions: [cautions.guidance],
      };
    },
  });
}
