package portwright.check.rules.room;

import java.util.Comparator;
import java.util.List;
import portwright.data.SafetyNumber;
import portwright.data.ThermocoupleTolerance;
import portwright.model.Design;
import portwright.model.Fitting;
import portwright.model.FittingKind;

/**
 * Error of the reading that permits gas: tolerance of the wire when new plus drift. The worst of the declared thermocouples
 * counts; what is not declared counts as type K of the wider class.
 *
 * @param kelvin the error
 * @param words probe in words
 * @param declared whether any thermocouple is declared
 */
record ProbeError(double kelvin, String words, boolean declared) {

    private static final String WORST_TYPE = "K";
    private static final String WORST_CLASS = "2";

    static ProbeError at(Design design, double readingC) {
        double tempC = Math.max(0, readingC); // the tables begin at 0 °C or below
        List<Fitting> probes = probes(design);
        double drift = SafetyNumber.value("probe-drift");
        ProbeError unknown =
                of(WORST_TYPE, WORST_CLASS, tempC, drift, "a probe of unknown class, counted as type K class 2");
        return probes.stream()
                .map(f -> of(f, tempC, drift, unknown))
                .max(Comparator.comparingDouble(ProbeError::kelvin))
                .orElse(new ProbeError(unknown.kelvin, unknown.words, false));
    }

    static List<Fitting> probes(Design design) {
        return design.kiln() == null || design.kiln().fittings() == null
                ? List.of()
                : design.kiln().fittings().stream()
                        .filter(f -> f.kind() == FittingKind.THERMOCOUPLE)
                        .toList();
    }

    private static ProbeError of(Fitting f, double tempC, double drift, ProbeError unknown) {
        String word =
                f.thermocoupleClass() == null ? null : f.thermocoupleClass().replace("class ", "");
        if (f.type() == null
                || word == null
                || ThermocoupleTolerance.find(f.type(), word, tempC).isEmpty()) {
            return unknown;
        }
        return of(f.type(), word, tempC, drift, f.name() + ", type " + f.type() + ", " + f.thermocoupleClass());
    }

    private static ProbeError of(String type, String word, double tempC, double drift, String words) {
        return new ProbeError(
                ThermocoupleTolerance.find(type, word, tempC).orElseThrow().atC(tempC) + drift, words, true);
    }
}
