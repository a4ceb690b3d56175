package portwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.form.FieldNames;
import portwright.form.RuleWords;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Heat;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.model.RoomPlace;
import portwright.model.UnitSystem;
import portwright.review.LightingLimits;
import portwright.review.LiveElements;
import portwright.review.MeterScale;
import portwright.units.Format;
import portwright.units.Inches;

/** Fills the firing card from a design and what is known of its firing. */
public final class CardBuilder {
    private static final Set<String> NOBLE = Set.of("S", "R", "B");
    private static final String TYPE_K = "Type K reads low: trust cones.";
    private static final String NOBLE_DRIFTS = "Probes drift low: trust cones.";

    private CardBuilder() {}

    public static CardData of(CheckResult result, Design design, CardForecast computed) {
        List<String> inlets = design.ports().stream()
                .filter(p -> p.role() == Role.INLET)
                .map(Port::name)
                .toList();
        CardLists plain = CardLists.of(
                result,
                LightingLimits.of(design, result.figures()),
                inlets,
                lowestProbe(design),
                StepRows.electricAfterGas(design),
                openAir(design),
                helped(design),
                LiveElements.of(design),
                noAlarm(design),
                computed.nudgeMm());
        String exhaust = exhaust(design);
        CardLists withGas = exhaust == null ? plain : plain.exhausted(exhaust);
        CardData.Gas gas =
                design.allElectric() ? CardData.Gas.NONE : design.piped() ? CardData.Gas.PIPED : CardData.Gas.CYLINDER;
        CardLists told = !StepRows.gas(design)
                ? withGas.withoutGas()
                : StepRows.fallsWithGas(design, computed) ? withGas.falling() : withGas;
        CardLists lists = switch (gas) {
            case CYLINDER -> told;
            case PIPED -> told.piped();
            case NONE -> ElectricCard.lists(!design.ports().isEmpty());
        };
        return new CardData(
                design.title(),
                fire(design),
                ContentMark.of(design).words(),
                switch (gas) {
                    case CYLINDER -> StepRows.of(design, computed);
                    case PIPED -> GasCock.rows(StepRows.of(design, computed));
                    case NONE -> ElectricCard.rows(StepRows.of(design, computed));
                },
                gas == CardData.Gas.NONE ? null : plate(design, computed),
                lists.lightHeading(),
                lists.lighting(),
                lists.shutHeading(),
                lists.shuttingDown(),
                lists.heads(),
                lists.temperatureFalls(),
                lists.runsOver(),
                lists.flameOut(),
                lists.alarm(),
                probes(
                        (gas == CardData.Gas.NONE ? lists : withGas)
                                .cautions(
                                        result,
                                        openAir(design),
                                        gas,
                                        !design.kiln().noElements()),
                        design),
                own(result),
                gas == CardData.Gas.NONE ? computed.line().replace(", 0 kg gas", "") : computed.line(),
                MeterScale.fahrenheit(design) ? "°F" : "°C",
                result.stops(Forbids.LIGHTING),
                result.notChecked().stream()
                        .filter(n -> n.forbids() == Forbids.LIGHTING)
                        .map(FieldNames::told)
                        .distinct()
                        .toList(),
                result.notChecked().stream()
                        .map(n -> RuleWords.within(n.rule()))
                        .distinct()
                        .toList(),
                gas);
    }

    /** Stops against drilling, then cautions of lighting; what is told of several parts with the same cure is told once. */
    private static List<CardData.Own> own(CheckResult result) {
        Map<CardData.Own, Set<String>> parts = new LinkedHashMap<>();
        Stream.concat(
                        result.findings().stream()
                                .filter(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.DRILLING),
                        result.findings().stream()
                                .filter(f -> f.severity() == Severity.CAUTION
                                        && f.bearsOn(Forbids.LIGHTING)
                                        && !FirstFindings.forTheDrill(f)))
                .forEach(f -> parts.computeIfAbsent(
                                new CardData.Own(
                                        (f.severity() == Severity.STOP ? "Stop, drilling forbidden. " : "")
                                                + RuleWords.head(f.rule()),
                                        f.remedy()),
                                k -> new LinkedHashSet<>())
                        .addAll(f.parts().size() <= 2 ? f.parts() : List.of()));
        return parts.entrySet().stream()
                .map(e -> new CardData.Own(
                        Stream.concat(Stream.of(e.getKey().name()), e.getValue().stream())
                                .collect(Collectors.joining(", ")),
                        e.getKey().cure()))
                .toList();
    }

    /** What of the design's own draws the fumes off by power; null for nothing. */
    private static String exhaust(Design design) {
        return design.room() == null
                ? null
                : design.room().hood() != null ? "hood" : design.room().ventilator() != null ? "room fan" : null;
    }

    /** Beside the alarm that is to be on: none is stated, and the card's back says so. */
    private static String noAlarm(Design design) {
        boolean has = design.room() != null && Boolean.TRUE.equals(design.room().coAlarm());
        boolean outdoors = design.room() != null && design.room().place() == RoomPlace.OUTDOORS;
        return has ? "" : outdoors ? " (none: carry a meter)" : " (none yet: fit one)";
    }

    private static boolean helped(Design design) {
        return !design.kiln().noElements()
                && design.firing() != null
                && design.firing().steps() != null
                && design.firing().steps().stream().anyMatch(s -> s.heat() == Heat.BOTH);
    }

    /** The cautions in words that hold for the design's thermocouples: what type K does is not said of a kiln that has only noble ones. */
    private static List<CardData.Caution> probes(List<CardData.Caution> cautions, Design design) {
        List<Fitting> fittings =
                design.kiln().fittings() == null ? List.of() : design.kiln().fittings();
        List<String> types = fittings.stream()
                .filter(f -> f.kind() == FittingKind.THERMOCOUPLE)
                .map(f -> String.valueOf(f.type()))
                .toList();
        boolean noble = !types.isEmpty() && NOBLE.containsAll(types);
        return cautions.stream()
                .map(c -> noble && c.words().equals(TYPE_K) ? new CardData.Caution(NOBLE_DRIFTS, c.stop()) : c)
                .toList();
    }

    /** Whether the kiln is known to stand under the sky or an open roof. */
    private static boolean openAir(Design design) {
        RoomPlace place = design.room() == null ? null : design.room().place();
        return place == RoomPlace.OUTDOORS || place == RoomPlace.OPEN_SHED;
    }

    /** Name of the lowest thermocouple in the wall where there are several, all with their places; null else. */
    private static String lowestProbe(Design design) {
        List<Fitting> fittings = design.kiln().fittings();
        List<Fitting> probes = fittings == null
                ? List.of()
                : fittings.stream()
                        .filter(f -> f.kind() == FittingKind.THERMOCOUPLE && f.on() == On.WALL)
                        .toList();
        return probes.size() < 2 || probes.stream().anyMatch(f -> f.at() == null)
                ? null
                : Collections.min(probes, Comparator.comparingDouble(f -> f.at().yMm()))
                        .name();
    }

    private static String fire(Design d) {
        if (d.burners() == null || d.burners().isEmpty()) {
            return d.allElectric() ? "electricity alone, no gas" : "no burner in the design";
        }
        Burner b = d.burners().get(0);
        int n = d.burners().size();
        List<String> parts = new ArrayList<>();
        parts.add(b.fuel() == null ? "gas" : b.fuel().id());
        parts.add(n == 1 ? "1 burner" : n + " burners");
        boolean same = d.burners().stream()
                .allMatch(o -> java.util.Objects.equals(o.jet(), b.jet())
                        && java.util.Objects.equals(o.heatNet(), b.heatNet()));
        if (same && b.jet() != null) {
            parts.add("jet " + b.jet().typed());
        }
        if (b.pressure() != null) {
            String typed = b.pressure().typed();
            parts.add(
                    typed.endsWith("mbar")
                            ? typed
                            : typed + " (" + Format.plain(b.pressure().si() / 100, 1) + " mbar)");
        }
        return String.join(", ", parts);
    }

    private static CardData.Plate plate(Design d, CardForecast computed) {
        List<Port> flues = d.ports().stream().filter(p -> p.role() == Role.FLUE).toList();
        if (flues.isEmpty()) {
            return null;
        }
        boolean shared = d.damper() != null && d.damper().shared();
        String where = flues.size() == 1 ? flues.get(0).name() : shared ? "all flues" : "each flue";
        return new CardData.Plate(
                where,
                flues.get(0).diameter().mm(),
                d.units() != UnitSystem.METRIC,
                marks(computed.bands(), d.units() != UnitSystem.METRIC),
                computed.close());
    }

    /** Steps that end at the same whole millimetre share a mark; the widest stands first. */
    private static List<CardData.Mark> marks(List<CardData.Band> bands, boolean inch) {
        Map<Long, List<CardData.Band>> alike = new TreeMap<>(Comparator.reverseOrder());
        bands.forEach(b -> alike.computeIfAbsent(Math.round(b.setMm()), k -> new ArrayList<>())
                .add(b));
        return alike.values().stream()
                .map(same -> new CardData.Mark(
                        same.stream().map(b -> b.step() + 1).toList(),
                        same.stream()
                                .map(CardData.Band::level)
                                .filter(l -> !l.isEmpty())
                                .distinct()
                                .toList(),
                        same.get(0).setMm(),
                        same.stream().mapToDouble(CardData.Band::lowMm).min().orElseThrow(),
                        same.stream().mapToDouble(CardData.Band::highMm).max().orElseThrow(),
                        inch ? inches(same) : ""))
                .toList();
    }

    /** As the forecast tells each of them; where they read otherwise, from the least to the most. */
    private static String inches(List<CardData.Band> same) {
        return same.stream()
                        .map(CardData.Band::setMm)
                        .sorted()
                        .map(Inches::nearest)
                        .map(i -> i.replace(" in", ""))
                        .distinct()
                        .collect(Collectors.joining("–"))
                + " in";
    }
}
