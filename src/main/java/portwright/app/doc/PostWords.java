package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfPlate;

/** Posts that stand beside their shelf and bear nothing. */
final class PostWords {
    /** A post whose middle is no farther out than this still stands under the edge, mm. */
    private static final double EDGE_MM = 0.05;

    private PostWords() {}

    /** Which posts of a shelf do, and what to do; empty where none does. */
    static String of(KilnGeometry kiln, String shelf) {
        for (ShelfPlate s : kiln.shelves()) {
            if (s.name().equals(shelf) && s.posts() != null) {
                List<String> out = new ArrayList<>();
                for (int i = 0; i < s.posts().size(); i++) {
                    if (s.shape().distance(s.posts().get(i).centre()) > EDGE_MM) {
                        out.add(String.valueOf(i + 1));
                    }
                }
                return out.isEmpty() ? "" : words(out);
            }
        }
        return "";
    }

    private static String words(List<String> posts) {
        boolean one = posts.size() == 1;
        return (one ? "Post " : "Posts ") + String.join(", ", posts)
                + (one ? " stands" : " stand") + " beside the shelf and " + (one ? "bears" : "bear")
                + " nothing. Move " + (one ? "it" : "them") + " under it, or turn the shelf.";
    }
}
