package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.CoilRun;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment3;
import portwright.geometry.Shape;
import portwright.model.On;

/** Brick between a slab's bore and the coils: those of the slab, and those in the wall that take more room than their groove. */
final class CoilRoom {
    private CoilRoom() {}

    /** @param r radius of the bore, mm */
    static List<Obstacle> of(KilnGeometry kiln, On on, double stop, double caution, double r) {
        List<Obstacle> out = new ArrayList<>();
        for (CoilRun c : kiln.coils()) {
            for (Segment3 s : c.pieces()) {
                if (c.on() == on) {
                    Shape line = new Shape.Strip(List.of(s.a().plan(), s.b().plan()), c.radius());
                    out.add(obstacle(c, stop, caution, Plain.gap(line, r), 0.5, line, stop + r));
                } else if (c.on() == On.WALL && c.wide()) {
                    wall(out, c, s, on == On.FLOOR ? s.a().z() : kiln.height() - s.a().z(), stop, caution, r);
                }
            }
        }
        return out;
    }

    /** Wall coils lie level: the rim of the bore at the hot face is nearest, {@code rise} below or above the coil's middle. */
    private static void wall(
            List<Obstacle> out, CoilRun c, Segment3 s, double rise, double stop, double caution, double r) {
        double near = stop + c.radius();
        if (rise >= caution + c.radius()) {
            return;
        }
        Shape line = new Shape.Strip(List.of(s.a().plan(), s.b().plan()), 0);
        Obstacle.Gap plan = Plain.gap(line, r);
        out.add(obstacle(
                c,
                stop,
                caution,
                (x, y) -> Math.hypot(Math.max(0, plan.at(x, y)), rise) - c.radius(),
                0,
                line,
                rise >= near ? Double.NaN : r + Math.sqrt(near * near - rise * rise)));
    }

    private static Obstacle obstacle(
            CoilRun c, double stop, double caution, Obstacle.Gap gap, double to, Shape line, double keep) {
        return new Obstacle("element-clearance", c.name(), stop, caution, gap, 0, to, true, line, keep);
    }
}
