import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'walking the dog past her',
    page: `just passing with the dog so I thought I'd have a look under the cover and tell you what's what and the first thing is the cover itself its fine its got a puddle on top but that's because somebody not me has let the ridge pole drop so I've put a boat hook under the middle standing in a bucket to lift it and the water has gone off lovely but the ridge pole has actually cracked at the join so make a sleeve for it out of that bit of drainpipe half an hours work sit down biscuit I mean the dog right the left hand shroud plate looks good no rust the right hand one has a bit of rust but that's only from the nail that was lying there I wiped it off the traveller sticks a bit but its always been sticky when its cold and then the mast step there's a bolt working loose you can turn it with your fingers I've done it up finger tight but its got no locking washer on it so what you want is a locking washer and a drop of thread glue before the mast goes up five minutes um the cockpit tent poles are all there I counted nine and last year there were eight so explain that the winch at the trailer post the strap was going furry and I changed that in march you'll be glad to hear the tyre on the left looked soft so I kicked it and it is soft give it some air and if its down again by saturday its the valve and you take it to the man in the arches like we did for the barrow the rudder is hanging on one gudgeon I mean its meant to hang on two but someone's left it like that I've dropped it back in so all good now dog's found something dead I have to go`,
    marks: [
      { kind: 'jury rig', at: "I've put a boat hook under the middle standing in a bucket", parts: {} },
      { kind: 'job', at: 'make a sleeve for it out of that bit of drainpipe', parts: { minutes: 30 } },
      { kind: 'job', at: 'what you want is a locking washer', parts: { minutes: 5 } },
      { kind: 'job', at: 'give it some air', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'two brothers typing',
    page: `Ned: so did you go
Ned: or did you "go"
Hal: went. two hours. froze
Hal: good news first, mast track is clean, no corrosion, sail slid up like butter
Ned: told you candle wax works
Hal: wasn't candle wax, I washed it
Hal: bad news, gooseneck pin is bent. the boom droops
Ned: bent how
Hal: like a banana
Ned: hammer?
Hal: NO. it'll have to be a new one, 10 mm, I'll turn it down on dad's lathe. an hour. not sailing with a banana
Ned: how'd you get the boom off then
Hal: didn't. it's hanging in a loop of sheet from the mast cleat so it doesn't tear the track
Ned: classy
Hal: remember when the gooseneck broke on the old boat and you steered home wearing the sail
Ned: I was nine
Hal: anyway. forestay fitting fine, roller fine, pulpit still wobbly but you said never mind the pulpit
Ned: never mind the pulpit
Hal: cabin was bone dry. mouse has had the loo roll
Ned: set a trap?
Hal: it's gone, no droppings newer than xmas, don't bother
Hal: ok one more, the fuel hose. cracked at the tank end. petrol weeps out when you squeeze the bulb. that's a fire
Ned: cut an inch off?
Hal: cracked all along, I looked. whole hose, 2 m, and two clips. do it before anyone starts that engine please
Ned: I'll get the hose, I'm passing the shop fri
Hal: 8 mm bore. not the clear stuff
Ned: and the tiller? you said you'd glue it
Hal: GLUED. sunday. it's hard as a bone
Ned: you're a wonder
Hal: and the hatch board has still got your parcel tape instead of a hinge
Ned: parcel tape's fine for now
Hal: hinge. brass. I'll screw it on when the frost's out of my fingers`,
    marks: [
      { kind: 'job', at: "it'll have to be a new one, 10 mm", parts: { minutes: 60 } },
      { kind: 'jury rig', at: "it's hanging in a loop of sheet from the mast cleat", parts: {} },
      { kind: 'job', at: 'whole hose, 2 m, and two clips', parts: { consequence: 'danger' } },
      { kind: 'store', at: "I'll get the hose", parts: {} },
      { kind: 'jury rig', at: 'still got your parcel tape instead of a hinge', parts: {} },
      { kind: 'job', at: "hinge. brass. I'll screw it on", parts: {} },
    ],
  },
  {
    name: 'a patient woman',
    page: `I was a dentist for thirty years, so I may be forgiven for looking at boats with a probe.

Starting at the stem, there is a soft place in the filler under the bow fitting. The probe goes in four millimetres. It's an old repair, not mine, and it wants drilling out and filling afresh, exactly as one would a molar. Forty minutes, with a day between. I don't care for the sort who simply paint over.

Everything on the foredeck is sound. The deck paint was applied two years ago by my late husband in one afternoon, with a great deal of singing, and I shan't touch it while there is any of it left.

The window on the left side: I resealed it in the autumn, and it is tight. The window on the right I resealed the same day, from the same tube, and it is not. There is a line of damp along the lower edge. I've folded a sponge into the channel, and I wring it out whenever I come. One must be honest about one's failures. The frame comes out again and I clean the corners properly, which is where I was lazy. Two hours, and Jocelyn will have to hold it from outside, so two of us.

Twelve and a half volts, near enough, on the battery.

I'm told that the bilge pump strainer should be looked at annually. I looked at it. It contained one hair grip, now removed.

The tiller pin has worn oval, and there's a click each time one changes tack. A slightly larger pin, or a bush? I think a bush, since wood is only wood. I'll have the hole out to sixteen and glue it in. Half an hour.

Next week my grandson comes, and we sail whether it is warm or not.`,
    marks: [
      { kind: 'job', at: 'it wants drilling out and filling afresh', parts: { zone: 'bow', minutes: 40 } },
      { kind: 'jury rig', at: "I've folded a sponge into the channel", parts: {} },
      { kind: 'job', at: 'The frame comes out again', parts: { minutes: 120, hands: 2 } },
      { kind: 'reading', at: 'Twelve and a half volts', parts: {} },
      { kind: 'job', at: "I'll have the hole out to sixteen", parts: { minutes: 30 } },
    ],
  },
  {
    name: 'weights and wheels',
    page: `Trailers kill more sailing weekends than wind does. I must have towed forty thousand miles with something behind me, a horse box to begin with, then boats, and I've stood at the roadside for every reason going. Once a whole wheel overtook me. It went past quite politely and turned left.

So I begin with the hubs, always. Jack her up, spin each wheel, put your ear to the spring. The right is silent. The left grumbles, and there is play if you rock it top and bottom. New bearings and a seal for that one, then, and I repack the other while I'm greasy. Two hours. I shall not take her to the estuary on that hub and I don't want to hear that it's only twenty miles.

Brakes I had done at the garage in February. The breakaway cable is new. The hitch head locks with a good fat clunk.

One of the rear rollers has split, and I've bound a strip of carpet round it with hose clips, which is why the hull hasn't a groove in it. That did the whole of August. I've a roller on order from the agricultural place, and when it lands it's a matter of knocking the spindle through; ten minutes, with the boat's weight taken off by the strap.

Mudguards: ugly. Ladder rack: I keep meaning to have one, some year, with lights on it.

Lights work. I did put the plug in vinegar first.

And the tow rope for pulling her up the beach needs an eye splice in the end, because a knot catches in the ring. I like splicing; I'll do it in front of the cricket.

My father never wore a seat belt or checked a hub, and lived to ninety one. It proves nothing.`,
    marks: [
      {
        kind: 'job',
        at: 'New bearings and a seal for that one',
        parts: { fitting: 'hub', minutes: 120, outing: 'estuary' },
      },
      { kind: 'jury rig', at: "I've bound a strip of carpet round it", parts: { zone: 'trailer' } },
      { kind: 'job', at: "it's a matter of knocking the spindle through", parts: { minutes: 10 } },
      { kind: 'job', at: 'needs an eye splice in the end', parts: {} },
    ],
  },
];
