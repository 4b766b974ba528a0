package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** The database's own refusals, in words. */
@PlumbrowTest
class ConstraintSentencesTest {

    @Autowired
    ConstraintSentences sentences;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    TestWorld world;

    @Test
    void aTakenCodeIsSaidInWordsAtItsField() {
        String code = world.branch().code();
        DataIntegrityViolationException refused = refused(() -> insertBranch(code, "Second"));
        assertThat(ConstraintSentences.constraint(refused)).contains("branch_code_taken");
        assertThat(sentences.refusal(refused, "code", code))
                .isEqualTo(new Refusal("code", "Another branch is called " + code + ". Choose other letters."));
    }

    @Test
    void aConstraintWithoutASentenceStaysAFaultOfOurs() {
        DataIntegrityViolationException refused = refused(() -> insertBranch("lower", "Third"));
        assertThat(ConstraintSentences.constraint(refused)).contains("branch_code_form");
        assertThatThrownBy(() -> sentences.refusal(refused, "code")).isSameAs(refused);
    }

    private void insertBranch(String code, String name) {
        jdbc.sql("insert into branch (id, code, name, zone) values (?, ?, ?, 'America/New_York')")
                .params(Ids.next(), code, name)
                .update();
    }

    private DataIntegrityViolationException refused(Runnable change) {
        return catchThrowableOfType(
                DataIntegrityViolationException.class,
                () -> BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> change.run())));
    }
}
