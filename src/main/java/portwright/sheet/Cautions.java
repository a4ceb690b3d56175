package portwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.data.Caution;
import portwright.data.Table;
import portwright.model.Design;
import portwright.review.LightingLimits;

/** The cautions that stand on the last sheets, by the moment they matter: how to go about it, then the hazards of the common list. */
final class Cautions {
    /** Whose word comes first. */
    static final String LOCAL_CODE =
            "Local codes, the fire authority, the insurer and licensed gas and electrical practice come before this paper. "
                    + "Where they say otherwise, they are right. The figures are a model's: they do not replace a qualified person's look at the kiln.";

    private Cautions() {}

    /** Those that bear on a design: nothing of a cylinder where all gas comes by pipe, nothing of gas where there is none. */
    static Map<String, List<String>> byMoment(Design design, LightingLimits limits) {
        boolean gas = !design.allElectric();
        boolean piped = design.piped();
        Map<String, List<String>> out = new LinkedHashMap<>();
        for (Table.Row r : Table.load("paper-cautions.csv")
                .expect("moment", "needs", "words")
                .rows()) {
            if (!Caution.Needs.of(r).holds(gas, gas && !piped)) {
                continue;
            }
            out.computeIfAbsent(r.text("moment"), m -> new ArrayList<>()).add(told(r.text("words"), limits, piped));
        }
        for (Caution c : Caution.all()) {
            if ((c.onTemplate() || c.onCard()) && c.holds(gas, gas && !piped)) {
                out.computeIfAbsent(c.moment().heading(), m -> new ArrayList<>())
                        .add(told(c.words(), limits, piped));
            }
        }
        return out;
    }

    private static String told(String words, LightingLimits limits, boolean piped) {
        String told = Caution.told(words, limits.floorWords(), limits.meterWords(), limits.airMinutes() + " minutes");
        return piped ? GasCock.words(told) : told;
    }
}
