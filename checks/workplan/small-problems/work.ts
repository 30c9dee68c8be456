/** A small problem's jobs and steps, with what they need and wait for. */
import type { CureLaw } from '#materials';
import type { Conditions } from '#sky';
import type { Problem, ProblemJob, ProblemStep, Rule, SetUpAspect, SetUpNeed, Wait } from '#workplan';
import type { Chance } from './chance.ts';

export function someWork(
  draw: Chance,
  there: Pick<Problem, 'days' | 'hands' | 'tools' | 'zones' | 'aspects' | 'mixes' | 'stores'>,
): { jobs: ProblemJob[]; steps: ProblemStep[] } {
  const { chance, fives, often, one, whole, tiny, middling } = draw;
  const { days, hands, tools, zones, aspects, mixes, stores } = there;
  const jobs: ProblemJob[] = [];
  const steps: ProblemStep[] = [];
  const jobCount = tiny ? whole(1, 3) : middling ? whole(4, 6) : whole(2, 5);
  const most = tiny ? 4 : middling ? 13 : 9;
  const fewest = tiny ? 2 : middling ? 8 : 3;
  for (let j = 0; j < jobCount || steps.length < fewest; j++) {
    const job = `job-${j + 1}`;
    jobs.push({
      id: job,
      title: `job ${j + 1}`,
      weight: one([3, 4, 7, 10, 13, 30, 31]),
      deadline: often(0.25, 'deadline') ? one(days).from + fives(20, 120) : null,
      optional: chance(0.8),
    });
    const room = most - steps.length;
    const count = Math.max(1, Math.min(room, whole(1, tiny ? 2 : 3)));
    for (let k = 0; k < count; k++) {
      const id = `${job}-step-${k + 1}`;
      const needs = someNeeds(draw);
      const mix = mixes.length > 0 && often(0.5, 'batch', 'pot life') ? 'epoxy' : null;
      const two = hands.length > 1 && often(0.25, 'hands');
      const nobody = !two && chance(0.06);
      const wet = often(0.2, 'dust and wet') && chance(0.7);
      steps.push({
        id,
        job,
        title: `step ${k + 1} of job ${j + 1}`,
        minutes: Math.max(fives(5, 40), mix === null ? 5 : mixes[0]!.mixing_min + 5),
        hands: nobody ? 0 : two ? 2 : 1,
        keeper: !nobody && often(0.2, 'keeper'),
        notAlone: often(0.1, 'not alone'),
        zone: chance(0.85) ? one(zones).id : null,
        needs,
        features: often(0.15, 'place') ? [one(['water', 'mains', 'level'] as const)] : [],
        tools: tools.length > 0 && often(0.5, 'tools') ? [{ tool: 'drill', count: 1 }] : [],
        setUps: someSetUps(draw, aspects, 'step set-up', 0.45),
        stores: stores.length > 0 && often(0.4, 'stores') ? [one(stores).id] : [],
        dusty: !wet && often(0.25, 'dust and wet'),
        wet,
        mix,
        waits: often(
          0.35,
          'wait time',
          'wait over',
          'wait dry',
          'wait warm',
          'wait set-up',
          'still',
          'least lag',
          'greatest lag',
          'abrading',
          'dust and wet',
          'before dew',
        )
          ? [aWait(draw, id, aspects)]
          : [],
        held: null,
        progress: { kind: 'open' },
      });
    }
  }
  return { jobs, steps };
}

function someNeeds(draw: Chance): Conditions {
  const { often, whole } = draw;
  return {
    ...(often(0.3, 'dry') ? { dry: true as const } : {}),
    ...(often(0.15, 'wind') ? { wind_max_kn: whole(8, 15) } : {}),
    ...(often(0.1, 'air') ? { air_min_C: whole(8, 15) } : {}),
    ...(often(0.05, 'air') ? { air_max_C: whole(16, 22) } : {}),
    ...(often(0.1, 'surface') ? { surface_min_C: whole(8, 14) } : {}),
    ...(often(0.1, 'humidity') ? { humidity_max_pct: whole(65, 90) } : {}),
    ...(often(0.1, 'dew margin') ? { dewMargin_min_C: 3 } : {}),
    ...(often(0.2, 'daylight') ? { daylight: true as const } : {}),
  };
}

function someSetUps(draw: Chance, aspects: readonly SetUpAspect[], rule: Rule, of: number): SetUpNeed[] {
  const { often, one } = draw;
  return aspects
    .filter(() => often(of, rule, 'set-up chain'))
    .map((aspect) => ({ aspect: aspect.id, states: [one(aspect.states).id] }));
}

function aWait(draw: Chance, step: string, aspects: readonly SetUpAspect[]): Wait {
  const { often, whole } = draw;
  const law = someLaw(draw);
  const stays = often(0.25, 'wait dry');
  const warm = often(0.2, 'wait warm');
  // drawn only where asked for: the other problems stay as they were
  const beforeDew =
    draw.asked('before dew') && draw.chance(0.9)
      ? { beforeDew: { dewMargin_min_C: whole(2, 5), touchDry: someTouchDry(draw) } }
      : {};
  return {
    id: `${step}-wait`,
    title: 'wait',
    law,
    needs: { ...(stays ? { dry: true as const } : {}), ...(warm ? { air_min_C: whole(3, 9) } : {}), ...beforeDew },
    setUps: often(0.15, 'wait set-up') ? someSetUps(draw, aspects, 'wait set-up', 0.5) : [],
    still: aspects.filter(() => often(0.15, 'still')).map((aspect) => aspect.id),
    wet: often(0.4, 'dust and wet'),
  };
}

/** Sooner or later than the wait itself is over; off the fives, by the heat and the damp too. */
function someTouchDry({ fives, whole, onFives }: Chance): CureLaw {
  const from = 'our assumption';
  if (onFives || whole(0, 1) === 0) return { kind: 'set time', minutes: fives(10, 180), from };
  const atReference_min = whole(10, 150);
  return { kind: 'dries', atReference_min, reference_C: 20, doublesPer_C: 10, stopsAt_pct: 90, minimum_C: 5, from };
}

/** A set time, or, off the fives, any of the laws. */
function someLaw(draw: Chance): CureLaw {
  const { fives, whole, asked, onFives } = draw;
  const cure = onFives ? 0 : whole(0, 9);
  const from = 'our assumption';
  if (cure <= 3) {
    const minutes = fives(5, asked('wait over', 'wait warm', 'wait dry', 'before dew') ? 300 : 60);
    return { kind: 'set time', minutes, from };
  }
  if (cure <= 5) {
    const atReference_min = whole(20, asked('wait time', 'wait over') ? 600 : 200);
    return { kind: 'reacts', atReference_min, reference_C: 20, doublesPer_C: 10, minimum_C: 6, from };
  }
  if (cure <= 6) {
    const firstDay_mm = whole(2, 5);
    return { kind: 'moisture', depth_mm: 1, firstDay_mm, reference_C: 23, reference_pct: 50, minimum_C: 5, from };
  }
  if (cure <= 8) {
    const atReference_min = whole(20, 240);
    return { kind: 'dries', atReference_min, reference_C: 20, doublesPer_C: 12, stopsAt_pct: 92, minimum_C: 5, from };
  }
  return { kind: 'never cures', from };
}
