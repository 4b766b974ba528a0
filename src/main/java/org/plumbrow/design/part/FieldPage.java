package org.plumbrow.design.part;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A page of fields with a version of its own; an enumeration has one constant for each such page. */
public interface FieldPage {

    /**
     * @param title as people call it
     * @param repeated whether it is a list of rows
     */
    record Fields(String title, boolean repeated, List<Col> cols) {

        public Fields {
            cols = List.copyOf(cols);
        }

        public static Fields one(String title, Col... cols) {
            return new Fields(title, false, List.of(cols));
        }

        public static Fields rows(String title, Col... cols) {
            return new Fields(title, true, List.of(cols));
        }
    }

    Fields fields();

    /** Of the constant. */
    String name();

    default String title() {
        return fields().title();
    }

    /** Whether it is a list of rows. */
    default boolean isRepeated() {
        return fields().repeated();
    }

    default List<Col> cols() {
        return fields().cols();
    }

    /** As it stands in an address: "site". */
    default String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    static <E extends Enum<E> & FieldPage> Optional<E> of(Class<E> pages, String slug) {
        return Arrays.stream(pages.getEnumConstants())
                .filter(page -> page.slug().equals(slug))
                .findFirst();
    }
}
