package portwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.model.Design;
import portwright.model.ElementRun;

/** Elements that no hole can be kept clear of, since nobody knows where they run: no paper to drill from is made of such a design. */
public final class UnknownElements {
    private static final String RULE = "element-clearance";

    /** A field of one element. Which way a groove leans is left to the verdict: it is counted as straight, and says so. */
    private static final Pattern FIELD = Pattern.compile("kiln\\.elements\\[(\\d+)\\]\\.(?!groove\\.slope$)(.+)");

    private UnknownElements() {}

    /** Fields without which the clearance from a known element was not checked; empty where all are there. */
    public static List<String> fields(CheckResult result) {
        return result.notChecked().stream()
                .filter(n -> n.rule().equals(RULE) && n.forbids() == Forbids.DRILLING)
                .flatMap(n -> n.needs().stream())
                .filter(f -> FIELD.matcher(f).matches())
                .distinct()
                .toList();
    }

    /** Ends with {@link SheetRefused} where the elements are not known or known only in part; {@code not}: what is not done. */
    static void refuse(String not, CheckResult result, Design design) {
        if (design.kiln().elements() == null) {
            throw refused(
                    not,
                    "are unknown",
                    "Type them in the Kiln step, or say there that there are none",
                    "kiln.elements, [] for none");
        }
        List<String> fields = fields(result);
        if (!fields.isEmpty()) {
            throw refused(
                    not,
                    "are known only in part (not known: "
                            + words(fields, design.kiln().elements()) + ")",
                    "Type what is missing in the Kiln step",
                    String.join(", ", fields));
        }
    }

    private static SheetRefused refused(String not, String how, String cure, String file) {
        return new SheetRefused(
                not + ": the kiln's elements " + how + ", so no hole can be kept clear of them. " + cure,
                " (in the file: " + file + ")",
                ".");
    }

    /** {@code height of E1, E2; groove of F1}. */
    private static String words(List<String> fields, List<ElementRun> elements) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (String f : fields) {
            Matcher m = FIELD.matcher(f);
            if (m.matches()) {
                names.computeIfAbsent(m.group(2).replace('.', ' '), k -> new ArrayList<>())
                        .add(elements.get(Integer.parseInt(m.group(1))).name());
            }
        }
        return names.entrySet().stream()
                .map(e -> e.getKey() + " of " + String.join(", ", e.getValue()))
                .collect(Collectors.joining("; "));
    }
}
