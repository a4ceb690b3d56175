package portwright.check.rules.geometry;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.FittingShape;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.geometry.Segment3;
import portwright.geometry.Shape;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.review.Review;
import portwright.source.Source;

/** The flame's envelope meets a thermocouple or spyhole. */
public final class FlameOnFitting implements Rule {
    @Override
    public String id() {
        return "flame-on-fitting";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE =
            Source.practice("a thermocouple in the flame reads the flame, and a flame at a spyhole comes out of it");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.fittingLacks().isEmpty()) {
            out.lacks(this, kiln.fittingLacks().toArray(String[]::new));
        }
        if (kiln.holes().stream().anyMatch(Hole::inlet)) {
            String[] probes = kiln.fittings().stream()
                    .map(FittingShape::fitting)
                    .filter(f -> f.kind() == FittingKind.THERMOCOUPLE && f.on() == On.WALL && f.reach() == null)
                    .map(f -> "kiln.fittings[" + kiln.design().kiln().fittings().indexOf(f) + "].reach")
                    .toArray(String[]::new);
            if (probes.length > 0) {
                out.lacks(this, probes);
            }
        }
        for (Hole h : kiln.holes()) {
            for (FittingShape f : h.inlet() ? kiln.fittings() : List.<FittingShape>of()) {
                Body body = body(kiln, f);
                if (body != null && room(kiln, h, body, 0) <= 0) {
                    out.add(Geo.finding(this, Severity.CAUTION, limits, null)
                            .source(SOURCE)
                            .parts(h.name(), f.name())
                            .say(
                                    "The flame of " + h.name() + " meets " + f.name() + ".",
                                    f.fitting().kind() == FittingKind.THERMOCOUPLE
                                            ? "Its reading is the flame's, not the chamber's. Move the probe or the port."
                                            : "Keep it plugged while gas burns, or move the port."));
                }
            }
        }
    }

    /** Distance of a hole's flame to what of a fitting stands in the chamber, mm; farther than {@code reach} is told roughly. */
    public static double room(KilnGeometry kiln, Hole h, Body b, double reach) {
        return Flame.of(kiln, h, Flame.HALF_ANGLE).distance(b.line(), reach + b.radius()) - b.radius();
    }

    /** What of a fitting the flame may meet: a straight piece from the wall inward, and its radius, mm. */
    public record Body(String name, Segment3 line, double radius) {}

    /** Thermocouples and spyholes in the wall, as a flame meets them. */
    public static List<Body> bodies(KilnGeometry kiln) {
        return kiln.fittings().stream()
                .map(f -> body(kiln, f))
                .filter(Objects::nonNull)
                .toList();
    }

    private static Body body(KilnGeometry kiln, FittingShape f) {
        FittingKind kind = f.fitting().kind();
        if (kind != FittingKind.THERMOCOUPLE && kind != FittingKind.SPYHOLE
                || f.face().on() != On.WALL) {
            return null;
        }
        Panel p = kiln.panel(f.face().panel());
        Pt at;
        double radius;
        if (f.shape() instanceof Shape.Disc disc) {
            at = disc.circle().centre();
            radius = disc.circle().radius();
        } else if (f.shape() instanceof Shape.Poly poly) {
            Segment box = poly.outline().bounds();
            at = new Pt((box.a().x() + box.b().x()) / 2, (box.a().y() + box.b().y()) / 2);
            radius = box.a().distance(box.b()) / 2;
        } else {
            return null;
        }
        double reach = f.fitting().reach() == null ? 0 : f.fitting().reach().mm();
        Segment3 line = new Segment3(p.point(at.x(), at.y(), 0), p.point(at.x(), at.y(), -reach));
        return new Body(f.name(), line, radius);
    }
}
