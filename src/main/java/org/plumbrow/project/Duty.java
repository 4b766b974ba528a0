package org.plumbrow.project;

/** What somebody acts for on a project: a name that says who acts next, not a role. */
public enum Duty {
    PROJECT_MANAGER("project manager"),
    SURVEYOR("surveyor"),
    DESIGNER("designer"),
    PERMITS("permits"),
    ELECTRICIAN("electrician"),
    PERSON_IN_CHARGE("person in charge on the day");

    private final String words;

    Duty(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
