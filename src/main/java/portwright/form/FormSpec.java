package portwright.form;

import java.util.List;

/**
 * A form: fields of one object of the design file, forms inside it, and lists of further objects.
 *
 * @param path path of the object below its parent form; for an item of a list the list's path
 * @param title in words
 * @param template JSON of a fresh object; {@code {inch|metric}} stands for the user's system; null when the object always exists
 * @param list whether {@code path} is a list of such objects
 */
public record FormSpec(
        String path, String title, String template, boolean list, List<FieldSpec> fields, List<FormSpec> inner) {
    public static FormSpec object(
            String path, String title, String template, List<FieldSpec> fields, FormSpec... inner) {
        return new FormSpec(path, title, template, false, fields, List.of(inner));
    }

    public static FormSpec list(String path, String title, String template, List<FieldSpec> fields, FormSpec... inner) {
        return new FormSpec(path, title, template, true, fields, List.of(inner));
    }
}
