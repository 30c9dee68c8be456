import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'stock take of the garage',
    page: `- Sails: 3, bagged, dry. Mice: 0.
- Rudder, on two trestles. First coat went on Tues. Second coat due when the temp gets above 12, flat it back lightly beforehand.
- Tiller: finished. Gorgeous. Don't touch it, Callum.
- Lifejackets x4. Three firing heads green, one red. The red one wants a new cartridge screwed in, 5 min, have cartridge.
- Fenders: one flat as a kipper. Blew it up again with a football needle, it goes down in a day. We've others.
- Old anchor: keep? Callum says it's worth money. Callum says that about the fridge.
- Washboards: no rot. One has a strip of carpet tacked round where the draught strip came off – works a treat, looks like a pub. Get proper draught strip, stick it on before the estuary night.
- Cockpit cushions: mildew on the piping. Lemon juice, sun. Or not at all.
- Outboard on its stand: oil changed, plug changed, greased. Tilt lock still iffy? Tried it forty times. Not iffy. I was iffy.
- Petrol can: cap's seal has gone, whole garage stinks, my wife found me a headache and a leaflet. New cap, today, before the place goes up.
- Main halyard: measured, 15.2 m, no wear. It had been end-for-ended in '25.
- Board (yes it's in the garage, it weighs 38 kg, don't ask): leading edge pitted. Grind, zinc prime, two top coats, say 3 hrs over two days.
- The bit of brass nobody knows: still nobody knows.
- Charger says 12.7 & a green lamp.

Wanted from the shop: draught strip 2 m, petrol can cap, zinc primer.

Not wanted: advice re. fridge.`,
    marks: [
      { kind: 'job', at: 'Second coat due when the temp gets above 12', parts: {} },
      { kind: 'job', at: 'The red one wants a new cartridge screwed in', parts: { minutes: 5 } },
      { kind: 'jury rig', at: 'One has a strip of carpet tacked round', parts: {} },
      { kind: 'job', at: 'Get proper draught strip, stick it on', parts: { outing: 'estuary' } },
      { kind: 'job', at: 'New cap, today', parts: { due: '2027-04-08' } },
      { kind: 'job', at: 'Grind, zinc prime, two top coats', parts: { zone: 'case', minutes: 180 } },
      { kind: 'reading', at: 'Charger says 12.7', parts: {} },
      { kind: 'store', at: 'draught strip 2 m', parts: {} },
      { kind: 'store', at: 'petrol can cap', parts: {} },
      { kind: 'store', at: 'cap, zinc primer', parts: {} },
    ],
  },
  {
    name: 'after the choir',
    page: `we've just done the fast one and I've no breath left but I said I'd look in on her on the way home so by streetlamp then um she's all there she's got four corners the cover's wet and tight like a drum somebody's put a traffic cone on the bow which is I think meant as a joke and I've left it there because it's funny now the strap over the stern the ratchet's rusted solid you can't tighten or undo it I've hooked a sail tie round it and twisted that with a stick it's holding her down on the trailer but you couldn't tow with it so a new ratchet strap before she moves an inch um I lifted the flap and put my head in it smells all right it doesn't smell of petrol last year it did smell of petrol and it was the neighbour's mower not us at all I shone the torch about and the floor's dry the cushions are dry the little sticker about the life raft is still there we've no life raft I didn't look at the battery it's dark and I'd only drop something the basses were flat by the way all through the slow one then coming round the other side the light board I've walked into it again it's hanging by its wire one of the butterfly nuts is gone so a butterfly nut and tighten the pair five minutes and mind somebody's shins in the meantime I'd thought the mast crutch was leaning but it's the road that leans everything in this road leans okay it's starting to spit and I've a descant to learn`,
    marks: [
      { kind: 'jury rig', at: "I've hooked a sail tie round it and twisted that", parts: {} },
      { kind: 'job', at: 'so a new ratchet strap before she moves an inch', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'so a butterfly nut and tighten the pair', parts: { zone: 'trailer', minutes: 5 } },
    ],
  },
  {
    name: 'the carpenter',
    page: `I build staircases, so I see her as a staircase that floats, with everything out of square on purpose.

The rubbing strake's ash. Somebody used iron screws in the eighties and they've wept black, but the timber round them is tight; I've no quarrel with it.

The cockpit grating I made in January and it drops in like a drawer. I've brought three people to look at it. One of them was the postman.

What I can't abide is the companion slide. It binds on the left, one has to thump it, and the reason's plain: the runner has lifted at its after end. I've a sash clamp across it, which rather spoils the entrance. Glue, two bronze screws, and the clamp can go home; an hour's work, and most of that's sweeping up after.

The coaming's got a shake in it. It's an old shake. It isn't moving. I put a pencil tick at the end two years since and it's still at the tick.

There's a scarf in the boom some way aft of the gooseneck, and the glue line has opened; I got a hacksaw blade in to the depth of an inch. I wouldn't hoist on that. Open it, clean it, epoxy and four clamps, and leave it be for two days.

They say boats want to be white. This one's green.

The bow chock is a poor bit of work but it's someone's, and it's doing what it's told.

The tabernacle wedge has shrunk over the winter, so the mast nods when you push it. I'll cut a new wedge from oak on Friday when the saw's set up. Ten minutes if the kettle's on.

I've had offers for the grating.`,
    marks: [
      { kind: 'jury rig', at: "I've a sash clamp across it", parts: {} },
      { kind: 'job', at: 'Glue, two bronze screws, and the clamp can go home', parts: { minutes: 60 } },
      { kind: 'job', at: 'Open it, clean it, epoxy and four clamps', parts: { zone: 'rig' } },
      { kind: 'job', at: "I'll cut a new wedge from oak on Friday", parts: { minutes: 10 } },
    ],
  },
  {
    name: 'no punctuation no patience',
    page: `right listen I've had enough of finding things so I'm going to say what's good first what's good is the sails the rudder the seats the engine the name on the back and the fact that we own her outright as of march fifth last payment gone I had a cry now what's bad um the toe rail at the front on the right has been bashed by the pontoon and there's a splinter sticking up like a dagger my boy got it in his foot on sunday and we had the tweezers out so that gets planed off and a bit let in and in the meantime it's got a pool noodle over it slit down the middle and taped very fetching pink um the sounder reads nine point nine whatever you do which would be nice but we were on the beach at the time it's the transducer face it's got paint on it I bet Sandra painted over it with the antifouling so scrape that off gently not with a chisel Sandra the vang shackle hasn't got its pin screwed right down I did it up there and then with my fingers and then the pliers so that's done the burgee we ought to have one the club would like us to have one it's four pounds I'm not paying four pounds for a flag er the cool box the dog the crisps fine fine fine and the fuel tank vent it hisses and there's a wet patch under it every time so I want a new cap on that tank with a vent that shuts because you only need one spark I'd really like to go to the muster and not have anything fall off that's my whole ambition`,
    marks: [
      { kind: 'job', at: 'so that gets planed off and a bit let in', parts: {} },
      { kind: 'jury rig', at: "it's got a pool noodle over it slit down the middle", parts: {} },
      { kind: 'job', at: 'so scrape that off gently', parts: {} },
      { kind: 'job', at: 'so I want a new cap on that tank', parts: { consequence: 'danger' } },
    ],
  },
];
