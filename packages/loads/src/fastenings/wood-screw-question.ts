import { inUnit } from '#units';
import { assuming, choice, length, number, question } from '#working';
import { cautions } from '../cautions.ts';
import { type BaseName, baseMaterials, dampShare, specificGravity } from './base-material.ts';
import { dampField, fasteningCautions, sources } from './fastening-fields.ts';
import { coachScrewGrip, failingTurned_N_mm2, leastDepth, withdrawalFigures, woodScrewGrip } from './wood-screw.ts';

export function timberQuestion() {
  const woods = (Object.keys(baseMaterials) as BaseName[]).flatMap((id) => {
    const base = baseMaterials[id];
    return 'density_kg_m3' in base ? [{ id, title: base.title }] : [];
  });
  return question({
    id: 'loads.timber',
    title: 'How heavy is this wood, and what is its specific gravity?',
    fields: { wood: choice(woods, 'timber or ply') },
    answer: ({ wood }) => {
      const base = baseMaterials[wood];
      const { density_kg_m3, seen } = 'density_kg_m3' in base ? base : { density_kg_m3: 0, seen: 'recalled' as const };
      return {
        kind: 'found',
        results: [
          {
            symbol: 'ρ',
            meaning: 'density at 12 % moisture, the lower of those printed',
            value: density_kg_m3,
            unit: 'kg/m³',
          },
          { symbol: 'G', meaning: 'specific gravity, for screws', value: specificGravity(density_kg_m3), unit: '' },
        ],
        working: [
          {
            symbol: 'G',
            meaning: 'dry weight over volume at 12 %',
            value: specificGravity(density_kg_m3),
            unit: '',
            formula: 'ρ/1120',
          },
        ],
        sources: [{ title: 'densities of timber, handbooks', seen }],
        limits: ['Timber of one name differs by a fifth from tree to tree.'],
        cautions: [],
      };
    },
  });
}

export function woodScrewQuestion() {
  return question({
    id: 'loads.wood-screw',
    title: 'What does a screw hold in wood?',
    fields: {
      gravity: number('', 0.2, 1.1, 'specific gravity of the wood; loads.timber has some'),
      size: length('mm', 2, 16, 'diameter over the shank'),
      depth: length('mm', 3, 200, 'thread in the wood, without its point'),
      screw: assuming(
        choice<'wood' | 'coach'>(
          [
            { id: 'wood', title: 'wood screw' },
            { id: 'coach', title: 'coach screw' },
          ],
          'what it is',
        ),
        'wood',
        'wood screw',
        'the more usual',
      ),
      grain: assuming(
        choice<'side' | 'end'>(
          [
            { id: 'side', title: 'across the grain' },
            { id: 'end', title: 'into end grain' },
          ],
          'how it stands to the grain',
        ),
        'side',
        'across the grain',
        'screws in end grain are not counted on',
      ),
      damp: dampField(),
    },
    answer: ({ gravity, size, depth, screw, grain, damp }) => {
      const [across_mm, depth_mm] = [inUnit('length', size, 'mm'), inUnit('length', depth, 'mm')];
      const grip = (screw === 'coach' ? coachScrewGrip : woodScrewGrip)(gravity, across_mm, depth_mm);
      const kept = damp === 'yes' ? dampShare : 1;
      const shown = {
        working: [
          {
            symbol: 'K',
            meaning: 'of the rule, as printed in N and mm',
            value: withdrawalFigures.failing_N_mm2,
            unit: 'N/mm²',
            formula: 'printed',
          },
          {
            symbol: 'K turned',
            meaning: 'the same from pounds and inches',
            value: failingTurned_N_mm2,
            unit: 'N/mm²',
            formula: '15 700 lbf/in²',
          },
          {
            symbol: 'n',
            meaning: 'failing over allowed, in the rule itself',
            value: grip.failing_N / grip.allowed_N,
            unit: '',
            formula:
              screw === 'coach' ? '8100/1800' : `${withdrawalFigures.failing_psi}/${withdrawalFigures.allowed_psi}`,
          },
          { symbol: 'L/D', meaning: 'depth in diameters', value: depth_mm / across_mm, unit: '', formula: 'L/D' },
          {
            symbol: 'L/D least',
            meaning: 'under it the rule is not known to hold',
            value: leastDepth,
            unit: '',
            formula: 'Wood Handbook',
          },
          {
            symbol: 'tapping',
            meaning: 'self-tapping screws against wood screws, about',
            value: 1.1,
            unit: '',
            formula: 'Wood Handbook; not counted',
          },
          {
            symbol: 'allowed an inch',
            meaning: 'dry, for each inch of thread',
            value: grip.allowed_N / (depth_mm / 25.4) / 4.4482216152605,
            unit: 'lbf/in',
            formula: screw === 'coach' ? '1800·G^1.5·D^0.75' : '2850·G²·D',
          },
          {
            symbol: 'W dry',
            meaning: 'allowed, dry',
            value: grip.allowed_N,
            unit: 'N',
            formula: 'the same, for its depth',
          },
        ],
        sources: [sources.woodHandbook, sources.woodDesign, sources.damp],
        limits: [
          `Under ${leastDepth} diameters deep the rule is not known to hold; this one stands ${(depth_mm / across_mm).toFixed(1)}.`,
          'Holes drilled for it; sound wood. Rot, old holes and filler hold next to nothing.',
        ],
        cautions: [cautions.guidance, fasteningCautions.drilling],
      };
      if (grain === 'end')
        return {
          kind: 'truth',
          statement: 'Not to be used',
          because: 'a wood screw pulled out of end grain splits it: the timber design rule allows none',
          results: [{ symbol: 'rule', meaning: 'end grain', value: 'not to be used', unit: '' }],
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          {
            symbol: 'W',
            meaning: damp === 'yes' ? 'working load, damp' : 'working load, dry',
            value: kept * grip.allowed_N,
            unit: 'N',
          },
          { symbol: 'F', meaning: 'pulls out at about, dry', value: grip.failing_N, unit: 'N' },
        ],
        ...shown,
      };
    },
  });
}
