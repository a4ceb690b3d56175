package portwright.geometry;

/**
 * A number as it changes with a line in a small field of lines: value and slopes at the field's middle line, and how far the number can stray
 * from that straight change anywhere in the field.
 */
final class SectionModel {
    /** A crossing that may stray farther than this, mm, says less than the ends of its line. */
    private static final double USELESS = 4;

    double value;
    double byOffset;
    double byAngle;
    double stray;

    void clear() {
        value = 0;
        byOffset = 0;
        byAngle = 0;
        stray = 0;
    }

    void set(double constant) {
        clear();
        value = constant;
    }

    void set(SectionModel o) {
        value = o.value;
        byOffset = o.byOffset;
        byAngle = o.byAngle;
        stray = o.stray;
    }

    void add(SectionModel o, double times) {
        value += times * o.value;
        byOffset += times * o.byOffset;
        byAngle += times * o.byAngle;
        stray += Math.abs(times) * o.stray;
    }

    /** How far the number can be from its middle value. */
    double swing(SectionField f) {
        return Math.abs(byOffset) * f.halfOffset + Math.abs(byAngle) * f.halfAngle + stray;
    }

    /**
     * Where lines cross a fixed straight line: T = (h + s sin φ)/cos φ, φ the angle from the straight line's normal to the direction.
     *
     * @param px a point of the straight line
     * @param nx its unit normal
     * @return false where the crossing runs off too fast to be followed
     */
    boolean crossing(SectionField f, double px, double py, double nx, double ny) {
        double cos = nx * f.dx + ny * f.dy;
        double sin = -(nx * f.dy - ny * f.dx);
        double least = Math.abs(cos) * Math.cos(f.halfAngle) - Math.abs(sin) * Math.sin(f.halfAngle);
        if (least <= 0) {
            return false;
        }
        double h = nx * px + ny * py;
        value = (h + f.offset * sin) / cos;
        byOffset = sin / cos;
        byAngle = (f.offset + h * sin) / (cos * cos);
        double curve = (3 * Math.abs(h) + 2 * (Math.abs(f.offset) + f.halfOffset)) / (least * least * least);
        stray = curve * f.halfAngle * f.halfAngle / 2 + f.halfAngle * f.halfOffset / (least * least);
        return stray < USELESS;
    }
}
