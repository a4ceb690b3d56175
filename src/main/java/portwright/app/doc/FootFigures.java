package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.data.SafetyNumber;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.review.Figures;
import portwright.review.FireReview;
import portwright.review.Review;
import portwright.units.Celsius;
import portwright.units.Format;

/** The live figures of the foot, four to six a step. */
public final class FootFigures {
    static final String NONE = "–";

    private FootFigures() {}

    /** Grooves or fittings that are not known may take more. */
    private static String lost(Review shapes, Figures f) {
        return f.weakestFloorSectionShare() == null
                        || shapes.geometry().sectionLacks().isEmpty()
                ? "% lost"
                : "% lost at least";
    }

    /** The figures of a step; {@code lambda} is the range at gas-on with the damper off, as computed off the window's thread. */
    public static List<Figure> of(Step step, Review shapes, Figures f, FireWords fire) {
        List<Figure> out = new ArrayList<>();
        Measures u = new Measures(shapes.design().units());
        switch (step) {
            case KILN -> {
                double litres =
                        f.chamberVolumeL() == null ? shapes.geometry().chamberVolumeM3() * 1000 : f.chamberVolumeL();
                out.add(u.figure("chamber", litres, Measures.VOLUME));
                out.add(u.figure("walls inside", shapes.geometry().wallAreaM2(), Measures.WALLS));
                out.add(new Figure(
                        "sides", String.valueOf(shapes.geometry().panels().size()), ""));
                out.add(new Figure(
                        "elements",
                        shapes.design().kiln().elements() == null
                                ? NONE
                                : String.valueOf(
                                        shapes.design().kiln().elements().size()),
                        ""));
                out.add(new Figure(
                        "electric",
                        shapes.design().kiln().power() == null
                                ? NONE
                                : plain(shapes.design().kiln().power().si() / 1000, 1),
                        "kW"));
            }
            case PORTS -> {
                ports(out, shapes, fire, u);
                gas(out, f, u);
                out.add(new Figure("floor, weakest line", pct(f.weakestFloorSectionShare()), lost(shapes, f)));
            }
            case GAS -> {
                out.add(u.figure("heat, net", f.heatNetKw(), Measures.HEAT));
                out.add(u.figure("gas", f.gasKgPerH(), Measures.GAS_RATE));
                out.add(u.figure("heat by chamber", f.gasWattsPerLitre(), Measures.LOAD));
                out.add(new Figure("lambda at gas-on, open", fire.lambdaOpen(), ""));
                out.add(new Figure(fire.nowLabel(), fire.now(), fire.nowBand()));
            }
            case ROOM -> {
                out.add(new Figure(
                        "CO, worst minute, mixing factor " + Math.round(SafetyNumber.value("mixing-factor")),
                        value(f.roomCoPeakPpm(), 0),
                        "ppm"));
                out.add(new Figure("led outdoors, counted", value(f.ledOutdoorsPct(), 0), "%"));
                out.add(u.figure("fresh air, wind still", f.roomAirM3PerH(), Measures.AIR));
                out.add(u.figure("fresh air wanted", f.freshAirM3PerH(), Measures.AIR));
                out.add(new Figure("oxygen", value(f.roomOxygenPct(), 1), "%"));
                if (open(shapes.design().room())) {
                    out.removeIf(x -> x.value().equals(NONE));
                }
                out.add(new Figure("gas lasts", value(f.cylinderHours(), 1), "h"));
                out.add(new Figure(
                        "air before gas is lit",
                        f.purgeMinutes() == null ? NONE : String.valueOf(f.openMinutes()),
                        "min"));
            }
            case FIRING -> {
                out.addAll(fire.firing());
                out.add(new Figure("gas in cylinder lasts", value(f.cylinderHours(), 1), "h"));
            }
            default -> ports(out, shapes, fire, u);
        }
        return out;
    }

    /** Whether the kiln stands in the open, where nothing is computed of the air round it. */
    private static boolean open(Room room) {
        return room != null && (room.place() == RoomPlace.OUTDOORS || room.place() == RoomPlace.OPEN_SHED);
    }

    /** The figures while newer ones are computed: those of the fire say that they were. */
    public static List<Figure> told(List<Figure> figures, boolean computing) {
        return !computing
                ? figures
                : figures.stream()
                        .map(f -> f.label().startsWith("lambda") && !f.value().equals(NONE)
                                ? new Figure(f.label(), "was " + f.value(), f.unit())
                                : f)
                        .toList();
    }

    private static void ports(List<Figure> out, Review shapes, FireWords fire, Measures u) {
        Figures now = shapes.figures();
        out.add(u.figure("inlets", now.inletAreaMm2(), Measures.HOLES));
        out.add(u.figure("flues", now.flueAreaMm2(), Measures.HOLES));
        out.add(new Figure("flue : inlet", value(now.flueToInletRatio(), 2), ""));
        out.add(new Figure("lambda at gas-on, open", fire.lambdaOpen(), ""));
    }

    private static void gas(List<Figure> out, Figures f, Measures u) {
        out.add(u.figure("gas", f.heatNetKw(), Measures.HEAT));
    }

    private static String value(Double v, int decimals) {
        return v == null || !Double.isFinite(v) ? NONE : plain(v, decimals);
    }

    private static String pct(Double share) {
        return share == null ? NONE : plain(share * 100, 0);
    }

    static String plain(double v, int decimals) {
        String s = Format.plain(v, decimals).replace("-", "−");
        int dot = s.indexOf('.') < 0 ? s.length() : s.indexOf('.');
        return dot > 4 ? s.substring(0, dot - 3) + "\u202f" + s.substring(dot - 3) : s;
    }

    /** Figures of the fire in words, made off the window's thread. */
    public record FireWords(String lambdaOpen, String nowLabel, String now, String nowBand, List<Figure> firing) {
        public static final FireWords NONE = new FireWords("–", "lambda now", "–", "", List.of());

        /** Reads what the design allows. */
        public static FireWords of(Review r) {
            FireReview fire = r.fire();
            List<Figure> firing = FiringWords.figures(
                    r, r.firing() == null ? List.of() : r.firing().rows(fire));
            if (fire == null
                    || !fire.gas()
                    || !fire.kiln().known()
                    || fire.gasOn().isEmpty()) {
                return new FireWords(FootFigures.NONE, "lambda now", FootFigures.NONE, "", firing);
            }
            double on = fire.gasOn().getAsDouble();
            var b = fire.band(on, 1).lambda();
            double top = fire.top().orElse(on);
            double open = fire.damperOpen();
            var state = fire.state(top, open);
            var band = fire.band(top, open).lambda();
            return new FireWords(
                    range(b.low(), b.high()),
                    "lambda, " + plain(open * 100, 0) + " % open, "
                            + Degrees.words(top - Celsius.ZERO_C, r.design().units()),
                    state.lambda().isPresent() ? plain(state.lambda().getAsDouble(), 2) : FootFigures.NONE,
                    "(" + range(band.low(), band.high()) + ")",
                    firing);
        }

        private static String range(Double low, Double high) {
            return low == null || high == null ? FootFigures.NONE : plain(low, 2) + "–" + plain(high, 2);
        }
    }
}
