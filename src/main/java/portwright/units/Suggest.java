package portwright.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import portwright.units.UnitTable.Unit;

/** What to write instead. */
final class Suggest {
    private static final Map<String, String> TOLD = Map.of(
            "gal", "A gallon differs from country to country. Write litres: 190 L.",
            "psia", "Pressures are gauge here. Write psi above the atmosphere: 5 psi.",
            "atm", "Write kPa or bar above the atmosphere: 0.5 bar.",
            "hp", "Write kW: 4.5 kW.",
            "BTU", "A power is per hour. Write 15000 Btu/h.",
            "Btu", "A power is per hour. Write 15000 Btu/h.");

    private Suggest() {}

    /** A number without unit, written with the two likely ones; a share under 1 may have been meant as a ratio. */
    static String withUnit(String number, Kind kind) {
        if (kind == Kind.SHARE && number.matches("0?\\.\\d*[1-9]\\d*")) {
            String percent = new BigDecimal(number)
                    .movePointRight(2)
                    .stripTrailingZeros()
                    .toPlainString();
            return "\"" + percent + " %\" if it is a ratio, or \"" + number + " %\"";
        }
        List<String> likely = switch (kind) {
            case LENGTH -> List.of("in", "mm");
            case AREA -> List.of("cm2", "in2");
            case VOLUME -> List.of("L", "ft3");
            case MASS -> List.of("kg", "lb");
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> List.of("°C", "°F");
            case TEMPERATURE_RATE -> List.of("°C/h", "°F/h");
            case PRESSURE -> List.of("inH2O", "mbar", "psi");
            case POWER -> List.of("kW", "Btu/h");
            case ANGLE -> List.of("deg");
            case SHARE -> List.of("%");
            case DURATION -> List.of("h", "min", "s");
            case FLOW -> List.of("m3/h", "cfm");
            case SPEED -> List.of("m/s", "mph");
            case HEATING_VALUE -> List.of("MJ/m3", "Btu/ft3");
            case DENSITY -> List.of("kg/m3");
            case RESISTANCE -> List.of("ohm");
        };
        StringBuilder b = new StringBuilder();
        for (int k = 0; k < likely.size(); k++) {
            b.append(k == 0 ? "" : k + 1 == likely.size() ? " or " : ", ")
                    .append('"')
                    .append(number)
                    .append(' ')
                    .append(likely.get(k))
                    .append('"');
        }
        return b.toString();
    }

    /** A unit that is not one of the kind's. */
    static String unknown(String typed, String number, String spelling, Kind kind) {
        String begin = "\"" + LookAlikes.shown(typed) + "\"";
        if (kind == Kind.POWER && spelling.matches("(?i)(V|A|volts?|amps?|amperes?)\\b.*")) {
            return begin + ": " + Plate.words(number + " " + spelling);
        }
        if (kind == Kind.FLOW && spelling.matches("(?i)(/ ?h(r|our)?|1/h|ach|(air )?changes?( .*|/.*)?)")) {
            return begin
                    + ": air changes an hour are no volume flow. Multiply them by the room's volume: 0.5 changes an hour of 60 m3 are \"30 m3/h\".";
        }
        List<Unit> elsewhere = UnitTable.anywhere(spelling);
        if (!elsewhere.isEmpty()) {
            return begin + " is " + article(elsewhere.get(0).kind()) + "; " + article(kind) + " is wanted here. Write "
                    + kind.example() + ".";
        }
        Unit loose = UnitTable.loosely(kind, spelling);
        if (loose != null) {
            return begin + ": the unit is written " + loose.symbol() + ". Write \"" + number + " " + loose.symbol()
                    + "\".";
        }
        for (Map.Entry<String, String> e : TOLD.entrySet()) {
            if (spelling.equals(e.getKey()) || spelling.endsWith(" " + e.getKey())) {
                return begin + ": " + e.getValue();
            }
        }
        return begin + ": \"" + LookAlikes.shown(spelling) + "\" is no unit of " + kind.word() + ". Write "
                + kind.example() + ".";
    }

    private static String article(Kind kind) {
        return ("ao".indexOf(kind.word().charAt(0)) >= 0 ? "an " : "a ") + kind.word();
    }
}
