package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import portwright.check.Finding;

/** Compares the findings of two designs that are one kiln: same rules, severities and parts, figures to 1e-9, the balance to what its radius is sought to. */
final class SameFindings {
    private static final double SAME = 1e-9;
    /** The balance where an outline bends inward goes by the widest circle in it, which is sought to 0.02 mm, of 200 mm and more of radius. */
    private static final double SAME_BALANCE = 1e-4;

    private SameFindings() {}

    private static List<Finding> sorted(List<Finding> findings, UnaryOperator<String> part) {
        return findings.stream()
                .sorted(Comparator.comparing((Finding f) -> key(f, part))
                        .thenComparing(
                                f -> f.measured() == null ? 0 : f.measured().value()))
                .toList();
    }

    private static String key(Finding f, UnaryOperator<String> part) {
        return f.rule() + " " + f.severity() + " "
                + f.parts().stream().map(SameFindings::panel).map(part).toList();
    }

    /** A wall by its number alone: where it lies differs between the two. */
    private static String panel(String part) {
        return part.replaceFirst("^wall (\\d+)( \\(.*\\))?$", "panel $1");
    }

    static void check(String what, List<Finding> before, List<Finding> after, UnaryOperator<String> part) {
        List<Finding> a = sorted(before, part);
        List<Finding> b = sorted(after, UnaryOperator.identity());
        assertThat(b.stream().map(f -> key(f, UnaryOperator.identity())).toList())
                .as(what)
                .isEqualTo(a.stream().map(f -> key(f, part)).toList());
        for (int i = 0; i < a.size(); i++) {
            if (a.get(i).measured() != null) {
                double v = a.get(i).measured().value();
                double scale = Math.max(1, Math.abs(v));
                assertThat(b.get(i).measured().value())
                        .as(what + ": " + a.get(i).message())
                        .isCloseTo(v, within((a.get(i).rule().equals("port-balance") ? SAME_BALANCE : SAME) * scale));
            }
            if (a.get(i).limit() != null) {
                assertThat(b.get(i).limit().value())
                        .as(what + ", limit")
                        .isCloseTo(
                                a.get(i).limit().value(),
                                within(SAME
                                        * Math.max(1, Math.abs(a.get(i).limit().value()))));
            }
        }
    }
}
