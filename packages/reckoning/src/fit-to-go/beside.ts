import type { Finding, NotLooked } from '#fit-to-go';

/** What comes of one look: what was found, and what of it could not be looked at. */
export interface Beside {
  readonly findings: readonly Finding[];
  readonly notLooked: readonly NotLooked[];
}

export const nothingFound: Beside = { findings: [], notLooked: [] };
