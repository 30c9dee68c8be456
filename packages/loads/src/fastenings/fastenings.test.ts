import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ask, figureOf } from '#working';
import { baseMaterials } from './base-material.ts';
import { stressArea_mm2, tightening } from './bolt.ts';
import { firstToGive, hardestShare, leastCount, usedShare, workingLoad_N } from './bolt-pattern.ts';
import { fasteningQuestions } from './fastening-questions.ts';
import { filledHole } from './filled-hole.ts';
import { type Joint, pulledAlong, pulledOut } from './holding.ts';
import { screwNames, sizeCell, type ThreadColumn } from './size-cell.ts';
import { gaugeAcross_mm, woodScrewGrip } from './wood-screw.ts';

const bolted: Joint = {
  base: baseMaterials.laminate,
  thickness_mm: 6,
  glassShare: 0.3,
  damp: true,
  fastener: { kind: 'bolt', size: 'M6', ofClass: '70', washer: 'plain', pad_mm: 0 },
};
const asked = (id: string, given: Readonly<Record<string, unknown>>) =>
  ask(fasteningQuestions().find((question) => question.id === id)!, given);
const figure = (id: string, given: Readonly<Record<string, unknown>>, symbol: string) => {
  const answer = asked(id, given);
  if (answer.kind !== 'answered') throw new Error(answer.faults.map(({ wrong }) => wrong).join('; '));
  return figureOf(answer.answer, symbol)?.value;
};

describe('threads', () => {
  it('have a pitch, holes and washers for every everyday size, and say which are recalled', () => {
    const columns: readonly ThreadColumn[] = [
      'pitch',
      'clearance fine',
      'clearance medium',
      'clearance coarse',
      'tapping',
      'washer plain',
      'washer large',
      'across flats',
    ];
    for (const size of screwNames)
      for (const column of columns) expect(sizeCell(column, size), `${column} ${size}`).not.toBeNull();
    expect(sizeCell('tapping for stainless', 'M6')).toBeNull();
    expect(sizeCell('clearance medium', 'M10')).toMatchObject({ value: 11, seen: 'recalled' });
  });

  it('a tapping drill is the diameter less the pitch, to what drills are sold in', () => {
    // ISO 2306 rounds to a tenth; M8 is 6.75, sold as 6.8
    for (const size of screwNames)
      expect(
        Math.abs(sizeCell('tapping', size)!.value - (Number(size.slice(1)) - sizeCell('pitch', size)!.value)),
      ).toBeLessThanOrEqual(0.0501);
  });

  it('have the stress areas that ISO 898-1 prints', () => {
    // from memory: M3 5.03, M4 8.78, M5 14.2, M6 20.1, M8 36.6, M10 58.0, M12 84.3 mm²
    for (const [size, area] of [
      ['M3', 5.03],
      ['M4', 8.78],
      ['M5', 14.2],
      ['M6', 20.1],
      ['M8', 36.6],
      ['M10', 58],
      ['M12', 84.3],
    ] as const)
      expect(Math.abs(stressArea_mm2(size) / area - 1)).toBeLessThan(0.004);
  });

  it('drier threads ask more torque for less pull', () => {
    const [greased, dry] = [tightening('M8', '70', 0.1), tightening('M8', '70', 0.2)];
    expect(dry.torque_Nm).toBeGreaterThan(greased.torque_Nm);
    expect(dry.preload_N).toBeLessThan(greased.preload_N);
  });

  it('wood screws are called by gauge', () => {
    // ASME B18.6.1 (from memory): No. 8 is 0.164 in, No. 10 is 0.190 in
    expect(gaugeAcross_mm(8) / 25.4).toBeCloseTo(0.164, 9);
    expect(gaugeAcross_mm(10) / 25.4).toBeCloseTo(0.19, 9);
  });
});

describe('what a fastening holds', () => {
  it('in 6 mm of laminate, worked by hand', () => {
    // between the plies 22.5 − 17.5·0.3 = 17.25 N/mm² on a cylinder of 12 mm by 6 mm: 3902 N
    expect(pulledOut(bolted)[0]).toMatchObject({ failing_N: expect.closeTo(17.25 * Math.PI * 72, 6) });
    // along: 6 by 6 mm of hole at 150·0.3 + 72 = 117 N/mm²: 4212 N
    expect(pulledAlong(bolted)[0]).toMatchObject({ failing_N: expect.closeTo(117 * 36, 6) });
  });

  it('holds no more than measured screws did in ply under a steel plate', () => {
    // APA E830 table 1, average ultimate side pull of wood screws half an inch deep: No. 8 415 lbf, No. 12 590 lbf (read
    // second-hand); ply as heavy as Douglas fir
    const base = { kind: 'ply', title: 'fir ply', density_kg_m3: 530, seen: 'recalled' } as const;
    for (const [gauge, pounds] of [
      [8, 415],
      [12, 590],
    ] as const) {
      const screwed: Joint = {
        ...bolted,
        base,
        thickness_mm: 12.7,
        damp: false,
        fastener: { kind: 'wood screw', across_mm: gaugeAcross_mm(gauge) },
      };
      const ours_N = pulledAlong(screwed)[0]!.failing_N;
      expect(ours_N).toBeLessThan(pounds * 4.448);
      expect(ours_N).toBeGreaterThan((pounds * 4.448) / 4);
    }
  });

  it('is never less with more: a bigger bolt, a thicker base, a larger washer, a pad, dry wood', () => {
    const bases = Object.values(baseMaterials);
    fc.assert(
      fc.property(
        fc.constantFrom(...bases),
        fc.constantFrom(...screwNames.slice(0, -1)),
        fc.double({ min: 1, max: 40, noNaN: true }),
        (base, size, thickness_mm) => {
          const joint = { ...bolted, base, thickness_mm, fastener: { ...bolted.fastener, size } } as Joint;
          const more: readonly Joint[] = [
            {
              ...joint,
              fastener: { ...joint.fastener, size: screwNames[screwNames.indexOf(size) + 1]! } as Joint['fastener'],
            },
            { ...joint, thickness_mm: thickness_mm + 2 },
            { ...joint, fastener: { ...joint.fastener, washer: 'large' } as Joint['fastener'] },
            { ...joint, fastener: { ...joint.fastener, pad_mm: 6 } as Joint['fastener'] },
            { ...joint, damp: false },
          ];
          for (const one of more)
            for (const ways of [pulledOut, pulledAlong]) {
              const load = (each: Joint) => workingLoad_N(firstToGive(ways(each), 5), 5);
              expect(load(one)).toBeGreaterThanOrEqual(load(joint) * (1 - 1e-9));
            }
        },
      ),
    );
  });

  it('a screw in wood holds by the square of its weight, and in line with its depth', () => {
    expect(woodScrewGrip(0.6, 4, 30).failing_N / woodScrewGrip(0.3, 4, 30).failing_N).toBeCloseTo(4, 9);
    expect(woodScrewGrip(0.5, 4, 60).allowed_N / woodScrewGrip(0.5, 4, 30).allowed_N).toBeCloseTo(2, 9);
  });
});

describe('a pattern', () => {
  it('shares a straight pull, and tips under one along', () => {
    // 1200 N straight out of four: 300 N each
    expect(hardestShare({ pull_N: 1200, angle_deg: 0, height_mm: 50, rows_mm: 60 }, 4)).toMatchObject({
      out_N: expect.closeTo(300, 9),
      along_N: expect.closeTo(0, 9),
    });
    // along, 50 mm up, rows 60 mm apart: 1200·50/60 = 1000 N on the two of the back row
    expect(hardestShare({ pull_N: 1200, angle_deg: 90, height_mm: 50, rows_mm: 60 }, 4)).toMatchObject({
      out_N: expect.closeTo(500, 9),
      along_N: expect.closeTo(300, 9),
    });
  });

  it('of more bolts is never used more, and the least that holds does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 20, max: 300, noNaN: true }),
        (pull_N, angle_deg, height_mm, rows_mm) => {
          const pull = { pull_N, angle_deg, height_mm, rows_mm };
          const used = (count: number) => usedShare(hardestShare(pull, count), 800, 900);
          expect(used(6)).toBeLessThanOrEqual(used(4));
          const least = leastCount(pull, 800, 900);
          if (least === null) expect(used(12)).toBeGreaterThan(1);
          else expect(used(least)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});

describe('a filled hole', () => {
  it('leaves 5 mm of filling round the bolt, and takes what it takes', () => {
    // M6: 16 mm; 3 mm of skin and 12 mm of core: π/4·16²·15 = 3016 mm³
    expect(filledHole('M6', 3, 12)).toMatchObject({ drill_mm: 16, again_mm: 6.6, fill_ml: expect.closeTo(3.016, 3) });
    expect(filledHole('M12', 3, 12).drill_mm).toBe(24);
  });
});

describe('questions about fastenings', () => {
  it('refuse what does not go together, with what would be right', () => {
    for (const [given, right] of [
      [{ base: 'oak', by: 'bolt', size: 7, thickness: 20 }, /one of M3/],
      [{ base: 'oak', by: 'machine-screw', size: 6, thickness: 20 }, /wood screw/],
      [{ base: 'laminate', by: 'coach-screw', size: 8, thickness: 8 }, /bolt through it/],
      [{ base: 'laminate', by: 'bolt', size: 6, thickness: 0 }, /0.5 to 120 mm/],
    ] as const) {
      const answer = asked('loads.fastening', given);
      expect(answer).toMatchObject({ kind: 'refused', faults: [{ right: expect.stringMatching(right) }] });
    }
    expect(
      asked('loads.bolt-pattern', {
        pull: 500,
        angle: 0,
        height: 0,
        rows: 15,
        count: '4',
        base: 'oak',
        by: 'bolt',
        size: 6,
        thickness: 20,
      }),
    ).toMatchObject({ kind: 'refused', faults: [{ where: 'rows', right: expect.stringContaining('30 mm') }] });
  });

  it('say what would hold where something does not', () => {
    const cleat = {
      pull: 2500,
      angle: 90,
      height: 40,
      rows: 80,
      count: '2',
      base: 'laminate',
      by: 'bolt',
      size: 6,
      thickness: 5,
      use: 'running-rigging',
    };
    expect(figure('loads.bolt-pattern', cleat, 'verdict')).toBe('does not hold');
    const n = figure('loads.bolt-pattern', cleat, 'n');
    expect(figure('loads.bolt-pattern', { ...cleat, count: String(n) }, 'verdict')).toBe('holds');
  });

  it('answer with figures there are, whatever they are asked', () => {
    for (const question of fasteningQuestions()) {
      let answered = 0;
      fc.assert(
        fc.property(
          fc.record(
            Object.fromEntries(
              Object.entries(question.fields).map(([name, field]) => [
                name,
                // bolts there are, or next to none would be asked about
                name === 'size' && field.control.control === 'number'
                  ? fc.oneof(field.raw(fc), fc.constantFrom(3, 4, 5, 6, 8, 10, 12))
                  : field.raw(fc),
              ]),
            ),
          ),
          (given) => {
            const answer = ask(question, given);
            if (answer.kind === 'refused') {
              for (const { where, wrong, right } of answer.faults)
                for (const text of [where, wrong, right]) expect(text).not.toBe('');
              return;
            }
            answered += 1;
            for (const { value } of [...answer.answer.results, ...answer.answer.working])
              if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
              else expect(value).not.toMatch(/NaN|Infinity|undefined/);
          },
        ),
        { numRuns: 300 },
      );
      expect(answered, question.id).toBeGreaterThan(20);
    }
  });
});
