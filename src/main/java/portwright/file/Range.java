package portwright.file;

import portwright.units.Quantity;

/**
 * Values that a field can physically have, as written in messages; null for no bound.
 *
 * @param least lower bound as typed
 * @param open whether the lower bound itself is outside
 * @param most upper bound as typed, itself inside
 */
record Range(String least, boolean open, String most) {
    static final Range ANY = new Range(null, false, null);
    /** A measure of the kiln or room. */
    static final Range SIZE = new Range("0 mm", true, "20 m");
    /** A small length that may be nought. */
    static final Range DISTANCE = new Range("0 mm", false, "20 m");

    static final Range THICKNESS = new Range("0 mm", true, "1 m");
    /** Wall, floor or lid of an electric kiln; studio kilns have 50 to 250 mm, more is a slip of the unit (own judgement). */
    static final Range LINING = new Range("0 mm", true, "400 mm");
    /** Inside of an electric kiln; a higher one is a slip of the unit (own judgement). */
    static final Range CHAMBER_HEIGHT = new Range("0 mm", true, "3 m");
    /** Length or breadth of a brick in a pattern; far smaller ones would only hide a slip of the unit. */
    static final Range BRICK = between("20 mm", "2 m");

    static final Range SHARE = new Range("0 %", false, "100 %");
    static final Range AIR = new Range("-60 °C", false, "60 °C");
    static final Range GAUGE = new Range("0 Pa", true, "20 bar");
    static final Range VOLUME = new Range("0 L", true, "100000 m3");
    static final Range MASS = new Range("0 kg", true, "100000 kg");

    static Range positive(String zero) {
        return new Range(zero, true, null);
    }

    static Range from(String least) {
        return new Range(least, false, null);
    }

    static Range between(String least, String most) {
        return new Range(least, false, most);
    }

    /** Null when the quantity lies inside, else what is expected. */
    String objection(Quantity q) {
        double low = least == null
                ? Double.NEGATIVE_INFINITY
                : Quantity.parse(least, q.kind()).base();
        double high = most == null
                ? Double.POSITIVE_INFINITY
                : Quantity.parse(most, q.kind()).base();
        boolean fits = (open ? q.base() > low : q.base() >= low) && q.base() <= high;
        if (fits) {
            return null;
        }
        if (least == null) {
            return "at most " + most;
        }
        if (most == null || q.base() <= low) {
            return (open ? "more than " : "at least ") + least;
        }
        return "at most " + most;
    }
}
