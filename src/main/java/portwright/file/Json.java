package portwright.file;

import java.util.List;

/** A JSON value and where it stands. Numbers and texts keep their characters as typed. */
sealed interface Json {
    /** Where it begins; {@link Spot#NONE} for values made by the program. */
    Spot spot();

    /** What it is, in words for messages. */
    String word();

    /** Line and column from 1. */
    record Spot(int line, int column) {
        static final Spot NONE = new Spot(0, 0);
    }

    /** A named value of an object; {@code spot} is where the name begins. */
    record Member(String name, Spot spot, Json value) {}

    /** An object; order kept. */
    record Obj(List<Member> members, Spot spot) implements Json {
        public Obj {
            members = List.copyOf(members);
        }

        Json get(String name) {
            for (Member m : members) {
                if (m.name().equals(name)) {
                    return m.value();
                }
            }
            return null;
        }

        @Override
        public String word() {
            return "an object { … }";
        }
    }

    /** An array. */
    record Arr(List<Json> items, Spot spot) implements Json {
        public Arr {
            items = List.copyOf(items);
        }

        @Override
        public String word() {
            return "a list [ … ]";
        }
    }

    /** A text; {@code raw} is the literal with its quotes as typed. */
    record Text(String value, String raw, Spot spot) implements Json {
        @Override
        public String word() {
            return "the text " + raw;
        }
    }

    /** A number as typed. */
    record Num(String raw, Spot spot) implements Json {
        @Override
        public String word() {
            return "the number " + raw;
        }
    }

    /** True or false. */
    record Bool(boolean value, Spot spot) implements Json {
        @Override
        public String word() {
            return Boolean.toString(value);
        }
    }

    /** Null, which no field of a design may be. */
    record Null(Spot spot) implements Json {
        @Override
        public String word() {
            return "null";
        }
    }
}
