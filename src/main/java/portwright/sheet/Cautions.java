package portwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.data.Caution;
import portwright.data.Table;

/** The cautions that stand on the last sheets, by the moment they matter: how to go about it, then the hazards of the common list. */
final class Cautions {
    /** Whose word comes first. */
    static final String LOCAL_CODE =
            "Local codes, the fire authority, the insurer and licensed gas and electrical practice come before this paper. "
                    + "Where they say otherwise, they are right. The figures are a model's: they do not replace a qualified person's look at the kiln.";

    private Cautions() {}

    static Map<String, List<String>> byMoment() {
        Map<String, List<String>> out = new LinkedHashMap<>();
        for (Table.Row r :
                Table.load("paper-cautions.csv").expect("moment", "words").rows()) {
            out.computeIfAbsent(r.text("moment"), m -> new ArrayList<>()).add(r.text("words"));
        }
        for (Caution c : Caution.all()) {
            if (c.onTemplate() || c.onCard()) {
                out.computeIfAbsent(c.moment().heading(), m -> new ArrayList<>())
                        .add(c.text());
            }
        }
        return out;
    }
}
