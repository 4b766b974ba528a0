package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class SignInTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    Credentials credentials;

    private Visitor tamsin;

    @BeforeEach
    void aProjectManager() {
        tamsin = world.person("Tamsin", world.branch().id(), Role.PROJECT_MANAGER);
        credentials.change(tamsin.personId(), PASSWORD);
    }

    @Test
    void addressAndPasswordOpenASessionThatLeadsToTheProjects() {
        MvcTestResult signedIn = signIn(tamsin.email(), PASSWORD);
        assertThat(signedIn).hasStatus3xxRedirection().hasRedirectedUrl("/");
        Cookie session = signedIn.getResponse().getCookie("SESSION");
        assertThat(mvc.get().uri("/").cookie(session)).hasRedirectedUrl("/projects");
        assertThat(mvc.get().uri("/you").cookie(session))
                .hasStatusOk()
                .bodyText()
                .contains("Tamsin, project manager in");
    }

    @Test
    void theCaseOfTheAddressDoesNotCount() {
        assertThat(signIn("  " + tamsin.email().toUpperCase(java.util.Locale.ROOT) + " ", PASSWORD))
                .hasRedirectedUrl("/");
    }

    @Test
    void aWrongPasswordKeepsTheAddressAndSaysWhatToDo() {
        assertThat(signIn(tamsin.email(), "something else entirely"))
                .hasStatus(422)
                .bodyText()
                .contains(SignInDesk.WRONG)
                .contains("value=\"" + tamsin.email() + "\"")
                .doesNotContain("something else entirely");
    }

    @Test
    void whoIsNotSignedInIsLedToTheSignInPageAndOnFromThere() {
        assertThat(mvc.get().uri("/you?branch=QV")).hasRedirectedUrl("/sign-in?next=%2Fyou%3Fbranch%3DQV");
        MvcTestResult signedIn = mvc.post()
                .uri("/sign-in")
                .param("email", tamsin.email())
                .param("password", PASSWORD)
                .param("next", "/you")
                .with(csrf())
                .exchange();
        assertThat(signedIn).hasRedirectedUrl("/you");
    }

    @Test
    void anotherSiteIsNeverWhereOneGoesOn() {
        for (String elsewhere :
                new String[] {"https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example"}) {
            assertThat(mvc.post()
                            .uri("/sign-in")
                            .param("email", tamsin.email())
                            .param("password", PASSWORD)
                            .param("next", elsewhere)
                            .with(csrf()))
                    .hasRedirectedUrl("/");
        }
    }

    private MvcTestResult signIn(String email, String password) {
        return mvc.post()
                .uri("/sign-in")
                .param("email", email)
                .param("password", password)
                .with(csrf())
                .exchange();
    }
}
