package portwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import portwright.data.LimitRow;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.UserLimit;
import portwright.source.Source;

/** The rule book's limits with the design's own in their place. */
public final class LimitsInForce implements Limits {
    private final LimitTable table;
    private final Map<String, Map<String, UserLimit>> own;

    private final boolean quick;

    public LimitsInForce(LimitTable table, Design design) {
        this(table, design, false);
    }

    /** @param quick see {@link Limits#quick} */
    public LimitsInForce(LimitTable table, Design design, boolean quick) {
        this.quick = quick;
        this.table = table;
        this.own = design.limits() == null ? Map.of() : design.limits();
    }

    @Override
    public double value(String rule, String name) {
        UserLimit user = own(rule, name);
        return user != null ? user.value() : row(rule, name).value();
    }

    @Override
    public boolean setByUser(String rule, String name) {
        return own(rule, name) != null;
    }

    @Override
    public boolean quick() {
        return quick;
    }

    @Override
    public Source source(String rule, String name) {
        return row(rule, name).source();
    }

    /** The design's own limits in the order of the file. */
    public List<OwnLimit> own() {
        List<OwnLimit> out = new ArrayList<>();
        own.forEach((rule, limits) -> limits.forEach((name, l) ->
                out.add(new OwnLimit(rule, name, l.typed(), row(rule, name).typed()))));
        return out;
    }

    private UserLimit own(String rule, String name) {
        return own.getOrDefault(rule, Map.of()).get(name);
    }

    private LimitRow row(String rule, String name) {
        return table.find(rule, name).orElseThrow(() -> new IllegalStateException("no limit " + name + " of " + rule));
    }
}
