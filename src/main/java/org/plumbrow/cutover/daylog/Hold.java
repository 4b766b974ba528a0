package org.plumbrow.cutover.daylog;

import java.util.List;

/** The five points at which nobody goes on before the named people have signed. */
public enum Hold {
    H1(Part.PERSON_IN_CHARGE, Part.CUSTOMER),
    H2(Part.ELECTRICIAN),
    H3(Part.SECOND_PERSON),
    H4(Part.ELECTRICIAN),
    H5(Part.CUSTOMER);

    private final List<Part> parts;

    Hold(Part... parts) {
        this.parts = List.of(parts);
    }

    /** Whose signatures it takes, in their order. */
    public List<Part> parts() {
        return parts;
    }

    /** As whom somebody signs. */
    public enum Part {
        PERSON_IN_CHARGE("person in charge"),
        CUSTOMER("customer, or who decides for the farm or home"),
        ELECTRICIAN("licensed electrician"),
        SECOND_PERSON("second qualified person"),
        INSPECTOR("inspector");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
