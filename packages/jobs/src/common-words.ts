/** Plain words of five letters and more that are no slip of a boat's word, however near they come: 'coming', 'bread'. */
export const commonWords: ReadonlySet<string> = new Set(
  `about above after again ahead alarm alike alive alone along aloud already although always among another answer anyone
  anybody anything apart appear apple arrive aside asked asking asleep attach autumn avoid awake awful babies basic basin
  beach beast beating became because become before began begin behind being belief belong below bending berry beside
  better between beyond biscuit bitten blame blank blast blaze bleed blend bless blind blood blown board boast boiled
  bones books boost boots border boring borrow bother bottle bottom bought bound brain brass brave bread bring broad
  broke broken brought brown brush build built bunch burnt burst button cables cabinet called calls calm camera candle
  cannot caper cards careful carry castle caught cause caved ceiling centre certain chain chair chalk chance change chase
  cheap check cheek cheer cheese chest child choice choose circle claim class clean clear clever climb close closed cloth
  cloud coach coast coffee colder colour coming common cooler copper cords corner correct could count couple course
  court cover crack crane crash crate crawl crazy cream create creep cried cross crowd crown crude cruise crush cupboard
  curve daily damage dance dared darker dates dealt dearer debris decent decide decker deeper depth desk devil dinner
  doing door doors doubt dozen draft dragged drain drawn dream dress dried drier drink drive driven driver drops drove
  dying eager early earth easier easily eaten edges eight either empty ended enemy energy enjoy enough enter entire equal
  error evening event every exact except extra faced facing failed fairly faith false family fancy farther fasten faster
  father fault favour fears feels fence fever fewer fiddle field fifth fight figure filled final finds finger finish
  first fitted fixed flame flash floor flour flows fluid focus folded folks follow force forget forgot form forms forth
  found frame fresh friend front frost fruit fully funny further garage garden gather gauge gentle getting giant given
  giving glass globe going goods grand grass grateful gravel greasy great greed green grey grind gripe gross ground group
  grown guard guess guest guide habit hairs half hammer handle handy hanging happen happy harder hardly hasty hated
  having heads heard heart heater heavy height hence hidden higher hinge holds holes holiday hollow horse hotel hours
  house human hunger hurry image inches indeed inner inside instead issue items itself jelly joints joking judge juice
  keeps kettle keyed kicks kinds kitchen knees knife knock known labour ladder landed larger lasts later laugh layer
  leads learn least leather leave leaves legal lemon lends length letter level lifts light liked likely limit lined
  lines listed listen little lived lives loads locks locker longer looked looking looks loose lorry loses losing loud
  loved lovely lower lucky lunch lying magic mainly major maker makes making market marks match maybe meals means meant
  measure metal middle might miles minor minus mixed model money month months moral morning mother motor mouth moved
  moves moving muddy music myself nails named names narrow nearby nearly needed needs nerve never newer newly nicely
  night noise noisy north noted notes nothing notice novel nurse ocean often older opened order other others ought ounce
  outer outside owned owner oxide paid pages pains paint pairs panes paper parent parked parks parts party passed paste
  patch paths pause peace people perhaps petrol phone photo piano picked pickle piece pieces pitch place places plain
  plane plans plant plate plenty pocket point poles polish poorly porch posts potato pound power press pretty price
  pride prime print prize probably proof proper proved pulled pumped pupil purple pushed putting queen quick quiet quite
  radio raise rains raining range rapid rather reach react ready really reason recall refer relax remain remember reply
  report rest rested result return rider right rinse risen rises river roads robin rocks roof rooms rotten rough round
  route royal rubbed rubber ruined ruler running rusty safely safer sailed sails saint salad salty sandy saved scale
  scare scene school scope score screw seals search season seats second seeing seems seized seldom sense serve settle
  seven several shade shaft shake shall shape share sharp sheds sheep sheet shelf shell shift shine shirt shock shoes
  shops shore short should shout shoved shown shows shower sides sight signs silly simple since single sister sixty skill
  slack sleep slept slice slide slight slope slowly small smart smell smile smoke smooth snack snow soaked soaking socks
  solid solve sooner sorry sorts sound south space spare speak speed spend spent spider spine split spoke spoon sport
  spots spray spread spring square stack staff stage stain stairs stale stand stars start state steady steal steam steel
  steep steer steps stick stiff still stock stone stood stool stops store storm story stove straw stream street stress
  strict strike strong stuck study stuff style sugar suited summer sunny supper supply surely surface sweet sweep swept
  swing table taken takes taking talked tall taste taught teach tears tells tenth terms tested thank thanks their them
  themselves there these thick thief thing things think third thirty those though thought thread three threw throat
  through throw thumb tidal tides tight tiles timber timed times tired title today toilet tonight tools tooth topped
  torch total touch tough towel tower track trade train treat tries tricky trips trouble truck truly trust truth trying
  turned turns twelve twenty twice twist under undid undo unless until upper upset usual value verse visit voice wages
  waist waited wakes walks walls wants warmer warned washed waste watch water waves weather weeks weigh weight wells
  wheel where whether which while white whole whose wider width windy winds window winter wiped wires wise wished within
  without woman women wonder wooden words worked works world worry worse worst worth would wound wrist write wrong
  wrote yards years yellow young yours youth`.split(/\s+/),
);
