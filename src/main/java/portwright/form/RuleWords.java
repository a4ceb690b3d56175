package portwright.form;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Short headings of the rules' findings. */
public final class RuleWords {
    private static final Map<String, String> HEADS = Map.ofEntries(
            Map.entry("inside-chamber", "Hole outside the chamber"),
            Map.entry("edge-distance", "Near the rim"),
            Map.entry("port-spacing", "Holes close together"),
            Map.entry("weakest-section", "Slab weakened along a line"),
            Map.entry("element-clearance", "Too near the element groove"),
            Map.entry("fitting-clearance", "Near a fitting"),
            Map.entry("groove-room", "Brick round an element"),
            Map.entry("joint-sliver", "Thin sliver at a brick joint"),
            Map.entry("one-brick", "Hole is not within one brick"),
            Map.entry("post-in-flame", "Post in the flame"),
            Map.entry("shelf-over-inlet", "Shelf low over the inlet"),
            Map.entry("flame-path", "Way round the shelf is narrow"),
            Map.entry("flame-on-element", "Flame on an element"),
            Map.entry("flame-at-wall", "Flame climbs the wall gap"),
            Map.entry("flame-on-fitting", "Flame on a fitting"),
            Map.entry("flue-over-inlet", "Flue right over an inlet"),
            Map.entry("port-balance", "Ports off balance"),
            Map.entry("burner-room", "Room for the burner"),
            Map.entry("burner-fit", "Burner and hole do not match"),
            Map.entry("jet-in-hole", "Jet may strike the hole"),
            Map.entry("port-size", "Unusual hole size"),
            Map.entry("saw-size", "Nearest hole saw"),
            Map.entry("saw-depth", "Deeper than a hole saw cuts"),
            Map.entry("facet-rule", "Sides and bricks disagree"),
            Map.entry("jacket", "Cut the metal first"),
            Map.entry("alike-names", "Names that look alike"),
            Map.entry("brick-kind", "Know your brick"),
            Map.entry("flue-inlet-ratio", "Flue area against inlets"),
            Map.entry("clean-burn", "Burning clean"),
            Map.entry("inlet-draw", "Draw at the inlets"),
            Map.entry("chamber-pressure", "Above the neutral level it leaks"),
            Map.entry("damper-range", "Reach of the damper"),
            Map.entry("damper-cover", "Plate covers too little"),
            Map.entry("gas-load", "Gas for this chamber"),
            Map.entry("flue-load", "Flues carry much gas"),
            Map.entry("soot", "Soot"),
            Map.entry("oxidised-zone", "Low zone stays oxidised"),
            Map.entry("gas-on-temperature", "Temperature at gas-on"),
            Map.entry("gas-off-temperature", "Kiln cools under gas"),
            Map.entry("flame-supervision", "Watch over the flame"),
            Map.entry("element-atmosphere", "Elements on in reduction"),
            Map.entry("thermocouple-range", "Thermocouple: kind and place"),
            Map.entry("cylinder-place", "Place of the cylinder"),
            Map.entry("cylinder-boil-off", "What the cylinder can give"),
            Map.entry("cylinder-lasts", "Gas in the cylinder"),
            Map.entry("supply-pressure", "Gas pressure"),
            Map.entry("room-place", "Place of the kiln"),
            Map.entry("room-co", "CO in the room"),
            Map.entry("room-oxygen", "Oxygen in the room"),
            Map.entry("combustion-air", "Openings for air"),
            Map.entry("hood-capture", "What the hood catches"),
            Map.entry("make-up-air", "Air for the fan"),
            Map.entry("co-alarm", "No CO alarm"),
            Map.entry("gas-alarm", "No low-level gas alarm"),
            Map.entry("room-heat", "The room gets hot"),
            Map.entry("floor-fire", "Floor under the burners"),
            Map.entry("above-flue", "What is over the flues"),
            Map.entry("near-flame", "Too near port or flue"),
            Map.entry("vent-fan", "Shut the kiln vent"),
            Map.entry("brick-heat", "Hotter than the brick's class"),
            Map.entry("firing-reach", "Reaching the cone"));

    /** Words tied by hyphens, as ids are. */
    private static final Pattern ID = Pattern.compile("(?<![\\w-])[a-z]+(?:-[a-z]+)+(?![\\w-])");

    private RuleWords() {}

    public static boolean isListed(String rule) {
        return HEADS.containsKey(rule);
    }

    /** The heading; the id in words for a rule that is not listed. */
    public static String head(String rule) {
        String head = HEADS.get(rule);
        if (head != null) {
            return head;
        }
        String words = rule.replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A sentence with the rules' headings in the place of their ids. */
    public static String inWords(String sentence) {
        return ID.matcher(sentence)
                .replaceAll(
                        m -> HEADS.containsKey(m.group()) ? Matcher.quoteReplacement(within(m.group())) : m.group());
    }

    /** A heading as it stands within a sentence. */
    public static String within(String rule) {
        String head = head(rule);
        return Character.isUpperCase(head.charAt(1)) ? head : Character.toLowerCase(head.charAt(0)) + head.substring(1);
    }
}
