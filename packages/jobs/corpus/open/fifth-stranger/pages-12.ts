import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'with a mouthful of screws',
    page: `mm hang on I'll take the screws out my mouth, there, so I'm refitting the coaming and I've got my phone propped in the winch and it's going well I'd say two more screws and that's coaming over and done with after three weekends I never want to see it again. next to it here is the winch pad and I notice now I'm lying here it's not sitting flat the wood under it has gone black so that when the coaming's on I'll have to lift the winch and let in a new pad, teak if I've got it, oak if I haven't, and bed it, two hours. why did I lie down. the winch on the other side is on a plastic pad and can't rot which is a thought. the bilge from here looks alright. I can see the pump and the pump's hose going up nicely like it should since we moved it. what I can also see is the steering compass cable coming out of the bulkhead through a hole with no gland in it just a twist of rag stuffed round it, that was me, I ran out of glands, so a gland, thirteen mil, quarter of an hour because you have to undo the plug and it's got nine wires in it or whatever and I always get the green ones mixed. did I tell you he's selling the house. he is. they're going to live on a farm with llamas. now the last screw doesn't bite, no, doesn't bite, right, so that one wants a dowel, I've got dowel at home, glue it and drill it tomorrow and put the last screw in, so it's not over and done with is it I spoke too soon. typical. ten minutes. it holds with the others it's just I'd know`,
    marks: [
      { kind: 'job', at: "I'll have to lift the winch and let in a new pad", parts: { minutes: 120 } },
      { kind: 'jury rig', at: 'just a twist of rag stuffed round it', parts: {} },
      { kind: 'job', at: 'so a gland, thirteen mil', parts: { minutes: 15 } },
      { kind: 'job', at: 'so that one wants a dowel', parts: { minutes: 10 } },
    ],
  },
  {
    name: 'the long weekend plan spoken',
    page: `So Friday I'm off and Saturday I'm off and Sunday it's lambing so let me think, Friday is going to be dry they say eleven degrees well that's no good for epoxy is it I want fifteen so the skeg can't be Friday, unless I tent it, I did tent it once with a fan heater and nearly cooked next door's tomatoes, no, leave it for the warm spell, skeg, the repair at the back end where it's chewed off, build that up with epoxy and glass in, say, two goes, an hour and a half the two. The boat's on the props for that anyway. For the present it's got a split length of garden hose pushed on over the chewed edge and cable tied, so the chewing doesn't go any deeper on the trailer pads. Friday then I'd do dry jobs. The dry job is, where the wiring loom comes down by the mast step it's been chafing on the frame, no copper showing but soon, so some spiral wrap round that and a clip, twenty minutes. Ok. The rest of the wiring I'm happy with, I'd not swap it for anybody's. Then there's the ewe that's poorly so I shan't start anything big. We used to have a trailer with no brakes at all and go over the tops with it, in snow, with a calf in the boat, I've got a picture. Now it's all certificates. The certificate's good till autumn. Saturday I'd like to go sailing but there's no tide till five. Saturday me and Wilf will shift the mast from the barn to the yard, that's just lugging. And then Wilf says why don't we change the shrouds and I say why don't you change your socks. They're four years old, the shrouds. Right ewe`,
    marks: [
      {
        kind: 'job',
        at: 'build that up with epoxy and glass in',
        parts: { zone: 'bottom', minutes: 90, setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: "it's got a split length of garden hose pushed on", parts: {} },
      { kind: 'job', at: 'so some spiral wrap round that and a clip', parts: { minutes: 20 } },
    ],
  },
  {
    name: 'rope, and nothing but',
    page: `There are thirty-one ropes on this boat. I counted them on a train once, out of my head, and when I got home I'd forgotten two.

Of the thirty-one, twenty-six are good. I know the age of each. The mainsheet is from a chandlery that has since become a nail bar, and it's softer now than the day it was bought. The jib sheets were a present. The anchor warp came with her and I turned it end for end in March.

The rest is what I'm here about. The outhaul has been too short ever since the knot at its end had to be cut away, and there's a shoelace between it and the clew, a good stout one. It's rather a good shoelace, but it's a shoelace. Four metres of five mil, one bowline, and I'll have that in before lunch.

The tiller lines: nothing to say. The reef pendant on the second reef has a core like porridge. You can't see it, only feel it. So I'm having a new one there as well, nine metres, and it goes in with a needle and thread, butt to butt, or else the boom has to come apart. Ten minutes if you do it right.

The burgee halyard is thin, faded and hairy. It's a burgee halyard.

I've often been asked which knot I'd choose if I could only have one, and I've usually said the round turn and two half hitches, since it can be cast off by a frightened man.

Number thirty, the fender lanyards, count as one. They're all odd lengths and it drives my wife mad. They stay.

And number thirty-one is the clothes line that our daughter put across the cockpit. I'm not allowed to comment.

To buy, therefore: five-mil braid, four metres; six-mil, nine metres.`,
    marks: [
      { kind: 'jury rig', at: "there's a shoelace between it and the clew", parts: {} },
      { kind: 'job', at: 'Four metres of five mil, one bowline', parts: {} },
      { kind: 'job', at: "So I'm having a new one there as well", parts: { minutes: 10 } },
      { kind: 'store', at: 'five-mil braid, four metres', parts: {} },
      { kind: 'store', at: 'six-mil, nine metres', parts: {} },
    ],
  },
  {
    name: 'last page of the winter book',
    page: `This is the last entry before we put her in, and I've gone back over the winter to see what we said we'd do.

We said we'd strip the rudder, and we stripped it. We said we'd find the leak under the port bunk; it turned out to be a rivet in the strake, and there's been none since we tapped it over. We said we'd be kinder to each other about the parking of the trailer. Two out of three.

Some things got half done. The forward bulkhead was primed, and there the weather stopped us. It still wants its two top coats, with a day in between; an hour each. And we got the new cover strake cut and dry fitted along the starboard gunwale, but not stuck down. That's the glue job of the spring: both faces roughened, thickened resin, every cramp in the village, and then hands off for two nights. With Lotte's help I'd say three hours.

In January the tarpaulin frame came down in the night and we stood it up again with an oar. The oar has been standing there for three months now and the frame hasn't stirred, and as the frame is to be taken away in two weeks nobody's going to fix it.

The mast jobs were done in a heap on one Sunday, which is the only way: light, sheave, aerial, three halyards. I'd never again do them singly.

One worry's left. The trailer's left brake binds after reversing and the drum gets hot enough to fry on. I'm taking it to the agricultural engineer on Monday, for I won't tow on that.

What did it all cost? I've kept the bills in a tin, and nobody is to open the tin.

Lotte's already talking of next winter. I'm talking of the first evening out, with the stove on, and no list.`,
    marks: [
      { kind: 'job', at: 'It still wants its two top coats', parts: { zone: 'cabin', minutes: 120 } },
      { kind: 'job', at: "That's the glue job of the spring", parts: { minutes: 180 } },
      { kind: 'jury rig', at: 'we stood it up again with an oar', parts: {} },
      {
        kind: 'job',
        at: "I'm taking it to the agricultural engineer on Monday",
        parts: { zone: 'trailer', consequence: 'danger' },
      },
    ],
  },
];
