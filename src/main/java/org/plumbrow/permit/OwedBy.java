package org.plumbrow.permit;

/** Who owes the answer. The names are stored. */
public enum OwedBy {
    PERMIT_OFFICE("Permit office of the site"),
    UTILITY("Utility of the site"),
    LOCATE_SERVICE("Locate service"),
    SUPPLIER("Supplier"),
    CUSTOMER("Customer"),
    US("Us");

    private final String words;

    OwedBy(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
