/**
 * Ten recipes held line by line to sources of the trade. Each step, caution or wait that a source speaks of stands
 * beside it, with the figure where there is one; `seen` says whether the source was read, or whether it is common
 * practice or recalled. Figures of the handbook are compared where it lies beside the project.
 */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Recipe, recipes } from '#jobs';
import { cureLawOf } from '#materials';

interface Line {
  /** words that stand in the recipe: in a step's title or caution, a wait, when it is needed, the proof */
  readonly says: RegExp;
  readonly source: string;
  readonly seen: 'read' | 'from memory' | 'common practice';
  /** the handbook's row, and the figure of ours that must lie in it */
  readonly row?: readonly [id: string, figure: number];
}

const bearings =
  'How to Repack Boat Trailer Wheel Bearings (boats.net) and a repacking guide of a trailer seller (jayhawktrailers.com)';
const gearOil =
  'Replacing Gear Case Lubricant, Riviera Boat Magazine 17 March 2018; an outboard maker’s service manual, Change of gear oil';
const terminals =
  'Cleaning Your Battery, a car-care text of 1980s diskettes (discmaster.textfiles.com); batterygem.com guide';
const rebedding =
  'Rebedding Deck Hardware (boatus.com, April 2021); Rebedding Deck Fittings, club notes of April 2002 (nsc library)';
const rigging =
  'rigger’s notes on what shows that rigging needs replacing (briontoss.com forum); Inspecting Standing Rigging (rec.boats.building)';
const jackets =
  'Inflatable life jackets, US Coast Guard safety alert as printed by the Power Squadrons (theensign.org, vol. 10 no. 10)';
const custom = 'custom';

const held: Readonly<Record<string, readonly Line[]>> = {
  'wheel-bearings': [
    { says: /Every 12 months/, source: bearings, seen: 'read', row: ['upkeep.tr.bearing', 12] },
    { says: /Crack the wheel nuts, jack that side, wheel off/, source: bearings, seen: 'read' },
    { says: /axle stand before a hand goes under\. Never on the jack alone/, source: bearings, seen: 'read' },
    {
      says: /spin the hub with an ear to it/,
      source: 'trailer wheel service, an owners’ forum (macgregorsailors.com)',
      seen: 'read',
    },
    { says: /wash bearings in white spirit, and look for blue, pits or rust/, source: bearings, seen: 'read' },
    { says: /Pack grease through each race with the palm, new seal/, source: bearings, seen: 'read' },
    { says: /nut up and back off until the wheel just turns free, new split pin/, source: bearings, seen: 'read' },
    { says: /Never spin a bearing with compressed air/, source: 'bearing makers’ handling notes', seen: 'from memory' },
    {
      says: /After the first 50 km/,
      source: 'a trailer maker’s manual: wheel nuts after 10, 25 and 50 miles',
      seen: 'read',
    },
    {
      says: /nuts crosswise to the maker’s torque/,
      source:
        'Wheel nuts and torquing procedures on hire trailers: a star pattern, the maker’s figure (airdocsolutions.com)',
      seen: 'read',
    },
    {
      says: /lay a hand on the hub/,
      source: 'On-the-road checks of a trailer maker, April 2014: feel the hubs, with care (blog.ptrailerusa.com)',
      seen: 'read',
    },
  ],
  'gear-oil': [
    { says: /Every 12 months or 100 hours/, source: gearOil, seen: 'read', row: ['upkeep.ob.gearoil', 12] },
    { says: /milky oil is water, and wants seals/, source: gearOil, seen: 'read' },
    { says: /Leg upright, drain screw out over a tray, then the vent/, source: gearOil, seen: 'read' },
    {
      says: /Pump new oil in from below until it stands at the vent without bubbles, vent screw first, then drain/,
      source: gearOil,
      seen: 'read',
    },
    { says: /Sealing washers for the drain screws/, source: gearOil, seen: 'read' },
    { says: /filings on the screw’s magnet/, source: gearOil, seen: 'read' },
    { says: /Leg drains/, source: custom, seen: 'common practice' },
    {
      says: /fishing line from behind it/,
      source: 'Fishing line: will it damage my outboard? (boats.com): it works under the shaft’s lip seals',
      seen: 'read',
    },
    { says: /Leave it standing on clean card overnight/, source: custom, seen: 'common practice' },
  ],
  'battery-terminals': [
    { says: /Every 12 months/, source: custom, seen: 'common practice', row: ['upkeep.bat.terminals', 12] },
    { says: /Take the leads off the battery, negative first/, source: terminals, seen: 'read' },
    {
      says: /Brush posts and clamps bright; wash a lead battery’s lid with soda water, caps on/,
      source: terminals,
      seen: 'read',
    },
    { says: /soda never inside a cell/, source: terminals, seen: 'read' },
    {
      says: /Clamp up positive first, then smear petroleum jelly over the made joint/,
      source: terminals,
      seen: 'read',
    },
    { says: /goggles, gloves/, source: terminals, seen: 'read' },
    { says: /gives off hydrogen/, source: 'EN 50272-2 practice', seen: 'from memory' },
    { says: /under 20 mV/, source: custom, seen: 'common practice' },
  ],
  'rebed-shroud-plate': [
    { says: /Drill each hole half as wide again, and hook wet core back 10 mm/, source: rebedding, seen: 'read' },
    { says: /Fill the holes with epoxy thickened stiff, tape across the bottom/, source: rebedding, seen: 'read' },
    { says: /Drill the plugs to clearance size and countersink the rim/, source: rebedding, seen: 'read' },
    { says: /Hold the bolt and turn the nut/, source: rebedding, seen: 'read' },
    { says: /Treat polyurethane as permanent/, source: 'handbook materials.seal.polyurethane.removable', seen: 'read' },
    {
      says: /epoxy-fast/,
      source: 'least temperature of ordinary epoxy 10 °C',
      seen: 'common practice',
      row: ['materials.temp.min.epoxy', 10],
    },
    {
      says: /Wash the waxy blush off with water before sanding/,
      source: 'notes on blush by a resin maker’s chemists: soluble in water, clogs paper (epoxyworks.com)',
      seen: 'read',
    },
    { says: /Slack the shroud away/, source: custom, seen: 'common practice' },
    { says: /Sling a person’s weight off the halyard/, source: custom, seen: 'common practice' },
  ],
  'rebed-deck-fitting': [
    { says: /eight to fifteen years/, source: custom, seen: 'common practice', row: ['upkeep.rebed', 8] },
    { says: /roll off every crumb of what it was on/, source: rebedding, seen: 'read' },
    {
      says: /Countersink the screw holes/,
      source: 'Bed-it-yourself notes with butyl (pbase.com, 2 December 2005)',
      seen: 'read',
    },
    {
      says: /kneaded butyl on the foot with a cone round each screw/,
      source: 'Removing Deck Hardware, plasticclassicforum.com',
      seen: 'read',
    },
    { says: /butyl never cures/, source: 'handbook materials.seal.butyl.cure', seen: 'common practice' },
    { says: /squeezes for weeks/, source: 'handbook materials.seal.butyl.cure', seen: 'common practice' },
    { says: /Dam the fitting with putty, flood it/, source: custom, seen: 'common practice' },
  ],
  'rig-look-over': [
    { says: /Every 12 months/, source: custom, seen: 'common practice', row: ['upkeep.rig.inspect', 12] },
    { says: /cotton rag down every wire: it catches on a broken strand/, source: rigging, seen: 'read' },
    { says: /look through a lens for a crack along it or a banana bend/, source: rigging, seen: 'read' },
    { says: /Put dye on the doubtful swages/, source: 'Ask Sail: Rigging Inspection (sailmagazine.com)', seen: 'read' },
    { says: /Dye soaks into the cracks/, source: 'penetrant testing, 10 to 20 min', seen: 'from memory' },
    {
      says: /Renew split pins and rings/,
      source: 'rig inspection checklist (sailnet.com, 12 January 2005)',
      seen: 'read',
      row: ['upkeep.rig.pins', 12],
    },
    { says: /One broken strand is one too many/, source: 'handbook upkeep.rig.strand: at once', seen: 'read' },
    { says: /Photograph every terminal/, source: custom, seen: 'common practice' },
  ],
  'varnish-maintenance': [
    { says: /Every 6 to 12 months/, source: custom, seen: 'common practice', row: ['upkeep.varnish', 6] },
    { says: /one or two coats/, source: custom, seen: 'common practice', row: ['materials.coats.maint', 2] },
    {
      says: /out of full sun, done two to three hours before dew/,
      source:
        'a chandler’s tips for varnish outdoors: no direct sun, skinned over before dew (support.jamestowndistributors.com)',
      seen: 'read',
      row: ['materials.sun', 2],
    },
    {
      says: /"dewMargin_min_C":3/,
      source: 'ISO 8502-4: 3 °C over the dew point',
      seen: 'read',
      row: ['materials.dp.margin', 3],
    },
    { says: /"air_min_C":8/, source: custom, seen: 'common practice', row: ['materials.temp.min.alkyd', 8] },
    {
      says: /"greatest_min":2880/,
      source: 'tins: 24 to 72 h without sanding',
      seen: 'common practice',
      row: ['materials.recoat.varnish_1k_max_unsanded', 48],
    },
    {
      says: /First varnish coat dries/,
      source: 'tins: 12 to 24 h at 20 °C',
      seen: 'common practice',
      row: ['materials.recoat.varnish_1k_min_20C', 16],
    },
    { says: /oily rags out flat/, source: 'spontaneous heating of drying oils, NFPA handbook', seen: 'from memory' },
    { says: /flat it with 240/, source: custom, seen: 'common practice' },
    { says: /a fingernail leaves no dent/, source: custom, seen: 'common practice' },
  ],
  lifejacket: [
    {
      says: /Bladder blown up each 12 months/,
      source: 'safety-gear notes',
      seen: 'read',
      row: ['upkeep.lj.inflate', 12],
    },
    {
      says: /the cylinder felt every month/,
      source: 'safety-gear notes',
      seen: 'read',
      row: ['upkeep.lj.cylinder', 1],
    },
    {
      says: /24 h, by hand pump, never by breath/,
      source: 'safety-gear notes: inflate by hand pump and leave 24 h',
      seen: 'read',
    },
    {
      says: /weigh it against the grams stamped on it/,
      source: 'Lifejacket servicing, an owners’ thread: the full weight is on the bottle (forums.ybw.com)',
      seen: 'read',
    },
    { says: /a printed date on head or bobbin wins/, source: custom, seen: 'common practice' },
    { says: /repack by the picture inside/, source: jackets, seen: 'read' },
    { says: /Read dates on firing heads, bobbins and lights/, source: jackets, seen: 'read' },
    { says: /Photograph every head/, source: custom, seen: 'common practice' },
  ],
  flares: [
    {
      says: /42 months from making at most/,
      source: '46 CFR 160.036-5(b)',
      seen: 'read',
      row: ['upkeep.flare.us', 42],
    },
    {
      says: /3 to 4 years by others/,
      source: 'printed on the flare',
      seen: 'common practice',
      row: ['upkeep.flare.eu', 36],
    },
    {
      says: /take the old to whoever takes them where you live/,
      source: 'Coast Guard Auxiliary answers: it takes none; ask police or fire service (blogs-it.cgaux.org)',
      seen: 'read',
    },
    {
      says: /never fired off for practice/,
      source: 'Turn in old flares, a newspaper’s boating tip of 9 June 2016: fined without an emergency (tcpalm.com)',
      seen: 'read',
    },
    { says: /Lay every flare out by date/, source: custom, seen: 'common practice' },
    { says: /Read aloud from the card/, source: custom, seen: 'common practice' },
    { says: /Pack the new in the dry bottle/, source: custom, seen: 'common practice' },
  ],
  extinguisher: [
    {
      says: /Every month for gauge, seal, hose and weight/,
      source: 'a boating course’s notes on extinguishers',
      seen: 'read',
      row: ['upkeep.ext.check', 1],
    },
    {
      says: /31 December of its twelfth year/,
      source: 'US Coast Guard ACN 002/22',
      seen: 'read',
      row: ['upkeep.ext.disposable', 12],
    },
    { says: /Weigh each against its label/, source: 'a boating course’s notes on extinguishers', seen: 'read' },
    {
      says: /loosen the cake/,
      source: 'a fire district’s page on extinguishers: shaken, so that powder does not settle (spfpd.com)',
      seen: 'read',
    },
    { says: /in five seconds/, source: custom, seen: 'common practice' },
    {
      says: /Check gauge green, pin and seal whole/,
      source: 'a boating course’s notes on extinguishers',
      seen: 'read',
    },
    { says: /Read the year on its foot/, source: custom, seen: 'common practice' },
  ],
};

const textOf = (recipe: Recipe) => JSON.stringify(recipe);

describe.each(Object.entries(held))('%s', (id, lines) => {
  const recipe = (recipes as Readonly<Record<string, Recipe>>)[id]!;
  it.each(lines.map((line) => [line.source, line.seen, line] as const))(
    'says what is said in %s (%s)',
    (_, __, line) => {
      expect(textOf(recipe)).toMatch(line.says);
    },
  );

  it('has every step and its proof held to something', () => {
    const said = (step: unknown) => lines.some(({ says }) => says.test(JSON.stringify(step)));
    expect([...recipe.steps, recipe.proof.step].filter((step) => !said(step)).map(({ title }) => title)).toEqual([]);
  });
});

it('sets the limits of each wait by the product’s own law, whose figures are checked apart', () => {
  for (const recipe of Object.values(recipes) as Recipe[])
    for (const step of [...recipe.steps, recipe.proof.step])
      for (const { law } of step.waits) if (law.kind === 'product') expect(cureLawOf(law.product).id).toBe(law.product);
});

const handbook = ['upkeep', 'materials'].map(
  (name) => new URL(`../../../../shared/handbook/${name}.json`, import.meta.url),
);
const here = handbook.every((file) => existsSync(file));

describe.skipIf(!here)(here ? 'figures of the handbook' : 'figures of the handbook (skipped: no data)', () => {
  interface Row {
    readonly id: string;
    readonly expected: number | string | readonly number[];
    readonly tolerance: { readonly value?: number };
  }
  const rows = new Map(
    here
      ? handbook.flatMap((file) => JSON.parse(readFileSync(file, 'utf8')) as Row[]).map((row) => [row.id, row] as const)
      : [],
  );
  const figures = Object.values(held).flatMap((lines) => lines.flatMap(({ row }) => (row ? [row] : [])));
  it.each(figures)('%s: %d', (id, figure) => {
    const row = rows.get(id)!;
    const { expected } = row;
    if (typeof expected === 'number') expect(Math.abs(figure - expected)).toBeLessThanOrEqual(row.tolerance.value ?? 0);
    else if (typeof expected === 'string') expect(expected).toMatch(new RegExp(`\\b${figure}\\b`));
    else {
      expect(figure).toBeGreaterThanOrEqual(expected[0]!);
      expect(figure).toBeLessThanOrEqual(expected.at(-1)!);
    }
  });
});
