package org.hidewright.core.picture;

import java.util.function.UnaryOperator;
import org.hidewright.api.drawing.Shape;

/**
 * One thing in a picture.
 *
 * @param of the part of the picture it is shown in alone; empty where it is shown in all
 * @param shape makes it, its words in the language of the maker
 */
record PictureShape(String of, Made shape) {
    /** Makes a shape whose words are looked up. */
    interface Made {
        Shape with(UnaryOperator<String> words);
    }
}
