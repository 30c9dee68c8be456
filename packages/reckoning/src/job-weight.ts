import type { Day, Job, Weights } from '#boat-book';
import { daysBetween } from '#units';

/**
 * What doing a job is worth: the weight of its consequence × (1 + years open), the factor at most 2.
 *
 * Years open are days from the day it was opened to today, over 365.25, as a fraction (half a year gives 1.5);
 * a job opened in the future counts as opened today. Rounded to 0.01. The weights are our judgement and the keeper's
 * to change (trade words: danger 100, unlawful and stops-sailing 30, worsens 10, comfort 3).
 *
 * @returns  > 0
 */
export function jobWeight(job: Pick<Job, 'consequence' | 'opened'>, weights: Weights, today: Day): number {
  const yearsOpen = Math.max(0, daysBetween(job.opened, today)) / 365.25;
  return Math.round(weights[job.consequence] * Math.min(2, 1 + yearsOpen) * 100) / 100;
}
