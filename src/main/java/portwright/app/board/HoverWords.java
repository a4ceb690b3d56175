package portwright.app.board;

import java.util.ArrayList;
import java.util.List;
import portwright.app.doc.Document;
import portwright.app.doc.Lengths;
import portwright.app.doc.Parts;
import portwright.app.doc.Plot;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.BothSystems;
import portwright.units.Unbroken;

/** The numbers of a part in a few lines, for the pointer and for a screen reader. */
final class HoverWords {
    private HoverWords() {}

    /** Lines of so many letters at most; a longer word has a line of its own. */
    static List<String> broken(List<String> lines, int most) {
        List<String> out = new ArrayList<>();
        for (String whole : lines) {
            String line = "";
            for (String word : Unbroken.words(whole).split(" ", 0)) {
                if (!line.isEmpty() && line.length() + 1 + word.length() > most) {
                    out.add(line);
                    line = word;
                } else {
                    line = line.isEmpty() ? word : line + " " + word;
                }
            }
            out.add(line);
        }
        return out;
    }

    private static String side(double mm, UnitSystem units, String plus, String minus) {
        return Lengths.shown(Math.abs(mm), units) + (mm < 0 ? minus : plus);
    }

    static List<String> of(Plot plot, Document doc, String name, UnitSystem units) {
        List<String> out = new ArrayList<>();
        out.add(name);
        for (Hole h : plot.kiln().holes()) {
            if (h.name().equals(name)) {
                out.add("⌀ " + h.port().diameter().typed() + ", drilled about " + Lengths.shown(h.drilled(), units));
                boolean wall = h.face().on() == On.WALL;
                out.add(side(h.centre().x(), units, " right", " left")
                        + (wall ? " of the panel's middle, " : ", ")
                        + side(h.centre().y(), units, wall ? " up" : " back", wall ? " down" : " front"));
            }
        }
        String path = Parts.path(doc.text(), name);
        if (path != null) {
            for (String key : List.of("kind", "diameter", "height", "groove.depth", "coil", "thickness", "standoff")) {
                if (out.size() < 4 && !path.startsWith("ports")) {
                    doc.text()
                            .get(path + "." + key)
                            .ifPresent(v -> out.add(key.replace("groove.depth", "groove deep") + " " + v));
                }
            }
        }
        for (Finding f : doc.result().findings()) {
            if (f.parts().contains(name) && f.severity() != Severity.NOTE) {
                String says = units == UnitSystem.INCH ? BothSystems.inchFirst(f.message()) : f.message();
                out.add(f.severity().id() + ": " + says);
                break;
            }
        }
        return out;
    }
}
