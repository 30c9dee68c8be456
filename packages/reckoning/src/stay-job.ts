/** The job that a stay brings that slackens by itself. Its minutes are our guess, the keeper's to change. */
import type { OperationFields, StayRecord } from '#boat-book';

/** @param why  what was read of it, in a sentence */
export function stayJob({ name, zone }: Pick<StayRecord, 'name' | 'zone'>, why: string): OperationFields<'addJob'> {
  return {
    title: `Find what gives: ${name}`,
    why,
    consequence: 'worsens',
    zone,
    steps: [
      {
        title: 'Ease it, and look at terminals, pins, chainplate and mast step',
        minutes: { low: 20, likely: 40, high: 90 },
        hands: 1,
        cautions: [
          'A stay under tension is a spring: ease the screw first, never knock a pin out of it. The mast is held by another stay or a halyard before this one comes off.',
        ],
      },
    ],
  };
}
