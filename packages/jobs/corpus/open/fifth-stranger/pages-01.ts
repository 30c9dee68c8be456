import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'glue weather',
    page: `so this is all about glue today because it's finally got warm enough or nearly they say twelve degrees on the tin and people read that as twelve in the sun at dinner time but it means twelve all night as well that's what catches folk out I had a mate glued a whole stem in October and it was like toffee at new year he had to scrape the lot out anyway the rubbing strake on the right hand side has sprung off for about two foot behind the shroud and I've run a sail tie right round the boat to hold it in while she sits here looks like a parcel that wants doing with thickened epoxy and every clamp I own call it an hour and then leave it two days and not go poking it I always poke it the strip on the other side I glued in the year of the big flood and it's never moved so I know the way works you wipe it you wet both faces you wait till it goes sticky and then you squeeze but not too hard or you starve the joint the coaming was the same job and that's done and varnished and lovely now the cabin step I stood on it and it gave a sort of sigh one of the dowels has let go so while I've a pot mixed I'll run some glue in there and all ten minutes the sole boards are all right they've been all right since my brother in law cut them and he charged me a crate of pears the tiller isn't perfect there's a dark line in it but it was there when I bought her and I've leant my whole weight on it so no and then the little bung in the forward locker it's a wine cork at the minute because the proper one went down the slip and into the water plop I'll get a rubber one twenty two mil next time I'm passing the shop and push it in and that'll be that`,
    marks: [
      { kind: 'jury rig', at: "I've run a sail tie right round the boat to hold it in", parts: {} },
      {
        kind: 'job',
        at: 'that wants doing with thickened epoxy and every clamp I own',
        parts: { zone: 'topsides', minutes: 60 },
      },
      { kind: 'job', at: "I'll run some glue in there and all", parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'jury rig', at: "it's a wine cork at the minute", parts: {} },
      { kind: 'job', at: "I'll get a rubber one twenty two mil", parts: {} },
    ],
  },
  {
    name: 'everything aloft at once',
    page: `People ask why I save up the mast jobs. Because lowering the thing takes two of us an hour, and putting it back takes two of us an hour and a quarrel. So nothing gets done up there singly. There's a list inside the locker lid, in pencil, and when the list is long enough I ring Osbert.

Osbert is coming on Saturday. With the mast down I'll press the old pin out of the masthead sheave, which has been screeching since last summer, and put the new bronze one in; forty minutes, since I've got the proper drift now. The burgee halyard is chafed to a thread where it passes the spreader, so a fresh one gets rove at the same time. Five minutes.

The port cap shroud I replaced two winters ago, along with both lowers. People said do the lot. I didn't do the lot, and the starboard ones have been measured each spring since and show no broken strands. I see no call to touch them.

The spreader end on that side is another tale. Its plastic cap split in the February gale, and there's half a tennis ball over it, held with a cable tie, to save the jib. It has done one trip like that and I was laughed at by a child. I have the new cap in my coat and shall fit it on Saturday as well.

Osbert thinks the whole mast should be repainted. Osbert thinks a great many things. He once repainted his own with house gloss, and it came off in sheets like a sunburn.

Once it's up again I must set the rigging tension with the borrowed gauge. Last year I did it by ear, and it held tune all season, but I'd rather know. Allow half an hour.

Then, if the wind is kind, a sail. I've promised my granddaughter the tiller as far as the second mark.`,
    marks: [
      {
        kind: 'job',
        at: "I'll press the old pin out of the masthead sheave",
        parts: { fitting: 'sheave', minutes: 40, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'so a fresh one gets rove at the same time', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'jury rig', at: "there's half a tennis ball over it, held with a cable tie", parts: {} },
      { kind: 'job', at: 'I have the new cap in my coat and shall fit it', parts: {} },
      { kind: 'job', at: 'I must set the rigging tension', parts: { minutes: 30, setUps: { mast: 'up' } } },
    ],
  },
  {
    name: 'messages from the yard',
    page: `At the boat. Signal is rubbish so sending in bits

1) found the smell. it was a lemon. behind the battery. since september probably

2) battery 12.6 btw, been off charge four days, so it's fine, stop nagging about it

3) bilge pump: works, but the outlet hose has popped off the skin fitting. I jammed it back on and whipped it with string so I could try it, and it's staying like that tonight. wants a proper clip. 5 mins

4) you know the cabin window you worried about? dry as toast. hose on it ten whole minutes

5) ok the port winch. makes a noise like a pepper mill. I had a look inside and there's no grease left, only a kind of black jam. strip it and clean it and put fresh in, 40 mins, I'll do it sunday at the kitchen table if you put newspaper down

6) and before you ask no I have NOT bought the folding anchor. I looked at it. I held it. I put it back

7) Pa says swap the jib sheets end for end. did that last month Pa!

8) the trailer light board: number plate is held on with a bulldog clip off my desk. we drove here like that. two new screws would do it and they're in the jar at home

9) hull's cleaner than I thought. that streak by the drain came off with a wet rag

10) someone in the next berth keeps his mast up with what looks like baling twine, you'd have a fit. not ours, not our problem

11) what was it we said about the cushions? foam or no foam? I forget

12) oh and shopping: hose clips 20 mm, a tub of winch grease. that's all

13) raining now. pub. bring the dog`,
    marks: [
      { kind: 'reading', at: 'battery 12.6 btw', parts: {} },
      { kind: 'jury rig', at: 'I jammed it back on and whipped it with string', parts: {} },
      { kind: 'job', at: 'wants a proper clip', parts: { minutes: 5 } },
      { kind: 'job', at: 'strip it and clean it and put fresh in', parts: { zone: 'cockpit', minutes: 40 } },
      { kind: 'jury rig', at: 'number plate is held on with a bulldog clip', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'two new screws would do it', parts: {} },
      { kind: 'store', at: 'hose clips 20 mm', parts: {} },
      { kind: 'store', at: 'a tub of winch grease', parts: {} },
    ],
  },
  {
    name: 'the lesson of the locker',
    page: `I'll tell you about locker lids, since you're apprenticed to me whether you like it or not. A lid leaks for one of three reasons. Either the seal has gone flat, or the drain channel is blocked, or the hinge has lifted and the lid sits crooked. You find out which before you buy anything. You chalk the seal, you shut the lid, and you look where the chalk went. Simple. My old man taught me that on a fishing smack with no seals at all.

Now ours, on the left. I chalked it this morning. Nothing at all along the back edge, so there's your crook: the hinge screws have pulled. What you do is drill out the holes, fill them with hard resin, let it go off overnight, and drill again for the same screws. An hour and a half over two days. I've been keeping that lid down with a bucket full of chain standing on it, which is no way to live when you want your sandwiches.

The right hand one I did exactly so three years back. Not a drop since.

What else. The drain in the cockpit floor runs slow, but it always ran slow, it's the shape of it. Leave that be. The compass light doesn't come on. I traced it with the meter and the fault is in the switch, so a new switch, and mind you disconnect first; quarter of an hour. Some would run a fresh cable as well. Why? There's nothing wrong with the cable.

The pintles I looked at, and the split pin's missing on the top one. Missing! There's a bent nail in there which I put myself, to get her up the slip without losing the rudder. Don't you ever go out on a bent nail. Stainless pin, one minute, before she's launched.

And then you can put the kettle on and tell me about this girl.`,
    marks: [
      { kind: 'job', at: 'What you do is drill out the holes', parts: { minutes: 90 } },
      {
        kind: 'jury rig',
        at: "I've been keeping that lid down with a bucket full of chain",
        parts: { zone: 'cockpit' },
      },
      { kind: 'job', at: 'so a new switch, and mind you disconnect', parts: { minutes: 15 } },
      { kind: 'jury rig', at: "There's a bent nail in there which I put myself", parts: { zone: 'transom' } },
      { kind: 'job', at: 'Stainless pin, one minute', parts: { minutes: 1 } },
    ],
  },
];
