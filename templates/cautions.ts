/**
 * Sentences of caution for prints and sheets, by what they warn of. They remind a practised reader at the bench; they do not replace
 * training, a machine's own handbook, or the rules of the place. `{...}` stands for a figure that the caller fills in.
 */
export const cautions = {
  'rotating-work':
    'Before starting the lathe turn the work once round by hand, and see that the jaws, the carrier and the tool post clear it. No gloves, loose sleeves or rings near turning work.',
  'chuck-key': 'Take the key out of the chuck before the hand leaves it, each time.',
  'long-overhang': 'The work stands out {overhang} from the chuck, more than is steady unheld: support the end with a centre or a steady.',
  'swarf': 'Clear swarf with a brush or a hook, with the machine stopped, never with the fingers.',
  'eyes': 'Wear eye protection at the machine and at the grinder.',
  'splinters': 'Chips of brass, gunmetal and cast iron fly as fine splinters: wear eye protection and shield the cutter.',
  'sharp-edges': 'Fresh edges cut skin: break them before handling the work further.',
  'clamping': 'Pull at the work by hand when it is clamped: it must not move. Slide and clamps must clear the cutter over the whole travel.',
  'small-drill': 'Small drills break easily: highest speed at hand, light feed, withdraw often to clear the chips.',
  'small-tap': 'Small taps break easily: start square, use cutting oil, turn back each half turn, and stop when the tap feels springy.',
  'parting-off': 'Part off close to the chuck, with a sharp tool at centre height, and catch the work without reaching over it.',
  'thin-wall': 'A wall of only {wall} is left here: take light cuts with a sharp tool, and hold without squeezing.',
  'heat-treatment': 'Hot steel looks like cold steel when the red has gone: use tongs and say aloud what is hot.',
  'oil-quench':
    'Quenching oil may catch fire: use a metal vessel with a close lid, ample oil, in the open or under good draught, with dry hands and no water near. Stand to one side and lower the work quickly and wholly under.',
  'water-quench': 'Steam rises when hot work meets water: keep face and hands out of it.',
  'brazing': 'Braze in a well-aired place on a hearth that will not burn; pickle only when the work is cold, acid into water, never the other way.',
  'silver-solder': 'Use solder free of cadmium, and have good air while heating.',
  'pressure':
    'This part holds pressure. Its making, test and use come under local codes and under the inspector of the club or a licensed practitioner: ask before cutting metal, and steam it only with their consent.',
  'lifting': 'This piece is heavy at {mass}: lift it with help or tackle.',
  'grinding-dust': 'Dust of grinding and of cast iron harms lungs and slides: catch it at the source and cover the slides.',
  'dimension-check': 'Measure before the last cut and again after it; a size is right when the gauge says so, not the dial.',
} as const satisfies Readonly<Record<string, string>>;

export type CautionId = keyof typeof cautions;
