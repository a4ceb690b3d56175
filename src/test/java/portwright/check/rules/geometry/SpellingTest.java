package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.mm;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;
import portwright.review.Review;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Inch and metric spellings of one design give the same findings. */
class SpellingTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());

    /** The starters, ports pushed about on a sixteenth of an inch, read from text: once all lengths in inches, once all in metric units. */
    @Test
    void inchAndMetricSpellingsGiveTheSameFindings() {
        int compared = 0;
        for (long seed = 1; seed <= 24; seed++) {
            Random r = new Random(seed);
            List<String> names = Starters.names();
            DesignText start =
                    Starters.find(names.get((int) (seed % names.size()))).orElseThrow();
            DesignText pushed = push(start, r);
            ReadResult inch = DesignText.read(spelled(pushed, v -> inches(v, r)).toText());
            ReadResult metric =
                    DesignText.read(spelled(pushed, v -> metric(v, r)).toText());
            assertThat(inch.problems()).as("seed " + seed).isEmpty();
            assertThat(metric.problems()).as("seed " + seed).isEmpty();
            boolean all = seed <= 4;
            List<Finding> a = all
                    ? BOOK.check(Review.of(inch.design())).findings()
                    : GeoBench.check(inch.design()).findings();
            List<Finding> b = all
                    ? BOOK.check(Review.of(metric.design())).findings()
                    : GeoBench.check(metric.design()).findings();
            SameFindings.check("inch and metric, seed " + seed, a, b, UnaryOperator.identity());
            compared += a.size();
        }
        assertThat(compared).isGreaterThan(150);
    }

    private static DesignText push(DesignText d, Random r) {
        DesignText out = d;
        for (int i = 0; i < d.size("ports"); i++) {
            String x = "ports[" + i + "].at[0]";
            if (d.get(x).isPresent()) {
                DesignText moved =
                        out.setText(x, TestKiln.len(d.get(x).get()).mm() / 25.4 + (r.nextInt(33) - 16) / 16.0 + " in");
                out = moved.read().ok() ? moved : out;
            }
        }
        return out;
    }

    private static DesignText spelled(DesignText d, UnaryOperator<String> to) {
        List<String> leaves = new ArrayList<>();
        leaves(d, "", leaves);
        DesignText out = d;
        for (String path : leaves) {
            String word = path.substring(path.lastIndexOf('.') + 1);
            if (Set.of("name", "title", "notes", "port", "brick").contains(word)
                    || !path.contains(".") && path.equals("units")) {
                continue;
            }
            String typed = d.get(path).orElseThrow();
            try {
                Quantity.parse(typed, Kind.LENGTH);
            } catch (QuantityException e) {
                continue;
            }
            out = out.setText(path, to.apply(typed));
        }
        return out;
    }

    private static void leaves(DesignText d, String path, List<String> out) {
        for (String n : d.fields(path)) {
            leaves(d, path.isEmpty() ? n : path + "." + n, out);
        }
        if (d.fields(path).isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                leaves(d, path + "[" + i + "]", out);
            }
            if (d.size(path) == 0 && d.get(path).isPresent()) {
                out.add(path);
            }
        }
    }

    private static BigDecimal exactMm(String typed) {
        return new BigDecimal(Quantity.parse(typed, Kind.LENGTH).mm());
    }

    private static String inches(String typed, Random r) {
        BigDecimal in = exactMm(typed).divide(new BigDecimal("25.4"), new MathContext(16));
        if (in.compareTo(new BigDecimal(12)) > 0 && r.nextBoolean()) {
            BigDecimal[] feet = in.divideAndRemainder(new BigDecimal(12));
            return feet[0].toPlainString() + " ft " + feet[1].toPlainString() + " in";
        }
        return in.toPlainString() + (r.nextBoolean() ? " in" : "\"");
    }

    private static String metric(String typed, Random r) {
        BigDecimal mm = exactMm(typed).round(new MathContext(16));
        return switch (r.nextInt(3)) {
            case 0 -> mm.toPlainString() + " mm";
            case 1 -> mm.movePointLeft(1).toPlainString() + " cm";
            default -> mm.movePointLeft(3).toPlainString() + " m";
        };
    }
}
