import { length, type Source } from '#working';

export const ballAheadField = () =>
  length('m', 1, 10, 'from the axle to the ball; on two axles from half way between them');

/** A mass of the papers that may not be at hand: it then says nothing. */
export const notEntered = 'not entered';
/** What can hurt, by the work. */
export const cautions = {
  level:
    'Weigh and measure with the trailer level, wheels chocked, legs wound down so that she cannot tip. Nobody under her.',
  scale:
    'Lower the coupling on to the beam slowly with the jockey wheel; keep feet from under it. A beam can kick out sideways.',
  wags: 'A trailer with too little on the ball wags and can take the car with it. Do not tow her: load more ahead of the axle.',
  law: 'Limits are those of the plates and papers of car, bar, coupling and trailer; the law differs from country to country and changes. Check it at home.',
  licence:
    'Licences for trailers changed in Britain in December 2021: older printed rules of 3.5 t together are out of date.',
  tyres:
    'A tyre that is cracked, cut or bulged goes whatever its age. Pressure is the tyre maker’s for this load. Jack on firm ground, wheel nuts by torque, looked at again after 50 km.',
  lashing:
    'The winch and its line are no lashing. Before towing the board rests on the trailer, not on its wire. Stop after the first few kilometres and tighten everything.',
  web: 'Throw a strap away that is cut by a tenth of its width, burnt, knotted, or has lost its label. Pad it at every edge.',
  hull: 'A strap can pull a fitting out or crush a hull: what her places may bear is for her builder or a surveyor to say.',
  guidance:
    'Guidance only: the plates, the papers, the makers and a qualified person decide. Figures marked recalled were not read again.',
} as const;

export const sources = {
  moments: { title: 'moments about the axle', seen: 'our derivation' },
  adviceUk: {
    title: 'trade guides and a car handbook: 5 to 7 % of the laden mass, never under 4 %',
    seen: 'read second-hand',
  },
  adviceUs: { title: 'vehicle handbooks, United States: 10 to 15 % of the laden mass', seen: 'read second-hand' },
  ratio: { title: 'a motoring magazine: laden trailer at most 85 % of the car’s kerb mass', seen: 'read second-hand' },
  unbraked: { title: 'EU category O1: at most 750 kg without brakes', seen: 'read second-hand' },
  halfKerb: { title: 'Britain: without brakes at most half the car’s kerb mass', seen: 'read second-hand' },
  lever: { title: 'lever on a block', seen: 'our derivation' },
  index: { title: 'ETRTO load index (ISO 4000-1)', seen: 'read second-hand' },
  indexRecalled: { title: 'ETRTO load index, cells that were not seen', seen: 'recalled' },
  symbol: { title: 'ETRTO speed symbol', seen: 'read second-hand' },
  symbolRecalled: { title: 'ETRTO speed symbol, cells that were not seen', seen: 'recalled' },
  twin: { title: 'a trailer tyre guide: the second index is for twin wheels', seen: 'read second-hand' },
  dot: { title: '49 CFR 574, tyre identification: week and year', seen: 'read second-hand' },
  threeFigures: { title: 'NHTSA: three figures before 2000', seen: 'recalled' },
  years: {
    title: 'caravan trade and tyre makers’ advice: changed at 5 years, never used past 7',
    seen: 'read second-hand',
  },
  ageLaw: {
    title: 'a British rule of 2021 bars tyres over 10 years from some heavy vehicles, not from trailers',
    seen: 'read second-hand',
  },
  tread: { title: 'Directive 89/459/EEC', seen: 'read second-hand' },
  road: { title: 'EN 12195-1:2010, sideways 0.5, factor 1.1, k 2', seen: 'read second-hand' },
  roadRecalled: { title: 'EN 12195-1:2010, the other shares and the formulas', seen: 'recalled' },
  code: { title: 'British code of practice, safety of loads: the whole weight forward', seen: 'read second-hand' },
  webbing: {
    title: 'EN 12195-2, webbing as sold: 50 mm, hand force, breaking force, stretch',
    seen: 'read second-hand',
  },
  webbingRecalled: { title: 'EN 12195-2, 25 and 35 mm as sold, and when to throw it away', seen: 'recalled' },
  unmarked: { title: '49 CFR 393.108, unmarked webbing', seen: 'read second-hand' },
  practice: {
    title: 'a boat on rollers is held by the bow post and straps; the winch is no lashing',
    seen: 'common practice',
  },
  allow: { title: 'her places bear nothing until it is known what they bear', seen: 'our assumption' },
} as const satisfies Readonly<Record<string, Source>>;
