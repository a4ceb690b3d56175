package portwright.app.doc;

import java.util.List;
import portwright.app.doc.FootFigures.FireWords;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.DamperPlate;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.FireBand;
import portwright.form.FieldNames;
import portwright.report.CostWords;
import portwright.report.ReportLine;
import portwright.review.FireReview;
import portwright.review.LevelSetting;
import portwright.review.Review;
import portwright.review.StepRow;

/**
 * What charts and foot show of a review and takes long to compute; made off the window's thread.
 *
 * @param fire figures of the foot
 * @param gas curves of the Gas step; null without gas
 * @param rows one a firing step; empty while the forecast lacks fields
 * @param energy this firing beside an all-electric one; empty while the forecast lacks fields
 */
public record Extras(FireWords fire, Gas gas, List<StepRow> rows, List<ReportLine> energy) {
    public static final Extras NONE = new Extras(FireWords.NONE, null, List.of(), List.of());

    /**
     * The fire over the damper.
     *
     * @param topK highest temperature with gas, K
     * @param onK temperature at gas-on, K
     * @param top curve with band at topK
     * @param on curve without band at onK
     * @param levels settings of the levels at topK
     * @param plate over the flues
     * @param open share that the design states
     * @param balance pressures at topK and that share
     * @param band at topK and that share
     * @param plan how far the damper stands open in each step with gas
     */
    public record Gas(
            double topK,
            double onK,
            DamperCurve top,
            DamperCurve on,
            List<LevelSetting> levels,
            DamperPlate plate,
            double open,
            DraftBalance balance,
            FireBand band,
            List<DamperPlan> plan) {}

    /** The quick part: no curves. */
    public static Extras quick(Review r) {
        return new Extras(
                FireWords.of(r),
                null,
                r.firing() == null ? List.of() : r.firing().rows(r.fire()),
                List.of());
    }

    /** Everything; may take some seconds and ends early when its thread is interrupted. */
    public Extras withCurves(Review r) {
        List<ReportLine> beside = r.firing() == null || !r.firing().forecast().known()
                ? List.of()
                : CostWords.besideElectric(r.firing()).stream()
                        .map(l -> new ReportLine(l.name(), FieldNames.inWords(l.value())))
                        .toList();
        FireReview f = r.fire();
        if (f == null || !f.gas() || f.gasOn().isEmpty() || f.plate() == null) {
            return new Extras(fire, null, rows, beside);
        }
        double top = f.top().orElseThrow();
        double on = f.gasOn().orElseThrow();
        return new Extras(
                fire,
                new Gas(
                        top,
                        on,
                        f.curve(top),
                        f.quickCurve(on),
                        f.levels(top),
                        f.plate(),
                        f.damperOpen(),
                        f.state(top, f.damperOpen()).balance(),
                        f.band(top, f.damperOpen()),
                        DamperPlan.of(r, rows)),
                rows,
                beside);
    }
}
