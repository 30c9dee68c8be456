import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'season over, feet up',
    page: `well that was the season and a funny one it was we had eleven days out and I count the day we only got as far as the pontoon the big thing last winter was the deck and the deck's held not a drop the new cushions are lovely the engine never missed a beat so what's left over from it all well the jib sheet track on the right side has lifted at the front I saw it in June and tied it down with a lashing to the stanchion and sailed on like that all summer so that's bolts out bed it again and bolts back in an hour the keel winch handle got bent when the boy stood on it and you can still turn it so I'm not bothered the big fender's gone flat put some air in it two minutes with the football pump the sail cover faded but it's a cover the trailer I dreaded and then the bearings looked like new so all they got was fresh grease and that's that for two years the mast has a dent from the bridge incident which we don't discuss the surveyor had a look and says it's nothing the heads'l halyard swivel though that's rough as a bear's backside take it off flush it and if it's no better get a new one half an hour the cabin lamp on the port side has started to flicker I think the wire's broken inside the bulkhead pull a new one through with the old one forty minutes and the sprayhood zip I rubbed with candle wax it's fine now the bottom she needs a scrub and a coat of antifouling in March that's a day six hours with everything and I said I'd never do it again on my back but who else will the battery's home on the shelf at twelve point seven and we should buy two and a half litres of antifouling in the sales and a swivel if it comes to it and next year we'll go round the point I say that every year`,
    marks: [
      { kind: 'jury rig', at: 'tied it down with a lashing to the stanchion', parts: {} },
      { kind: 'job', at: 'bolts out bed it again and bolts back in', parts: { minutes: 60 } },
      { kind: 'job', at: 'put some air in it two minutes', parts: { minutes: 2 } },
      { kind: 'job', at: 'take it off flush it', parts: { minutes: 30 } },
      { kind: 'job', at: 'pull a new one through with the old one', parts: { zone: 'cabin', minutes: 40 } },
      { kind: 'job', at: 'she needs a scrub and a coat of antifouling', parts: { zone: 'bottom', minutes: 360 } },
      { kind: 'reading', at: 'at twelve point seven', parts: {} },
      { kind: 'store', at: 'two and a half litres of antifouling', parts: {} },
    ],
  },
  {
    name: 'texts from the yard',
    page: `Yard. Windy. Typing with gloves.

Mast up fine yday, thx for the hands. All 4 shrouds pinned + ringed. Done.

1. Forestay turnbuckle: no locking wire. Cable tie in there for the night. Proper wire when I'm back, 5 min.

2. That noise you heard was the boom vang block. Sheave's ok, the shackle is half through. New 5 mm shackle, 2 min. Don't sail on it.

3. Outboard fuel: smells like old varnish. Drain tank, fresh mix. 20 min. Somewhere away from the cat.

4. Cockpit: pressure wash? Nah. It's clean enough.

5. Portlight gasket, the one over the chart shelf: drips on the charts, i.e. on nothing, we have no charts. But still. New rubber, 25 min.

Battery 12.39. Bit low? Panel lead was unplugged. Plugged it. Will look again Sunday.

6. Rudder ok!! You did a nice job of it.

7. Saw a guy with a carbon tiller. Want one. Don't need one.

8. Trailer: left wheel nut, one stud stripped. The other three are torqued. Need to knock a new stud in before we move her, 40 min, hub off. If we get stopped or if it shears, either way bad.

9. Keel box: heard it knock at night on the swing. Always did. Earplugs.

10. Anchor rope: rodents. Seriously. Two places. Cut at the worse one, that leaves 25 m, splice on a thimble. 30 mins, you splice, I hold the beer.

Yard boss says water gets switched on next week. And could everyone please take their pallets home.

Are you bringing the long drill? The 6 mm one. Mine's blunt.

Get: locking wire, 5mm shackle x2, M12 stud, thimble.

Weather: rain till 4 then "brighter". We'll see what brighter means.

Also: would you swap Saturday for Sunday? Can't glue in the wet anyway.`,
    marks: [
      { kind: 'jury rig', at: 'Cable tie in there for the night', parts: {} },
      { kind: 'job', at: "Proper wire when I'm back", parts: { minutes: 5 } },
      { kind: 'job', at: 'New 5 mm shackle, 2 min', parts: { minutes: 2 } },
      { kind: 'job', at: 'Drain tank, fresh mix', parts: { minutes: 20 } },
      { kind: 'job', at: 'New rubber, 25 min', parts: { minutes: 25 } },
      { kind: 'reading', at: 'Battery 12.39', parts: {} },
      { kind: 'job', at: 'Need to knock a new stud in', parts: { zone: 'trailer', minutes: 40 } },
      { kind: 'job', at: 'Cut at the worse one', parts: { minutes: 30 } },
      { kind: 'store', at: 'Get: locking wire', parts: {} },
      { kind: 'store', at: '5mm shackle x2', parts: {} },
      { kind: 'store', at: 'M12 stud', parts: {} },
      { kind: 'store', at: 'stud, thimble', parts: {} },
    ],
  },
  {
    name: 'a lesson on sealing',
    page: `So, people, gather round, this is how I look for leaks. One person inside with a torch, one outside with a hose, start low and go up. Never start high, or you wet everything and learn nothing.

On this boat we did it last Sunday. The chainplates were tight. The handrails were tight. The windows, you'd have bet on the windows, tight. It was the cleat on the starboard quarter, of all things. So that comes off, the holes get chamfered, butyl underneath, and it's tightened in two goes a day apart. Forty minutes for the first go.

Why in two goes? Because butyl creeps. If you crank it down at once it all ends up on your trousers.

In general you should rebed deck fittings every ten years or so. Most of hers were done in 2022, so I'm not going to take up everything for fun.

Second leak. The mast collar: there was a rag in there, stuffed in with a screwdriver. That's how I found her and it has stayed. It does keep some of it out. What it should have is a rubber boot and a big clamp, so that gets made up from a wetsuit sleeve, an hour, when the mast's down.

Third. See the stain below the locker? That isn't a leak, that's the bottle of cola from August.

Somebody asked about silicone. I don't use it on deck. Others do. Their boats also float.

What about readings? I take the moisture meter to the core around each fitting. Here by the cleat it says 24. Over there 12. So by the cleat it needs to dry before I close it. I'll leave it open under a tent for two weeks.

While we're here: look at the toe of this stanchion. Wobbles. Under it the nut is simply loose, so nip that up, five minutes, and no sealing at all.

And the drain in the anchor well is blocked with leaves, clear it with a bit of wire. Who volunteers?

I need butyl, a big hose clamp, and a wetsuit that nobody loves.`,
    marks: [
      { kind: 'job', at: 'So that comes off, the holes get chamfered', parts: { minutes: 40 } },
      { kind: 'jury rig', at: 'there was a rag in there, stuffed in', parts: {} },
      {
        kind: 'job',
        at: 'so that gets made up from a wetsuit sleeve',
        parts: { minutes: 60, setUps: { mast: 'down' } },
      },
      { kind: 'reading', at: 'Here by the cleat it says 24', parts: {} },
      { kind: 'job', at: 'so nip that up, five minutes', parts: { minutes: 5 } },
      { kind: 'job', at: 'clear it with a bit of wire', parts: {} },
      { kind: 'store', at: 'I need butyl', parts: {} },
      { kind: 'store', at: 'a big hose clamp', parts: {} },
    ],
  },
  {
    name: 'dictated from under the boat',
    page: `I'm under her on the creeper so if it goes muffled that's why the bottom's in good nick I scraped one patch last week and it was sound underneath so no painting this year there is a gouge by the front of the slot about as long as a pencil and down to the cloth that wants grinding out and filling with epoxy twenty minutes and then it sits a day and a dab of paint the edge of the board itself I smoothed off last autumn and that's lovely the board pin cap on the port side is weeping tiny drip when I poured a bucket down the case so take off the cap new washer with sealant half an hour the trailer from underneath well it's a trailer the crossbeam has surface rust I don't mind surface rust the brake cable's outer has come away from its clip and was dragging so I tied it up with a bootlace get a p clip and screw it up there five minutes the leaf springs are fine greased at Christmas the back roller spindle is rusted thin in the middle thinner than my finger now that one I'm not happy with so a new spindle sixteen mil bar and drill the ends an hour and she'd have to be jacked off it the tyres oh let me look thirty two that side and thirty two this side bit soft but that's what I run light boats at the wheel chock by my foot is a brick and always will be okay rolling out ow the drain bung washer's flattened swap that from the box one minute there's a swallow looking at nests in the shed again last year they made a mess of the cover but I don't have the heart my neighbour hoses his whole underwater body off with the pressure washer and took the paint with it serves him right get a p clip and sixteen mil bar and I'm going in`,
    marks: [
      { kind: 'job', at: 'that wants grinding out and filling with epoxy', parts: { zone: 'bottom', minutes: 20 } },
      { kind: 'job', at: 'take off the cap new washer with sealant', parts: { minutes: 30 } },
      { kind: 'jury rig', at: 'I tied it up with a bootlace', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'get a p clip and screw it up there', parts: { zone: 'trailer', minutes: 5 } },
      { kind: 'job', at: 'so a new spindle sixteen mil bar', parts: { zone: 'trailer', minutes: 60 } },
      { kind: 'reading', at: 'thirty two that side', parts: {} },
      { kind: 'job', at: 'swap that from the box one minute', parts: { minutes: 1 } },
      { kind: 'store', at: 'get a p clip and sixteen', parts: {} },
      { kind: 'store', at: 'sixteen mil bar and I', parts: {} },
    ],
  },
];
