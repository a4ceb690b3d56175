package portwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import portwright.calc.room.RoomCo;
import portwright.data.ExposureLimit;
import portwright.review.Known;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.units.Format;

/** Carbon monoxide in the room over the firing: when it passes each exposure limit, with no wind and with the stated wind. */
final class RoomWords {
    private RoomWords() {}

    /** Lines for people; empty where no gas burns. */
    static List<ReportLine> co(Review review) {
        RoomReview room = review.room();
        if (!(review.firing().totals().fuelKg() > 0)) {
            return List.of();
        }
        if (Boolean.FALSE.equals(room.indoors())) {
            return List.of(
                    new ReportLine("CO over time", "not computed: no closed room. Stand upwind, carry a CO meter"));
        }
        List<String> needs = needs(room);
        if (!needs.isEmpty()) {
            return List.of(new ReportLine("CO over time", "not checked: add " + String.join(", ", needs)));
        }
        RoomReview.Co co = room.co().value();
        List<ReportLine> out = new ArrayList<>();
        out.add(new ReportLine("CO over time", "no wind: " + course(co, co.calm())));
        if (review.design().room().wind() != null) {
            out.add(new ReportLine("", "stated wind: " + course(co, co.stated())));
        }
        out.add(
                new ReportLine(
                        "",
                        "Hours from the first lighting, the minutes with open kiln counted, steps with gas at their longest, each as rich as its level and the forecast's band go; rule room-co judges it. A meter in the room decides."));
        return out;
    }

    private static String course(RoomReview.Co co, RoomCo c) {
        List<String> passes = new ArrayList<>();
        levels(co).forEach((ppm, limit) -> {
            double s = c.firstOverS(ppm) - co.gasOnS();
            passes.add(Double.isInfinite(s) ? "never over " + n(ppm, 0) : "over " + n(ppm, 0) + " at " + time(s));
        });
        return "highest " + n(c.peakPpm(), 0) + " ppm"
                + (c.peakPpm() > 0 ? " at " + time(c.peakS() - co.gasOnS()) : "") + "; "
                + String.join(", ", passes);
    }

    /** Minutes under an hour. */
    private static String time(double s) {
        return s < 3600 ? n(Math.max(1, Math.min(s / 60, 59)), 0) + " min" : n(s / 3600, 1) + " h";
    }

    /** Levels of the limits that count, rising. */
    private static SortedMap<Double, ExposureLimit> levels(RoomReview.Co co) {
        TreeMap<Double, ExposureLimit> out = new TreeMap<>();
        for (ExposureLimit l : new ExposureLimit[] {co.eightHours(), co.quarterHour(), co.ceiling()}) {
            if (l != null) {
                out.put(l.value(), l);
            }
        }
        return out;
    }

    private static List<String> needs(RoomReview room) {
        Known<RoomReview.Co> co = room.co();
        return room.indoors() == null ? List.of("room.place") : co.known() ? List.of() : co.needs();
    }

    static void co(ObjectNode root, Review review) {
        RoomReview room = review.room();
        ObjectNode o = root.putObject("roomCo");
        o.put("closedRoom", room.indoors());
        List<String> needs = Boolean.FALSE.equals(room.indoors()) ? List.of() : needs(room);
        ArrayNode lacks = o.putArray("notChecked");
        needs.forEach(lacks::add);
        if (!needs.isEmpty() || !Boolean.TRUE.equals(room.indoors())) {
            return;
        }
        RoomReview.Co co = room.co().value();
        o.put("hoursFrom", "first lighting");
        course(o.putObject("calm"), co, co.calm());
        course(o.putObject("statedWind"), co, co.stated());
    }

    private static void course(ObjectNode o, RoomReview.Co co, RoomCo c) {
        Json.number(o, "peakPpm", c.peakPpm());
        Json.number(o, "peakHours", c.peakPpm() > 0 ? (c.peakS() - co.gasOnS()) / 3600 : null);
        ArrayNode passed = o.putArray("passes");
        levels(co).keySet().forEach(ppm -> {
            double s = c.firstOverS(ppm) - co.gasOnS();
            Json.number(Json.number(passed.addObject(), "ppm", ppm), "hours", Double.isInfinite(s) ? null : s / 3600);
        });
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
