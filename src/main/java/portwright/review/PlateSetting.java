package portwright.review;

import portwright.calc.draft.DamperPlate;
import portwright.calc.draft.DraftExchange;
import portwright.calc.draft.Range;
import portwright.units.Format;
import portwright.units.Inches;

/**
 * Where to set the damper plate for a level, and between which positions it may come to stand: the middle of the level is
 * moved by as much as the 5 to 95 % band of lambda says that the air may turn out otherwise.
 *
 * @param mm plate travel from shut for the level's middle
 * @param lowMm travel where the kiln draws more air than the middle value
 * @param highMm travel where it draws less; all the way open when even that is not enough
 * @param openShare open share of the flues at {@code mm}
 * @param lambdaPerMm what one millimetre of travel is worth there
 */
public record PlateSetting(double mm, double lowMm, double highMm, double openShare, double lambdaPerMm) {
    private static final double MM = 1000;

    /** What a travel is counted from; stands once beside the figures. */
    public static final String FROM_SHUT =
            "From shut: the plate's travel from where its edge just covers the whole flue; all flues under one plate count together.";

    static PlateSetting of(LevelSetting level, Range lambda, double kelvin, DraftExchange draft, DamperPlate plate) {
        double mid = LevelSetting.middle(level.level());
        double high = lambda.high() == null ? 1 : lambda.high() / mid;
        double least = plate.travelFor(draft.damperFor(mid / high, kelvin)) * MM;
        double most = lambda.low() == null
                ? plate.fullTravel() * MM
                : plate.travelFor(draft.damperFor(mid * mid / lambda.low(), kelvin)) * MM;
        double at = plate.travelFor(level.openMid()) * MM;
        double per = level.mmPerHundredth() > 0 ? 0.01 / level.mmPerHundredth() : 0;
        return new PlateSetting(at, Math.min(at, least), Math.max(at, most), level.openMid(), per);
    }

    /** As a hand can set it: {@code 25 mm (1 in) from shut, between 19 and 33 mm as the air turns out}. */
    public String words(boolean inch) {
        return whole(mm) + " mm" + (inch ? " (" + Inches.nearest(mm) + ")" : "") + " from shut, between " + whole(lowMm)
                + " and " + whole(highMm) + " mm as the air turns out";
    }

    /** Whole millimetres. */
    public static String whole(double mm) {
        return Format.plain(Math.rint(mm), 0);
    }
}
