package portwright.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import portwright.check.NotChecked;

/** Fields of the design file by the names that the forms show: {@code burners[0].tip} is "tip" of burner 1 there. */
public final class FieldNames {
    private static final Pattern INDEX = Pattern.compile("\\[(\\d+)\\]");

    /** A path of the file within words: two names or more, parted by points. */
    private static final Pattern PATH =
            Pattern.compile("\\b[a-z][A-Za-z]*(?:\\[\\d+\\])*(?:\\.[a-z][A-Za-z]*(?:\\[\\d+\\])*)+");

    /** Every form there is. */
    public static final List<FormSpec> FORMS = List.of(
            Catalog.design(),
            KilnCatalog.chamber(),
            KilnCatalog.plan(),
            KilnCatalog.wall(),
            KilnCatalog.slab("floor"),
            KilnCatalog.slab("lid"),
            KilnCatalog.elements(),
            KilnCatalog.fittings(),
            KilnCatalog.fittingsWhole(),
            KilnCatalog.shelves(),
            Catalog.ports(),
            Catalog.drilling(),
            Catalog.burners(),
            Catalog.damper(),
            Catalog.room(),
            Catalog.supply(),
            Catalog.firing());

    /** Path without indexes to where it stands, form before field. */
    private static final Map<String, Named> ALL = all();

    private record Named(String form, String label) {}

    private FieldNames() {}

    private static Map<String, Named> all() {
        Map<String, Named> out = new LinkedHashMap<>();
        for (FormSpec f : FORMS) {
            put(out, "", "", f);
        }
        return out;
    }

    private static void put(Map<String, Named> out, String above, String titles, FormSpec form) {
        String path = join(above, form.path());
        String title = titles.isEmpty() ? form.title() : titles + ", " + lower(form.title());
        if (!path.isEmpty()) {
            out.putIfAbsent(path, new Named(title, ""));
        }
        form.fields().forEach(f -> out.putIfAbsent(join(path, f.key()), new Named(title, f.label())));
        form.inner().forEach(f -> put(out, path, title, f));
    }

    private static String join(String above, String path) {
        return above.isEmpty() ? path : path.isEmpty() ? above : above + "." + path;
    }

    private static String lower(String s) {
        return Character.toLowerCase(s.charAt(0)) + s.substring(1);
    }

    /** {@code Burners 1: tip}, or what was given where no form has it. */
    public static String of(String need) {
        int end = need.indexOf(" (");
        String path = end < 0 ? need : need.substring(0, end);
        Named n = ALL.get(INDEX.matcher(path).replaceAll(""));
        if (n == null) {
            return need;
        }
        String number = INDEX.matcher(path)
                .results()
                .map(m -> " " + (Integer.parseInt(m.group(1)) + 1))
                .collect(Collectors.joining(","));
        return n.form() + number + (n.label().isEmpty() ? "" : ": " + n.label()) + (end < 0 ? "" : need.substring(end));
    }

    /** Names of some fields, parted by semicolons. */
    public static String of(List<String> needs) {
        return needs.stream().map(FieldNames::of).collect(Collectors.joining("; "));
    }

    /** Words in which each path of the file that a form shows has the form's name. */
    public static String inWords(String text) {
        return PATH.matcher(text).replaceAll(m -> Matcher.quoteReplacement(of(m.group())));
    }

    /** What a rule lacks, as a sentence without its full stop: {@code Fill in Firing: ware; Burners 1: tip}, or its cause. */
    public static String lacking(NotChecked n) {
        return n.cause().isEmpty()
                ? "Fill in " + of(n.needs())
                : Character.toUpperCase(n.cause().charAt(0)) + n.cause().substring(1);
    }

    /** A rule that lacks input, within a sentence: {@code CO in the room (fill in Room: volume)}. */
    public static String told(NotChecked n) {
        String lacks = lacking(n);
        return RuleWords.within(n.rule()) + " (" + Character.toLowerCase(lacks.charAt(0)) + lacks.substring(1) + ")";
    }
}
