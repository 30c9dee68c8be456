/** What the proof reads of the plain case; a PlainCase will do as it is. */
export interface ProofCase {
  /** activities are numbered in an order in which each comes after what it waits for */
  readonly count: number;
  readonly duration: Int32Array;
  readonly resources: number;
  readonly capacity: Int32Array;
  /** request[activity · resources + resource], none over its capacity */
  readonly request: Int32Array;
  /** after[afterFrom[i] … afterFrom[i + 1]) are what waits for activity i */
  readonly afterFrom: Int32Array;
  readonly after: Int32Array;
}
