package portwright.geometry;

/** A field of lines: direction within ± halfAngle of a middle direction, offset within ± halfOffset of a middle offset. */
final class SectionField {
    double angle;
    double halfAngle;
    double offset;
    double halfOffset;
    /** Direction of the middle line. */
    double dx;

    double dy;

    void set(double angle, double halfAngle, double offset, double halfOffset) {
        this.angle = angle;
        this.halfAngle = halfAngle;
        this.offset = offset;
        this.halfOffset = halfOffset;
        dx = Math.sin(angle);
        dy = Math.cos(angle);
    }

    /** Place along the middle line. */
    double along(double x, double y) {
        return dx * x + dy * y;
    }

    /** Distance beside the middle line, positive to the right. */
    double beside(double x, double y) {
        return dy * x - dx * y - offset;
    }

    /** How far {@link #beside} of a point can change within the field. */
    double sway(double x, double y) {
        return Math.abs(dx * x + dy * y) * halfAngle + halfOffset + Math.hypot(x, y) * halfAngle * halfAngle / 2;
    }
}
