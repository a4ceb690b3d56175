package portwright.sheet;

import java.util.ArrayList;
import java.util.List;
import portwright.drawing.HoleNote;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.layout.DrillOutlook;
import portwright.layout.Wander;
import portwright.units.BothSystems;
import portwright.units.Format;

/** The table of how far each hole may wander, as words. */
final class WanderRows {
    /** Column heads: eight directions, in floor and lid seen from above, in walls from inside. */
    static final List<String> HEADS = List.of("↑", "↗", "→", "↘", "↓", "↙", "←", "↖");

    /**
     * One line.
     *
     * @param hole number and name
     * @param room millimetres in each of the eight directions
     * @param tightest which rule stops it first, and where
     */
    record Row(String hole, List<String> room, String tightest) {}

    private final DrillOutlook outlook;
    private final List<HoleNote> notes;

    WanderRows(DrillOutlook outlook, List<HoleNote> notes) {
        this.outlook = outlook;
        this.notes = notes;
    }

    List<Row> rows() {
        List<Row> out = new ArrayList<>();
        for (HoleNote n : notes) {
            outlook.wander().stream()
                    .filter(w -> w.hole().equals(n.hole().name()))
                    .forEach(w -> out.add(row(n, w)));
        }
        return out;
    }

    private static Row row(HoleNote n, Wander w) {
        List<String> room = new ArrayList<>();
        int step = w.allowedMm().size() / HEADS.size();
        for (int i = 0; i < HEADS.size(); i++) {
            room.add(mm(w.allowedMm().get(i * step)));
        }
        String tightest = w.leastMm() >= Wander.MOST_MM
                ? ""
                : w.stoppedAtMark()
                        ? "Its mark itself forbids it, by "
                                + w.rules()
                                        .get(w.bearings().indexOf(w.leastBearing()))
                                        .replace('-', ' ')
                                + ": no guide helps, the hole must move."
                        : "Least " + mm(w.leastMm()) + " mm to " + DrillOutlook.towards(w) + ": "
                                + w.rules()
                                        .get(w.bearings().indexOf(w.leastBearing()))
                                        .replace('-', ' ') + ".";
        return new Row(n.number() + "  " + n.hole().name(), room, tightest);
    }

    /** Rounded down, so that the paper never gives more than there is. */
    private static String mm(double v) {
        return v >= Wander.MOST_MM
                ? Format.plain(Wander.MOST_MM, 0) + "+"
                : Format.tenths(Math.floor(v * 10 + 1e-6) / 10);
    }

    /** What the table means and the odds; where they are not told, why. */
    String words() {
        if (!outlook.told()) {
            return RuleWords.inWords(FieldNames.inWords(outlook.whyNot()));
        }
        return "Millimetres that the middle of a hole may stray from its mark before its place forbids drilling or lighting; all other holes at their "
                + "marks, the bore square, with the design's oversize; 25+ is more than 25 mm. A caution may come sooner: check a design anew when you move a hole on purpose. Floor and lid: seen from above, ↑ is the back. Walls: seen from inside, ↑ is up. "
                + BothSystems.metricOnly(outlook.words());
    }
}
