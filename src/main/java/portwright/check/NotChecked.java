package portwright.check;

import java.util.List;

/** A rule that lacks input: the fields to add, and what stays unproven without it. */
public record NotChecked(String rule, List<String> needs, Forbids forbids) {}
