package portwright.file;

import portwright.model.Place;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Single values of the design while it is read: quantities, whole numbers, points. Each gives null and notes a fault where it cannot be read. */
final class Values {
    private Values() {}

    static Quantity quantity(Json v, String path, Kind kind, Range range, Faults faults) {
        if (!(v instanceof Json.Text t)) {
            if (v instanceof Json.Num n) {
                return quantity(new Json.Text(n.raw(), n.raw(), v.spot()), path, kind, range, faults);
            }
            faults.add(
                    v.spot(),
                    path,
                    "a " + kind.word() + " as text is expected, for example \"" + sample(kind) + "\", not " + v.word()
                            + ".");
            return null;
        }
        try {
            Quantity q = Quantity.parse(t.value(), kind);
            String objection = range.objection(q);
            if (objection != null) {
                faults.add(v.spot(), path, "\"" + t.value() + "\" is out of range: " + objection + " is expected.");
                return null;
            }
            return q;
        } catch (QuantityException e) {
            faults.add(v.spot(), path, e.getMessage());
            return null;
        }
    }

    static String sample(Kind kind) {
        return kind.example().split(" or |, ", -1)[0];
    }

    static Integer integer(Json v, String path, int least, int most, Faults faults) {
        if (v instanceof Json.Num n) {
            double d = Double.parseDouble(n.raw());
            if (d == Math.rint(d) && d >= least && d <= most) {
                return (int) d;
            }
            faults.add(
                    v.spot(),
                    path,
                    "a whole number from " + least + " to " + most + " is expected, not " + n.raw() + ".");
            return null;
        }
        faults.add(v.spot(), path, "a whole number without quotes is expected, not " + v.word() + ".");
        return null;
    }

    static Place place(Json v, String path, Faults faults) {
        if (v instanceof Json.Arr a) {
            if (a.items().size() != 2) {
                faults.add(
                        v.spot(),
                        path,
                        "a point has two lengths, [\"x\", \"y\"]; here are "
                                + a.items().size() + ".");
                return null;
            }
            Range far = Range.between("-20 m", "20 m");
            Quantity x = quantity(a.items().get(0), FieldPath.item(path, 0), Kind.LENGTH, far, faults);
            Quantity y = quantity(a.items().get(1), FieldPath.item(path, 1), Kind.LENGTH, far, faults);
            return x == null || y == null ? null : new Place.Cartesian(x, y);
        }
        if (v instanceof Json.Obj) {
            return Fields.read(v, path, faults, f -> {
                Quantity r = f.needQuantity("radius", Kind.LENGTH, Range.DISTANCE);
                Quantity b = f.needQuantity("bearing", Kind.ANGLE, Range.ANY);
                return r == null || b == null ? null : new Place.Polar(r, b);
            });
        }
        faults.add(
                v.spot(),
                path,
                "a point is expected: [\"x\", \"y\"] or {\"radius\": \"8 in\", \"bearing\": \"120 deg\"}, not "
                        + v.word() + ".");
        return null;
    }
}
