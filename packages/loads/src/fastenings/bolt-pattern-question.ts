import { inUnit } from '#units';
import { type Answer, angle, choice, length, question } from '#working';
import { cautions } from '../cautions.ts';
import { factorOf } from '../path/factor.ts';
import { purposeField } from '../path/loads-fields.ts';
import { firstToGive, hardestShare, leastCount, patternCounts, usedShare, workingLoad_N } from './bolt-pattern.ts';
import { fasteningCautions, jointConflict, jointFields, jointOf, pullField } from './fastening-fields.ts';
import { jointLimits, jointSources, metalCautions, wayLine } from './fastening-question.ts';
import { pulledAlong, pulledOut, spacing_mm } from './holding.ts';

export function boltPatternQuestion() {
  return question({
    id: 'loads.bolt-pattern',
    title: 'How many fastenings does this fitting want, and how do they stand?',
    fields: {
      pull: pullField(),
      angle: angle('°', 0, 90, 'from straight out of the surface, 0, to along it, 90'),
      height: length('mm', 0, 500, 'height of the pull over the surface'),
      rows: length('mm', 10, 600, 'between the two rows of fastenings, along the pull'),
      count: choice(
        patternCounts.map((n) => ({ id: String(n), title: String(n) })),
        'how many there are, in two rows',
      ),
      ...jointFields(),
      use: purposeField(),
    },
    conflict: (values) => {
      const unsound = jointConflict(values);
      if (unsound) return unsound;
      const { between } = spacing_mm(jointOf(values));
      const rows_mm = inUnit('length', values.rows, 'mm');
      return rows_mm < between
        ? {
            where: 'rows',
            wrong: `rows ${rows_mm.toFixed(0)} mm apart stand too close for this fastening`,
            right: `${between.toFixed(0)} mm or more, or a smaller fastening`,
          }
        : null;
    },
    answer: (values): Answer => {
      const joint = jointOf(values);
      const { factor, whose } = factorOf('fitting', values.use);
      const [out, along] = [pulledOut(joint), pulledAlong(joint)];
      const [outGives, alongGives] = [firstToGive(out, factor), firstToGive(along, factor)];
      const [out_N, along_N] = [workingLoad_N(outGives, factor), workingLoad_N(alongGives, factor)];
      const pull = {
        pull_N: values.pull,
        angle_deg: values.angle,
        height_mm: inUnit('length', values.height, 'mm'),
        rows_mm: inUnit('length', values.rows, 'mm'),
      };
      const count = Number(values.count);
      const share = hardestShare(pull, count);
      const used = usedShare(share, out_N, along_N);
      const least = leastCount(pull, out_N, along_N);
      const { between, edge } = spacing_mm(joint);
      const gives = share.out_N / out_N >= share.along_N / along_N ? outGives : alongGives;
      return {
        kind: 'found',
        results: [
          { symbol: 'verdict', meaning: 'under this pull', value: used <= 1 ? 'holds' : 'does not hold', unit: '' },
          { symbol: 'used', meaning: 'of what the hardest pulled one may bear', value: 100 * used, unit: '%' },
          { symbol: 'n', meaning: 'fastenings that do', value: least ?? 'not with twelve of this size', unit: '' },
          { symbol: 'gives', meaning: 'what gives first', value: gives.way, unit: '' },
          { symbol: 'pull', meaning: 'pull the whole pattern may bear', value: values.pull / used / 1000, unit: 'kN' },
          { symbol: 'between', meaning: 'from one to the next, at the least', value: between, unit: 'mm' },
          { symbol: 'edge', meaning: 'from an edge, at the least', value: edge, unit: 'mm' },
        ],
        working: [
          {
            symbol: 'out',
            meaning: 'the hardest pulled one, straight out',
            value: share.out_N,
            unit: 'N',
            formula: 'F·cos a/n + F·sin a·h/s/(n/2)',
          },
          {
            symbol: 'along',
            meaning: 'each one, along the surface',
            value: share.along_N,
            unit: 'N',
            formula: 'F·sin a/n',
          },
          { symbol: 'W out', meaning: 'one may bear straight out', value: out_N, unit: 'N', formula: outGives.way },
          { symbol: 'W along', meaning: 'one may bear along', value: along_N, unit: 'N', formula: alongGives.way },
          ...[...out, ...along].map((way) => wayLine(way, factor)),
        ],
        sources: [
          ...jointSources(joint),
          whose,
          {
            title: 'a fitting tips over its front row; out and along are added one to the other',
            seen: 'our assumption',
          },
        ],
        limits: [
          ...jointLimits(joint),
          'The base under the fitting is stiff enough to spread the pull; a thin deck flexes first and wants a pad under all of it.',
        ],
        cautions: [cautions.recoil, fasteningCautions.drilling, ...metalCautions(joint), cautions.guidance],
      };
    },
  });
}
