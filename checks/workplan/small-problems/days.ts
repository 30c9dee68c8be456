/** A small problem's days: when they are, who is there, the weather and the light. */
import type { Hand, MinuteSpan, PlanHour, ProblemDay, SetUpAspect } from '#workplan';
import type { Chance } from './chance.ts';

export function someDays(draw: Chance, dayCount: number, aspects: readonly SetUpAspect[]): ProblemDay[] {
  const { fives, often, one, tiny, middling } = draw;
  const days: ProblemDay[] = [];
  for (let i = 0; i < dayCount; i++) {
    const from = 1440 * i + fives(8 * 60, 11 * 60);
    const setOut_min = often(0.3, 'set-out and clear-up') ? fives(5, 20) : 0;
    const clearUp_min = often(0.3, 'set-out and clear-up') ? fives(5, 20) : 0;
    const span = setOut_min + clearUp_min + (tiny ? fives(40, 80) : middling ? fives(80, 180) : fives(40, 150));
    const breakAt = from + setOut_min + fives(15, Math.max(15, span - setOut_min - clearUp_min - 20));
    const pause: MinuteSpan[] = often(0.3, 'break') ? [{ from: breakAt, to: breakAt + one([5, 10, 20]) }] : [];
    const features = (['water', 'mains', 'level'] as const).filter(() => !often(0.3, 'place'));
    const endsIn = aspects
      .filter(() => often(0.2, 'day ends in'))
      .map((aspect) => ({ aspect: aspect.id, state: one(aspect.states).id }));
    days.push({
      id: `day-${i + 1}`,
      label: `job day ${i + 1}`,
      from,
      to: from + span,
      setOut_min,
      clearUp_min,
      breaks: pause,
      features,
      endsIn,
    });
  }
  return days;
}

export function someHands(draw: Chance, days: readonly ProblemDay[]): Hand[] {
  const { chance, fives, often, one, asked, tiny } = draw;
  const handCount = asked('hand present', 'not alone', 'keeper', 'hands') ? 2 : one(tiny ? [1, 1, 2] : [1, 1, 2, 2, 3]);
  const hands: Hand[] = [];
  for (let h = 0; h < handCount; h++) {
    const present: MinuteSpan[] = [];
    for (const day of days) {
      const allDay = !often(h === 0 ? 0.15 : 0.6, 'hand present', 'not alone', 'keeper');
      if (allDay) present.push({ from: day.from, to: day.to });
      else if (h === 0 || chance(0.85)) {
        const from = day.from + fives(0, Math.floor((day.to - day.from) / 10) * 5);
        present.push({ from, to: Math.max(from + 5, day.to - fives(0, 20)) });
      }
    }
    hands.push({ id: h === 0 ? 'keeper' : `hand-${h}`, name: h === 0 ? 'the keeper' : `hand ${h}`, present });
  }
  return hands;
}

export function someHours(draw: Chance, horizon: number): PlanHour[] {
  const { chance, often, whole } = draw;
  const hours: PlanHour[] = [];
  const wet = often(0.6, 'dry', 'wait dry') ? 0.35 : 0.1;
  for (let h = 0; h < horizon / 60; h++) {
    const night = h % 24 < 7 || h % 24 > 19;
    const air_C = night ? whole(1, 11) : whole(7, 24);
    hours.push({
      rain: chance(wet),
      wind_kn: whole(3, 20),
      air_C,
      surface_C: chance(0.5) ? null : air_C + whole(-4, 5),
      humidity_pct: whole(50, 97),
      basis: 'typed',
      sheltered: chance(0.05),
      // drawn only where asked for: the other problems stay as they were
      ...(draw.asked('before dew') && night ? { skyCooling_C: whole(0, 5) } : {}),
    });
  }
  return hours;
}

export function someDaylight(draw: Chance, days: readonly ProblemDay[], horizon: number): MinuteSpan[] {
  const { chance, fives, often } = draw;
  return Array.from({ length: horizon / 1440 }, (_, i) => {
    const day = days[i];
    if (day === undefined || !often(0.25, 'daylight')) return { from: 1440 * i + 300, to: 1440 * i + 1260 };
    return chance(0.5)
      ? { from: day.from + fives(5, 30), to: 1440 * i + 1260 }
      : { from: 1440 * i + 300, to: day.to - fives(5, 30) };
  });
}
