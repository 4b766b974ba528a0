package org.plumbrow.account.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class KeptPhoneTest {

    private static final String PASSWORD = "grommet lantern quarry fig";

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    Credentials credentials;

    @Autowired
    JdbcClient jdbc;

    private Visitor jory;
    private TestBrowser phone;

    @BeforeEach
    void aCrewLeadsPhone() {
        jory = world.person("Jory", world.branch().id(), Role.CREW_LEAD);
        credentials.change(jory.personId(), PASSWORD);
        phone = new TestBrowser(mvc).always(request -> request.header(HttpHeaders.USER_AGENT, "Android Mobile"));
    }

    @Test
    void aKeptPhoneSignsInByItselfForFourteenDays() {
        keep();
        phone.lose("SESSION");
        clock.pass(Duration.ofDays(14).minusSeconds(1));
        assertThat(phone.open("/you")).hasStatusOk().bodyText().contains("Android phone or tablet, last seen");
        phone.lose("SESSION");
        clock.pass(Duration.ofSeconds(1));
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
        assertThat(phone.cookie("PHONE")).as("what opens nothing is let go of").isNull();
    }

    @Test
    void withoutTheTickNothingIsKept() {
        phone.signIn(jory.email(), PASSWORD);
        assertThat(phone.cookie("PHONE")).isNull();
    }

    @Test
    void itsOwnerSeesAndEndsItAndNobodyElseCan() {
        keep();
        Visitor other = world.person("Bo", world.branch().id(), Role.CREW_LEAD);
        credentials.change(other.personId(), PASSWORD);
        phone.open("/you");
        String end = phone.page().selectFirst("form[action^=/you/devices/]").attr("action");

        TestBrowser others = new TestBrowser(mvc);
        others.signIn(other.email(), PASSWORD);
        others.open("/you");
        String token = others.page().selectFirst("input[name=_csrf]").val();
        assertThat(others.post(end, Map.of("_csrf", token))).hasStatus(404);

        assertThat(phone.submit(end, Map.of())).hasRedirectedUrl("/you");
        phone.lose("SESSION");
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
    }

    @Test
    void signingOutLetsGoOfThePhone() {
        keep();
        phone.open("/you");
        phone.submit("/sign-out", Map.of());
        assertThat(phone.cookie("PHONE")).isNull();
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
    }

    @Test
    void whatThePhoneCarriesIsKeptAsAHashOnlyAndNoScriptReadsIt() {
        MvcTestResult signedIn = keep();
        assertThat(signedIn.getResponse().getHeaders(HttpHeaders.SET_COOKIE))
                .anySatisfy(cookie -> assertThat(cookie)
                        .startsWith("PHONE=")
                        .contains("HttpOnly")
                        .contains("SameSite=Lax")
                        .contains("Path=/")
                        .contains("Max-Age=1209600"));
        assertThat(jdbc.sql("select count(*) from device where token_hash = ?")
                        .param(phone.cookie("PHONE"))
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void aPersonWhoMustHaveASecondFactorByNowHasToSignInAnew() {
        keep();
        phone.lose("SESSION");
        jdbc.sql("update person set owns_firm = true where id = ?")
                .param(jory.personId())
                .update();
        assertThat(phone.open("/you")).hasStatus3xxRedirection();
    }

    private MvcTestResult keep() {
        phone.open("/sign-in");
        return phone.submit("/sign-in", Map.of("email", jory.email(), "password", PASSWORD, "keep", "true"));
    }
}
