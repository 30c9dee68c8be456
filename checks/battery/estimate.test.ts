/** The estimate held against measured runs and against owners of another, richer battery. README.md has the long counts. */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { inside_pct, judgedOwners } from './calibration.ts';
import { asEstimated, stillToCome } from './estimate-asked.ts';
import { asked, judgeFolder, runHolds } from './measured-batteries.ts';

describe('measured batteries', () => {
  // the runs kept here, their sources beside them; nothing of the estimate was drawn from a run
  const { runs } = judgeFolder(fileURLToPath(new URL('data', import.meta.url)), 20, stillToCome);

  it('are the three AGM runs and the two of LiFePO4', () => {
    expect(runs.map(({ chemistry }) => chemistry).sort()).toEqual(['agm', 'agm', 'agm', 'lifepo4', 'lifepo4']);
  });

  it.each(runs.map((run) => [run.file, run] as const))(
    '%s: what was still to come lies in the band in 17 of 20 choices of six readings, and the band is no wider than a fifth',
    (_, run) => {
      expect(run.inside).toBeGreaterThanOrEqual((asked.inside_pct / 100) * run.choices);
      expect(runHolds(run)).toBe(true);
    },
  );
});

describe('owners of another battery', () => {
  // seeds that the page does not use; with 90 of 100 in truth, fewer than 62 of 80 would come once in some thousand times
  const owners = judgedOwners(40_001, 40_080, asEstimated);

  it.each(['soc_pct', 'left_Ah', 'capacity_Ah'] as const)('%s lies in its band of nine in ten', (quantity) => {
    expect(inside_pct(owners, quantity)).toBeGreaterThanOrEqual(77.5);
  });

  it('does not lie in it because the band is as wide as can be', () => {
    const half = owners.reduce((sum, { socHalfWidth_pct }) => sum + socHalfWidth_pct, 0) / owners.length;
    expect(half).toBeLessThan(20);
  });
});
