package portwright.report;

import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.data.LocalCodes;
import portwright.units.PlainSigns;

/** Verdicts and findings as Markdown, for notes and messages. */
public final class FindingsMarkdown {
    private FindingsMarkdown() {}

    /** The whole text; the user's own words are escaped. {@code mark} is the content mark that every paper of the same design carries. */
    public static String write(CheckResult r, String mark) {
        StringBuilder b = new StringBuilder("# ").append(escape(r.title())).append("\n\n");
        b.append("**")
                .append(VerdictLine.drilling(r))
                .append("** **")
                .append(VerdictLine.lighting(r))
                .append("** Content ")
                .append(mark)
                .append(".\n\n");
        b.append(LocalCodes.FIRST).append("\n\n## Findings\n\n");
        if (r.findings().isEmpty()) {
            b.append("None in what was checked.\n");
        }
        for (Finding f : r.findings()) {
            b.append("- **").append(f.severity().id()).append("** ").append(f.rule());
            if (f.severity() == Severity.STOP && f.forbids() != Forbids.NOTHING) {
                b.append(", forbids ").append(f.forbids().id());
            }
            b.append(": ").append(escape(f.message()));
            if (f.remedy() != null && !f.remedy().isBlank()) {
                b.append(' ').append(escape(f.remedy()));
            }
            b.append(" *")
                    .append(escape(f.source().line()))
                    .append(f.limitSetByUser() ? ", your limit" : "")
                    .append("*\n");
        }
        List<String> not = r.notChecked().stream()
                .map(n -> "- " + n.rule() + ": " + escape(n.words()))
                .distinct()
                .toList();
        b.append("\n## Not checked\n\n")
                .append(not.isEmpty() ? "Every rule was checked." : String.join("\n", not))
                .append('\n');
        if (!r.ownLimits().isEmpty()) {
            b.append("\n## Your own limits\n\n");
            r.ownLimits().forEach(l -> b.append("- ").append(escape(l.words())).append('\n'));
        }
        return b.toString();
    }

    private static String escape(String t) {
        return PlainSigns.line(t).replaceAll("([\\\\`*_\\[\\]<>#|])", "\\\\$1");
    }
}
