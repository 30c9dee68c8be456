/**
 * Potentials of metals in sea water, as two series print them: V against a calomel electrode in flowing sea water, as a range; mV against
 * silver chloride at 25 °C. A series that does not name a metal has null. Source: galvanic-series.source.md.
 */
// biome-ignore format: one metal, one line
export const galvanicSeries = {
  graphite: { title: 'graphite, carbon fibre', flowing_V: [0.2, 0.3], chart_mV: null },
  platinum: { title: 'platinum', flowing_V: [0.18, 0.26], chart_mV: null },
  titanium: { title: 'titanium', flowing_V: [0.04, 0.06], chart_mV: null },
  'stainless-316': { title: 'stainless 316, bright and washed by water', flowing_V: [-0.1, 0], chart_mV: null },
  'nickel-copper': { title: 'nickel-copper alloy 400', flowing_V: [-0.14, -0.03], chart_mV: null },
  'stainless-304': { title: 'stainless 304, bright and washed by water', flowing_V: [-0.1, -0.04], chart_mV: null },
  silver: { title: 'silver', flowing_V: [-0.15, -0.1], chart_mV: null },
  'nickel-aluminium-bronze': { title: 'nickel-aluminium bronze', flowing_V: [-0.22, -0.14], chart_mV: null },
  'cupronickel-30': { title: 'cupronickel, 30 % nickel', flowing_V: [-0.24, -0.17], chart_mV: null },
  lead: { title: 'lead', flowing_V: [-0.25, -0.19], chart_mV: null },
  'cupronickel-10': { title: 'cupronickel, 10 % nickel', flowing_V: [-0.28, -0.22], chart_mV: null },
  'tin-bronze': { title: 'tin bronze', flowing_V: [-0.32, -0.24], chart_mV: null },
  'silicon-bronze': { title: 'silicon bronze', flowing_V: [-0.29, -0.25], chart_mV: null },
  'manganese-bronze': { title: 'manganese bronze', flowing_V: [-0.34, -0.26], chart_mV: null },
  copper: { title: 'copper', flowing_V: [-0.37, -0.3], chart_mV: null },
  brass: { title: 'brass: naval, yellow, red', flowing_V: [-0.4, -0.31], chart_mV: -450 },
  'aluminium-bronze': { title: 'aluminium bronze', flowing_V: [-0.4, -0.31], chart_mV: null },
  'stainless-316-crevice': { title: 'stainless 316 shut off from air: in a crevice, under sealant, in wet wood', flowing_V: [-0.46, -0.33], chart_mV: -550 },
  tin: { title: 'tin', flowing_V: null, chart_mV: -500 },
  'stainless-304-crevice': { title: 'stainless 304 shut off from air', flowing_V: [-0.58, -0.44], chart_mV: null },
  'mild-steel': { title: 'mild steel, iron', flowing_V: [-0.72, -0.6], chart_mV: -790 },
  cadmium: { title: 'cadmium plate', flowing_V: null, chart_mV: -860 },
  aluminium: { title: 'aluminium, marine alloys', flowing_V: [-1, -0.76], chart_mV: -820 },
  zinc: { title: 'zinc, anodes', flowing_V: [-1.03, -0.98], chart_mV: -1050 },
  galvanised: { title: 'galvanised steel', flowing_V: null, chart_mV: -1140 },
  magnesium: { title: 'magnesium, anodes for fresh water', flowing_V: [-1.63, -1.6], chart_mV: -1730 },
} as const;

/** Differences that are let be, V: by how wet with salt (an anodic-index rule), and under water (the chart's own). */
export const galvanicLimits_V = { harsh: 0.15, normal: 0.25, controlled: 0.5, chart: 0.2 } as const;
