package org.plumbrow.demo;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.StartUpLine;
import org.plumbrow.web.Role;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Says on the console who can be signed in as: the first person of each role, and the password that all share. */
@Component
@WithDemo
@Order(10)
class DemoSignIn implements StartUpLine {

    private final DemoPassword password;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    DemoSignIn(DemoPassword password, JdbcClient jdbc, TransactionTemplate transaction) {
        this.password = password;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public List<String> lines() {
        List<SeedRow> people = SeedRow.of("people.csv");
        if (!isLoaded(people.get(0).text("email"))) {
            return List.of();
        }
        String who = Arrays.stream(Role.values())
                .flatMap(role -> people.stream()
                        .filter(person -> person.text("roles").contains(role.name()))
                        .limit(1)
                        .map(person -> person.text("email") + " (" + role.words() + ")"))
                .collect(Collectors.joining(", "));
        return List.of("Sign in as " + who + ".", "Their password: " + password.kept());
    }

    private boolean isLoaded(String email) {
        return BranchWall.everywhere(
                () -> transaction.execute(status -> jdbc.sql("select exists (select from person where email = ?)")
                        .param(email)
                        .query(Boolean.class)
                        .single()));
    }
}
