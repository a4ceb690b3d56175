package portwright.app.doc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import portwright.file.DesignText;

/** What fields hold that cannot be read, by path: the design keeps its last good values, and no paper leaves the window until each is settled. */
public final class Unread {
    private static final Pattern ITEM = Pattern.compile("^(.*?)\\[(\\d+)\\](.*)$");

    /**
     * One such entry.
     *
     * @param path of the field; those of the Paper step begin with {@code print.}
     * @param field in words
     * @param typed what it holds
     * @param error why that is wrong
     * @param good the last good value, in use; empty when there is none
     */
    public record Entry(String path, String field, String typed, String error, String good) {
        /** The step that has the field. */
        public Step step() {
            return path.startsWith("print.") ? Step.PAPER : Step.ofField(path, "");
        }

        /** The entry and what is used in its place. */
        public String words() {
            return (error.contains(typed) ? "" : "\"" + typed + "\": ")
                    + error
                    + (good.isEmpty() ? " The field stays empty." : " The last good value is used: " + good + ".");
        }
    }

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Runnable heard;

    /** @param heard called whenever there is another set of entries */
    Unread(Runnable heard) {
        this.heard = heard;
    }

    /** All of them, the oldest first. */
    public List<Entry> all() {
        return List.copyOf(entries.values());
    }

    /** Those that a step has to show; Paper shows all. */
    public List<Entry> of(Step step) {
        return entries.values().stream()
                .filter(e -> step == Step.PAPER || e.step() == step)
                .toList();
    }

    /** What a field holds; empty when it can be read. */
    public Optional<Entry> at(String path) {
        return Optional.ofNullable(entries.get(path));
    }

    /** A field holds something that cannot be read. */
    public void put(Entry e) {
        if (!e.equals(entries.put(e.path(), e))) {
            heard.run();
        }
    }

    /** A field can be read again, or its entry is given up. */
    public void settle(String path) {
        if (entries.remove(path) != null) {
            heard.run();
        }
    }

    /** Why no paper leaves the window; null when nothing holds it back. */
    public String forbids() {
        if (entries.isEmpty()) {
            return null;
        }
        List<String> names = entries.values().stream().map(Entry::field).toList();
        return (names.size() == 1
                        ? "The field " + names.get(0) + " holds something that cannot be read"
                        : "The fields " + String.join(", ", names) + " hold something that cannot be read")
                + ": the pages show the last good value. Nothing is saved or printed until that is settled.";
    }

    void clear() {
        entries.clear();
    }

    /** Follows parts that take another place in their list; what belongs to a part that goes, goes with it, and so does an entry whose field has another good value now. */
    void follow(DesignText was, DesignText is) {
        for (Entry e : all()) {
            String to = moved(was, is, e.path());
            if (!e.path().equals(to)) {
                entries.remove(e.path());
                if (to != null) {
                    entries.put(to, new Entry(to, e.field(), e.typed(), e.error(), e.good()));
                }
            }
        }
    }

    private static String moved(DesignText was, DesignText is, String path) {
        Matcher m = ITEM.matcher(path);
        if (m.matches() && was.size(m.group(1)) != is.size(m.group(1))) {
            String list = m.group(1);
            String item = was.getJson(list + "[" + m.group(2) + "]").orElse("");
            for (int i = 0; i < is.size(list); i++) {
                if (is.getJson(list + "[" + i + "]").orElse("").equals(item)) {
                    return list + "[" + i + "]" + m.group(3);
                }
            }
            return null;
        }
        String parent = path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : path;
        boolean gone = was.has(parent) && !is.has(parent);
        return gone || !was.getJson(path).equals(is.getJson(path)) ? null : path;
    }

    /** A field in words: its part or group, then its label. */
    static String name(DesignText text, String base, String label) {
        List<String> words = new ArrayList<>();
        for (String at = base; !at.isEmpty(); at = at.contains(".") ? at.substring(0, at.lastIndexOf('.')) : "") {
            Optional<String> part = text.get(at + ".name").filter(n -> !n.isBlank());
            String last = at.substring(at.lastIndexOf('.') + 1);
            Matcher m = ITEM.matcher(last);
            if (part.isPresent()) {
                words.add(0, part.get());
                break;
            } else if (m.matches()) {
                words.add(0, m.group(1).replaceAll("s$", "") + " " + (Integer.parseInt(m.group(2)) + 1));
                break;
            }
            words.add(0, last);
        }
        words.add(label);
        return String.join(
                " ", words.size() > 2 && words.get(0).equals("kiln") ? words.subList(1, words.size()) : words);
    }
}
