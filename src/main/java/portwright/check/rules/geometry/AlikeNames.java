package portwright.check.rules.geometry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Design;
import portwright.review.Review;
import portwright.source.Source;

/** Names of parts that differ by signs which nobody sees or tells apart: on paper the two parts have one name. */
public final class AlikeNames implements Rule {
    /** Letters of Greek and Cyrillic with the Latin letter or figure that each looks like, pair by pair, and figures beside letters. */
    private static final String PAIRS =
            "АAВBЕEЅSІIЈJКKМMНHОOРPСCТTХXУYаaеeоoрpсcуyхxіiјjѕsԁdһhԛqԝw" + "ΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧXοoνvιi0O1IlI|I";

    private static final Map<Integer, Integer> TWINS = twins();
    private static final int WIDE_FIRST = 0xFF01;
    private static final int WIDE_LAST = 0xFF5E;
    private static final int WIDE_SHIFT = 0xFEE0;
    private static final int MOST_SIGNS = 4;
    private static final Source SOURCE = Source.judgement("findings and paper name the parts");

    @Override
    public String id() {
        return "alike-names";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Map<String, String> seen = new LinkedHashMap<>();
        for (String name : names(review.design())) {
            String first = seen.putIfAbsent(look(name), name);
            if (first == null || first.equals(name)) {
                continue;
            }
            out.add(Geo.finding(this, Severity.NOTE, limits, null)
                    .source(SOURCE)
                    .parts(name, first)
                    .say(
                            "Two parts have names that look alike, " + name + " and " + first + ": "
                                    + apart(name, first) + ".",
                            "Name one of them otherwise."));
        }
    }

    private static List<String> names(Design d) {
        List<String> out = new ArrayList<>();
        if (d.kiln() != null) {
            add(d.kiln().elements(), e -> e.name(), out);
            add(d.kiln().fittings(), f -> f.name(), out);
        }
        add(d.shelves(), s -> s.name(), out);
        add(d.ports(), p -> p.name(), out);
        add(d.burners(), b -> b.name(), out);
        return out;
    }

    private static <T> void add(List<T> parts, Function<T, String> name, List<String> out) {
        if (parts != null) {
            parts.stream().map(name).filter(n -> n != null).forEach(out::add);
        }
    }

    private static Map<Integer, Integer> twins() {
        int[] p = PAIRS.codePoints().toArray();
        Map<Integer, Integer> out = new LinkedHashMap<>();
        for (int i = 0; i < p.length; i += 2) {
            out.put(p[i], p[i + 1]);
        }
        return out;
    }

    /** The name as an eye takes it: nothing unseen, one blank for many, one letter for those that look like it. */
    static String look(String name) {
        StringBuilder b = new StringBuilder();
        Normalizer.normalize(name, Normalizer.Form.NFC).codePoints().forEach(c -> {
            if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
                b.append(' ');
            } else if (!unseen(c)) {
                int narrow = c >= WIDE_FIRST && c <= WIDE_LAST ? c - WIDE_SHIFT : c;
                b.appendCodePoint(TWINS.getOrDefault(narrow, narrow));
            }
        });
        return b.toString().replaceAll(" +", " ").strip();
    }

    private static boolean unseen(int c) {
        return Character.getType(c) == Character.FORMAT
                || Character.isISOControl(c)
                || c >= 0xFE00 && c <= 0xFE0F
                || c == 0x034F
                || c == 0x115F
                || c == 0x1160
                || c == 0x3164;
    }

    /** By which signs two names differ: {@code only the first has U+0410, only the second U+0041}. */
    private static String apart(String one, String other) {
        String first = only(one, other);
        String second = only(other, one);
        return first.isEmpty() && second.isEmpty()
                ? "the same signs, in another order or number"
                : first.isEmpty()
                        ? "only the second has " + second
                        : "only the first has " + first + (second.isEmpty() ? "" : ", only the second " + second);
    }

    private static String only(String in, String notIn) {
        Set<Integer> signs = in.codePoints().boxed().collect(Collectors.toCollection(TreeSet::new));
        signs.removeAll(notIn.codePoints().boxed().toList());
        return signs.stream()
                .limit(MOST_SIGNS)
                .map(c -> String.format("U+%04X", c))
                .collect(Collectors.joining(", "));
    }
}
