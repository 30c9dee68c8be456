import { type Answer, question, type Source, type WorkingLine } from '#working';
import { cautions } from '../cautions.ts';
import { factorOf } from '../path/factor.ts';
import { purposeField } from '../path/loads-fields.ts';
import { firstToGive, workingLoad_N } from './bolt-pattern.ts';
import { fasteningCautions, jointConflict, jointFields, jointOf, sources } from './fastening-fields.ts';
import { across_mm, bearsOn_mm, type Giving, type Joint, pulledAlong, pulledOut, spacing_mm } from './holding.ts';
import { leastDepth } from './wood-screw.ts';

export function fasteningQuestion() {
  return question({
    id: 'loads.fastening',
    title: 'What does one bolt or screw hold?',
    fields: { ...jointFields(), use: purposeField() },
    conflict: jointConflict,
    answer: (values): Answer => {
      const joint = jointOf(values);
      const { factor, whose } = factorOf('fitting', values.use);
      const [out, along] = [pulledOut(joint), pulledAlong(joint)];
      const [outGives, alongGives] = [firstToGive(out, factor), firstToGive(along, factor)];
      const { between, edge } = spacing_mm(joint);
      return {
        kind: 'found',
        results: [
          {
            symbol: 'W out',
            meaning: 'working load pulled straight out',
            value: workingLoad_N(outGives, factor) / 1000,
            unit: 'kN',
          },
          {
            symbol: 'W along',
            meaning: 'working load pulled along the surface',
            value: workingLoad_N(alongGives, factor) / 1000,
            unit: 'kN',
          },
          { symbol: 'gives out', meaning: 'what gives first, pulled out', value: outGives.way, unit: '' },
          { symbol: 'gives along', meaning: 'what gives first, pulled along', value: alongGives.way, unit: '' },
          { symbol: 'F out', meaning: 'gives at, pulled out', value: outGives.failing_N / 1000, unit: 'kN' },
          { symbol: 'F along', meaning: 'gives at, pulled along', value: alongGives.failing_N / 1000, unit: 'kN' },
          { symbol: 'between', meaning: 'to the next one, middle to middle, at the least', value: between, unit: 'mm' },
          { symbol: 'edge', meaning: 'to an edge, at the least', value: edge, unit: 'mm' },
        ],
        working: [...out, ...along].map((way) => wayLine(way, factor)),
        sources: [...jointSources(joint), whose],
        limits: jointLimits(joint),
        cautions: [fasteningCautions.drilling, fasteningCautions.dust, ...metalCautions(joint), cautions.guidance],
      };
    },
  });
}

/** A way of giving as a line: the load it gives at, over which factor. */
export function wayLine(way: Giving, factor: number): WorkingLine {
  return {
    symbol: way.way,
    meaning: `gives at; may work at that over ${(way.ownFactor ?? factor).toFixed(1)}`,
    value: way.failing_N / 1000,
    unit: 'kN',
    formula: way.formula,
  };
}

/** Where the figures of a joint are from. */
export function jointSources({ base, damp }: Joint): readonly Source[] {
  switch (base.kind) {
    case 'laminate':
      return [sources.bolts, sources.laminate, sources.ours];
    case 'aluminium':
      return [sources.bolts, sources.aluminium, sources.ours];
    default:
      return [
        sources.bolts,
        sources.woodHandbook,
        sources.woodDesign,
        ...(damp ? [sources.damp] : []),
        { ...sources.density, seen: base.seen },
        sources.side,
        sources.ours,
      ];
  }
}

/** Where the sum of a joint stops being true. */
export function jointLimits(joint: Joint): readonly string[] {
  const { base, fastener, thickness_mm } = joint;
  const isScrew = fastener.kind === 'wood screw' || fastener.kind === 'coach screw';
  const inWood = base.kind === 'ply' || base.kind === 'timber';
  return [
    'Sound, dry-laid, whole: soft core, crazed laminate and rot hold nothing that can be reckoned.',
    ...(fastener.kind === 'bolt'
      ? [
          `The washer and its pad bear on ${bearsOn_mm(fastener).toFixed(0)} mm across; a pad of a pad’s stiffness only.`,
        ]
      : []),
    ...(isScrew && inWood && thickness_mm < leastDepth * across_mm(fastener)
      ? [
          `The rule for screws is not known to hold under ${leastDepth} diameters; this one stands ${(thickness_mm / across_mm(fastener)).toFixed(1)}.`,
        ]
      : []),
    ...(base.kind === 'laminate' && !('washer' in fastener)
      ? ['A thread in laminate holds once: each time it is drawn it holds less.']
      : []),
  ];
}

/** What to take care of where metals meet. */
export const metalCautions = ({ base }: Joint): readonly string[] =>
  base.kind === 'aluminium' ? [fasteningCautions.metals] : [];
