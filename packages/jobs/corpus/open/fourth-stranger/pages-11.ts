import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'dinner at the pub',
    page: `"So how's the boat?"

"Don't get me started."

"I have got you started. I'm buying."

"All right. The boat's fine. Mostly. You know I was fretting about the keel? There was nothing in it. A bit of filler, cosmetic. Did that on Sunday."

"And the mast?"

"Mast's lovely. Don't ask about the mast, ask about the mast's foot. The bolt that goes through the step's got a bend like a banana. You can't draw it out, you have to hit it. I'm having a new bolt turned, and I'll change them over before she's rigged."

"What does that cost?"

"A pint. It's my cousin."

"Cheap."

"He's a lousy cousin, it's the least he can do. Then the hatch: it's got a cushion on it."

"On it?"

"Under a strap, on top. There's a hole where the vent was, and I've not decided about a new vent. A cushion works. Cushion and a strap."

"You've got a cushion for a roof."

"I have. But a vent would be better, wouldn't it, so I'll probably just order the white one and stick it in, half an hour and I can stop worrying about clouds."

"When I was in the army we had boats made of cloth."

"You've told me. They sank."

"They did not sink. They folded."

"Are you eating those chips? Ta. The other thing, the tail lamp. Second time this year I've been flashed at. It's the plug, the pins are furry; a wire brush and some grease on the trailer plug and that's me legal again."

"You said you weren't going to get another boat, after the first."

"I said a lot of things. Pass the vinegar."`,
    marks: [
      { kind: 'job', at: "I'm having a new bolt turned, and I'll change them over", parts: { zone: 'rig' } },
      { kind: 'jury rig', at: 'A cushion works. Cushion and a strap', parts: {} },
      { kind: 'job', at: 'order the white one and stick it in', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: 'a wire brush and some grease on the trailer plug',
        parts: { zone: 'trailer', consequence: 'unlawful' },
      },
    ],
  },
  {
    name: 'dictated by a river lad',
    page: `ow do duck its me ive bin down the boat an shes alreight um its mafting down there today sun crackin the flags I had me shirt off so owt to report yes owd on let me think the plate thing the drop keel the bit o wire as lifts it its got rust on it but I wiped it wi a rag and its only surface so ah left it be the handle for it is knackered though its spun on its shaft like theres no key in it so it wants a new key cutting and fitting int handle our kid can do that at work twenty minutes I just use locking pliers on the shaft they stick out a bit and I took a lump out of me hip um what else the painter I mean the rope at front thats rotten I pulled and it come away in me hand so a new un wi a spliced eye ten mil eight foot long an mam says its me turn to buy it whys it always my turn the bottoms clean I crawled under theres a nest under there a wren I think so no jackin her up while may right the oars are in there both on em the leathers ave gone on one so tack a bit o new leather round it ten minutes theres an old boot in shed as owes us nowt um I saw a fella go past in a boat wi a telly on it a telly I ask thee twelve point six on the meter by the way and the cabins dry as a biscuit see thee sat`,
    marks: [
      { kind: 'job', at: 'so it wants a new key cutting and fitting int handle', parts: { minutes: 20 } },
      { kind: 'jury rig', at: 'I just use locking pliers on the shaft', parts: {} },
      { kind: 'job', at: 'so a new un wi a spliced eye', parts: {} },
      { kind: 'job', at: 'so tack a bit o new leather round it', parts: { minutes: 10 } },
      { kind: 'reading', at: 'twelve point six on the meter', parts: {} },
    ],
  },
  {
    name: 'hedging every sentence',
    page: `I'm not absolutely sure about any of this, so take it with a pinch of salt, but I did have a look round her yesterday, more or less by accident. I'd gone down to return a book.

She seems to be all right, on the whole. I mean, she's upright.

The cover might want re-proofing at some stage. Or it mightn't. It beaded up nicely in the shower, come to think of it, so probably not.

I believe, though you'd know better, that the starboard shroud has a broken strand, just above the terminal. I ran a tissue down it and it snagged. I shouldn't care to sail on that, if it were up to me, and I rather think you'd want it replaced before the mast goes up in April. The rigger in the old smithy has been very obliging, I gather.

The bolt on the stern locker is perhaps a trifle stiff, but it's only dirt.

I did wonder whether the little rope on the fender board was supposed to be a bungee with a hook missing. It's somebody's bootlace now, at any rate. It's holding. I've no opinion on whether it should be changed; I'd be inclined to leave it as it is.

Something dripped in the cabin. I heard it and couldn't find it. I'll go back with a torch in the next wet spell, and see whether it's the window on the left, since the stain's below it.

I looked in the engine box and there's a smell, I don't say a bad one.

Forgive me, there's one thing more, and it may be none of my business: the outboard's safety lanyard is frayed nearly through. I'd get another and clip it on. It's a few pounds.

I still have the other book.`,
    marks: [
      { kind: 'job', at: "I rather think you'd want it replaced before the mast goes up", parts: { zone: 'rig' } },
      { kind: 'jury rig', at: "It's somebody's bootlace now", parts: {} },
      { kind: 'job', at: "I'll go back with a torch in the next wet spell", parts: { zone: 'cabin' } },
      { kind: 'job', at: "I'd get another and clip it on", parts: {} },
    ],
  },
  {
    name: 'sisters by message',
    page: `Pia: ok im at the slip. boat is boat
Runa: 📷?
Pia: no battery for pics. words only
Runa: go
Pia: front rope good. anchor good. The lid over the anchor wont stay up bc the strut's bust, I propped it on a coat hanger
Runa: classy
Pia: it's aunt edda's nice one too
Runa: she'll KILL you. order a strut, it's two screws. put it on saturday
Pia: yes boss
Runa: mast?
Pia: down. Fine. The flag line's got a knot that I can't undo & nor can you so we live with it
Runa: we live with it
Pia: inside: fine!! clean!! who cleaned
Runa: me 💅
Pia: the bit of hose on the sink thing is all sticky and cracked. Smells of fish
Runa: ugh. needs new hose. Half a metre, the thick kind. I'll cut it & clamp it on, 15 min
Pia: there's a wasp
Runa: ignore wasp
Pia: it won't ignore me
Runa: battery??
Pia: 12.55
Runa: 👍
Pia: rudder: i turned it & the top bit went & the bottom bit didn't?? like it's come unglued
Runa: WHAT
Pia: gap u can put a coin in
Runa: ok so blade's delaminated. off with it, dry it out, glue + clamp. Nobody sails till that's done
Pia: mum wants to know are you home for supper
Runa: what is it
Pia: leek thing
Runa: no
Pia: trailer has air in all its tyres
Runa: hallelujah
Pia: gotta go wasp is in my sleeve
Runa: buy hose, buy epoxy
Pia: buy wasp spray
Runa: lol. You did great x`,
    marks: [
      { kind: 'jury rig', at: 'I propped it on a coat hanger', parts: { zone: 'bow' } },
      { kind: 'job', at: 'order a strut', parts: { due: '2027-04-10' } },
      { kind: 'job', at: 'needs new hose', parts: { zone: 'cabin', minutes: 15 } },
      { kind: 'reading', at: '12.55', parts: {} },
      { kind: 'job', at: 'off with it, dry it out, glue + clamp', parts: { zone: 'transom' } },
      { kind: 'store', at: 'buy hose', parts: {} },
      { kind: 'store', at: 'buy epoxy', parts: {} },
    ],
  },
];
