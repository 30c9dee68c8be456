import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'half past nine and raining',
    page: `well it's raining isn't it so I'm sat inside with my hood up talking to you it's drumming like peas on the roof um I might as well look for leaks hadn't I since it's doing the work for me right window one dry window two dry hatch dry oh hello there's a drip on my neck that's the handrail bolt second from the back so that bolt wants pulling and a smear of sealant and putting back twenty minutes once it stops if it stops the forecast says thursday the lady on the radio has a lovely voice she could tell me anything um the bilge has about an inch which it would have after last night I'll sponge it before I go the chain plates inside dry both sides and I'm that pleased because that was four weekends in the autumn the little heater is going it's a plant pot over a tea light it doesn't heat anything but it looks cosy my phone's on eleven percent quick then the sliding hatch rail has come off at the back on the left so the hatch jumps out I've got a wooden spoon shoved down the gap that's what's keeping it in and I stir the soup with the other one the rail needs its screws back longer ones probably and then the spoon can retire the loo's new the hoses are new I never want to talk about the loo again the masthead light is showing green on both sides no it isn't I was looking at the reflection the vhf aerial plug crackles when you touch it so cut that back and put a new plug on it half an hour with the small iron battery's twelve point one seven bit poor there's been no sun`,
    marks: [
      { kind: 'job', at: 'so that bolt wants pulling and a smear of sealant', parts: { minutes: 20 } },
      { kind: 'jury rig', at: "I've got a wooden spoon shoved down the gap", parts: {} },
      { kind: 'job', at: 'the rail needs its screws back', parts: {} },
      { kind: 'job', at: 'so cut that back and put a new plug on it', parts: { minutes: 30 } },
      { kind: 'reading', at: "battery's twelve point one seven", parts: {} },
    ],
  },
  {
    name: 'an open letter to my crew',
    page: `To whom it may concern (Hatty, Rufus, and the one who ate the flares instructions),

I am not cross. I'm only listing.

The boat went out on Saturday clean and came back on Sunday otherwise. I have swept, I've bailed, and I have retrieved a kipper from the sail bag.

The mainsail has a tear at the second batten, the length of my hand. Rufus put plasters on it. Actual sticking plasters, with bears. I admit they held all the way up the river. But the sail is going to the loft on Monday, and Rufus is carrying it.

The boathook: overboard. I'm told it was heroic. Buy another boathook.

The fuel tank was empty, that's been filled.

The cool box lid: snapped, but it's Hatty's cool box.

The clutch that holds the jib halyard lets it slip a hand's width every time there's a gust. That's not your doing, it's been coming on since last year; the cam is worn smooth. I'd like to swap the cam for a new one before the muster. I can do that alone, on a quiet evening.

Nobody need apologise about the paint on the bow. The quay had it coming.

I've been asked if next time we may go further. You may. It'd help if you could find your way back without telephoning me at the theatre.

The anchor warp was left in a heap, and when I shook it out I found a cut a third of the way through, some nine metres from the end. Cut it there, splice in the thimble afresh; twenty minutes of my life I should have spent on something nicer.

You were, I'm told, very happy. Good. That's what she's for.

Your loving skipper`,
    marks: [
      { kind: 'jury rig', at: 'Rufus put plasters on it', parts: {} },
      { kind: 'job', at: 'the sail is going to the loft on Monday', parts: { due: '2027-04-12' } },
      { kind: 'store', at: 'Buy another boathook', parts: {} },
      { kind: 'job', at: "I'd like to swap the cam for a new one", parts: { outing: 'muster' } },
      { kind: 'job', at: 'Cut it there, splice in the thimble afresh', parts: { minutes: 20 } },
    ],
  },
  {
    name: 'third person, of himself',
    page: `Notes from the yard, in which our hero does very little.

He arrived at ten, having promised eight. He greeted the boat. He ate a pear.

Our hero then ran a hand down the starboard topside and found it fair and shiny, because last month he'd spent three days and a great deal of language making it so. He stood back. He admired. A man with a dog admired too.

He climbed aboard. The washboards came out; the smell was of pencils and old rope, as it should be. He looked at the loose thread on the headlining and the loose thread looked away.

He tried the bilge pump, which has a walking-stick for a handle since the handle walked. It's a good stick; his uncle's. Even so he will order a handle from the maker and put the stick back in the hall, as his aunt has been asking.

He opened the locker to port. The catch came off in his fingers. He'll need two small screws and a sliver of wood in the holes, and it'll be as good as it ever was, which wasn't very.

He pondered whether to repaint the cockpit. He pondered until the wish passed.

He inspected the transom. The outboard clamps were frozen tight with salt: he heaved, and something in his back spoke. They're to be soaked tonight and greased tomorrow, else the motor will never come off again.

He noticed that swallows are building in the shed. He noticed a chandler's bill in his pocket, and put it back there.

He measured nothing. At one o'clock it was lunch, and the sun came out, and the boat next door fell slowly off its trestle. Nobody was hurt.`,
    marks: [
      { kind: 'jury rig', at: 'which has a walking-stick for a handle', parts: { fitting: 'pump' } },
      { kind: 'job', at: 'he will order a handle from the maker', parts: { fitting: 'pump' } },
      { kind: 'job', at: "He'll need two small screws and a sliver of wood", parts: {} },
      { kind: 'job', at: "They're to be soaked tonight and greased tomorrow", parts: { zone: 'transom' } },
    ],
  },
  {
    name: 'no full stops from the bakery',
    page: `I'm waiting for the second batch to prove so I've got exactly the time it takes um boat boat boat what was it I wanted the trailer first because I drove it home last night and there's a noise out of the left wheel like a coffee grinder so those bearings are shot I've ordered the set and I'll knock them in Sunday two hours with the cleaning no wait is it left or is it right it's left it's the kerb side and I bet that's been like that since the flood when we left it under water for two days that was silly um other than that it tows fine my van doesn't even notice it second thing the sail cover has shrunk or the boom's grown I can't get it to meet at the front there's a bit of blue rope that bridges the gap does me for now looks like a corset if somebody could let a panel in it my aunt's got the canvas left over from the chairs so I'll ask her to do that third thing is there a third thing oh yes the ice the water tank froze I thought it'd split and I filled it up and it hasn't so that's a present we'd got a bet on at work if I ever launch before May they're all against me so I'll launch on the thirtieth out of spite um the compass light flickers I hit it and it's fine I've been hitting it for nine years what about the chimney we've no chimney that's the other boat I dreamt about I keep dreaming about boats with chimneys right the dough's up`,
    marks: [
      {
        kind: 'job',
        at: "I've ordered the set and I'll knock them in Sunday",
        parts: { zone: 'trailer', minutes: 120 },
      },
      { kind: 'jury rig', at: "there's a bit of blue rope that bridges the gap", parts: {} },
      { kind: 'job', at: "so I'll ask her to do that", parts: {} },
    ],
  },
];
