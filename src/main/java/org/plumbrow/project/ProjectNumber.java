package org.plumbrow.project;

/** What people call a project by: the branch's code, the year and a number that counts without a gap, {@code QV-2027-014}. */
record ProjectNumber(String branchCode, int year, int running) {

    String written() {
        return "%s-%d-%03d".formatted(branchCode, year, running);
    }
}
