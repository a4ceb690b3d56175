package portwright.calc.room;

import portwright.units.Celsius;

/**
 * Gas that does not burn in the chamber: time until it can explode, what a flame device lets in, how long to air out.
 * Volumes m³, mass flow kg/s, times s, lower limit as a volume fraction.
 */
public final class UnlitGas {

    private UnlitGas() {}

    /** Gas in kg that brings the cold chamber to its lower limit. Example: 0.18 m³ propane 6.9 g. */
    public static double lowerLimitKg(double chamberM3, double lowerLimit, double molarMassKgPerMol) {
        return Check.aboveZero(chamberM3, "the chamber volume")
                * Check.share(lowerLimit, "the lower limit")
                * Check.aboveZero(molarMassKgPerMol, "the molar mass")
                / Dilution.MOLAR_VOLUME_20C;
    }

    /**
     * How much less gas a hot chamber needs for its lower limit than one at 20 °C: the same volume weighs less, and the limit itself falls by
     * 0.0721 % a kelvin over 25 °C (modified Burgess and Wheeler law, Zabetakis, US Bureau of Mines Bulletin 627, 1965; from memory). Example:
     * 408 °C 0.31.
     *
     * @param celsius chamber temperature, °C; below 20 °C counts as 20 °C
     */
    public static double hotShare(double celsius) {
        double c = Math.max(20, celsius);
        return 293.15 / (c + Celsius.ZERO_C) * Math.max(0.1, 1 - 0.000721 * Math.max(0, c - 25));
    }

    /** Gas in kg that passes while a flame device closes: {@code m t}. Example: 0.5 kg/h, 20 s: 2.8 g. */
    public static double admittedKg(double gasKgPerS, double closingS) {
        return Check.atLeastZero(gasKgPerS, "the gas") * Check.atLeastZero(closingS, "the closing time");
    }

    /**
     * Time for N complete changes of the chamber's air: {@code t = N V/Q}. Example: 0.18 m³, 5 changes, 20 m³/h: 2.7 min.
     * N: 5 published (EN 746-2:2010, 5.3.3.2); 4 from memory (NFPA 86).
     *
     * @return seconds; positive infinity without draught
     */
    public static double purgeS(double chamberM3, double changes, double flowM3PerS) {
        Check.aboveZero(chamberM3, "the chamber volume");
        Check.aboveZero(changes, "the number of changes");
        return Check.atLeastZero(flowM3PerS, "the draught") > 0
                ? changes * chamberM3 / flowM3PerS
                : Double.POSITIVE_INFINITY;
    }
}
