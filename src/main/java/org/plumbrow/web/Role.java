package org.plumbrow.web;

/** What a person is in a branch; several are possible. The customer has none: a private link is not an account. */
public enum Role {
    OWNER("firm owner", "Firm owners"),
    MANAGER("branch manager", "Branch managers"),
    PROJECT_MANAGER("project manager", "Project managers"),
    DESIGNER("designer", "Designers"),
    CREW_LEAD("crew lead", "Crew leads");

    private final String words;
    private final String plural;

    Role(String words, String plural) {
        this.words = words;
        this.plural = plural;
    }

    public String words() {
        return words;
    }

    public String plural() {
        return plural;
    }
}
