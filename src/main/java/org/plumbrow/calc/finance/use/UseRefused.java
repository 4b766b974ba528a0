package org.plumbrow.calc.finance.use;

/** Ends the reading of a file; caught once by each reader. */
final class UseRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient UseFinding finding;

    UseRefused(String what, String cure) {
        super(what);
        this.finding = new UseFinding(UseFinding.Severity.REFUSED, what, cure);
    }

    UseFinding finding() {
        return finding;
    }
}
