package org.plumbrow.web;

/**
 * An entry of the navigation; each room contributes its own as beans.
 *
 * @param order ascending
 * @param key message key of its name
 * @param href where it leads, without the branch
 * @param act who sees it
 * @param where in the row of places, or on the page behind the person's own name
 */
public record Place(int order, String key, String href, May act, Where where) {

    /** The five places of daily work stand in the row; everything else hangs under the person's name. */
    public enum Where {
        ROW,
        OWN_PAGE
    }

    public static Place inTheRow(int order, String key, String href, May act) {
        return new Place(order, key, href, act, Where.ROW);
    }

    public static Place underOwnName(int order, String key, String href, May act) {
        return new Place(order, key, href, act, Where.OWN_PAGE);
    }
}
