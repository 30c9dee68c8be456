import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'two weekends and a shopping run',
    page: `Odd-job plan. Two weekends, one shopping run, one bank holiday in hand for disasters.

Friday evening: shopping. Epoxy (small pack), a roll of peel ply, brass countersunk screws 1 inch, grease cartridge. The tallow we have.

Saturday 10th. Must be over ten degrees for the epoxy, and they promise thirteen.
- Cockpit sole, soft round the inspection hatch: cut back to hard ply, scarf in a patch, glass over. Three hours, two of them waiting.
- While waiting: grease the trailer hubs through the caps, 20 min. The hubs themselves were repacked last autumn, it is only a top-up.
- No sitting in the cockpit till Sunday noon.

Sunday 11th. Fiddly things at the bench.
- Gooseneck: there's a washer made of a cut penny in it, from the regatta. Turn a bronze one, 30 min.
- Nav light, port: lens crazed, still red, still bright. Nothing.
- Companion slide runner: screws pulled. Brass inch screws instead of the three-quarters, 15 min.

If Sunday is fine I'd rather go for a walk.

Weekdays: none. I have learned.

Saturday 17th. Mast.
- Before it goes up: sheave out, clean, graphite, in again, 30 min. Check the spreader brackets (looked sound in March).
- Up with the gin pole at high noon, three people. Sister brings the cake.
- After: re-lead the topping lift outside the lazy jack. It was inside all last year and drove me up the wall. 5 min.

Sunday 18th. Afloat? Depends on the ramp. The club says dredged, the club said that in 2025 too.

Readings today: battery 12.66, tyres 2.5 and 2.5.

Not on the list and staying off it: new headlining, teak, whatever the man next door says about electrics.

On the bank holiday, if nothing has gone wrong: paint the name. It has been half a name since the dinghy took off the last four letters.`,
    marks: [
      { kind: 'store', at: 'Epoxy (small pack)', parts: {} },
      { kind: 'store', at: 'a roll of peel ply', parts: {} },
      { kind: 'store', at: 'brass countersunk screws', parts: {} },
      { kind: 'store', at: 'grease cartridge', parts: {} },
      { kind: 'job', at: 'cut back to hard ply, scarf in a patch', parts: { zone: 'cockpit', minutes: 180 } },
      { kind: 'job', at: 'grease the trailer hubs through the caps', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'jury rig', at: "there's a washer made of a cut penny in it", parts: { zone: 'rig' } },
      { kind: 'job', at: 'Turn a bronze one', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'Brass inch screws instead', parts: { minutes: 15 } },
      { kind: 'job', at: 'sheave out, clean, graphite', parts: { minutes: 30 } },
      { kind: 'job', at: 're-lead the topping lift', parts: { minutes: 5 } },
      { kind: 'reading', at: 'battery 12.66', parts: {} },
      { kind: 'reading', at: 'tyres 2.5 and 2.5', parts: {} },
      { kind: 'job', at: 'paint the name', parts: {} },
    ],
  },
  {
    name: 'walking the dog round the boat',
    page: `come on dog right I'm going to do the boat while he sniffs so at the back the outboard's tilted up and the tilt catch is all right this year the bracket's solid rudder off it's in the shed having its oil last coat went on Friday the port quarter has a fender rub it's only dirt comes off with a thumb transom drain flap has perished and curled up so there's a bit of tape across that and water still gets in when I sit aft so cut a new flap out of inner tube four screws ten minutes the boy can do that one cockpit well the tiller's lashed the mainsheet is good as new because it is new the bench lid on the right squeaks a squeak is company but the gas strut or whatever on the other one has lost its push so it comes down on your head I want a pair of new struts fitted half an hour cabin there's a smell of diesel which is odd since we haven't got diesel oh it's the lamp leave it battery twelve point four eight and the switch for the pump has gone all floppy I'd change that before the season fifteen minutes window's dry after all that rain I'm amazed side deck the port shroud plate I keep hearing is the one that goes on these well ours hasn't foredeck the hatch handle's snapped so you have to open it with a knife new handle two screws and a bit of sealant twenty minutes mast I can't see from here it's up at the top I mean the top is but the halyard slaps all night so a bit of bungee on that is the whole answer two minutes do it when I leave trailer well leave it alone it's only three months since the service get struts a rocker switch and a hatch handle dog's rolling in something I'm off`,
    marks: [
      { kind: 'jury rig', at: "there's a bit of tape across that", parts: { zone: 'transom' } },
      { kind: 'job', at: 'cut a new flap out of inner tube', parts: { zone: 'transom', minutes: 10 } },
      { kind: 'job', at: 'I want a pair of new struts fitted', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'reading', at: 'battery twelve point four eight', parts: {} },
      { kind: 'job', at: "I'd change that before the season", parts: { minutes: 15 } },
      { kind: 'job', at: 'new handle two screws and a bit of sealant', parts: { zone: 'foredeck', minutes: 20 } },
      { kind: 'job', at: 'a bit of bungee on that is the whole answer', parts: { minutes: 2 } },
      { kind: 'store', at: 'get struts a rocker', parts: {} },
      { kind: 'store', at: 'a rocker switch', parts: {} },
      { kind: 'store', at: 'and a hatch handle', parts: {} },
    ],
  },
  {
    name: 'the careful guest from abroad',
    page: `Dear friend, you have lent me your boat for the week and I want to give her back better than I have received her, so here is my report.

All was wonderful. The motor has started at the first pull. The toilet bucket, we have not used it, thank you.

What I have found. The rope of the small anchor was knotted to the chain with a knot and not with a shackle. We have left it so, it has held in a lot of wind. But I would make a shackle with wire in it, five minutes.

The door to the cabin did not close any more since Tuesday, the wood has worked. I have not planed, it is your wood. One has to take away perhaps two millimetres under and oil it, twenty minutes.

In the night came rain through the mast hole. I have stuffed my towel in it and you may keep the towel. There should come a new sleeve of rubber, I think one hour, but not with the mast standing.

The battery was each morning about 12.5 volts, last morning 12.41. It is maybe normal with the refrigerator box of my wife.

I have broken one thing, I am ashamed: the small cleat for the flag. I have bought a new one, it lies on the table, only two screws are needed. I did not have the screwdriver.

The sail is very nice. In one place is the seam open as long as my hand, at the rear edge near the second stick. A sailmaker must sew this before it goes further.

On the trailer I would say one thing only. The jockey wheel turned by itself on the road, and the holding screw has no thread more. Please put a new clamp before you drive, it was for us truly dangerous.

In my country every boat has a horn on board, here you don't. But every country is different.

I have cleaned the hull, filled the water and burned nothing. If I were you I would also have a mosquito net, but I am not you. With many thanks.`,
    marks: [
      { kind: 'job', at: 'But I would make a shackle with wire in it', parts: { minutes: 5 } },
      { kind: 'job', at: 'One has to take away perhaps two millimetres', parts: { zone: 'cabin', minutes: 20 } },
      { kind: 'jury rig', at: 'I have stuffed my towel in it', parts: {} },
      { kind: 'job', at: 'There should come a new sleeve of rubber', parts: { minutes: 60, setUps: { mast: 'down' } } },
      { kind: 'reading', at: 'last morning 12.41', parts: {} },
      { kind: 'job', at: 'it lies on the table, only two screws are needed', parts: {} },
      { kind: 'job', at: 'A sailmaker must sew this', parts: {} },
      { kind: 'job', at: 'Please put a new clamp before you drive', parts: { zone: 'trailer', consequence: 'danger' } },
    ],
  },
  {
    name: 'shed talk',
    page: `Sit down, mind the varnish. No, the other chair.

You asked how she is. She's like me, good for her age and stiff in the mornings. The hull is better than when I bought her. When I bought her you could see daylight by the case, and a wren had moved in. That was all cut out and made new in the winter of the big snow, and she's never taken a cupful since.

I'll tell you what does want doing. The boom. It's got a split running along from the outhaul end, a foot and a half of it, and I've put three hose clips round it, like a drainpipe. It'll see out April. Then it comes in here, glue in the split, lashings every six inches, and two days by the stove. An hour of real work.

The board tackle, I had a look. One of the cheek blocks is worn egg-shaped. Shove a new pin in and turn the cheek round, and there's another ten years. Half an hour.

I knew a fellow who used bicycle chain for that. It worked till the day it didn't.

The cover, now. The cover's in rags along the ridge and people tell me buy another. I'll patch it. Two yards of canvas, my wife's machine, an evening.

And the oarlocks rattle, and so they ought.

Paint: topsides did in '25, won't be looked at for another three years. Bottom, never more than a wipe.

Lamp battery thing. I don't hold with it, but the daughter put one in. It says 12.6 on the little window, so that's good, I'm told.

Trailer's the weak point. The drawbar has a crack by the weld, you can get a fag paper in it. That's going to the welder on Monday, I've spoken to him, I'll tow it nowhere else. He did my gate.

Fetch canvas when you go by the market, would you, and half a dozen brass tacks. And one day I'll build a smaller one. Everyone should end on a smaller one.`,
    marks: [
      { kind: 'jury rig', at: "I've put three hose clips round it", parts: { zone: 'rig' } },
      { kind: 'job', at: 'Then it comes in here, glue in the split', parts: { zone: 'rig', minutes: 60 } },
      { kind: 'job', at: 'Shove a new pin in and turn the cheek round', parts: { zone: 'case', minutes: 30 } },
      { kind: 'job', at: "I'll patch it. Two yards of canvas", parts: {} },
      { kind: 'reading', at: 'It says 12.6', parts: {} },
      { kind: 'job', at: "That's going to the welder on Monday", parts: { zone: 'trailer' } },
      { kind: 'store', at: 'Fetch canvas', parts: {} },
      { kind: 'store', at: 'half a dozen brass tacks', parts: {} },
    ],
  },
];
