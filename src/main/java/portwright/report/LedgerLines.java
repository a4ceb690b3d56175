package portwright.report;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.log.Ledger;
import portwright.units.Format;

/** The ledger of a kiln in lines. */
final class LedgerLines {
    private LedgerLines() {}

    /** The ledger over all records. */
    static List<ReportLine> of(Ledger l) {
        List<ReportLine> b = new ArrayList<>();
        if (!l.stoppedShort().isEmpty()) {
            List<String> which =
                    l.stoppedShort().stream().map(i -> String.valueOf(i + 1)).toList();
            add(
                    b,
                    "not full",
                    (which.size() == 1 ? "record " : "records ") + String.join(", ", which)
                            + (which.size() == 1 ? " ends" : " end")
                            + " before the last goal; its gas and hours are those of a part of a firing");
        }
        add(
                b,
                "reduction",
                n(l.reductionHours(), 1) + " h "
                        + (l.oxidisedSince()
                                ? "since the last oxidising firing"
                                : "in these records, without an oxidising firing among them"));
        add(
                b,
                "gas",
                n(l.gasUsed().kg(), 2) + " kg used"
                        + range(
                                l.gasUsed().open(),
                                l.gasUsed().leastKg(),
                                l.gasUsed().mostKg()) + ", " + left(l));
        List<String> shares = new ArrayList<>();
        l.powerShares().forEach(s -> shares.add(Double.isNaN(s) ? "-" : n(s * 100, 0) + " %"));
        add(
                b,
                "power",
                String.join(", ", shares) + " of what is asked"
                        + (Double.isNaN(l.resistanceRise())
                                ? ""
                                : "; element resistance " + (l.resistanceRise() >= 0 ? "up " : "down ")
                                        + n(Math.abs(l.resistanceRise()) * 100, 0) + " % since the first"));
        if (!Double.isNaN(l.thermocoupleK())) {
            add(b, "thermocouple", RecordText.offset(l.thermocoupleK()));
        }
        l.due().forEach(d -> add(b, "due", words(d)));
        if (l.due().isEmpty()) {
            add(b, "due", "nothing that these records tell of");
        }
        return b;
    }

    private static String left(Ledger l) {
        return Double.isNaN(l.gasLeftKg())
                ? "the design states no cylinder and fill"
                : l.gasLeftKg() < 0
                        ? "more than the design's cylinders held: one was changed or filled between"
                        : n(l.gasLeftKg(), 2) + " kg left of the design's fill"
                                + range(l.gasUsed().open(), l.gasLeftLeastKg(), l.gasLeftMostKg());
    }

    private static String range(boolean told, double least, double most) {
        return told ? " (" + n(least, 2) + " to " + n(most, 2) + ")" : "";
    }

    /** What is due in words. */
    static String words(Ledger.Due d) {
        return switch (d) {
            case OXIDISING_FIRING ->
                "an oxidising firing to 700 °C or more before the next reduction, to renew the elements' oxide";
            case CYLINDER -> "a full cylinder: what is left may not last a firing like the last one";
            case ELEMENTS -> "measure the elements: they have lost a tenth of their power or more";
            case THERMOCOUPLE -> "a new thermocouple, or a corrected reading";
        };
    }

    private static void add(List<ReportLine> out, String name, String value) {
        out.add(new ReportLine(name, value));
    }

    private static String n(double v, int decimals) {
        return Double.isFinite(v) ? Format.plain(v, decimals) : "-";
    }
}
