/** What a battery is made of, as its label says it. */
export type Chemistry = 'flooded' | 'agm' | 'gel' | 'lifepo4';

export const chemistries = [
  { id: 'flooded', title: 'lead, flooded: caps or a filler strip, acid that spills' },
  { id: 'agm', title: 'lead, AGM: sealed, acid held in glass mat' },
  { id: 'gel', title: 'lead, gel: sealed, acid held as gel' },
  { id: 'lifepo4', title: 'lithium iron phosphate, with its own protection inside' },
] as const satisfies readonly { readonly id: Chemistry; readonly title: string }[];
