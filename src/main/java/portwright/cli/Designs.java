package portwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import portwright.file.DesignFile;
import portwright.file.Problem;
import portwright.file.ReadResult;
import portwright.model.Design;

/** Reads the design that a command names. */
final class Designs {
    private Designs() {}

    /** The file read; ends the command with all problems of the file when it cannot be used. */
    static ReadResult open(Path file) {
        ReadResult result = load(file);
        if (result.ok()) {
            return result;
        }
        int n = result.problems().size();
        List<String> lines = new ArrayList<>();
        lines.add(file + ": " + n + (n == 1 ? " error" : " errors") + ". Nothing was changed.");
        result.problems()
                .forEach(p -> lines.add("  "
                        + (p.line() > 0 ? "line " + p.line() + ", column " + p.column() : "file")
                        + (p.path().isEmpty() ? "" : ", " + p.path())
                        + ": "
                        + p.message()));
        Problem first = result.problems().get(0);
        if (n == 1 && first.line() > 0 && first.path().isEmpty()) {
            lines.add("  What stands after that place could not be read: mend it, then check again.");
        }
        throw new UserError(Cli.MISUSE, lines);
    }

    private static ReadResult load(Path file) {
        if (file.toString().isEmpty()) {
            throw UserError.option(
                    "the name of the design is empty. Write the path of a design, or make one with: new --list");
        }
        try {
            return DesignFile.read(file);
        } catch (NoSuchFileException e) {
            throw new UserError(
                    Cli.MISUSE,
                    file + ": there is no such file. Write the path of a design, or make one with: new --list");
        } catch (AccessDeniedException e) {
            throw new UserError(Cli.MISUSE, file + ": cannot be read (no permission).");
        } catch (FileSystemException e) {
            throw new UserError(
                    Cli.MISUSE,
                    file + ": cannot be read (" + (e.getReason() == null ? "no such file" : e.getReason()) + ").");
        } catch (IOException e) {
            throw new UserError(Cli.MISUSE, file + ": cannot be read (" + e.getMessage() + ").");
        }
    }

    /** The design of a file. */
    static Design read(Path file) {
        return open(file).design();
    }
}
