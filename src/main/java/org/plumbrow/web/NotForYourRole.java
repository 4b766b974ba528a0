package org.plumbrow.web;

/** The thing is there, the person's role may not open or change it: answered with 403 and who may. */
public final class NotForYourRole extends RuntimeException {

    private final String who;

    public NotForYourRole(May act) {
        super(act + " is not for this role");
        this.who = act.who();
    }

    /** For rules finer than {@link May}. @param who who may, as the sentence's subject, plural: "Crew leads of this crew" */
    public NotForYourRole(String who) {
        super("only for: " + who);
        this.who = who;
    }

    public String sentence() {
        return who + " may do this.";
    }
}
