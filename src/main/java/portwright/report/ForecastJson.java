package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.HoursBand;
import portwright.calc.firing.Sample;
import portwright.review.ClimbEnds;
import portwright.review.ClosePlates;
import portwright.review.DrilledOver;
import portwright.review.FiringReview;
import portwright.review.Review;
import portwright.review.StepRow;
import portwright.review.TradeFigure;

/** The firing forecast as JSON and CSV. */
public final class ForecastJson {
    private ForecastJson() {}

    /** One object with steps, totals and the time series. */
    public static String write(Review review) {
        FiringReview firing = review.firing();
        Forecast f = firing.forecast().value();
        FiringRun run = f.nominal();
        ObjectNode root = Json.object();
        root.put("portwright", 1).put("title", review.design().title()).put("reached", run.reached());
        CostWords.write(root, firing);
        GasWords.cylinders(root, review);
        RoomWords.co(root, review);
        RelightWords.write(root, review);
        HoursBand hours = f.hours();
        Json.number(root, "hoursLow", Double.isNaN(hours.leastS()) ? null : hours.leastS() / 3600);
        Json.number(root, "hoursHigh", hours.open() ? null : hours.mostS() / 3600);
        root.put("everyCaseArrives", !hours.open());
        ClimbEnds ends = ClimbEnds.of(firing);
        Json.number(
                root,
                "stallElectricC",
                review.design().kiln().noElements() ? null : Double.valueOf(ends.electricK() - ZERO_C));
        Json.number(root, "stallWithGasC", ends.gasK() - ZERO_C);
        PowerWords.write(root, review);
        Json.number(root, "energyClosure", run.energy().closure());
        HeatWords.balance(root, run.energy());
        HeatWords.openPorts(root, firing);
        HeatWords.openSpells(root, run);
        FireHours.write(root, review);
        ArrayNode steps = root.putArray("steps");
        ObjectMapper mapper = new ObjectMapper();
        for (StepRow r : firing.rows(review.fire())) {
            ObjectNode all = mapper.valueToTree(r);
            ObjectNode o = steps.addObject();
            all.properties().forEach(e -> {
                if (e.getValue().isNumber() && !e.getValue().isInt()) {
                    Json.number(o, e.getKey(), e.getValue().asDouble());
                } else {
                    o.set(e.getKey(), e.getValue());
                }
            });
            Json.number(o, "lambdaDrilledOver", drilledOver(review, r));
        }
        ArrayNode close = root.putArray("platesTooClose");
        for (ClosePlates p : ClosePlates.of(review)) {
            ObjectNode o = close.addObject().put("words", p.words());
            o.putArray("stepIndexes").add(p.first().step()).add(p.second().step());
            Json.number(o, "firstMm", p.firstMm());
            Json.number(o, "secondMm", p.secondMm());
        }
        ArrayNode cones = root.putArray("cones");
        run.cones()
                .forEach(c -> Json.number(
                        Json.number(cones.addObject().put("cone", c.cone()), "hours", c.timeS() / 3600),
                        "chamberC",
                        c.chamberK() - ZERO_C));
        root.put("coneTakenByHold", HeldCones.words(review).orElse(null));
        ArrayNode trade = root.putArray("trade");
        for (TradeFigure t : TradeFigure.of(review)) {
            ObjectNode o = trade.addObject().put("what", t.seen().what());
            Json.number(o, "computed", t.computed());
            Json.number(o, "seenLow", t.seen().low());
            Json.number(o, "seenHigh", t.seen().high());
            o.put("unit", t.seen().unit());
            o.put("source", t.seen().source().line());
        }
        ArrayNode series = root.putArray("series");
        for (Sample s : run.samples()) {
            ObjectNode o = series.addObject();
            Json.number(o, "hours", s.timeS() / 3600);
            o.put("betweenSteps", s.between());
            Json.number(o, "chamberC", s.chamberK() - ZERO_C);
            Json.number(o, "climbKPerH", s.climbKPerS() * 3600);
            Json.number(o, "electricKw", s.electricW() / 1000);
            Json.number(o, "gasKgPerH", s.fuelKgPerS() * 3600);
            Json.number(o, "lambda", s.lambda() > 0 ? s.lambda() : null);
        }
        return Json.text(Json.codes(root));
    }

    /** Lambda with every hole as much too wide as the design allows; null where that moves nothing or nothing is known. */
    private static Double drilledOver(Review review, StepRow r) {
        return r.lambda() == null || r.damperOpen() == null
                ? null
                : DrilledOver.of(review, r.endC() + ZERO_C, r.damperOpen())
                        .map(d -> r.lambda() + d.gain())
                        .orElse(null);
    }

    /** The time series as CSV, one row a sample. */
    public static String csv(Review review) {
        StringBuilder b = new StringBuilder(
                "hours,step,chamberC,loadC,climbKPerH,electricKw,gasNetKw,gasKgPerH,airKgPerH,lambda,wallLossKw,betweenSteps\n");
        for (Sample s : review.firing().forecast().value().nominal().samples()) {
            b.append(String.format(
                    Locale.ROOT,
                    "%.4f,%d,%.2f,%.2f,%.2f,%.4f,%.4f,%.5f,%.5f,%s,%.4f,%s\n",
                    s.timeS() / 3600,
                    s.step() + 1,
                    s.chamberK() - ZERO_C,
                    s.loadK() - ZERO_C,
                    s.climbKPerS() * 3600,
                    s.electricW() / 1000,
                    s.fuelNetW() / 1000,
                    s.fuelKgPerS() * 3600,
                    s.airKgPerS() * 3600,
                    s.lambda() > 0 ? String.format(Locale.ROOT, "%.4f", s.lambda()) : "",
                    s.wallLossW() / 1000,
                    s.between() ? "yes" : "no"));
        }
        return b.toString();
    }
}
