import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'what got done and what did not',
    page: `so this is the end of winter reckoning what I said I'd do and what I did well the rudder that got three coats and looks lovely the bearings done the windows all four of them done and I'm never doing that again the mast step is done now what didn't get done the cabin sole never got its second coat because I ran out of warm days so that's still to do lightly sand and one more coat two hours and keep the dog out the masthead light well I bought the fitting it's in the drawer and it's still in the drawer so that has to go on before the mast goes up an hour with the soldering the sprayhood I was going to restitch the corner and I did half of it and broke the needle the other half is held with safety pins which is a disgrace so finish the stitching forty minutes the new anchor rope I never got because the old one when I washed it turned out perfectly good the galley tap still drips I've decided I like it no I don't but it can drip for another year the trailer mudguard I welded well a friend welded it it's good the winch on the starboard side I meant to strip and I never did and it's gritty when you turn it so strip it wash it in paraffin and put it back with new grease forty five minutes and mind the pawls don't go over the side like they did in the old boat the paint below the waterline is a season old and will do the bung for the cockpit drain's gone missing and there's a wine cork in there ha I want to get a proper bung before we launch five minutes to find the size the battery was twelve point four when I put it away and it's twelve point two today with nothing having touched it so hm put it on charge overnight and see and next winter I am not starting in March buy fine sandpaper a bung and a sailmaker's needle`,
    marks: [
      { kind: 'job', at: 'lightly sand and one more coat', parts: { zone: 'cabin', minutes: 120 } },
      { kind: 'job', at: 'so that has to go on before the mast goes up', parts: { minutes: 60 } },
      { kind: 'jury rig', at: 'the other half is held with safety pins', parts: {} },
      { kind: 'job', at: 'finish the stitching', parts: { minutes: 40 } },
      { kind: 'job', at: 'strip it wash it in paraffin', parts: { minutes: 45 } },
      { kind: 'jury rig', at: "there's a wine cork in there", parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'I want to get a proper bung', parts: {} },
      { kind: 'reading', at: "it's twelve point two today", parts: {} },
      { kind: 'job', at: 'put it on charge overnight', parts: {} },
      { kind: 'store', at: 'buy fine sandpaper', parts: {} },
      { kind: 'store', at: 'sandpaper a bung', parts: {} },
      { kind: 'store', at: "a sailmaker's needle", parts: {} },
    ],
  },
  {
    name: 'an engineer with a spring balance',
    page: `Survey in ascending order of worry. Instruments: vernier, spring balance, moisture meter, torque wrench. Temperature 11 degrees.

a) Keel bolts: she has none. Good.

b) Deck moisture, foredeck, nine points, 11 to 13 per cent. I had the same in 2025. No change, no work.

c) Tiller head bolt: 12 Nm where I left it at 12 Nm. Satisfactory.

d) Pintle, upper: diameter 9.7 mm against 10.0. I discard at 9.5. Measure again next spring; it is not this year's business.

e) Battery: 12.61 V at 07:15, 9 degrees, eleven hours at rest. Under a load of 4 A it dips by 0.2 V. Healthy.

f) Masthead sheave: side play 1.8 mm, the rope will in time fall beside it. Turn two spacer washers of 0.7 mm and fit them, 50 minutes, while the mast is still on the trestles.

g) Starboard rubbing strake: 400 mm of it rings hollow. Drill six 3 mm holes, inject epoxy, clamp with boards. One hour, plus 16 hours under the heater. The strake to port rings true.

h) Bilge pump: delivers 14 litres a minute; the maker promised 30. The impeller chamber was clean. The hose, however, has collapsed at the bend. Renew 1.2 m of hose with wire-wound, 35 minutes.

i) Trailer, offside: tyre 2.1 bar, should be 2.8. Pump to 2.8 and read it again after a week; if it has dropped, the valve is suspect.

j) Trailer winch: the ratchet pawl spring broke in February and I have substituted a loop of elastic cord, which has survived thirty turns. A spring of 0.9 mm wire will be wound and fitted, 20 minutes. I do not haul a 600 kg boat on elastic more often than I must.

k) Board: 42 kg. Lifting wire pre-tensioned; no fault found.

l) Anchor light switch: contact resistance 3.1 ohm, corresponding to a visibly dim lamp. Replace the switch, 15 minutes.

Required: hose 25 mm wire-wound, switch, spring wire 0.9 mm.

An acquaintance maintains that all of this could be judged by eye. His boat sank at its mooring in 2019, which I mention without comment.`,
    marks: [
      { kind: 'reading', at: '12.61 V at 07:15', parts: {} },
      { kind: 'job', at: 'Turn two spacer washers of 0.7 mm and fit them', parts: { fitting: 'sheave', minutes: 50 } },
      { kind: 'job', at: 'Drill six 3 mm holes, inject epoxy', parts: { zone: 'topsides', minutes: 60 } },
      { kind: 'job', at: 'Renew 1.2 m of hose with wire-wound', parts: { minutes: 35 } },
      { kind: 'reading', at: 'tyre 2.1 bar', parts: {} },
      { kind: 'job', at: 'Pump to 2.8 and read it again after a week', parts: { zone: 'trailer' } },
      { kind: 'jury rig', at: 'I have substituted a loop of elastic cord', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'A spring of 0.9 mm wire will be wound and fitted', parts: { minutes: 20 } },
      { kind: 'job', at: 'Replace the switch, 15 minutes', parts: { minutes: 15 } },
      { kind: 'store', at: 'hose 25 mm wire-wound', parts: {} },
      { kind: 'store', at: 'wire-wound, switch', parts: {} },
      { kind: 'store', at: 'spring wire 0.9 mm', parts: {} },
    ],
  },
  {
    name: 'glue first, then everything else',
    page: `Right, planning the two weekends. The thing is the glue. If I glue on Saturday morning nothing gets sat on till Sunday, so the glue has to come first and the rest goes round it.

Saturday first thing, then: the cockpit seat front, where the plywood is letting go. Open it with a chisel, work epoxy in, cramps every hand's width. An hour, and out of bounds till Sunday.

While that cures I'm on the mast. It's down and it stays down until the eighteenth. New main halyard, pulled through on the back of the old one, 20 minutes. I bought the rope already. The topping lift is stiff with salt but a soak in the bath put that right on Tuesday. And the wind indicator wants its vane back, the vane's in the glovebox, one screw.

If it rains I'll go below. There's a drip at the chainplate, not much, and at the moment a sponge on a string catches it. Ahem. Last autumn I thought it was condensation. It isn't. Lift the cover plate, rake out, new sealant, 45 minutes, and that won't happen in the rain of course, so if it rains it slides to Sunday.

Sunday. Seat front: cramps off, scrape, look pleased. Then the trailer, because my son's there and it needs two: the boat goes up on the props and we change the two rear rollers, which have perished. An hour and a half. He'd rather do the brakes but the brakes are fine.

The weekend after: mast up with the neighbours, three of us, after lunch. It isn't a job so much as a tradition. Then the new steaming light can't be got at any more so if I don't do that before, it's October.

So: steaming light on the Saturday as well. Ten minutes to swap the unit, it's plug in.

What I'm not doing: varnish. Not in April. The wood can go grey till the midges are out.

Saturday before nine at the chandler's: slow hardener, two rollers, white sealant.

And on the 24th we sail, whatever state I'm in.`,
    marks: [
      { kind: 'job', at: 'Open it with a chisel, work epoxy in', parts: { zone: 'cockpit', minutes: 60 } },
      { kind: 'job', at: 'New main halyard, pulled through', parts: { minutes: 20 } },
      { kind: 'job', at: 'the wind indicator wants its vane back', parts: {} },
      { kind: 'jury rig', at: 'a sponge on a string catches it', parts: {} },
      { kind: 'job', at: 'Lift the cover plate, rake out, new sealant', parts: { minutes: 45 } },
      {
        kind: 'job',
        at: 'we change the two rear rollers',
        parts: { zone: 'trailer', minutes: 90, hands: 2, setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: 'Ten minutes to swap the unit', parts: { minutes: 10 } },
      { kind: 'store', at: 'slow hardener', parts: {} },
      { kind: 'store', at: 'hardener, two rollers', parts: {} },
      { kind: 'store', at: 'white sealant', parts: {} },
    ],
  },
  {
    name: 'spoken slowly, learned late',
    page: `Good evening. I make now the round and I tell what I see, my English is from the school thirty years ago.

The anchor is good and the chain is good. The little wheel where the chain goes over it, there misses the security pin, I have put a nail. A nail is a nail. I must put a correct split pin, two minutes.

On the deck the handrail on the right is loose, one can lift it with two fingers. Under the ceiling are the nuts, I have to take down the panel and tighten and make new mastic. Perhaps one hour and a half. The handrail on the left I made already the last year and he holds.

The mast is beautiful, I have washed it. The rope for the front sail is a little bit hairy but it carries, I leave him.

In the cabin: the lamp over the table, it goes on and off when one knocks. I think the contact is oxidized. Clean it with the glass pencil, ten minutes.

The battery shows 12,5 volt. The solar plate works.

The toilet we have thrown out in the year 2024 and I don't miss it. Now is there a bucket.

The pump by hand, it sucks air. The membrane has a small tear, like a fingernail. I order a new membrane and then I change it, half hour. Until there I have put a piece of bicycle tube with glue on it, and it goes, but it goes not well.

The tiller moves good. On the stern the ladder hangs crooked, a child has jumped. I bend it back, maybe with heat.

Should one paint the bottom every year? My neighbour says yes, I say the fishes do not look.

The trailer: tyre left 2,4, right 2,4, good. The cable of the brake is rusty, I don't like, but the workshop has said he is still within the limit, so no.

The plate with the number of the car has a broken holder, so new holder, or the police says good morning.

I buy: split pins, mastic, membrane for the pump. Next week come the grandchildren, then I do nothing.`,
    marks: [
      { kind: 'jury rig', at: 'I have put a nail', parts: { zone: 'bow' } },
      { kind: 'job', at: 'I must put a correct split pin', parts: { minutes: 2 } },
      { kind: 'job', at: 'I have to take down the panel and tighten', parts: { minutes: 90 } },
      { kind: 'job', at: 'Clean it with the glass pencil', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'reading', at: '12,5 volt', parts: {} },
      { kind: 'job', at: 'I order a new membrane and then I change it', parts: { minutes: 30 } },
      { kind: 'jury rig', at: 'I have put a piece of bicycle tube', parts: {} },
      { kind: 'job', at: 'I bend it back, maybe with heat', parts: { zone: 'transom' } },
      { kind: 'reading', at: 'tyre left 2,4, right 2,4', parts: {} },
      { kind: 'job', at: 'so new holder, or the police', parts: { zone: 'trailer', consequence: 'unlawful' } },
      { kind: 'store', at: 'I buy: split pins', parts: {} },
      { kind: 'store', at: 'pins, mastic', parts: {} },
      { kind: 'store', at: 'membrane for the pump', parts: {} },
    ],
  },
];
