import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'no commas from the farm',
    page: `the wife said write it down Jack so I'm saying it down instead I've got lambs at both ends of the day so the boat gets what's left um she's in the big barn next to the baler and there's hens roost on the boom I don't mind the hens they keep the spiders off but there's a deal of muck on the coach roof which a hose'll shift some day first job proper is the winch strap on the trailer it's gone stiff as a board and there's a nick halfway through it so a new strap off the agricultural place I can have that on in ten minutes second the tiller has a bit of play where it goes in the rudder head I've jammed a slice of old welly boot down there and it's tight as you like for the present it really wants packing out with a bit of hardwood glued in I've got ash offcuts coming out of my ears the rest of the back end is sound the outboard I had on a dustbin of water Sunday she ran a treat frightened the hens my lad wants to put an electric motor on it I said you can put what you like on it when I'm dead the mast is slung off the rafters one of the spreaders has a split along the grain about as long as a matchbox that wants glue worked in and a whipping round it before it goes up else it'll let go in a blow and bring the lot down the ropes I boiled in a net bag and they come up lovely that's done the sails are on the spare bed and the cat's on the sails right that's a ewe shouting`,
    marks: [
      { kind: 'job', at: 'so a new strap off the agricultural place', parts: { zone: 'trailer', minutes: 10 } },
      { kind: 'jury rig', at: "I've jammed a slice of old welly boot down there", parts: {} },
      { kind: 'job', at: 'it really wants packing out with a bit of hardwood', parts: {} },
      { kind: 'job', at: 'that wants glue worked in and a whipping round it', parts: { zone: 'rig' } },
    ],
  },
  {
    name: 'from hospital',
    page: `Dear Lotte, dear Finn,

They've put my leg in a kind of birdcage and I shan't be on the boat before midsummer, so you two have her, and welcome. The food here is beige. The nurse from the night shift sails, and knows more about reefing than I do.

Let me tell you what I remember, lying here looking at the ceiling.

She is in good order. I say that so that you don't panic at the rest. The sails came back from the loft in February, and the running rigging I renewed last spring, all of it, so trust the ropes.

When you take the mast up, look at the little plastic wheel in the topping lift block. It had a chip out of it. Put the new block on that's hanging by the workbench; it'll be too late when she's up.

Don't be alarmed by the sound under the cockpit when you go about. It's a tin of paint. It rolls. I've never found out where.

The navigation lights go by way of a wooden clothes peg that holds two wires together behind the ladder. That was meant for one evening, in August. Finn, you can solder; would you join them decently and put a sleeve over? A quarter of an hour, and take the peg back to your mother.

I always meant to sand the floorboards. I've always meant to. Leave them, they'll see us all out.

The hatch washer, the big grey one, has a tear; I'd measure it and order a new one, and put it in before you sleep on the estuary, or Lotte's hair gets wet, and we know what then.

Visitors from two to four. Bring liquorice.

Papa`,
    marks: [
      { kind: 'job', at: "Put the new block on that's hanging by the workbench", parts: { setUps: { mast: 'down' } } },
      { kind: 'jury rig', at: 'a wooden clothes peg that holds two wires together', parts: {} },
      { kind: 'job', at: 'would you join them decently', parts: { minutes: 15 } },
      { kind: 'job', at: "I'd measure it and order a new one, and put it in", parts: { outing: 'estuary' } },
    ],
  },
  {
    name: 'arguing with himself',
    page: `Do I need to do the windows? No. They're scratched, you can't read a newspaper through them, but who reads a newspaper through a window. Next.

Do I need to do the bow cleat? It's got a crack at the root, I dropped a lemonade bottle on it. Hm. A crack's a crack. If it goes at anchor we're on the beach. All right, that's off and a new one on. Forty minutes, because the nuts are up under the foredeck where no human arm was meant to go.

Do I need new fenders? I want new fenders. That's different.

Is the wiring a mess? It's a bird's nest. Does it work? It works. Then it's not a mess, it's heritage.

Would I do it all again, buying an old boat? Ask me in July.

What about the centreboard pivot — is that a weep? I'd dried it with the hairdryer and put a paper towel under, and this morning the towel's wet on one side. So it is weeping. It's not a lot, I mop it with a sponge. But it ought to have new washers either side, and for that she has to be up on props with the board out, so that's a Saturday, and somebody strong. I've pressed a lump of candle wax over the bolt head and it's slowed it down no end.

Will it rain? Obviously.

Should I listen to that man on the quay who says I want twin rudders? I should not.

Did I ever put the jack back in the car? No! Jack in the car, that's not boat.

Reefing line two: it's jammed in the boom, I tugged and it didn't come. End cap off, fish it out, clear it, re-lead it. Half an hour.

Battery's 12.2. Bit low. Sun'll see to it.`,
    marks: [
      { kind: 'job', at: "All right, that's off and a new one on", parts: { minutes: 40 } },
      {
        kind: 'job',
        at: 'it ought to have new washers either side',
        parts: { zone: 'case', setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: "I've pressed a lump of candle wax over the bolt head", parts: { zone: 'case' } },
      { kind: 'job', at: 'End cap off, fish it out, clear it', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'reading', at: "Battery's 12.2", parts: {} },
    ],
  },
  {
    name: 'the lodger minds her',
    page: `Hi both! Hope the mountains are nice. You asked for news of the boat so I went over after work with my bike light. I don't know boats but I know bikes, so bear with me.

The tarp is on and it's tight. There was a puddle in the middle and I pushed it off with a broom and got it down my sleeve.

It hasn't sunk, ha ha. It's on a trailer.

One tyre looks perished to me. On a bike I'd bin that. The tread's all right, it's the side, you can see the cords. I can take the wheel to the tyre place Friday, just tell me which size and I'll do it. Honestly I wouldn't drive on that.

Your electric thing with the numbers says 12.9, the sun was on the panel.

I shook the mast. Nothing rattled. I liked that it's wood, it smells like my grandad's.

On the floor inside I found a little brass screw. Is it important? It doesn't seem to be from anywhere, I tried it in six holes.

The padlock on the cabin door is jammed up with salt, it took me ten minutes to get in. I'll give it some of my chain oil tomorrow.

Oh, and the ladder at the back, one of the plastic feet is off, so the bare tube's digging in the white stuff. I've put a tennis ball on it, with a slit in. Looks quite sporty! I expect you'd like to get a real foot for it and I'll push it on, just send it to the house.

The lady from the yard says hello and that you owe her for March. She also says you should get rid of that boat and buy a caravan. I said I'd pass it on.

Cat's fine. Boiler's fine. Milk was off.

Jo`,
    marks: [
      { kind: 'job', at: 'I can take the wheel to the tyre place', parts: { zone: 'trailer' } },
      { kind: 'reading', at: 'says 12.9', parts: {} },
      { kind: 'job', at: "I'll give it some of my chain oil tomorrow", parts: {} },
      { kind: 'jury rig', at: "I've put a tennis ball on it", parts: { zone: 'transom' } },
      { kind: 'job', at: "get a real foot for it and I'll push it on", parts: {} },
    ],
  },
];
