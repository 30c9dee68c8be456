import { type Bearing, type Finding, type NotLooked, type Subject, subjects } from './finding.ts';
import { type LeastWork, leastWork, type Mend, mendsOf } from './to-make-fit.ts';

export type Verdict = 'not fit' | 'fit with conditions' | 'nothing known against it';

export interface FitAnswer {
  readonly verdict: Verdict;
  /** she is not fit while these stand */
  readonly stops: readonly Finding[];
  /** she may go only so */
  readonly conditions: readonly Finding[];
  /** looked at, and nothing against it */
  readonly sound: readonly Finding[];
  readonly notLooked: readonly NotLooked[];
  /** all that would mend what stops her, least work first; empty where nothing stops her */
  readonly toMakeFit: readonly Mend[];
  /** the least of it that leaves nothing that stops her; null: nothing stops her, or something that no work mends */
  readonly least: LeastWork | null;
}

/**
 * One answer out of all findings, each counted, none weighed against another: one that stops her is enough, however many are
 * sound. It computes nothing; what was not looked at is told with it, and never counts as sound.
 *
 * @throws RangeError when two findings have one id: one of them would be lost in a list
 */
export function fitAnswer(findings: readonly Finding[], notLooked: readonly NotLooked[]): FitAnswer {
  const ids = new Set<string>();
  for (const { id } of findings) {
    if (ids.has(id)) throw new RangeError(`two findings have the id ${id}`);
    ids.add(id);
  }
  const of = (bearing: Bearing) =>
    findings
      .map((finding, at) => ({ finding, at }))
      .filter(({ finding }) => finding.bearing === bearing)
      .sort((a, b) => place(a.finding.subject) - place(b.finding.subject) || a.at - b.at)
      .map(({ finding }) => finding);
  const stops = of('stops');
  const conditions = of('condition');
  const toMakeFit = mendsOf(stops);
  return {
    verdict: stops.length > 0 ? 'not fit' : conditions.length > 0 ? 'fit with conditions' : 'nothing known against it',
    stops,
    conditions,
    sound: of('sound'),
    notLooked: [...notLooked].sort((a, b) => place(a.subject) - place(b.subject)),
    toMakeFit,
    least: leastWork(stops, conditions, toMakeFit),
  };
}

const place = (subject: Subject) => subjects.indexOf(subject);
