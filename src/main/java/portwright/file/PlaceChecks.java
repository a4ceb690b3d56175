package portwright.file;

import java.util.List;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.Kiln;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanOutline;
import portwright.model.Port;
import portwright.model.Slab;
import portwright.units.Format;
import portwright.units.Quantity;

/** Ports, elements and fittings lie on parts that exist. */
final class PlaceChecks {
    private final Kiln kiln;
    private final PlanOutline inner;
    private final Faults faults;

    private PlaceChecks(Kiln kiln, PlanOutline inner, Faults faults) {
        this.kiln = kiln;
        this.inner = inner;
        this.faults = faults;
    }

    static void run(Design d, PlanOutline inner, Faults faults) {
        PlaceChecks c = new PlaceChecks(d.kiln(), inner, faults);
        c.overhang(d.kiln().floor(), "kiln.floor");
        c.overhang(d.kiln().lid(), "kiln.lid");
        for (int i = 0; i < CrossChecks.size(d.ports(), "ports", faults); i++) {
            c.port(d.ports().get(i), "ports[" + i + "]");
        }
        for (int i = 0; i < CrossChecks.size(d.kiln().elements(), "kiln.elements", faults); i++) {
            c.element(d.kiln().elements().get(i), "kiln.elements[" + i + "]");
        }
        for (int i = 0; i < CrossChecks.size(d.kiln().fittings(), "kiln.fittings", faults); i++) {
            Fitting f = d.kiln().fittings().get(i);
            c.panel(f.panel(), "kiln.fittings[" + i + "].panel");
        }
    }

    /** Thickness of a part, mm; null when not given. */
    static Double thickness(Kiln kiln, On on) {
        Quantity t = switch (on) {
            case WALL -> kiln.wall() == null ? null : kiln.wall().thickness();
            case FLOOR -> kiln.floor() == null ? null : kiln.floor().thickness();
            case LID -> kiln.lid() == null ? null : kiln.lid().thickness();
        };
        return t == null ? null : t.mm();
    }

    private void overhang(Slab slab, String path) {
        Double wall = thickness(kiln, On.WALL);
        if (slab != null
                && slab.overhang() != null
                && wall != null
                && slab.overhang().mm() < -wall) {
            faults.at(
                    path + ".overhang",
                    "\"" + slab.overhang().typed() + "\" makes the slab smaller than the chamber: the wall is "
                            + mm(wall) + " thick. Write at least " + mm(-wall) + ".");
        }
    }

    private boolean panel(Integer panel, String path) {
        if (panel != null && panel > inner.size()) {
            faults.at(path, "there is no panel " + panel + ": this plan has panels 1 to " + inner.size() + ".");
            return false;
        }
        return panel != null;
    }

    private void port(Port p, String path) {
        if (p.on() == null || p.at() == null) {
            return;
        }
        double d = p.diameter() == null ? 0 : p.diameter().mm();
        if (p.on() == On.WALL) {
            if (panel(p.panel(), path + ".panel")
                    && onPanel(p.panel(), p.at(), path + ".at")
                    && kiln.height() != null) {
                double least =
                        Math.min(inner.panelWidth(p.panel()), kiln.height().mm());
                if (d > least) {
                    faults.at(
                            path + ".diameter",
                            "\"" + p.diameter().typed() + "\" is larger than panel " + p.panel() + " (" + mm(least)
                                    + ").");
                }
            }
            return;
        }
        PlanOutline slab = slab(p.on());
        if (slab == null) {
            return;
        }
        if (!slab.contains(p.at().xMm(), p.at().yMm())) {
            faults.at(
                    path + ".at",
                    "the centre lies off the " + p.on().id() + ", " + mm(slab.distanceToRim(p.at().xMm(), p.at().yMm()))
                            + " outside its rim. Coordinates run from the "
                            + "chamber's axis, x to the right, y to the back.");
        }
        if (d > slab.narrowest()) {
            faults.at(
                    path + ".diameter",
                    "\"" + p.diameter().typed() + "\" is larger than the " + p.on().id() + " (" + mm(slab.narrowest())
                            + " across).");
        }
    }

    private PlanOutline slab(On on) {
        Slab s = on == On.FLOOR ? kiln.floor() : kiln.lid();
        Double wall = thickness(kiln, On.WALL);
        if (s == null || wall == null) {
            return null;
        }
        double by = wall + (s.overhang() == null ? 0 : s.overhang().mm());
        return by < 0 ? null : inner.grown(by);
    }

    private boolean onPanel(int panel, Place at, String path) {
        double half = inner.panelWidth(panel) / 2;
        boolean fits = true;
        if (Math.abs(at.xMm()) > half * (1 + 1e-12)) {
            faults.at(
                    path,
                    "lies beside panel " + panel + ": along the wall from -" + Format.plain(half, 1) + " to "
                            + Format.plain(half, 1) + " mm from the panel's middle.");
            fits = false;
        }
        if (kiln.height() != null && (at.yMm() < 0 || at.yMm() > kiln.height().mm())) {
            faults.at(
                    path,
                    "lies above or below panel " + panel + ": up the wall from 0 (floor) to "
                            + mm(kiln.height().mm()) + ".");
            fits = false;
        }
        return fits;
    }

    private void element(ElementRun e, String path) {
        if (e.panels() != null && !faults.gaps(path + ".panels")) {
            for (int i = 0; i < e.panels().size(); i++) {
                String at = FieldPath.item(path + ".panels", i);
                panel(e.panels().get(i), at);
                if (e.panels().indexOf(e.panels().get(i)) < i) {
                    faults.at(at, "panel " + e.panels().get(i) + " is named twice.");
                }
            }
        }
        if (e.tails() != null
                && e.tails().panel() != null
                && panel(e.tails().panel(), path + ".tails.panel")
                && e.tails().at() != null) {
            onPanel(e.tails().panel(), e.tails().at(), path + ".tails.at");
        }
        if (e.on() == null) {
            return;
        }
        Double t = thickness(kiln, e.on());
        if (e.groove() != null
                && e.groove().depth() != null
                && t != null
                && e.groove().depth().mm() >= t) {
            faults.at(
                    path + ".groove.depth",
                    "\"" + e.groove().depth().typed() + "\" goes through the " + e.on().id() + ", which is " + mm(t)
                            + " thick.");
        }
        if (e.on() == On.WALL) {
            height(e, path);
        } else {
            path(e, path);
        }
    }

    private void height(ElementRun e, String path) {
        if (e.height() == null || kiln.height() == null) {
            return;
        }
        double half = e.groove() == null || e.groove().height() == null
                ? 0
                : e.groove().height().mm() / 2;
        if (e.height().mm() - half < 0 || e.height().mm() + half > kiln.height().mm() * (1 + 1e-12)) {
            faults.at(
                    path + ".height",
                    "the groove at \"" + e.height().typed() + "\" reaches beyond the wall, which goes from 0 to "
                            + mm(kiln.height().mm()) + ".");
        }
    }

    private void path(ElementRun e, String path) {
        PlanOutline slab = slab(e.on());
        List<Place> points = e.path();
        if (slab == null || points == null || faults.gaps(path + ".path")) {
            return;
        }
        for (int i = 0; i < points.size(); i++) {
            if (!slab.contains(points.get(i).xMm(), points.get(i).yMm())) {
                faults.at(FieldPath.item(path + ".path", i), "this point lies off the " + e.on().id() + ".");
            }
        }
    }

    private static String mm(double mm) {
        return Format.plain(mm, 1) + " mm";
    }
}
