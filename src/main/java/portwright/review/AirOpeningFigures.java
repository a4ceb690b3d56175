package portwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.calc.room.CombustionAir;
import portwright.calc.room.CombustionAir.Method;
import portwright.data.SafetyNumber;
import portwright.model.Duct;
import portwright.model.LeadsTo;
import portwright.model.Opening;
import portwright.model.Room;

/**
 * Openings and room volume against every method of the fuel-gas code family. Of two openings one begins within 305 mm of the ceiling and one within
 * 305 mm of the floor; a single one begins near the ceiling. Where heights are not given the methods that need them count as not met.
 */
final class AirOpeningFigures {
    private static final double NEAR_M = 0.305;

    /** Where an opening lies; {@code null} unknown. */
    private record Placed(int index, Opening opening, double areaM2, Boolean high, Boolean low) {
        boolean may(boolean wantHigh) {
            return !Boolean.FALSE.equals(wantHigh ? high : low);
        }

        boolean is(boolean wantHigh) {
            return Boolean.TRUE.equals(wantHigh ? high : low);
        }
    }

    private final Room room;
    private final double grossW;
    private final double volumeM3;
    private final List<Placed> placed = new ArrayList<>();
    private final List<String> open = new ArrayList<>();

    private AirOpeningFigures(Room room, List<Double> clearM2, double grossW, double volumeM3) {
        this.room = room;
        this.grossW = grossW;
        this.volumeM3 = volumeM3;
        for (int i = 0; i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            placed.add(new Placed(i, o, clearM2.get(i), near(o, true), near(o, false)));
        }
    }

    /** @param clearM2 clear area of each opening of the room, 0 where not known */
    static RoomReview.AirOpenings of(Room room, List<Double> clearM2, double grossW, double volumeM3) {
        return new AirOpeningFigures(room, clearM2, grossW, volumeM3).all();
    }

    private Boolean near(Opening o, boolean ceiling) {
        if (o.level() == null || ceiling && room.ceiling() == null) {
            return null;
        }
        double half = o.height() == null ? 0 : o.height().metres() / 2;
        double gap = ceiling
                ? room.ceiling().metres() - o.level().metres() - half
                : o.level().metres() - half;
        return gap <= NEAR_M * (1 + 1e-9);
    }

    private RoomReview.AirOpenings all() {
        double standard = CombustionAir.standardVolumeM3(grossW);
        Double ach = room.infiltration() == null
                ? null
                : Double.valueOf(room.infiltration().si() * 3600 / volumeM3);
        boolean mustCount = ach != null && ach < CombustionAir.achLeast();
        double known = ach == null || ach == 0
                ? Double.POSITIVE_INFINITY
                : CombustionAir.infiltrationVolumeM3(grossW, ach, false);
        double needed = mustCount ? known : Math.min(standard, known);
        double joined = room.joinedVolume() != null && two(LeadsTo.ROOM, o -> 1)
                ? room.joinedVolume().si()
                : 0;
        String method = null;
        boolean tightness = false;
        if (volumeM3 + joined >= needed) {
            method = (mustCount || known < standard ? "known infiltration" : "standard indoor volume")
                    + (joined > 0 ? " with the rooms joined by two openings" : "");
            tightness = ach == null;
        }
        boolean outdoors = two(LeadsTo.OUTDOORS, o -> 1);
        if (outdoors) {
            method = "two openings to outdoors";
            tightness = false;
        } else if (one()) {
            method = "one opening to outdoors";
            tightness = false;
        } else if (method == null && two(LeadsTo.OUTDOORS, o -> CombustionAir.shareLeft(volumeM3, needed))) {
            method = "room volume and two openings together";
        }
        if (tightness) {
            open.add("room.infiltration");
        }
        double two = CombustionAir.openingM2(Method.TWO_DIRECT, grossW);
        double short2 = method != null ? 0 : Math.max(0, two * CombustionAir.shareLeft(volumeM3, needed) - second());
        return new RoomReview.AirOpenings(
                grossW,
                Double.isFinite(needed) ? needed : null,
                mustCount,
                two,
                CombustionAir.openingM2(Method.TWO_HORIZONTAL, grossW),
                CombustionAir.openingM2(Method.ONE_OUTDOOR, grossW),
                CombustionAir.openingM2(Method.TWO_ROOM, grossW),
                method,
                short2,
                (int) room.openings().stream().filter(o -> !wide(o)).count(),
                method == null || tightness ? open.stream().distinct().toList() : List.of());
    }

    private double second() {
        return placed.stream()
                .filter(p -> p.opening.to() == LeadsTo.OUTDOORS && wide(p.opening))
                .map(Placed::areaM2)
                .sorted(Comparator.reverseOrder())
                .skip(1)
                .findFirst()
                .orElse(0.0);
    }

    private interface Share {
        double of(Placed p);
    }

    /** Two different openings, one high and one low, each large enough; notes what is not known where that alone is in the way. */
    private boolean two(LeadsTo to, Share share) {
        for (Placed a : placed) {
            for (Placed b : placed) {
                if (a != b && fits(a, to, share) && fits(b, to, share) && a.may(true) && b.may(false)) {
                    if (a.is(true) && b.is(false)) {
                        return true;
                    }
                    lacks(a, true);
                    lacks(b, false);
                }
            }
        }
        return false;
    }

    /**
     * Whether an opening is at least as wide and high as the code asks; by its height and area, else by the round hole of that width, the least area that
     * can have it.
     */
    private static boolean wide(Opening o) {
        double least = SafetyNumber.value("opening-least") * (1 - 1e-9);
        if (o.area() == null) {
            return true;
        }
        return o.height() == null
                ? o.area().si() >= Math.PI / 4 * least * least
                : o.height().metres() >= least && o.area().si() / o.height().metres() >= least;
    }

    private boolean fits(Placed p, LeadsTo to, Share share) {
        Method m = to == LeadsTo.ROOM
                ? Method.TWO_ROOM
                : p.opening.duct() == Duct.HORIZONTAL ? Method.TWO_HORIZONTAL : Method.TWO_DIRECT;
        return wide(p.opening)
                && p.opening.to() == to
                && p.areaM2 >= CombustionAir.openingM2(m, grossW) * share.of(p) * (1 - 1e-9);
    }

    private boolean one() {
        for (Placed p : placed) {
            if (p.opening.to() == LeadsTo.OUTDOORS
                    && wide(p.opening)
                    && p.opening.duct() != Duct.HORIZONTAL
                    && p.areaM2 >= CombustionAir.openingM2(Method.ONE_OUTDOOR, grossW) * (1 - 1e-9)
                    && p.may(true)) {
                if (p.is(true)) {
                    return true;
                }
                lacks(p, true);
            }
        }
        return false;
    }

    private void lacks(Placed p, boolean high) {
        if (p.opening.level() == null) {
            open.add("room.openings[" + p.index + "].level");
        }
        if (high && room.ceiling() == null) {
            open.add("room.ceiling");
        }
    }
}
