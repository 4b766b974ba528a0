package org.plumbrow.design.drawing;

/**
 * A drawing before it has its frame.
 *
 * @param says what a colleague would say of it, for those who do not see it
 */
record Drawn(String slug, String title, String number, String scale, String says, Canvas canvas) {

    static final String NOT_TO_SCALE = "not to scale";
}
