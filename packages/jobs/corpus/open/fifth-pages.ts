import type { MarkedPage } from '../marked.ts';

/** Eight voices more, by the same hand as `fourth-pages`, kept back while the reader was tuned on those. */
export const fifthPages: readonly MarkedPage[] = [
  {
    name: 'numbers and notes',
    page: `Survey of own boat, Sunday, no rain

1. Anchor warp. Chafed at the chain splice for about 20 cm. Cut back and resplice. 45 min.
2. Bow eye. Sound, bolts tight.
3. Forehatch. The glazing is crazed all over. You can still see out. It may go another year but the seal will not: it has set hard and lets in spray. New seal 12 x 8 mm, 2.4 m of it, one hour, dry.
4. Port shroud. Swage looks clean. Starboard shroud the same.
5. Spreaders. Could not get up there.
6. Main halyard. The eye has nearly chafed through. Cut off 300 mm and make a new eye. 20 min. Do not hoist the sail on it.
7. Coaming. Three screws have pulled on the port side. Plug the holes and put in one size up. 40 min.
8. Companionway slide. Runs rough; candle wax did not help. The runners want planing, 1 h.
9. Bilge. 2 litres of fresh water. Where from? Tasted it. Rain. The mast gaiter is the only way in, so: new gaiter and tape, 30 min.
10. Battery. 12.58 V, all off, panel covered.
11. Cooker. Serviced March, certificate in the file.
12. Board pendant. 2 of 7 strands gone at the thimble. Renew, 6 mm, 1 h 15, board down on the trailer and a second person.
13. Rudder. 3 mm play at the tiller head. Bush it. 50 min.
14. Outboard. 41 hours since service, due at 50. The tell-tale only dribbles. Rod the outlet, 5 min, and if that does no good, a new impeller, an hour.
15. Trailer. Tyres 2.1 and 1.6 bar. The 1.6 has a nail in it. Take it to be plugged. Lights work. Winch strap has a cut a third of the way across - it is dangerous; new strap, 15 min.`,
    marks: [
      { kind: 'job', at: 'Chafed at the chain splice', parts: { minutes: 45 } },
      { kind: 'job', at: 'the seal will not: it has set hard', parts: { minutes: 60 } },
      { kind: 'job', at: 'The eye has nearly chafed through', parts: { minutes: 20 } },
      { kind: 'job', at: 'Three screws have pulled', parts: { minutes: 40 } },
      { kind: 'job', at: 'Runs rough; candle wax did not help', parts: { minutes: 60 } },
      { kind: 'job', at: 'new gaiter and tape', parts: { minutes: 30 } },
      { kind: 'reading', at: '12.58 V', parts: {} },
      { kind: 'job', at: '2 of 7 strands gone at the thimble', parts: { minutes: 75, hands: 2 } },
      { kind: 'job', at: '3 mm play at the tiller head', parts: { minutes: 50 } },
      { kind: 'job', at: 'The tell-tale only dribbles', parts: {} },
      { kind: 'job', at: 'The 1.6 has a nail in it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Winch strap has a cut a third of the way', parts: { minutes: 15, consequence: 'danger' } },
    ],
  },
  {
    name: 'old hand at the bar',
    page: `I've had her thirty one years, you know. When I got her there was a tree growing out of the cockpit, I'm not joking. I've replaced every plank of her deck and she's on her third mast.

So what's she asking for this spring. Not a lot. The stem band's worked loose at the bottom, that's the shingle does that. Three screws and a dollop of bedding, half an hour, no more.

The mast's been up all winter so the lower shrouds have gone slack. I'll take a turn on each. Ten minutes.

I did the topsides in the autumn. Four coats, wet and dry between. You could shave in it.

There's a weep at the garboard. There always is, till she takes up. I don't fret.

Now the engine. My grandson ran it dry on the bench in January so I daresay the impeller's had it. I'll whip the leg off and put a new one in, I've got three in the drawer. An hour if the bolts shift.

She wants a new mainsail. I've wanted one for ten years. She won't get it.

The cabin hatch has swelled and I can't slide it. I had to climb in the front like a burglar. It wants easing with the plane, twenty minutes, but not till it's dried out or you take too much off.

The bilge pump choked on a bit of old newspaper and I cleared it. I see the handle's cracked, mind, and it'll go when you need it most. I've bound it with twine. That'll do me till I find another at the boat jumble.

Ropes? One of the jib sheets has a flat spot. Turn it end for end. Two minutes.

And I need to have my own knee looked at. That's me done.`,
    marks: [
      { kind: 'job', at: "The stem band's worked loose", parts: { minutes: 30 } },
      { kind: 'job', at: 'the lower shrouds have gone slack', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'job', at: "the impeller's had it", parts: { minutes: 60 } },
      { kind: 'job', at: 'The cabin hatch has swelled', parts: { zone: 'cabin', minutes: 20 } },
      { kind: 'jury rig', at: "I've bound it with twine", parts: {} },
      { kind: 'job', at: 'One of the jib sheets has a flat spot', parts: { minutes: 2 } },
    ],
  },
  {
    name: 'dictated in the rain',
    page: `testing testing okay is it on right so it's chucking it down which is useful because i can see where the water gets in and the answer is the port window bottom corner there's a proper trickle so that one comes out and gets new sealant two hours on a dry day and the starboard one is fine then there's a drip off the mast partners but that's only when it's this heavy and i'm not going to bother the floorboards are soaking but that'll be from me let me get the torch the battery terminals are green and furry clean them up and vaseline them ten minutes and the bilge has a couple of litres in i've sponged it out the pump switch is stuck on auto i had to pull the fuse to stop it running so that needs a new float switch half an hour the vhf works i called the harbour up on friday going outside now the mainsheet traveller car has lost a ball bearing or two and it jams on one side so i've moved the stop in to keep it off that bit until i get the new car which is on order fitting it is fifteen minutes the sail cover strings have come untied and it's flogging i'll just do that now done okay the cleat on the port quarter moves when you lean on it it's only held with screws would you believe so it needs through bolting with a big plate under an hour with somebody below and that should be before the muster because we'll be rafted up and everyone will hang off it right trailer lights on brake lights nothing indicators yes so brake lights one wire i hope twenty minutes can't tow without that's it i'm soaked`,
    marks: [
      { kind: 'job', at: 'the port window bottom corner', parts: { minutes: 120 } },
      { kind: 'job', at: 'the battery terminals are green and furry', parts: { minutes: 10 } },
      { kind: 'job', at: 'the pump switch is stuck on auto', parts: { minutes: 30 } },
      { kind: 'jury rig', at: "i've moved the stop in to keep it off", parts: {} },
      { kind: 'job', at: 'fitting it is fifteen minutes', parts: { minutes: 15 } },
      { kind: 'job', at: 'the cleat on the port quarter moves', parts: { minutes: 60, hands: 2, outing: 'muster' } },
      { kind: 'job', at: 'brake lights nothing', parts: { zone: 'trailer', minutes: 20 } },
    ],
  },
  {
    name: 'learned it from books',
    page: `Dear friend, you asked me how is the ship. I am checking her since two days and this is the result.

First I have washed the deck, it was full of bird dirt. Then I have found that the deck is soft beside the mast foot, when I go there with the shoe it makes crack crack. I am afraid the water is inside. One must open it and look, and fill again with resin. I count six hours, and it must be warm, and a friend must help.

The stays are good, also the sails are good, I have put them in the garage for the mice cannot come. No, one sail is not good, on the jib the ring in the corner is going out. The sailmaker makes it for little money, I bring it on Monday.

The engine wants not to start. I have pulled perhaps fifty times and now my arm is ill. I will change the fuel, it is from the last year, and clean the spark plug, together forty minutes.

At the rudder I have no found anything.

Inside the boat there is a smell from the water tank. I put vinegar in and wait one night, then rinse. This is done, the smell is away.

The electric pump is making noise but the water stays where it is. So a new pump I must have. I saw one for sixty. To build it in takes one hour.

The chain of the anchor, I painted the metres with colours, very nice.

Under the trailer the spring is rusty and one leaf is broken. With this we can not drive! The new spring I have ordered, it is two hours of work, and two persons, and heavy.

I wish also a little cushion for my back.`,
    marks: [
      { kind: 'job', at: 'the deck is soft beside the mast foot', parts: { minutes: 360, hands: 2 } },
      { kind: 'job', at: 'on the jib the ring in the corner is going out', parts: {} },
      { kind: 'job', at: 'The engine wants not to start', parts: { minutes: 40 } },
      { kind: 'job', at: 'The electric pump is making noise', parts: { minutes: 60 } },
      { kind: 'job', at: 'the spring is rusty and one leaf is broken', parts: { zone: 'trailer', minutes: 120 } },
    ],
  },
  {
    name: 'messages',
    page: `Morning! Down at the boat. Do you want the good news or the bad
Good pls
She's still floating, and the cover's held up brilliantly
And the bad
The rudder's got about a foot of split down the back edge. Can see light through it
Oh no. Fixable?
Yeah open it up, fill it with epoxy and clamp it, an hour plus overnight. Needs to be in the warm so I'm bringing it home
Ok. What about the leak
Found it! It's the bolt through the toe rail above your bunk. No sealant on it whatsoever. I've stuck a blob of blu tack on it for tonight. To do properly: undo it, seal it, do it up, 20 mins
Well done you. Did you find my glasses
No
Loo?
Pumps ok but it's stiff. Bit of oil down it, 5 mins, I'll do it tomorrow
And did you do the battery thing
12.71, panel off, nothing on
Good?
Very good
What do you need from the shop
A tube of white sealant and some sandpaper, and milk
Ok. Dad says the trailer brakes are dragging
Dad's right, I could smell them. They need backing off, half an hour, has to be before we drive it anywhere
He says he'll help
Tell him the car insurance needs renewing too lol
Anything else
Mainsail zip's jammed but I freed it. One of the reef points has torn out, needs a patch sewn on, my machine will do it, 45 mins
Can it wait
It can wait till we've sailed her once. Oh and the boom tent, throw it away, it's rotten`,
    marks: [
      { kind: 'job', at: "The rudder's got about a foot of split", parts: { zone: 'transom', minutes: 60 } },
      { kind: 'jury rig', at: "I've stuck a blob of blu tack on it for tonight", parts: {} },
      { kind: 'job', at: 'undo it, seal it, do it up', parts: { minutes: 20 } },
      { kind: 'job', at: "it's stiff. Bit of oil down it", parts: { minutes: 5 } },
      { kind: 'reading', at: '12.71, panel off', parts: {} },
      { kind: 'store', at: 'A tube of white sealant', parts: {} },
      { kind: 'store', at: 'some sandpaper', parts: {} },
      { kind: 'job', at: 'the trailer brakes are dragging', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'job', at: 'One of the reef points has torn out', parts: { minutes: 45 } },
    ],
  },
  {
    name: 'room by room, house-proud',
    page: `I always go round the same way, from the sharp end, so that I miss nothing.

In the anchor locker: all neat, the drain clear. The lid's catch is broken, I think somebody trod on it. I have a spare catch in the blue box and it is ten minutes' work.

On the foredeck, nothing but seagull.

In the fore cabin the headlining is hanging down over the port bunk. The glue has let go. I pinned it up with drawing pins just to get by. It will want taking down altogether, scraping and gluing back, and I should think that is a four hour job and a horrid one. For next winter.

The saloon is tidy. The table leg wobbles. I tightened the screw and it still wobbles, so the socket wants packing with a bit of veneer. Five minutes. I have taken all the books home, they were growing mushrooms.

The galley. One of the taps drips and I cannot turn it off any harder. A new washer, ten minutes. The cooker I scrubbed till I could see my face. The gas alarm went off when I made the tea, and I smelt nothing; but I am not happy. I have turned off the gas at the bottle. Somebody who knows must test the whole system before we cook again. That is a danger.

The companion steps: third one down is loose and I very nearly came a cropper. It wants new screws, longer ones. Ten minutes.

The cockpit is my husband's. He says it is all in order.

At the stern, the flagstaff socket has a crack, which only matters for looks. A dab of glue will see to it.`,
    marks: [
      { kind: 'job', at: "The lid's catch is broken", parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'I pinned it up with drawing pins', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'It will want taking down altogether', parts: { minutes: 240 } },
      { kind: 'job', at: 'The table leg wobbles', parts: { minutes: 5 } },
      { kind: 'job', at: 'One of the taps drips', parts: { minutes: 10 } },
      { kind: 'job', at: 'Somebody who knows must test the whole system', parts: { consequence: 'danger' } },
      { kind: 'job', at: 'third one down is loose', parts: { minutes: 10 } },
      { kind: 'job', at: 'the flagstaff socket has a crack', parts: { consequence: 'comfort' } },
    ],
  },
  {
    name: 'the week ahead',
    page: `Plan for the week, if the weather plays.

Monday. Home late. Order the new cap shroud, the old one has two broken wires at the bottom swage, and nobody goes sailing on that. Fitting is for Thursday then, an hour with the mast up and the halyard holding it.

Tuesday. Dry, they say. So the starboard window: it's been letting in rain over the chart table all winter. Take the frame off, clean off all the old silicone and bed it on butyl. Two and a half hours. I've got the butyl.

Wednesday. Club. No boat. Return Ken's sander.

Thursday. Shroud as above. Also while I've the ladder out, the radio aerial has come loose from its clip, five minutes.

Friday. Pump day. The diaphragm is split, that's why it won't hold a prime. The kit came yesterday. Forty minutes, hands in places hands shouldn't go. And I'd better see to the seacock next to it: it hasn't been turned since she was bought and it's seized. Penetrating oil first thing, then try it in the evening. If it won't go, that's a lift-out job and I'll think again.

Saturday. The children want to paint something. They can do the rudder stock, it's down to bare wood in patches, one coat of primer and an undercoat, an hour each.

Sunday. Wash her down, take the rubbish ashore. Then the trailer: the jockey wheel clamp slips so the nose comes down on its own, it got my toe last time. New clamp. Twenty minutes. The lighting board I repaired already.

Some day: a proper sprayhood.`,
    marks: [
      { kind: 'job', at: 'Order the new cap shroud', parts: { minutes: 60 } },
      { kind: 'job', at: 'the starboard window', parts: { minutes: 150 } },
      { kind: 'job', at: 'the radio aerial has come loose', parts: { minutes: 5 } },
      { kind: 'job', at: 'The diaphragm is split', parts: { minutes: 40 } },
      { kind: 'job', at: "it hasn't been turned since she was bought", parts: {} },
      { kind: 'job', at: 'They can do the rudder stock', parts: {} },
      { kind: 'job', at: 'Wash her down', parts: {} },
      { kind: 'job', at: 'the jockey wheel clamp slips', parts: { zone: 'trailer', minutes: 20 } },
    ],
  },
  {
    name: 'careful hand',
    page: `Having gone over the boat in some detail I set down what I found, good and bad.

The standing rigging was renewed in 2024 and shows no defect. The forestay fitting, however, has a hairline crack beside the weld. It was not there in October. I regard this as dangerous. It must be removed and a new one welded up; allow two hours with the mast lowered, besides the welder's time.

The running rigging is adequate. I have end-for-ended the mainsheet.

The deck was scrubbed. Beneath the dirt the joint between deck and hull has opened for some 30 cm on the port side forward. It lets in water when she heels. The remedy is to rake it out and fill it with a flexible sealant, which is an afternoon, and dry weather is essential.

The port berth board has warped. It can be turned over, which costs nothing and takes two minutes.

The electrical panel was rewired by the previous owner and is neat. There is, however, no fuse in the lead to the pump. An inline holder and a fuse of 5 A should be fitted at the battery end. Twenty minutes.

The depth sounder shows two dashes. I have cleaned the contacts, to no effect. The transducer is probably at fault and I shall replace it when she is next ashore. One hour.

The outboard motor was flushed and its oil is clean. Its clamp screws are stiff with corrosion and ought to be greased. Five minutes.

The trailer coupling does not lock positively on the ball. I had to strike it with a mallet. I would not take it on the road in that condition. The head should be changed: forty minutes.

Provision should also be made for a second fire blanket.`,
    marks: [
      {
        kind: 'job',
        at: 'has a hairline crack beside the weld',
        parts: { fitting: 'forestay', minutes: 120, consequence: 'danger' },
      },
      { kind: 'job', at: 'the joint between deck and hull has opened', parts: {} },
      { kind: 'job', at: 'The port berth board has warped', parts: { minutes: 2 } },
      { kind: 'job', at: 'no fuse in the lead to the pump', parts: { minutes: 20 } },
      { kind: 'job', at: 'The depth sounder shows two dashes', parts: { minutes: 60 } },
      { kind: 'job', at: 'Its clamp screws are stiff with corrosion', parts: { minutes: 5 } },
      { kind: 'job', at: 'The trailer coupling does not lock', parts: { zone: 'trailer', minutes: 40 } },
    ],
  },
];
