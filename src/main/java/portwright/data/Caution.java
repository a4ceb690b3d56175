package portwright.data;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import portwright.source.Source;

/**
 * One hazard of the conversion.
 *
 * @param id {@code H01} and on
 * @param moment when it matters
 * @param severity {@code stop}, {@code caution} or {@code note}
 * @param rules rules that compute it from a design; empty where it stands as a caution
 * @param words as they stand in the table: {@code {floor}}, {@code {meter}} and {@code {wait}} hold the place of figures that a design may raise
 * @param onTemplate whether it prints on the drilling template
 * @param card the words on the firing card; empty where it does not stand there
 * @param needs what the kiln must have for it to bear on it
 * @param source where it comes from
 */
public record Caution(
        String id,
        Moment moment,
        String severity,
        List<String> rules,
        String words,
        boolean onTemplate,
        String card,
        Needs needs,
        Source source) {

    public Caution {
        rules = List.copyOf(rules);
    }

    /** What a hazard comes with. */
    public enum Needs {
        NOTHING,
        /** Gas, wherever it comes from. */
        GAS,
        /** Gas that comes from a cylinder. */
        CYLINDER;

        /** Of the column {@code needs}: empty, {@code gas} or {@code cylinder}. */
        public static Needs of(Table.Row r) {
            return switch (r.text("needs", "")) {
                case "" -> NOTHING;
                case "gas" -> GAS;
                case "cylinder" -> CYLINDER;
                default -> throw r.error("needs", "'" + r.text("needs") + "' must be gas, cylinder or empty");
            };
        }

        /** Whether a kiln has it. */
        public boolean holds(boolean gas, boolean cylinder) {
            return switch (this) {
                case NOTHING -> true;
                case GAS -> gas;
                case CYLINDER -> gas && cylinder;
            };
        }
    }

    /** Whether it bears on a kiln with or without gas, in or not in cylinders. */
    public boolean holds(boolean gas, boolean cylinder) {
        return needs.holds(gas, cylinder);
    }

    /** The moments, in order of the work. */
    public enum Moment {
        BEFORE_DRILLING("Before drilling"),
        DRILLING("Drilling"),
        GAS("Gas"),
        FIRST_LIGHTING("First lighting"),
        EVERY_FIRING("Every firing"),
        AFTER("After");

        private final String heading;

        Moment(String heading) {
            this.heading = heading;
        }

        /** Heading on paper. */
        public String heading() {
            return heading;
        }
    }

    /** The words by the rule book's own figures. */
    public String text() {
        return byTheBook(words);
    }

    /** Words of a table by the rule book's own figures. */
    public static String byTheBook(String words) {
        return told(
                words,
                (int) SafetyNumber.value("gas-on-floor") + " °C",
                (int) SafetyNumber.value("gas-on-working") + " °C",
                "at least " + (int) SafetyNumber.value("kiln-open") + " minutes");
    }

    /**
     * Words of a table with the figures that gas is lit by.
     *
     * @param floor coldest place of the chamber at which gas may burn
     * @param meter reading over which gas may burn
     * @param wait how long the kiln stands open before gas is lit
     */
    public static String told(String words, String floor, String meter, String wait) {
        return words.replace("{floor}", floor).replace("{meter}", meter).replace("{wait}", wait);
    }

    /** All hazards in table order. */
    public static List<Caution> all() {
        return Table.load("cautions.csv")
                .expect(
                        "id",
                        "moment",
                        "severity",
                        "rules",
                        "text",
                        "template",
                        "card",
                        "needs",
                        "title",
                        "edition",
                        "place",
                        "standing")
                .rows()
                .stream()
                .map(Caution::of)
                .toList();
    }

    /** Those that print on the firing card, stops first. */
    public static List<Caution> forCard() {
        return sorted(all().stream().filter(Caution::onCard).toList());
    }

    /** Whether it prints on the firing card. */
    public boolean onCard() {
        return !card.isEmpty();
    }

    private static List<Caution> sorted(List<Caution> list) {
        List<String> order = List.of("stop", "caution", "note");
        return list.stream()
                .sorted(Comparator.comparingInt(c -> order.indexOf(c.severity)))
                .toList();
    }

    private static Caution of(Table.Row r) {
        String rules = r.text("rules", "");
        String severity = r.text("severity");
        if (!List.of("stop", "caution", "note").contains(severity)) {
            throw r.error("severity", "'" + severity + "' must be stop, caution or note");
        }
        Moment moment;
        try {
            moment = Moment.valueOf(r.text("moment").toUpperCase(Locale.ROOT).replace('-', '_'));
        } catch (IllegalArgumentException e) {
            throw r.error("moment", "'" + r.text("moment") + "' is no moment of the work");
        }
        return new Caution(
                r.text("id"),
                moment,
                severity,
                rules.isEmpty() ? List.of() : List.of(rules.split(";")),
                r.text("text"),
                r.yes("template"),
                r.text("card", ""),
                Needs.of(r),
                r.source());
    }
}
