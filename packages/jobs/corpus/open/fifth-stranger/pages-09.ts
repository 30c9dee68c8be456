import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'in the van at dinner time',
    page: `Right I've got a sandwich in one hand so, so excuse the chewing. Went by her at half seven on me way in. Cover was on. Nothing nicked. Now that scupper flap on the left side at the back the rubber one it's dropped off somewhere, could be anywhere, so water's coming back up through onto the floor when she's moored and I've bunged it with a bit of hosepipe folded double, that's stopped it dead. Rubber sheet, cut a circle, one screw in the middle, ten minutes, you want three mil not the thick stuff. The other flap's there. I did the pair of them in, when was it, when Kelly was still at school. So that's good going for rubber. What else, the mainsheet's fine that's only sun on it. The jammer for the mainsheet's fine. Lad at work says he's got a winch going cheap, I said we've got two winches he said well now you could have three. Daft. Erm. Tiller tapped, it's solid. Locker in the back on the right, there's a weep from the fuel tank cap you can smell it, so new gasket for the cap and don't leave the tank in there with the lid shut until you've done it, it only takes a spark. They're two quid. I've wrapped a poly bag round the cap and twisted it for now but it still stinks. We had a tank go up on site in ninety odd and I've never forgot it, took a digger's window out. Erm. Front end I didn't look, I'd got me work boots on. Battery I didn't look neither. I'll do the pair of them Sunday if the wife's sister doesn't come. If she does I'll be down there all day mind`,
    marks: [
      { kind: 'jury rig', at: "I've bunged it with a bit of hosepipe folded double", parts: {} },
      { kind: 'job', at: 'Rubber sheet, cut a circle', parts: { minutes: 10 } },
      { kind: 'job', at: 'so new gasket for the cap', parts: { consequence: 'danger' } },
      { kind: 'jury rig', at: "I've wrapped a poly bag round the cap", parts: {} },
    ],
  },
  {
    name: 'voice note at midnight',
    page: `can't sleep so I'm going round the boat in my head and I'll tell you so that I can stop. one the rope on the tender's painter I whipped that so stop thinking about it. two the hatch runners, they've worn a groove and the hatch drops at the back and I've slid a playing card under each side, two of clubs and I think the queen, so it runs, but it's only until I can get that slippery plastic strip and glue it in, hour's job, strip comes off a roll at the hardware place. three did I shut the seacock yes I shut the seacock I remember because I hit my knuckle. four the mast. the mast is fine. everyone says the mast is fine. five, that noise at anchor, tock tock tock, it was the halyard and I've tied it off to the shroud since which you're meant to anyway. six oh this is the one, the shackle on the board wire. it's the wrong metal. it's a plated one from the garden centre and it's gone orange and furry. if that parts then the board goes down with a bang and you'll never get her on the trailer. stainless one, five mil, it has to be moused, do it before the twenty-fourth, ten minutes lying on your tum. seven money. no not money at midnight. eight I meant to look up if we need a licence for the radio, I think you told me that we have it. nine there's a slat in the berth missing and we've a cut up broomstick across the gap and honestly it's the comfiest bit. ten is that rain. it's rain. I left the forehatch open. no I didn't. did I. no. goodnight`,
    marks: [
      { kind: 'jury rig', at: "I've slid a playing card under each side", parts: {} },
      {
        kind: 'job',
        at: "it's only until I can get that slippery plastic strip and glue it in",
        parts: { minutes: 60 },
      },
      { kind: 'job', at: 'stainless one, five mil', parts: { fitting: 'wire', minutes: 10, due: '2027-04-24' } },
      { kind: 'jury rig', at: "we've a cut up broomstick across the gap", parts: { zone: 'cabin' } },
    ],
  },
  {
    name: 'the locksmith retires',
    page: `Forty years of locks have given me a feeling for things that nearly close. On a boat nearly everything nearly closes.

The washboard hasp was the first I put right, the very week we bought her. The cabin padlock was the second, and there's been no trouble from either of them. The forehatch bolt I eased in March. I could go on, but nobody at home will listen.

Now the anchor well. The lid has a turnbuckle catch whose spring has rusted away, and on the last passage it opened by itself and the anchor very nearly followed. I've a cork jammed under the tongue, a champagne cork in point of fact, from my own retirement. That keeps it shut at rest. At sea I don't trust it. The catch needs a fresh spring wound for it and I'll wind that myself out of piano wire; I can do it in twenty minutes on the small mandrel.

The ignition key of the outboard is stiff. Don't oil it, people always oil it. I blew a puff of graphite in, and it turns like silk now.

As to the cockpit locker, the hinges are the wrong hand. Some builder's apprentice did that in 1979, and I've grown fond of him. They've done no harm.

There's one matter beyond me. The steel pin at the trailer hitch won't seat fully, so the handle stands up a quarter inch and the indicator shows red. It's not a thing to tow on. The trailer man must have it and tell me whether it's the ball or the head. I've telephoned, and he has room on Tuesday. I gather I'm not the first this month.

My wife asks when I'm going to stop working. I said when the last thing closes.`,
    marks: [
      { kind: 'jury rig', at: "I've a cork jammed under the tongue", parts: { zone: 'bow' } },
      { kind: 'job', at: 'The catch needs a fresh spring wound for it', parts: { zone: 'bow', minutes: 20 } },
      { kind: 'job', at: 'The trailer man must have it', parts: { zone: 'trailer', consequence: 'danger' } },
    ],
  },
  {
    name: 'canvas day',
    page: `Today was a canvas day. I put the machine on the saloon table, which is really a door on two trestles, and I went through everything made of cloth.

The spray hood has a burst seam on the window side. I've run over it twice with the heavy thread and it's as good as ever, so that one's finished and folded. The tiller cover only wanted washing. The sail cover's sound.

The mainsail's clew is another matter. The ring is all right but the webbing that holds it is three-quarters gone, burned by the sun, and you can pull bits off like old tobacco. My machine won't go through five layers. It needs the loft: new webbing, hand sewn, and it has to be back before the shakedown. I'll drive it over tomorrow. When we brought her home I'd lashed the ring to the boom with a sail tie, so the webbing had nothing to hold, and it's still rigged so now. It sets like a sack.

The jib has a patch I put on in the year of the wasps. I used sticky-backed cloth, and never sewed it, since they told me it needn't be sewn. They were right.

The leeboards. We call them leeboards, I mean the canvas things which keep you in your bunk. One has pulled its eyelets. I'll set three bigger ones, with a scrap of webbing behind, when I've finished this cup. Fifteen minutes.

I was asked on Sunday to make a cover for someone's motor cruiser. It would be forty metres. No.

My mother taught me on a treadle. Her advice was: never sew when cross. I think of it every time the bobbin runs out.

We're nearly out of the white thread, so a cone of that, heavy, and a packet of needles, the size eighteens.`,
    marks: [
      { kind: 'job', at: 'It needs the loft: new webbing', parts: { outing: 'spring' } },
      { kind: 'jury rig', at: "I'd lashed the ring to the boom with a sail tie", parts: {} },
      { kind: 'job', at: "I'll set three bigger ones", parts: { minutes: 15 } },
      { kind: 'store', at: 'so a cone of that, heavy', parts: {} },
      { kind: 'store', at: 'a packet of needles', parts: {} },
    ],
  },
];
