import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'in the queue at the tip',
    page: `I'm in the queue at the tip so I may as well do the boat, got a boot full of old carpet from under her, that's the first thing that's finished with, okay the trailer winch I've looked at and it's all right, the pawl clicks, it's the strap hook where the safety latch has gone so it can jump off the eye and I've put a turn of tape over the mouth of the hook when I winch her so it can't, that's not right is it, it wants a new hook on the strap, sewn not knotted, I'd give that to the saddler he charges a fiver. Then what was it. Oh the prop post. One of the four props has a foot that spins. But it's always had a foot that spins. The guy in front is throwing out a perfectly good canoe paddle would you believe. Hang on. I've got it, I've got the paddle, so that's the paddle off the list, the one we lost off the back last summer. Right. Er the case, the capping on the board case has lifted at the front where people put their feet, needs unscrewing and gluing down, resin not wood glue as it's always wet there, thirty minutes and I've got to keep those feet off it for a day so don't let me do it on a Friday. The pendant cleat next to it I changed in the winter. I know a woman who did her capping in teak and it cost more than the boat. Battery was twelve point three three yesterday after tea, nothing on. The antifoul tin's half full and it's the right stuff still, I shook it, so no need to get any. Oh he's waving me on. What do they want with carpet, general waste or`,
    marks: [
      { kind: 'jury rig', at: "I've put a turn of tape over the mouth of the hook", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'it wants a new hook on the strap', parts: {} },
      { kind: 'job', at: 'needs unscrewing and gluing down', parts: { zone: 'case', minutes: 30 } },
      { kind: 'reading', at: 'twelve point three three', parts: {} },
    ],
  },
  {
    name: 'two cups of coffee in',
    page: `okay so morning all this is for the boat book and I'm very awake. mast first because that is the order. I had a dream about the mast actually. no. mast. the port shroud turnbuckle has no split pins in it, neither of them, somebody put a bit of string through the holes which is cute, I think it was me in the dark last autumn, and the string is still through, but string. so pins, two, tape over them, two minutes, and do that before you tension anything. starboard one has its pins. the flag halyard cleat fell off and I've screwed it back on already this morning before coffee even. so then the boom, the boom end cap is plastic and it's cracked but only cosmetically and they don't make them any more I asked three places, one man laughed. leave it. then the sail, the main, top batten pocket has blown open along the end and the batten fires out like an arrow when you tack, I've stopped it with a safety pin and a prayer, it wants resewing by hand with the palm and the waxed thread, twenty minutes, and in the evening with a film. I once sewed a whole sail to my trousers. um. cockpit drain fine. bung fine. locker fine. I had this idea we could put a shower in, a bag you hang up, in some year when we're rich. the thing nobody's mentioned is the winch post rubber which is perished and the bow has started to get a dimple, so a new rubber block on there, I can cut it out of that dock fender we found, a quarter of an hour. oh and if anyone sees tinned milk we're out, and thread, waxed thread. and I'm out of coffee`,
    marks: [
      { kind: 'jury rig', at: 'the string is still through', parts: { zone: 'rig' } },
      { kind: 'job', at: 'so pins, two, tape over them', parts: { minutes: 2 } },
      { kind: 'jury rig', at: "I've stopped it with a safety pin and a prayer", parts: {} },
      { kind: 'job', at: 'it wants resewing by hand', parts: { minutes: 20 } },
      { kind: 'job', at: 'so a new rubber block on there', parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'store', at: 'tinned milk', parts: {} },
      { kind: 'store', at: 'and thread, waxed thread', parts: {} },
    ],
  },
  {
    name: 'what the resin man said',
    page: `There's a fellow two sheds along who used to lay up bathtubs, and whatever he doesn't know about resin can be written on a stamp. I brought him a bit of our deck edge in a matchbox. He smelt it, bit it, and said it was cooked too cold. "You can't hurry it," he said, "and you can't drop it below ten and you can't go back." It seems that if a mix gets chilled in its first night it never comes right, not if you wait a year.

That explains the toe rail end on the starboard side, which I bonded on in November like a fool. You can twist it with your hand. I've wound packing tape about it, six turns, simply so that it doesn't catch anybody's shin. He says scrape it back to bright laminate and start over, and put a hot water bottle on it. So I'll do precisely that, in the first warm week. An hour and a half, and one hot water bottle.

What I bonded in June is as hard as a church. The mast step went on in June. So did the mooring cleat.

He wouldn't look at my chain plates. He says steel is another man's trouble.

We then got to talking of tillers, as one does, and he believes that a laminated one will outlast two boats if you keep the sun off it. Ours wants only its varnish: it's gone dull and thirsty on top. A rub down and two coats, one evening apiece.

I've bought the hardener, I've bought the gloves, I've still to get a stirring stick, which is to say a lolly.

There was some talk of his helping me with the keel slot. But he's off to his sister's caravan, and anyway the slot's all right.`,
    marks: [
      { kind: 'jury rig', at: "I've wound packing tape about it", parts: {} },
      { kind: 'job', at: 'He says scrape it back to bright laminate', parts: { minutes: 90 } },
      { kind: 'job', at: 'A rub down and two coats', parts: { fitting: 'tiller' } },
      { kind: 'store', at: "I've still to get a stirring stick", parts: {} },
    ],
  },
  {
    name: 'miss at the desk',
    page: `Dear all. Herewith my notes, which I dictated to my sister while lying in the bilge. Any errors are hers.

I went down to see about the drip. The drip turned out to be three drips.

The first was condensation. One opens the hatch and it goes away.

The second came down the inside of the mast post from the deck collar. I've tied a scarf round the post; it soaks up the water and directs the rest into a jam tin, which is emptied by whoever is nearest. The collar must be lifted once the mast is down, the old putty scraped out, and new tape laid under it. Two people for an hour. I would very much like that to have happened before our weekend with the club.

The third was the water bottle.

With that settled I considered the rest. The berth lights are both as they should be. There's a patch of black mould behind the port cushion, and I've scrubbed it with vinegar and it's gone. The clock has stopped; new cell, no urgency, but I do look at it forty times a day. My sister observes that I might look at my wrist.

The bilge pump's float switch sticks in the up position, so that the pump would run all night and flatten the battery. I've unplugged the switch, and we work it from the panel by hand, which suffices while she is ashore. I'll take the switch out and wash it in hot water and, if that fails, there's to be a new one. Allow twenty minutes.

Finally. The paint we used in '24 for the cabin sides was much admired by the lady from the muster committee. I record this for its own sake.`,
    marks: [
      { kind: 'jury rig', at: "I've tied a scarf round the post", parts: { zone: 'cabin' } },
      {
        kind: 'job',
        at: 'The collar must be lifted once the mast is down',
        parts: { minutes: 60, hands: 2, setUps: { mast: 'down' }, outing: 'muster' },
      },
      { kind: 'job', at: 'The clock has stopped; new cell', parts: {} },
      { kind: 'jury rig', at: "I've unplugged the switch, and we work it from the panel by hand", parts: {} },
      { kind: 'job', at: "I'll take the switch out and wash it", parts: { minutes: 20 } },
    ],
  },
];
