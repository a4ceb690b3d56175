package portwright.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.rules.Unknowns;
import portwright.model.Design;
import portwright.units.BothSystems;
import portwright.units.Format;

/**
 * What a drill by hand may make of a layout.
 *
 * @param odds of a stop, one a hole
 * @param allInside share of kilns drilled by hand, all holes of each together, that end with no hole at a place that forbids drilling or lighting; 0 to 1,
 *     NaN where it is not told
 * @param wander room of each hole, walls too
 * @param error how the drill was taken to stray
 * @param unknown what was not checked: where a place could forbid drilling by it, neither odds nor room are told
 */
public record DrillOutlook(
        List<HoleOdds> odds, double allInside, List<Wander> wander, DrillError error, Unknowns unknown) {
    /** Share of drillings from which a stop is told. */
    private static final double TOLD = 0.001;

    private static final String[] SLAB = {
        "the back", "back right", "the right", "front right", "the front", "front left", "the left", "back left"
    };
    private static final String[] WALL = {
        "the top", "top right", "the right", "bottom right", "the bottom", "bottom left", "the left", "top left"
    };

    /** Where everything was checked. */
    DrillOutlook(List<HoleOdds> odds, double allInside, List<Wander> wander, DrillError error) {
        this(odds, allInside, wander, error, Unknowns.NONE);
    }

    public DrillOutlook {
        odds = List.copyOf(odds);
        wander = List.copyOf(wander);
    }

    /**
     * Odds alone, without how far each hole may wander; null where the design has no ports.
     *
     * @param check what the rule book says of the design
     */
    public static DrillOutlook oddsAlone(Design design, CheckResult check) {
        return design.ports() == null || design.ports().isEmpty() ? null : of(design, check, false);
    }

    /** Simulated with the drill errors that the design states. */
    public static DrillOutlook of(Design design, CheckResult check) {
        return of(design, check, true);
    }

    private static DrillOutlook of(Design design, CheckResult check, boolean wander) {
        Unknowns unknown = Unknowns.of(check);
        DrillError error = DrillError.of(design);
        if (!unknown.places().isEmpty()) {
            return new DrillOutlook(List.of(), Double.NaN, List.of(), error, unknown);
        }
        Tolerance.Odds odds = Tolerance.odds(design);
        return new DrillOutlook(
                odds.holes(), odds.allInside(), wander ? Tolerance.wander(design) : List.of(), error, unknown);
    }

    /** Whether odds and room are told: not while a rule that could forbid drilling at a place is not checked. */
    public boolean told() {
        return unknown.places().isEmpty();
    }

    /** Why they are not, in sentences; empty where they are. */
    public String whyNot() {
        return told()
                ? ""
                : "Odds of drilling by hand are not told, nor how far a hole may stray: places are known only in part. N"
                        + Unknowns.words(unknown.places()).substring(1) + ".";
    }

    /** The hole that may stray least; null when there is none. */
    public Wander tightest() {
        return wander.stream().min(Comparator.comparingDouble(Wander::leastMm)).orElse(null);
    }

    /** The direction of least room in words; on walls seen from inside. */
    public static String towards(Wander w) {
        String[] words = w.wall() ? WALL : SLAB;
        return words[(int) Math.round(w.leastBearing() / 45) % words.length];
    }

    /** Both in a sentence or two; empty when there is no hole. */
    public String words() {
        if (!told()) {
            return whyNot();
        }
        Wander w = tightest();
        if (w == null) {
            return "";
        }
        if (odds.isEmpty()) {
            return room(w);
        }
        return share()
                + (allInside < HoleOdds.TARGET
                        ? under() + (w.stoppedAtMark() ? " " : " drill with a guide. " + blame())
                        : ". ")
                + room(w);
    }

    /** What is aimed at is meant of each hole; all together may miss it all the same. */
    private String under() {
        String aim = "the " + Format.plain(100 * HoleOdds.TARGET, 0) + " aimed at";
        return odds.stream().allMatch(HoleOdds::meetsTarget)
                ? ". Each hole by itself keeps " + aim + ", all together do not:"
                : ", under " + aim + ":";
    }

    /** How many kilns end well, in a sentence without its full stop; only where it is told. */
    public String share() {
        return "Drilled by hand (" + error.words() + "), " + percent()
                + " of 100 such kilns end with no hole at a place that forbids drilling or lighting" + asFar();
    }

    /** What the odds leave out, to end their sentence with; empty for nothing. */
    private String asFar() {
        return unknown.others().isEmpty() ? "" : ", as far as checked (" + Unknowns.words(unknown.others()) + ")";
    }

    /** The same in short; empty when there is no hole to judge. */
    public String brief() {
        return !told()
                ? whyNot()
                : odds.isEmpty()
                        ? ""
                        : "Drilled by hand, " + percent()
                                + " of 100 end with no hole where it forbids drilling or lighting" + asFar() + ".";
    }

    private String percent() {
        return 100 * allInside > 99.95 ? "more than 99.9" : Format.plain(100 * allInside, 1);
    }

    /** One line for each hole that stops in more than 1 of 1000 drillings: how often, by which rules, and where its mark would be safer if it misses the target. */
    public List<String> lines() {
        return odds.stream()
                .filter(o -> o.stop() > TOLD)
                .map(DrillOutlook::line)
                .toList();
    }

    private static String line(HoleOdds o) {
        String rules = o.byRule().entrySet().stream()
                .filter(e -> e.getValue() > TOLD)
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(e -> e.getKey() + " " + hundred(e.getValue()))
                .collect(Collectors.joining(", "));
        String nudge = o.meetsTarget()
                ? ""
                : o.hasNudge()
                        ? "; its mark " + nudge(o)
                        : "; no mark within " + Format.plain(Nudge.REACH_MM, 0) + " mm is safer";
        return o.hole() + ": stopped in " + hundred(o.stop()) + " of 100, by " + rules + nudge + ".";
    }

    private static String hundred(double share) {
        return Format.plain(100 * share, 1);
    }

    /** The hole that stops most often, by which rule, and where its mark would be safer. */
    private String blame() {
        HoleOdds worst =
                odds.stream().max(Comparator.comparingDouble(HoleOdds::stop)).orElseThrow();
        String rule = worst.byRule().entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(e -> " by " + e.getKey())
                .orElse("");
        String most = "Most often " + worst.hole() + rule + " (" + hundred(worst.stop()) + " of 100)";
        return worst.hasNudge() ? most + "; its mark " + nudge(worst) + ". " : most + ". ";
    }

    /** What a shift of the mark makes of the odds; said where it is not enough. */
    private static String nudge(HoleOdds o) {
        String makes = shift(o) + " makes that " + hundred(o.stopNudged());
        return o.nudgedMeetsTarget()
                ? makes
                : makes + ", the least within " + Format.plain(Nudge.REACH_MM, 0) + " mm: the "
                        + Format.plain(100 - 100 * HoleOdds.TARGET, 0) + " aimed at is not reached there";
    }

    /** A shift of a mark along its two axes, so that a ruler can follow it. */
    private static String shift(HoleOdds o) {
        String[] ahead = o.wall() ? new String[] {"up", "down"} : new String[] {"to the back", "to the front"};
        return Stream.of(along(o.nudgeX(), "to the right", "to the left"), along(o.nudgeY(), ahead[0], ahead[1]))
                        .filter(w -> !w.isEmpty())
                        .collect(Collectors.joining(" and "))
                + (o.wall() ? ", seen from inside," : "");
    }

    private static String along(double mm, String over, String under) {
        return Math.abs(mm) < 0.05 ? "" : BothSystems.told(Math.abs(mm), 1, "mm") + " " + (mm > 0 ? over : under);
    }

    private String room(Wander w) {
        return w.leastMm() >= Wander.MOST_MM
                ? "Looked at to " + Format.plain(Wander.MOST_MM, 0)
                        + " mm off each mark: no place there forbids drilling or lighting"
                        + (unknown.others().isEmpty()
                                ? "; drill to the mark all the same."
                                : " by the rules that were checked.")
                : w.stoppedAtMark()
                        ? "at its very mark " + w.hole() + " is stopped already; no guide helps, it must move."
                        : "Least room: " + w.hole() + " may wander " + BothSystems.told(w.leastMm(), 1, "mm") + " to "
                                + towards(w) + (w.wall() ? ", seen from inside." : ".");
    }
}
