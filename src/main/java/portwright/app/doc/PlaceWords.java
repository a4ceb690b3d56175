package portwright.app.doc;

/** A message of the file's reader in the words of the window, where no axis has a letter. */
public final class PlaceWords {
    private PlaceWords() {}

    /** The same message with the wall's two directions named. */
    public static String of(String message) {
        return message.replace(": u runs from ", ": along the wall from ")
                .replace(": v runs from ", ": up the wall from ");
    }
}
