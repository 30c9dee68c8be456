/** Short forms to write the demo's jobs in, so that what stands in `jobs-*.ts` is what differs between them. */
import type { Day, Job, Step, WaitRecord } from '#boat-book';

export type DemoStep = Omit<Step, 'job' | 'order'>;
export interface DemoJob {
  readonly id: string;
  readonly job: Job;
  readonly steps: readonly DemoStep[];
}

/** A step with its likely minutes; low and high are our judgement, a quarter less and six tenths more, to 5 minutes. */
export function step(title: string, likely: number, parts: Partial<DemoStep> = {}): DemoStep {
  return {
    title,
    minutes: {
      low: Math.max(5, Math.floor((likely * 0.75) / 5) * 5),
      likely,
      high: Math.ceil((likely * 1.6) / 5) * 5,
    },
    hands: 1,
    keeper: true,
    notAlone: false,
    zone: null,
    needs: {},
    features: [],
    tools: [],
    setUps: [],
    stores: [],
    dusty: false,
    wet: false,
    mix: null,
    waits: [],
    follows: null,
    cautions: [],
    progress: { kind: 'open' },
    ...parts,
  };
}

export function job(
  id: string,
  title: string,
  parts: Pick<Job, 'why' | 'zone' | 'consequence' | 'opened'> & Partial<Job>,
  steps: readonly DemoStep[],
): DemoJob {
  return {
    id,
    job: {
      title,
      fitting: null,
      due: null,
      outing: null,
      state: 'open',
      closed: null,
      note: '',
      said: '',
      heldTo: null,
      heldAt: null,
      afterJobs: [],
      ...parts,
    },
    steps,
  };
}

export function wait(id: string, title: string, law: WaitRecord['law'], parts: Partial<WaitRecord> = {}): WaitRecord {
  return { id, title, law, needs: {}, setUps: [], still: [], wet: false, ...parts };
}

export const one = (tool: string) => ({ tool, count: 1 });
export const mast = (state: 'up' | 'down') => ({ setUp: 'mast', states: [state] });
export const coverOff = { setUp: 'cover', states: ['off'] };
export const propped = { setUp: 'boat', states: ['propped'] };
export const boardLowered = { setUp: 'board', states: ['lowered'] };

/** What the jobs need to know of the days around today. */
export interface DemoDates {
  readonly today: Day;
  /** the day so many days from today, before it where negative */
  readonly day: (n: number) => Day;
}
