package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.geometry.Face;
import portwright.geometry.Hole;
import portwright.geometry.JointPattern;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.UnitSystem;

/** What a dragged centre catches on: brick centres, joint crossings, the mirror of another port, 15° rays with rings. */
public final class Snap {
    /**
     * Where it caught, and on what.
     *
     * @param round as x and y a place that a rule reads, near enough for what it caught on; else the same as {@code at}
     */
    public record Catch(Pt at, String words, Pt round) {
        Catch(Pt at, String words) {
            this(at, words, at);
        }
    }

    private Snap() {}

    /** The nearest thing within reach, in the part's frame; empty when there is none. */
    public static Optional<Catch> of(KilnGeometry k, Face face, String moving, Pt p, double reachMm, UnitSystem units) {
        List<Catch> all = new ArrayList<>();
        for (Hole h : k.holes()) {
            if (h.name().equals(moving)
                    || h.face().on() != face.on()
                    || face.on() == On.WALL && !h.face().samePart(face)) {
                continue;
            }
            Pt c = h.centre();
            all.add(new Catch(new Pt(-c.x(), c.y()), "mirror of " + h.name()));
            if (face.on() != On.WALL) {
                all.add(new Catch(new Pt(c.x(), -c.y()), "mirror of " + h.name() + ", front and back"));
                all.add(new Catch(new Pt(-c.x(), -c.y()), "opposite " + h.name()));
            } else {
                all.add(new Catch(new Pt(Lengths.grain(p.x(), units, false), c.y()), "height of " + h.name()));
            }
        }
        if (face.on() == On.FLOOR || face.on() == On.LID) {
            for (Hole h : k.holes()) {
                if (h.face().on() != face.on() && h.face().on() != On.WALL) {
                    all.add(new Catch(h.centre(), "in line with " + h.name()));
                }
            }
            JointPattern joints = k.pattern(face.on());
            if (joints != null) {
                joints(joints, p, all);
            }
            polar(p, units, all);
            all.add(new Catch(new Pt(0, 0), "chamber centre"));
        } else {
            all.add(new Catch(new Pt(0, Lengths.grain(p.y(), units, false)), "middle of the panel"));
        }
        Catch best = null;
        for (Catch c : all) {
            double d = c.at().distance(p);
            if (d <= reachMm && (best == null || d < best.at().distance(p) - 1e-9)) {
                best = c;
            }
        }
        return Optional.ofNullable(best);
    }

    private static void joints(JointPattern j, Pt p, List<Catch> all) {
        double c = Math.cos(j.turn());
        double s = Math.sin(j.turn());
        double dx = p.x() - j.origin().x();
        double dy = p.y() - j.origin().y();
        double along = dx * c - dy * s;
        double across = dx * s + dy * c;
        double row = Math.rint(across / j.row() - 0.5);
        double shift = j.half() && Math.floorMod((long) row, 2L) == 1 ? j.brickLength() / 2 : 0;
        double brick = Math.rint((along - shift) / j.brickLength() - 0.5);
        all.add(new Catch(
                back(j, (brick + 0.5) * j.brickLength() + shift, (row + 0.5) * j.row(), c, s), "brick centre"));
        double line = Math.rint(across / j.row());
        double half = j.half() ? j.brickLength() / 2 : j.brickLength();
        all.add(new Catch(back(j, Math.rint(along / half) * half, line * j.row(), c, s), "joint"));
    }

    private static Pt back(JointPattern j, double along, double across, double c, double s) {
        return new Pt(j.origin().x() + along * c + across * s, j.origin().y() - along * s + across * c);
    }

    private static void polar(Pt p, UnitSystem units, List<Catch> all) {
        double ring = units == UnitSystem.INCH ? 6.35 : 5;
        double r = Math.rint(Math.hypot(p.x(), p.y()) / ring) * ring;
        double b = Math.rint(Math.toDegrees(Math.atan2(p.x(), p.y())) / 15) * 15;
        if (r > 0) {
            double t = Math.toRadians(b);
            Pt at = new Pt(r * Math.sin(t), r * Math.cos(t));
            Pt round = new Pt(Lengths.grain(at.x(), units, true), Lengths.grain(at.y(), units, true));
            all.add(new Catch(at, Math.round((b + 360) % 360) + "° ray", round));
        }
    }
}
