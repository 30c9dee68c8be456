/**
 * Words of the trade that mean nearly the same, so that a recipe, or what stands in the log, is found by what is meant.
 * Each line is one meaning:
 * its words and phrases, the plainest first. A word may stand in several. Our own list; common practice.
 */
const meanings = `
leak; weep; drip; dribble; seep; ingress; let water in; lets water in; lets the rain in; lets rain in; lets the rain through; lets rain through; rain through; let water by; lets water by; lets in water; creeps in; water creeps; gets wet; wet inside; damp below
seized; stuck; frozen; jammed; will not move; will not turn; stiff; rusted solid; fast; seized up; will not budge; binds; grinds; will not run
worn; wear; thin; play; slop; loose; sloppy; oval; wobble; knock; clonk; rattle; slack; clunk; rocks
loose; wobble; adrift; come away; coming away; working loose; lets go; undone; sprung; pulled out; pulled in; moves; could undo
chain; links; link; cable
measure; how thin; how thick; gauge
wire; wires; every wire; wire ends; swage
chafe; fray; worn through; furry; unravel; coming undone; tail; whiskers; broken strand; meat hook; snapped; parted; stranded; ragged
torn; rip; tear; hole; split; let go; worn a hole; rent
crack; split; craze; hairline; star crack; perished; brittle; rotten; rotted
corroded; corrosion; rust; green; furred; verdigris; white powder; pitted; eaten
rust; rusty; rusting; bare steel; brown
dull; chalky; powdery; faded; lost its shine; no shine; oxidised; matt; bloom
peel; flake; flaking; lift; blister; back to the wood; bare
mould; mildew; musty; smell; black spot; black speck; specks; fusty; damp
dirty; grubby; scruffy; salt; salty; crusty; green; filthy; sand; full of sand
soft; spongy; sponge; like a sponge; gives; bends; flex; springy; mushy; rotten core; delaminated
slippery; slip; slid; slide; non-slip; grip; tread; no grip
dead; does not light; will not light; no light; out; does not work; gone dark; not working; will not cut in; does not cut in
flicker; blink; intermittent; on and off; wiggle; comes and goes
flat; goes flat; will not hold; no charge; dead battery; weak; eight years old
hot; overheat; runs hot; warm; no cooling water; no tell-tale; no water spits; cooling water
noise; squeak; shriek; squeal; rumble; growl; grind; grumble
will not start; coughs; dies; hunts; stalls; stale; old fuel; old petrol
milky; mayonnaise; cream; emulsion; water in the oil
weed; slime; barnacle; mussel; growth; fouled; fouling; beard
scratch; chip; ding; scrape; gouge; lump; lump out; against the quay; knocked; bump; chewed; nick; white showing
out of date; expired; old; past its date; dated
rope; line; cordage; warp; sheet; halyard; running rope; cord
halyard; halliard; hoist rope; rope that hauls; hauls the main; the main up; hauls up; hoist; hauling line
sheet; jib sheet; mainsheet; genoa sheet
rode; cable; chain; warp; anchor line; anchor rope; anchor warp; ground tackle; links
anchor; hook; ground tackle; bower; kedge; mud hook
shackle; bow shackle; mousing; moused; mouse
mooring cleat; cleat; horn; bollard; samson post; bow cleat; mooring line
shroud plate; chainplate; chain plate; shroud fitting; shroud foot
stay; shroud; forestay; backstay; wire; standing rigging; rigging; lower; cap shroud; all the wires
rigging screw; bottle screw; turnbuckle; tension; tighten the rig; hang loose
mast; stick; spar; pole
masthead; top of the mast; mast top; truck; up the mast
mast step; mast foot; foot of the mast; tabernacle; heel of the mast
sheave; roller; wheel; pulley
block; pulley; tackle; mainsheet block
gooseneck; goose neck; boom fitting; kicker fitting
kicker; vang; kicking strap; control wire
loop; eye; ferrule; swage; pressed
thimble; eye; splice; resplice; fresh eye
sail; mainsail; main; jib; genoa; headsail; spinnaker; canvas
leech; back edge; edge of the sail; trailing edge
furler; furling; roller headsail; furled
seam; stitching; stitches; needle holes; thread; sewn
cover; tarpaulin; tilt; boom tent; tarp; over her
sprayhood; canopy; hood; dodger
board; centreboard; centreplate; plate; dagger board; drop keel; swing keel; lifting keel; lifting board; keel
board wire; lifting wire; lifting line; lifting cable; pennant; lifts the plate; lifts the board
case; board case; slot; trunk; under the case
gasket; rubber; seal; strip; flap
rudder; blade; helm
pintle; gudgeon; hinge; rudder hinge; hangings
tiller; helm; steering stick; socket
tiller head; rudder head; socket; cheeks
gelcoat; hull; topsides; side of the hull; moulding
topsides; hull; side; freeboard
bottom; underside; below the waterline; underwater; underbody
deck; foredeck; side deck; coach roof; cabin top
stanchion; deck fitting; fairlead; base
rubbing strake; rub rail; rubbing band; fender strake; gunwale; wale
seacock; valve; tap; cock; ball valve
through-hull; skin fitting; outlet; hull outlet; drain outlet
drain; bung; plug; self-bailer; transom drain
window; portlight; acrylic; pane; glazing; port light; lens
hatch; forehatch; forward hatch; lid
bunk; berth; settee; bed; wet bunk
where does it come in; do not know from where; trace; find where; cannot find; nobody knows
varnish; revarnish; brightwork; coats; washboard; woodwork
wood; timber; teak; rail; handrail; grab rail
teak; oil; grey; feed the teak; handrails
paint; coat; coating; slap some paint; repaint; topcoat; undercoat
bilge; locker; sole; inside
battery; cells; accumulator; posts
terminal; post; clamp; lead; pole
joint; connection; crimp; connector; cable
light; lamp; lantern; bulb; blinker; indicator
nav light; steaming lamp; anchor light; masthead light; tricolour; steaming light
pump; bilge pump; float switch; by itself
solar panel; panel; sun panel; keep the battery topped; trickle
trailer; trolley; road base
hub; wheel; bearing; axle
tyre; rubber; trailer rubber; wheel; spare
light board; trailer board; number board; trailer lights
winch strap; webbing; strap; winch webbing
brake; overrun; handbrake; hitch brake
roller; keel roller; bunk; pad
outboard; engine; motor; kicker engine
gearbox; leg; gear oil; lower unit; oil in the leg
impeller; water pump; cooling; tell-tale
petrol; fuel; gas line; tank
spark plug; plugs; service; tune up
lifejacket; buoyancy vest; life vest; vest; jacket; gas bottle
flare; distress signal; pyrotechnic; rocket; smoke
extinguisher; fire bottle
harness; tether; jackstay; clip on
ladder; boarding ladder; steps; way back aboard; swim
headlining; ceiling; lining; cloth; deckhead; ceiling cloth
sagging; hanging down; droop; come down; unstuck
stove; cooker; gas ring; galley; burner
first aid; plasters; bandage; medical
winter; lay up; put away; end of season; frost
spring; fit out; start of season; launch; commission
check; look over; go over; once over; before the season; yearly; inspect; yearly check; survey; examine
clean; wash; rinse; scrub
renew; replace; change; swap; fresh; new
tighten; nip up; tension; take up
grease; lubricate; oil; free; ease
brush; coat; antifoul
bed; rebed; rebedded; sealant; seal; reseal; mastic; caulk; goo
glue; bond; adhesive; stick; reglue
epoxy; resin
antifoul; antifouling; bottom paint
bolt; screw; fastening; fastener; machine screw
mend; repair; fix; patch
fit; install; mount
buy; bought; got; purchase; cost; price; paid; pay; spend; spent
measure; reading; gauge; volt; voltage
insurance; policy; insured
manual; handbook; instructions
`;

/** A word without the endings that talk gives it, so that `leaks`, `leaking` and `leak` are one. */
export const stem = (word: string): string =>
  word
    .replace(/(?<=..)(?:es|s)$/, '')
    .replace(/(?<=..)(?:ing|ed)$/, '')
    .replace(/(?<=...)e$/, '')
    .replace(/(?<=...)y$/, 'i')
    .replace(/(.)\1$/, '$1');

/** The words of a text in order, in small letters: letters and figures together, what stands between them left out. */
const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/(?<=\p{L})[’'-](?=\p{L})/gu, ' ')
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** The words of a text in order, each as its stem. */
export const stemsOf = (text: string): readonly string[] => wordsOf(text).map(stem);

interface Meaning {
  readonly of: number;
  readonly words: readonly string[];
}

/** Every phrase of the list by its first stem. */
const byFirst: ReadonlyMap<string, readonly Meaning[]> = (() => {
  const found = new Map<string, Meaning[]>();
  meanings
    .trim()
    .split('\n')
    .forEach((line, of) => {
      for (const phrase of line.split(';')) {
        const words = stemsOf(phrase);
        const first = words[0];
        if (first !== undefined) found.set(first, [...(found.get(first) ?? []), { of, words }]);
      }
    });
  return found;
})();

/** What a text speaks of: its stems, and the meanings that they, alone or as a phrase, have. */
export interface Spoken {
  /** in small letters, in order */
  readonly words: readonly string[];
  /** of the words, place by place */
  readonly stems: readonly string[];
  /** by number, each with the places of the words that say it */
  readonly meanings: ReadonlyMap<number, ReadonlySet<number>>;
}

export function spokenOf(text: string): Spoken {
  const words = wordsOf(text);
  const stems = words.map(stem);
  const said = new Map<number, Set<number>>();
  stems.forEach((word, at) => {
    for (const { of, words: phrase } of byFirst.get(word) ?? []) {
      if (!phrase.every((each, i) => stems[at + i] === each)) continue;
      const places = said.get(of) ?? new Set<number>();
      phrase.forEach((_, i) => void places.add(at + i));
      said.set(of, places);
    }
  });
  return { words, stems, meanings: said };
}
