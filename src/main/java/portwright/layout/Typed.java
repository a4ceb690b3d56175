package portwright.layout;

import portwright.geometry.Pt;
import portwright.model.Place;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Lengths and places as a potter types them: whole half millimetres, or 32nds of an inch; finer, tenths of a millimetre or 64ths. */
final class Typed {
    private final boolean inch;
    private final boolean fine;

    private Typed(boolean inch, boolean fine) {
        this.inch = inch;
        this.fine = fine;
    }

    /** As a tape shows them. */
    Typed(UnitSystem units) {
        this(units != UnitSystem.METRIC, false);
    }

    /** As paper shows them that is printed to scale. */
    Typed finer() {
        return new Typed(inch, true);
    }

    /** Step of a length, mm. */
    double step() {
        return inch ? 25.4 / parts() : 1.0 / perMm();
    }

    /** Steps of a length, for sentences. */
    String stepWords() {
        return inch
                ? parts() + (fine ? "ths of an inch" : "nds of an inch")
                : fine ? "tenths of a millimetre" : "half millimetres";
    }

    /** Step of a bearing, degrees. */
    double stepDegrees() {
        return fine ? 0.1 : 0.5;
    }

    private int parts() {
        return fine ? 64 : 32;
    }

    private int perMm() {
        return fine ? 10 : 2;
    }

    /** What {@link #length} says of a length, as a number, mm. */
    double mm(double mm) {
        return inch ? Math.rint(mm / 25.4 * parts()) / parts() * 25.4 : Math.rint(mm * perMm()) / perMm();
    }

    Quantity length(double mm) {
        if (!inch) {
            return Quantity.parse(Format.plain(Math.rint(mm * perMm()) / perMm(), 1) + " mm", Kind.LENGTH);
        }
        String words = InchFraction.words(Math.abs(mm), parts());
        return Quantity.parse((mm < 0 && !words.equals("0 in") ? "-" : "") + words, Kind.LENGTH);
    }

    /** A drill or saw: inch sizes to the 64th, metric to a tenth, exact for every saw. */
    Quantity diameter(double mm) {
        if (inch && Math.abs(InchFraction.error(mm, 64)) < 1e-6) {
            return Quantity.parse(InchFraction.words(mm, 64), Kind.LENGTH);
        }
        return Quantity.parse(Format.plain(mm, 4) + " mm", Kind.LENGTH);
    }

    Place place(double x, double y) {
        return new Place.Cartesian(length(x), length(y));
    }

    /** Radius and bearing about the origin. */
    Place.Polar polar(double x, double y) {
        double bearing = Math.toDegrees(Math.atan2(x, y));
        bearing = Math.rint((bearing < 0 ? bearing + 360 : bearing) / stepDegrees()) * stepDegrees() % 360;
        return new Place.Polar(length(Math.hypot(x, y)), Quantity.parse(Format.plain(bearing, 1) + " deg", Kind.ANGLE));
    }

    static Pt pt(Place p) {
        return new Pt(p.xMm(), p.yMm());
    }

    /** A length in the design's units, for sentences. */
    String words(double mm) {
        return inch
                ? InchFraction.words(Math.abs(mm), 16) + " (" + Format.plain(mm, 0) + " mm)"
                : Format.plain(mm, 0) + " mm";
    }
}
