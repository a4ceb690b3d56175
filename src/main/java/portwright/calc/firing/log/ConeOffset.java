package portwright.calc.firing.log;

/**
 * What a fallen cone says of the thermocouple.
 *
 * @param cone name
 * @param timeS when it fell
 * @param readingK smoothed reading then
 * @param offsetK to be added to the reading so that the heat work of the record lays the cone down at that moment; positive: the
 *     thermocouple reads low. A cone itself is good to about ±10 K (this project's judgement).
 * @param surelyK the part of the offset that stays wherever the cone fell since the reading before; 0 where that could explain it all
 * @param slow whether the climb before it was slower than the cone's chart goes: then its fall anywhere on the chart is no news of the thermocouple
 */
public record ConeOffset(String cone, double timeS, double readingK, double offsetK, double surelyK, boolean slow) {
    /** A cone in a climb that its chart knows. */
    public ConeOffset(String cone, double timeS, double readingK, double offsetK, double surelyK) {
        this(cone, timeS, readingK, offsetK, surelyK, false);
    }

    /** Whether it says anything of the thermocouple. */
    public boolean tells() {
        return !slow || surelyK != 0;
    }

    /** Whether it needs the thermocouple to read lower than any in use drifts: a wrong entry, or one that has failed. */
    boolean cannotBe() {
        return surelyK > ConeCheck.DRIFTS_K;
    }
}
