import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'grandad and the girl with the phone',
    page: `Okay so it's me, Grandad's under the boat and I'm holding the phone, he's going to shout and I'm going to say it.

He says the bottom's not bad. He says there's a barnacle. He's keeping the barnacle, apparently.

He says the keel slot, where the board goes up, the rubber flaps have come unstuck on one side and they're hanging down like a tongue. They want gluing back. He says he'd need the boat lifted a bit, and Uncle Rob, because you can't hold them and press at the same time. Say an hour.

Now he's telling me about a boat he had in nineteen seventy something with no board at all. I'm not typing that bit.

He's coming out. He's stuck. He's out.

Back of the boat. The two drain flaps, one shuts, one doesn't shut, it's gone all curly. Water comes in when he sits there. That's why his trousers. He says new flap, four screws, he'll do it himself before tea if I find him the screwdriver, and I've found it, but he's sat down now.

The rudder's fine, he did the rudder with me at half term. I did the third coat!

The engine he says runs like a watch but the handle grip's all sticky and black comes off on your hand. Talc. That's not a job, that's talc.

Inside. The torch doesn't torch. The radio does. The step squeaks, he likes it because then he knows I'm up. There's a bucket under the mast hole catching drips and it's been there since February so he says put the bucket down as well. And the proper thing for it is taking the collar off and putting goo round it and he'll do that when the mast's off at the end of the month.

The trailer number plate's cracked right through the middle and you get stopped for that. New plate from the motor shop, Friday.

He says is there any cake.`,
    marks: [
      { kind: 'job', at: 'They want gluing back', parts: { minutes: 60, hands: 2 } },
      { kind: 'job', at: 'He says new flap, four screws', parts: { zone: 'transom' } },
      { kind: 'jury rig', at: "There's a bucket under the mast hole catching drips", parts: {} },
      { kind: 'job', at: 'taking the collar off and putting goo round it', parts: { setUps: { mast: 'down' } } },
      { kind: 'job', at: 'New plate from the motor shop, Friday', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'the instructor, to his evening class',
    page: `Gather in, gather in. You at the back, mind the shroud. Tonight is about looking. Most people walk round a boat and see a boat. I want you to see where the load goes.

So start at the top of a shroud and follow it down. Wire, terminal, pin, plate, bolts, hull. If any of those moves when it shouldn't, something will let go, usually in front of an audience. Put your thumb on this bottle screw. There should be a bit of wire through the holes to stop it undoing itself. On this side there is. On the other side, go on, look. There isn't, is there? So that's one for me: wire to go through the starboard one. It'll take me two minutes after you've gone home.

Now, rust. A little brown stain is only a stain. I polish it off and see whether it returns. These came off in autumn and haven't come back, so I'm happy.

Listen to a block. Spin it. Hear that one? Sweet. Now this one. You can hear it grind. Salt, or the bearing's flat. I've rinsed it twice, so it's the bearing, and I shall be putting a different block there before the season starts.

Rope. Bend it sharp and look between the strands. If you see powder, that's the rope's way of saying goodbye. You would then replace it. This one, as it happens, is new.

Somebody asked about tape. Tape is not a repair. Having said which, observe this tape, round the end of my spreader, put on by me, in a hurry, because the end cap flew off over Whitsun. I've a cap on order and it'll go on the moment it arrives, and you may all stop smiling.

Fenders in the rain next week, and knots. If you ever buy a boat, take a friend who doesn't like you.`,
    marks: [
      { kind: 'job', at: 'wire to go through the starboard one', parts: { minutes: 2 } },
      { kind: 'job', at: 'I shall be putting a different block there', parts: {} },
      { kind: 'jury rig', at: 'observe this tape, round the end of my spreader', parts: { zone: 'rig' } },
      { kind: 'job', at: "I've a cap on order and it'll go on the moment it arrives", parts: { zone: 'rig' } },
    ],
  },
  {
    name: 'email to the other half of the boat',
    page: `Hi Marty,

Your two weeks start Saturday so here's the state of the union. I know you'll read this on the dock.

What I took care of: new impeller, new fuel filter, waxed her, replaced the port running light, fixed the head door. You owe me $84.50 and a sandwich.

What I didn't get to:

The traveler car is missing about half its balls. They're in the lake. It still slides but it sulks under load. I bought the little bag of balls, it's in the galley drawer, so all you have to do is load them with a straw per the sheet. Half an hour, and put a towel down.

Starboard cockpit drain is slow. I think there's a wasp nest or a sock in it. Run a hose up it from outside.

Companionway slider has lost its stop, so it'll come right off in your hands and go over the side. I put a C-clamp on the rail as a stop. Don't take off the clamp! There's a piece of teak that wants cutting to fit and screwing down, and you have the table saw.

The swing keel cable. I greased it. I've heard people say five years and people say ten, ours is four, looks great, no meat hooks.

Nav lights work. Bow light's dim but it's a dim kind of light.

Mainsail: third slug from the top has torn off its webbing. You can sail with it but it'll take the next one with it. Sew it back on. Needle and waxed thread are in the ditty bag. Or send it out, I'd split it with you.

The trailer is due its state inspection by May 15. I can't, I'm out of state that week for the baby, so that's you.

Oh, and the kids lost the winch handle overboard. We need one winch handle. Locking kind.

Weather looks dreamy. If it blows over twenty just stay in and play cards.

Lou`,
    marks: [
      { kind: 'job', at: 'all you have to do is load them with a straw', parts: { minutes: 30 } },
      { kind: 'job', at: 'Run a hose up it from outside', parts: { zone: 'cockpit' } },
      { kind: 'jury rig', at: 'I put a C-clamp on the rail as a stop', parts: {} },
      { kind: 'job', at: 'a piece of teak that wants cutting to fit', parts: {} },
      { kind: 'job', at: 'Sew it back on', parts: {} },
      { kind: 'job', at: 'The trailer is due its state inspection', parts: { zone: 'trailer', due: '2027-05-15' } },
      { kind: 'store', at: 'one winch handle', parts: {} },
    ],
  },
  {
    name: 'a soft day, remembering',
    page: `It's a soft sort of a day and I've the kettle on in the cabin, so I'll tell you how she is and then I'll tell you how she was.

How she is. She's tight. Not a drop in the bilge since the garboard was done, and that's three winters ago. There's men would sell their mothers for a dry bilge.

The stove sulks. You'd pump it and pump it and it gives you a yellow flame and a black kettle. It's only the leather in the pump has dried up, so a drop of oil, and if that doesn't wake it, a new leather. I'll see to it tonight, for I'm not drinking cold tea.

The forehatch has a lean on it. One of the hinges, the screws have no meat to hold in. I've matchsticks in the holes this long while with a bit of glue on them, and you'd be surprised. But matchsticks is matchsticks. I ought to graft in a piece of hardwood there and screw to that, and I've a nice offcut from the church pews.

The mast has its shakes, the same as myself. My father filled them with tallow and so do I, and I did it at Easter Monday.

The peak halyard's gone glassy on me. You can't get a grip of it in the wet. I'm thinking I'll put on the new one that's been in the bag since Christmas, and not be keeping it for the wake.

The moon comes up between the islands here. My brother proposed marriage in this boat and was refused.

Ah, and the ring bolt at the stern, where the outboard's safety chain goes. I took hold of it and it came away in my hand, with the wood round it like porridge. There's a job. Cut back to the good, a graving piece let in, and a through bolt this time. Call it two days, for I'll not be hurried.

That's the rain on now.`,
    marks: [
      { kind: 'job', at: 'so a drop of oil', parts: { zone: 'cabin' } },
      { kind: 'jury rig', at: "I've matchsticks in the holes this long while", parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'I ought to graft in a piece of hardwood', parts: { zone: 'foredeck' } },
      { kind: 'job', at: "I'll put on the new one that's been in the bag", parts: {} },
      { kind: 'job', at: 'Cut back to the good, a graving piece let in', parts: { zone: 'transom' } },
    ],
  },
];
