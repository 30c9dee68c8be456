/** What a small problem's boat has: set-ups, zones, mixes, tools, stores. */
import type { Conditions } from '#sky';
import type { Mix, ProblemDay, Rule, SetUpAspect, SetUpNeed, StoreLine, Tool, WorkZone } from '#workplan';
import type { Chance } from './chance.ts';

/** A mast, a cover and, in larger ones, a board that is removed and put back lowered. */
export function someAspects(draw: Chance): SetUpAspect[] {
  const { fives, often, one, tiny } = draw;
  const setUpRules: Rule[] = [
    'step set-up',
    'wait set-up',
    'still',
    'set-up chain',
    'change set-up',
    'day ends in',
    'wait dry',
  ];
  const aspects: SetUpAspect[] = [];
  const change = (from: string, to: string, hands: number, needs: Conditions, setUps: SetUpNeed[] = []) => ({
    from,
    to,
    minutes: fives(5, 15),
    hands,
    needs,
    setUps,
  });
  const coverFirst = often(0.4, 'change set-up');
  if (often(0.55, ...setUpRules)) {
    const hands = often(0.2, 'hands') ? 2 : 1;
    const needs: Conditions = often(0.3, 'wind') ? { wind_max_kn: 12 } : {};
    const coverOff: SetUpNeed[] = coverFirst ? [{ aspect: 'cover', states: ['off'] }] : [];
    aspects.push({
      id: 'mast',
      name: 'mast',
      states: [
        { id: 'up', name: 'up', shelters: false },
        { id: 'down', name: 'down', shelters: false },
      ],
      initial: one(['up', 'down']),
      changes: [change('up', 'down', hands, needs, coverOff), change('down', 'up', hands, needs, coverOff)],
    });
  }
  if (coverFirst ? aspects.length > 0 : often(0.35, 'wait dry', 'change set-up')) {
    aspects.push({
      id: 'cover',
      name: 'cover',
      states: [
        { id: 'on', name: 'on', shelters: true },
        { id: 'off', name: 'off', shelters: false },
      ],
      initial: one(['on', 'off']),
      changes: [change('on', 'off', 1, {}), change('off', 'on', 1, {})],
    });
  }
  if (!tiny && often(0.2, 'set-up chain')) {
    aspects.push({
      id: 'board',
      name: 'board',
      states: [
        { id: 'housed', name: 'housed', shelters: false },
        { id: 'lowered', name: 'lowered', shelters: false },
        { id: 'removed', name: 'removed', shelters: false },
      ],
      initial: one(['housed', 'lowered', 'removed']),
      // it is removed and put back lowered, so housed to removed takes two changes
      changes: [
        change('housed', 'lowered', 1, {}),
        change('lowered', 'housed', 1, {}),
        change('lowered', 'removed', 1, {}),
        change('removed', 'lowered', 1, {}),
      ],
    });
  }
  return aspects;
}

export function someZones(draw: Chance): WorkZone[] {
  const { often } = draw;
  return [
    { id: 'deck', name: 'deck', room: often(0.3, 'room in the zone') ? 1 : 2, inside: false, near: ['cabin'] },
    { id: 'cabin', name: 'cabin', room: often(0.4, 'room in the zone') ? 1 : 2, inside: true, near: [] },
    { id: 'trailer', name: 'trailer', room: 2, inside: false, near: [] },
  ];
}

export function someMixes(draw: Chance): Mix[] {
  const { fives, often } = draw;
  return often(0.3, 'batch', 'pot life')
    ? [{ id: 'epoxy', name: 'epoxy', mixing_min: fives(5, 10), potLife_min: fives(15, 35) }]
    : [];
}

export function someTools(draw: Chance, first: ProblemDay, horizon: number): Tool[] {
  const { fives, often, whole } = draw;
  return often(0.4, 'tools')
    ? [
        {
          id: 'drill',
          name: 'drill',
          capacity: often(0.3, 'tools')
            ? [{ from: first.from + fives(0, 40), to: horizon, count: 1 }]
            : [{ from: 0, to: horizon, count: whole(1, 2) }],
        },
      ]
    : [];
}

export function someStores(draw: Chance, days: readonly ProblemDay[]): StoreLine[] {
  const { fives, often } = draw;
  return often(0.35, 'stores')
    ? [
        { id: 'screws', name: 'screws', from: days[0]!.from + fives(0, 60) },
        { id: 'runners', name: 'runners', from: often(0.3, 'stores') ? null : days.at(-1)!.from + fives(0, 40) },
      ]
    : [];
}
