import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'two of them at the kitchen table',
    page: `Bet: Is it recording? There's a red thing.
Alan: It's recording. Right. What did we say, coming home.
Bet: You said the boom.
Alan: The boom's fine. It was the vang, the block on the bottom of the vang, it came away in my hand. The cheek's split clean across.
Bet: So a new block.
Alan: A new block, yes. Five minutes once we've got one.
Bet: I said the toilet door.
Alan: It's a curtain, love.
Bet: Well, it comes off its hooks every time I breathe on it. I'll sew some tabs on.
Alan: That's yours, then. Write it down.
Bet: Tabs. And the stove took four matches.
Alan: It was the matches. They were damp. I had that burner to bits in March and it's burning blue.
Bet: It did burn blue, I'll give you that.
Alan: What else? Oh, the port winch. It turns both ways. It shouldn't turn both ways.
Bet: I thought that was clever.
Alan: It's the pawls, gummed up with old grease. I'll strip it, paraffin, light oil, back together. An hour, and I'll do it over a tray this time.
Bet: Because of the spring.
Alan: We don't talk about the spring.
Bet: The lifejackets I weighed on the kitchen scales. All three the same as last year, to the gram.
Alan: Good girl.
Bet: And you've got my tights round the water pump.
Alan: Ah. Yes. The strainer's got a hole in it and I didn't want muck in the works. They can stay there till the new strainer comes.
Bet: And you'll fit it.
Alan: And I'll fit it.
Bet: They were good tights.
Alan: Should we do the antifoul this year?
Bet: She's hardly been in. It's all still there, I rubbed it and it came off red.
Alan: Leave it, then. Next year.
Bet: My sister's asked us to the lake in August.
Alan: Your sister's got a jet ski.`,
    marks: [
      { kind: 'job', at: 'A new block, yes', parts: { minutes: 5 } },
      { kind: 'job', at: "I'll sew some tabs on", parts: {} },
      { kind: 'job', at: "I'll strip it, paraffin, light oil", parts: { zone: 'cockpit', minutes: 60 } },
      { kind: 'jury rig', at: "you've got my tights round the water pump", parts: {} },
      { kind: 'job', at: "And you'll fit it", parts: {} },
    ],
  },
  {
    name: 'in the car on the way home',
    page: `Okay, phone's on the dash, both hands on the wheel, officer. Thoughts from today before they fall out of my head.

Great sail. Really great. Reached all the way to the bridge and back, eleven miles, and nobody was sick. Passed a guy in a plywood thing he'd built himself, prettiest boat on the water.

So. Number one. When we came about, the jib car on the starboard track shot forward. The little plunger won't stay in its hole, spring's got no push left. I need to swap that out, I think the catalog has them as a kit. Ten minutes with a punch.

Two, the cooler slides. Not a boat problem.

Three. Coming in, we dropped the rudder blade and it came halfway down and floated back up. I had Dana hold it down with her foot, and then I tied it off to the cleat, so right now it's lashed down with a sail tie. Somebody remember that before we hit the ramp again. The downhaul is what broke, the line inside the head. So thread a new one, quarter-inch, and that'll be Saturday, I guess.

Four, the depth thing. Works. I take back what I said.

Five. Gas can vent is stuck, can looks like somebody sat on it. Five bucks for a can, I'll grab one. So, list: gas can, quarter-inch line, maybe fifteen feet.

Six. On the ramp I saw the hub on the passenger side had grease slung all over the inside of the wheel. That's a seal. New seal and I'll repack it while I'm in there, before we tow to the estuary thing. The other side was clean, I did both in the fall, so I don't know what that's about. Must've nicked it.

Seven, there's no seven. Oh, the mast raising pole worked slick. Best forty dollars I ever spent.

If we ever trailer to the coast I'd want a bigger truck. Exit's coming up. Bye.`,
    marks: [
      { kind: 'job', at: 'I need to swap that out', parts: { minutes: 10 } },
      { kind: 'jury rig', at: "right now it's lashed down with a sail tie", parts: { zone: 'transom' } },
      { kind: 'job', at: 'So thread a new one', parts: { zone: 'transom', due: '2027-04-10' } },
      { kind: 'store', at: 'list: gas can', parts: {} },
      { kind: 'store', at: 'quarter-inch line', parts: {} },
      { kind: 'job', at: "New seal and I'll repack it", parts: { zone: 'trailer', outing: 'estuary' } },
    ],
  },
  {
    name: 'from a warmer country',
    page: `Hello friends, here is Paloma with the small boat. Today I don't sail because of the wind, so I look at all the things with a coffee in my hand.

I start with the good news. The hull is clean, the paint that we put in March is holding very well. The sail also, it has no holes, the sailmaker has revised it and he said me five more years.

Now the less good. In the cleat of the mainsail the rope escapes. You pull, you let go, and it goes, zzzip. The teeth are round like my grandmother's. It is necessary to change the jaws, they sell them alone, without the base, so two screws and it's done.

The ladder of the stern has one step that gives turns when you put the foot. I almost went to the water. For the moment I have put two cable ties very tight and it doesn't turn so much. But I have to take it to Ramón, who has a workshop, that he welds it for me.

The sink. It smells. I put vinegar and now it doesn't smell.

The light of the compass I never use. I don't know even if it works.

Under the mast, in the cabin, the post has a crack, fine like a hair. I have drawn a pencil line on the end of it in October and it has not grown, so we let it be.

The cover for the sun has lost the seam on the one side, the thread is burned, you touch it and it becomes powder. I will pass it again with the machine of my mother in law, with the good thread, the one for outside. This week.

And the anchor rope is hard like a stick, it doesn't enter in the box. Some say to wash it in the bath with softener. I am going to try this tonight, if my husband doesn't see me.

To buy: thread of polyester, jaws for the cleat. Kisses.`,
    marks: [
      { kind: 'job', at: 'It is necessary to change the jaws', parts: {} },
      { kind: 'jury rig', at: 'I have put two cable ties very tight', parts: { zone: 'transom' } },
      { kind: 'job', at: 'I have to take it to Ramón', parts: {} },
      { kind: 'job', at: 'I will pass it again with the machine', parts: {} },
      { kind: 'job', at: 'wash it in the bath with softener', parts: {} },
      { kind: 'store', at: 'thread of polyester', parts: {} },
      { kind: 'store', at: 'jaws for the cleat. Kisses', parts: {} },
    ],
  },
  {
    name: 'log after a blowy day',
    page: `Sat. 0940 launched, 1610 recovered. W 4 to 5, gusting more. Crew: self, Hamish, the dog.

0940 Slip greasy. Trailer ran back sweetly. Bearings barely warm (repacked Jan).

1015 Reefed at the buoy. Reef pulled down clean, new line is a joy.

1050 Hamish leaned on port guardwire and went over it up to his waist. Wire hasn't broken, the lashing at the aft end has, rotted through by the sun. Tied up on the spot with a length of flag halyard. Both ends to be lashed afresh in proper cord, ten minutes a side, before anyone leans on it again.

1130 Hove to for soup. She lies quieter than the old boat ever did.

1215 Main halyard slipped a hand's breadth through the clutch, twice. Cam has no bite left. New clutch not cheap, forty-odd. Turned up the halyard on the winch and left it there. Replacement clutch to go on at the next opportunity, four bolts from below.

1300 Anchored behind the island. Held first time. Rain.

1345 Rain coming in round the mast boot, steady drip on the chart. Boot has shrunk away on the fore side, one can see sky. Old boot off, new one on when the mast is next lowered.

1420 Sunshine. Hamish asleep. Considered the price of a spray hood; considered it no further.

1500 Beat home. Met a school of forty juniors going every which way.

1610 Outboard overheats at anything above tickover, tell-tale a mere dribble. Suspect the impeller, it is four years old. Change same, 45 minutes, and flush it in the dustbin after.

1640 Hosed down. Washed brake drums. Battery 12.4 after lamps on all afternoon.

Remarks: forestay perhaps a shade slack. Will look at it under sail another day. If Hamish comes again, stronger guardwires altogether.`,
    marks: [
      { kind: 'jury rig', at: 'Tied up on the spot with a length of flag halyard', parts: {} },
      { kind: 'job', at: 'Both ends to be lashed afresh', parts: {} },
      { kind: 'job', at: 'Replacement clutch to go on', parts: {} },
      { kind: 'job', at: 'Old boot off, new one on', parts: { setUps: { mast: 'down' } } },
      { kind: 'job', at: 'Change same, 45 minutes', parts: { minutes: 45 } },
      { kind: 'reading', at: 'Battery 12.4', parts: {} },
    ],
  },
];
