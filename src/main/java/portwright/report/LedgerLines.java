package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogOrder;
import portwright.calc.firing.log.PowerTrend;
import portwright.units.Format;

/** The ledger of a kiln in lines. */
final class LedgerLines {
    private static final double OPEN_KG = 0.02;

    private LedgerLines() {}

    /** The ledger over all records. */
    static List<ReportLine> of(Ledger l) {
        List<ReportLine> b = new ArrayList<>();
        order(b, l.order());
        if (!l.notRead().isEmpty()) {
            add(b, "not read", records(l.notRead()) + ": the temperature scale is in doubt; counted for nothing here");
        }
        if (!l.stoppedShort().isEmpty()) {
            add(
                    b,
                    "not full",
                    records(l.stoppedShort())
                            + (l.stoppedShort().size() == 1 ? " ends" : " end")
                            + " before the last goal; its gas and hours are those of a part of a firing");
        }
        if (!l.notKept().isEmpty()) {
            add(
                    b,
                    "not kept",
                    records(l.notKept())
                            + (l.notKept().size() == 1 ? " sags in its" : " sag in their")
                            + " last hold under what it was to hold, so the last goal is not met; gas and hours are those of a whole firing");
        }
        add(
                b,
                "reduction",
                unread(l, l.reductionHours() < 0.05 ? "" : ". What is read makes ")
                        + (!l.gasUnread().isEmpty() && l.reductionHours() < 0.05
                                ? "; "
                                : n(l.reductionHours(), 1) + " h ")
                        + (l.oxidisedSince()
                                ? "since the last oxidising firing"
                                : "in these records, without an oxidising firing among them")
                        + (l.neutralHours() < 0.05
                                ? ""
                                : ", and " + n(l.neutralHours(), 1)
                                        + " h neutral beside it, which wear no elements and renew none")
                        + (l.notTold().isEmpty()
                                ? ""
                                : ". Not counted, for nothing is said of gas and the pace or the heat is another than the plan's: "
                                        + records(l.notTold())
                                        + ". Where no gas was burnt, write in that log's notes column: no gas")
                        + (l.byPlan().isEmpty()
                                ? ""
                                : ". In " + records(l.byPlan())
                                        + " that is the plan's atmosphere: no damper column says how the plate stood"));
        add(
                b,
                "gas",
                (l.gasUnread().isEmpty()
                                ? n(l.gasUsed().kg(), 2) + " kg used"
                                        + range(
                                                l.gasUsed().open(),
                                                l.gasUsed().leastKg(),
                                                l.gasUsed().mostKg())
                                        + ", " + left(l)
                                : unread(
                                        l,
                                        l.gasUsed().kg() > 0
                                                ? "; what is read makes "
                                                        + n(l.gasUsed().kg(), 2) + " kg. Weigh the cylinder"
                                                : "; weigh the cylinder"))
                        + (l.notTold().isEmpty()
                                ? ""
                                : ". NOT COUNTED: " + records(l.notTold())
                                        + ", whose gas is not known: weigh the cylinder"));
        if (l.elements() && !l.powerShares().isEmpty()) {
            List<String> shares = new ArrayList<>();
            l.powerShares().forEach(s -> shares.add(Double.isNaN(s) ? "-" : n(s * 100, 0) + " %"));
            add(
                    b,
                    "power",
                    l.powerShares().stream().allMatch(d -> d.isNaN())
                            ? "not known: no record shows known power over 450 °C, for it needs a step at full or fixed power, or a climb that falls off for two hours with all elements on"
                            : String.join(", ", shares)
                                    + (shares.size() == 1 ? "" : ", record by record,")
                                    + " of the element power that the steps ask for is what the climb shows, if load and brick are the design's; sound elements show about 100 %"
                                    + (shares.contains("-")
                                            ? "; - where a record shows no known power over 450 °C: no step at full or fixed power, and no climb that falls off for two hours with all elements on"
                                            : ""));
            add(b, "elements", trend(l.trend()));
        }
        if (!Double.isNaN(l.thermocoupleK())) {
            add(b, "thermocouple", RecordText.offset(l.thermocoupleK()));
        } else if (l.conesLogged()) {
            add(b, "thermocouple", "no cone logged tells of it");
        }
        l.due().forEach(d -> add(b, "due", words(l, d)));
        if (!l.notTold().isEmpty()) {
            add(
                    b,
                    "due",
                    "say whether gas burned in " + records(l.notTold())
                            + ": write a column gas or the note no gas into the log. If the plan was meant"
                            + ", look at relays and elements before the next firing: one stuck shut or lost changes the pace as well");
        } else if (l.due().isEmpty()) {
            add(b, "due", "nothing that these records tell of");
        }
        return b;
    }

    /** Where cells of the gas column are not read, that nothing is known, and what follows; else nothing. */
    private static String unread(Ledger l, String then) {
        return l.gasUnread().isEmpty()
                ? ""
                : "not known: cells of the gas column are not read in " + records(l.gasUnread()) + then;
    }

    private static void order(List<ReportLine> b, LogOrder o) {
        for (int i = 0; i < o.repeats().size(); i++) {
            if (o.repeats().get(i) >= 0) {
                add(
                        b,
                        "twice",
                        "record " + (i + 1) + " repeats record " + (o.repeats().get(i) + 1)
                                + " row by row; it counts once");
            }
        }
        if (o.counted().size() > 1) {
            List<String> each = o.counted().stream()
                    .map(i -> (i + 1)
                            + (o.startS().get(i).isNaN()
                                    ? ""
                                    : " ("
                                            + LocalDate.ofEpochDay(
                                                    (long) Math.floor(o.startS().get(i) / 86400)) + ")"))
                    .toList();
            add(
                    b,
                    "order",
                    (o.byDate()
                                    ? "by the dates in the logs, records "
                                    : "as given, for not every log has a date beside its times: records ")
                            + String.join(", ", each)
                            + (o.against()
                                    ? ". THE DATES THAT ARE THERE RUN THE OTHER WAY: write a date into every log"
                                    : ""));
        }
        if (!o.overlap().isEmpty()) {
            add(
                    b,
                    "overlap",
                    records(o.overlap())
                            + " and the one before cover the same time; one kiln cannot fire twice at once. Both are counted: leave one out");
        }
    }

    private static String records(List<Integer> numbers) {
        return (numbers.size() == 1 ? "record " : "records ")
                + String.join(
                        ", ", numbers.stream().map(i -> String.valueOf(i + 1)).toList());
    }

    private static String trend(PowerTrend t) {
        if (t == null) {
            return "cannot tell of ageing: no two records show known power in the same heat, without gas or with it in both."
                    + " To be told, log in each the same electric step at full power (rate full) or a fixed share of the elements, for half an hour or more over 630 °C, and note what the ware weighs, as: load 30 kg";
        }
        String what = "resistance " + (t.rise() >= 0 ? "up " : "down ") + n(Math.abs(t.rise()) * 100, 0) + " % ("
                + n(t.low() * 100, 0) + " to " + n(t.high() * 100, 0) + " %) from record " + (t.first() + 1)
                + " to record " + (t.last() + 1) + ", by the climb from " + n(t.fromK() - ZERO_C, 0) + " to "
                + n(t.toK() - ZERO_C, 0) + " °C " + (t.gas() ? "with gas" : "without gas");
        return t.tells()
                ? what
                : "cannot tell of ageing: " + what + "; the band holds that nothing happened"
                        + ". As logged, a rise of " + n(Math.ceil(t.tellsFrom() * 100), 0) + " % and more would be told"
                        + (t.loadTold()
                                ? ""
                                : "; another load looks the same. With what the ware weighs noted in both logs (as: load 30 kg) one of "
                                        + n(Math.ceil(t.tellsFromNoted() * 100), 0) + " % would");
    }

    private static String left(Ledger l) {
        String full =
                l.refilled() < 0 ? " of the design's fill" : " since the refill noted in record " + (l.refilled() + 1);
        return Double.isNaN(l.gasLeftKg())
                ? "the design states no cylinder and fill"
                : l.gasLeftKg() < 0
                        ? "more than was there" + (l.refilled() < 0 ? "" : full)
                                + ": a cylinder was changed or filled and no log says when. In the log's notes column, in the row where it was, write: new cylinder. Then gas left counts from a full one there"
                        : n(l.gasLeftKg(), 2) + " kg left" + full
                                + range(
                                        l.gasLeftMostKg() - l.gasLeftLeastKg() > OPEN_KG,
                                        l.gasLeftLeastKg(),
                                        l.gasLeftMostKg());
    }

    private static String range(boolean told, double least, double most) {
        return told ? " (" + n(least, 2) + " to " + n(most, 2) + ")" : "";
    }

    /** What is due in words, with the record that asks for it. */
    static String words(Ledger l, Ledger.Due d) {
        return switch (d) {
            case REPAIR_POWER ->
                switch (l.broken().what()) {
                            case STUCK -> "a relay or contactor that may be stuck shut, found in record ";
                            case RELAY -> "relay, switch, breaker or controller, found in record ";
                            case ELEMENT_OR_AIR, AIR_OR_ELEMENT -> "a lost element or too much air, found in record ";
                            default -> "a lost element or the relay of its group, found in record ";
                        }
                        + (l.broken().power() + 1)
                        + ": look and mend before the next firing. This stands until a record that would show it is sound, or a note such as element replaced or new relay";
            case REPAIR_PROBE ->
                "thermocouple, wire or instrument, dead or frozen in record "
                        + (l.broken().probe() + 1)
                        + ": mend before the next firing. This stands until a later record reads well";
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
