package portwright.file;

import portwright.file.Json.Member;

/** The canonical form: two spaces, short objects and lists on one line of at most 110 columns. */
final class JsonWriter {
    static final int WIDTH = 110;

    private JsonWriter() {}

    static String write(Json root) {
        StringBuilder b = new StringBuilder(4096);
        block(root, 0, b);
        return b.append('\n').toString();
    }

    private static void value(Json v, int indent, int column, int after, StringBuilder b) {
        StringBuilder flat = new StringBuilder();
        if (flat(v, flat, WIDTH - column - after)) {
            b.append(flat);
        } else {
            block(v, indent, b);
        }
    }

    private static void block(Json v, int indent, StringBuilder b) {
        String pad = "  ".repeat(indent + 1);
        if (v instanceof Json.Obj o && !o.members().isEmpty()) {
            b.append("{\n");
            for (int i = 0; i < o.members().size(); i++) {
                Member m = o.members().get(i);
                String name = quote(m.name()) + ": ";
                int comma = i + 1 < o.members().size() ? 1 : 0;
                b.append(pad).append(name);
                value(m.value(), indent + 1, pad.length() + name.length(), comma, b);
                b.append(comma == 1 ? ",\n" : "\n");
            }
            b.append("  ".repeat(indent)).append('}');
        } else if (v instanceof Json.Arr a && !a.items().isEmpty()) {
            b.append("[\n");
            for (int i = 0; i < a.items().size(); i++) {
                int comma = i + 1 < a.items().size() ? 1 : 0;
                b.append(pad);
                value(a.items().get(i), indent + 1, pad.length(), comma, b);
                b.append(comma == 1 ? ",\n" : "\n");
            }
            b.append("  ".repeat(indent)).append(']');
        } else {
            flat(v, b, Integer.MAX_VALUE);
        }
    }

    /** Writes on one line; false as soon as it grows longer than {@code room}. Plain values always fit. */
    private static boolean flat(Json v, StringBuilder b, int room) {
        if (v instanceof Json.Obj o) {
            b.append('{');
            for (int i = 0; i < o.members().size(); i++) {
                Member m = o.members().get(i);
                b.append(i == 0 ? "" : ", ").append(quote(m.name())).append(": ");
                if (!flat(m.value(), b, room) || b.length() > room) {
                    return false;
                }
            }
            b.append('}');
            return b.length() <= room;
        }
        if (v instanceof Json.Arr a) {
            b.append('[');
            for (int i = 0; i < a.items().size(); i++) {
                b.append(i == 0 ? "" : ", ");
                if (!flat(a.items().get(i), b, room) || b.length() > room) {
                    return false;
                }
            }
            b.append(']');
            return b.length() <= room;
        }
        b.append(v instanceof Json.Text t ? t.raw() : v instanceof Json.Num n ? n.raw() : v.word());
        return true;
    }

    /** A JSON text literal; only what the standard demands is escaped. */
    static String quote(String s) {
        StringBuilder b = new StringBuilder(s.length() + 2).append('"');
        for (int i = 0; i < s.length(); i++) {
            char c = s.charAt(i);
            switch (c) {
                case '"' -> b.append("\\\"");
                case '\\' -> b.append("\\\\");
                case '\n' -> b.append("\\n");
                case '\t' -> b.append("\\t");
                case '\r' -> b.append("\\r");
                default -> {
                    if (c < 0x20 || Character.isSurrogate(c) && !paired(s, i)) {
                        b.append(String.format("\\u%04x", (int) c));
                    } else {
                        b.append(c);
                    }
                }
            }
        }
        return b.append('"').toString();
    }

    private static boolean paired(String s, int i) {
        return Character.isHighSurrogate(s.charAt(i))
                ? i + 1 < s.length() && Character.isLowSurrogate(s.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(s.charAt(i - 1));
    }
}
