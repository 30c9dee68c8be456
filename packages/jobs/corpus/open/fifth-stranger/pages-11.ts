import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'driving home dictating',
    page: `okay hands free let's see if this works I'm on the bypass so about the boat today I did four hours and I got the forehatch done, off, cleaned, new seal, back on, that's finished, and I did the nav light, finished, and I looked at the rest. Deck to hull joint on the port side forward of the shroud there's a dark line about a hand long and if you squirt water at it it comes out in the locker so there it is, it needs raking out and running full of the thin penetrating stuff that creeps, and you do that three times an hour apart, on a dry day, not much actual work maybe half an hour, indicator, sorry, and in the meantime I've smeared a bit of putty along it which my dad used on the greenhouse and it's ugly but the locker's dry. I don't believe in that joint being bolted every four inches by the way like the man said. Nobody bolts every four inches. Then um the gooseneck's tight, the boom's straight, the reefing hooks I squeezed up a bit with pliers and they're better. One thing that I keep going round and round on is whether to change the rubber blocks under the mast tabernacle, they're squashed, but they were squashed in the photo from 2009, so I think they're just that shape. Tabernacle bolt though. It's M12 and somebody has used a bit of threaded rod from a shelf. Went up and down on it all last year. A proper bolt with a plain shank, goes in before we lift the mast, five minutes, I bought it today it's rolling about in the boot I can hear it. Oh there's a queue. There's always a queue. I could murder a pie`,
    marks: [
      { kind: 'job', at: 'it needs raking out and running full', parts: { minutes: 30 } },
      { kind: 'jury rig', at: "I've smeared a bit of putty along it", parts: {} },
      { kind: 'jury rig', at: 'somebody has used a bit of threaded rod from a shelf', parts: {} },
      { kind: 'job', at: 'A proper bolt with a plain shank', parts: { minutes: 5 } },
    ],
  },
  {
    name: 'the treasurer minutes',
    page: `BOAT GROUP, notes of what was looked at, 8 April. Present: four, plus a baby.

1. Matters arising
   - the bilge switch: reported working. Applause.
   - the torn sail bag: mended by Una. Thanks to Una.
   - the missing spanner: was in Ivo's coat.

2. Port jib cleat
   - jaws worn smooth, lets go in a puff. We take a turn round the winch and catch the tail under a peg pushed into the coaming slot. Works if someone remembers.
   - Ivo to fit new jaws. 20 minutes. Agreed by all, Ivo absent.

3. Cockpit cushions
   - proposal to buy. Lost by three to one. The baby abstained.

4. Trailer
   - one rear light lens broken, red tape over it. Passed unnoticed on two journeys.
   - nevertheless not legal. Una has found a lens for six pounds; she will screw it on Saturday.
   - tyres: seen, good. Nuts: checked.

5. Hull
   - a scratch on the left cheek, from a pontoon at the regatta. Doesn't go through the gel. Left as is.
   - the drain plug's thread has begun to strip: new plug AND new flange, bedded in sealant, one hour. She must not go afloat on the old one.

6. Rig
   - deferred till the mast is down, then all of it together, as always. This includes nothing new.
   - spare shroud bought, coiled, labelled.

7. Battery
   - 12.61 V. Minuted.

8. Paint
   - do we, don't we? Not this year.

9. Purchases approved: one set cleat jaws; one drain plug and flange. Purchase not approved: Ivo's paddleboard.

10. Any other business
   - there's said to be a better launching place by the old brickworks. Someone ought to know more.
   - the baby ate a washer; since found in the pram.

Next meeting: in the pub.`,
    marks: [
      { kind: 'jury rig', at: 'catch the tail under a peg pushed into the coaming slot', parts: {} },
      { kind: 'job', at: 'Ivo to fit new jaws', parts: { minutes: 20 } },
      { kind: 'jury rig', at: 'red tape over it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'she will screw it on Saturday', parts: { zone: 'trailer', consequence: 'unlawful' } },
      { kind: 'job', at: 'new plug AND new flange', parts: { minutes: 60 } },
      { kind: 'reading', at: '12.61 V', parts: {} },
      { kind: 'store', at: 'one set cleat jaws', parts: {} },
      { kind: 'store', at: 'one drain plug and flange', parts: {} },
    ],
  },
  {
    name: 'father to son',
    page: `Listen, since you're having her for the season, I'd sooner you heard it all from me than found it.

She's dry, she's straight, and she's paid for. Your grandfather said never buy a boat that's two of those.

Before you rig her, look at the shackle on the mainsheet horse. I put a carabiner there last summer when the real one went over the side. It's from the climbing shop, it's rated, it's held every gybe since, but the gate could open on you one day. Put in a bow shackle, eight millimetre, wired shut. It's two minutes.

The rigging screws I've greased. The sheave I've oiled. You needn't look up there at all this year.

The trick with the outboard is half choke, count to five, then no choke. If it won't go, wait, and don't swear, it hears you. Its shear pin was renewed in the autumn. But there's no spare taped inside the cowl, as there always was, because I used it. Get two and tape them in there.

You'll want to know about the port bunk. The front board has split along the grain and I've got a sash clamp across it, you'll bark your knee on it, everyone does. It's got to be glued, proper joinery glue, and then the clamp stays on for a night and after that it comes off for good. Half an hour. I never had a night when someone wasn't sleeping there.

As regards the depth gauge, it reads half a metre too much. I've always just known that. Your mother has always just not known that. It's your choice.

I'd have liked one more summer in her myself. But the hip is what it is, and the doctor's a man with no conversation. Take a photograph now and then.`,
    marks: [
      { kind: 'jury rig', at: 'I put a carabiner there last summer', parts: {} },
      { kind: 'job', at: 'Put in a bow shackle, eight millimetre', parts: { minutes: 2 } },
      { kind: 'job', at: 'Get two and tape them in there', parts: {} },
      { kind: 'jury rig', at: "I've got a sash clamp across it", parts: { zone: 'cabin' } },
      { kind: 'job', at: "It's got to be glued, proper joinery glue", parts: { zone: 'cabin', minutes: 30 } },
    ],
  },
  {
    name: 'a morning with the carpenter',
    page: `What did I do this morning? I cut out a rotten bit, and I put in a sound bit. That's all I've done since I was seventeen.

The rotten bit was in the bridge deck, about as big as a slice of bread, and the new piece is scarfed and glued in, and clamped up under a brick. By Friday it'll be ready to fair off and prime. That's an hour, not more.

There wasn't any more of it. I went over the rest with the handle of the chisel, tap, tap, tap, and you hear it at once when it's punky. It all rang. The beams too.

The tillerhead's another thing. Where it goes through the cheeks it has shrunk, and it waggles. I've driven a couple of cedar shims in each side, dry, which'll see us up and down the pond. When I've the time I'll make new cheeks, out of iroko, and through-bolt them with tubes. A day's work, call it six hours; it'll want the rudder off and on the bench.

Folk tell me you can fill anything with epoxy and flour. You can. You can fill a tooth with chewing gum.

I've mended this boat three times. The first time was after a lorry; new planks and half a transom, and the insurance man shook my hand. The second time was worms. That repair's sound.

The lid of the box seat I made too tight, with the damp in the wood. It'll ease by June by itself, so I'm not planing it just because the doctor can't get at his gin.

He came by, the doctor, and asked what he could do. I said go and buy me a litre of the grey primer and six bronze bolts, three-eighths, and don't let them sell you brass.

Apple blossom's out early. That's frost to come, you mark me.`,
    marks: [
      { kind: 'job', at: "By Friday it'll be ready to fair off and prime", parts: { minutes: 60 } },
      { kind: 'jury rig', at: "I've driven a couple of cedar shims in each side", parts: {} },
      { kind: 'job', at: "I'll make new cheeks, out of iroko", parts: { minutes: 360 } },
      { kind: 'store', at: 'a litre of the grey primer', parts: {} },
      { kind: 'store', at: 'six bronze bolts', parts: {} },
    ],
  },
];
