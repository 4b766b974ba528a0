package org.plumbrow.database.server;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/** Starts the server of this machine where nobody named another one with {@code spring.datasource.url}. */
@Configuration(proxyBeanMethods = false)
@Conditional(LocalPostgresConfiguration.NoServerNamed.class)
class LocalPostgresConfiguration {

    @Bean(destroyMethod = "close")
    LocalPostgres localPostgres(@Value("${plumbrow.data-dir}") String dataFolder) {
        return LocalPostgres.start(Path.of(dataFolder), LocalPostgres.Durability.KEEPS_EVERY_COMMIT);
    }

    @Bean
    JdbcConnectionDetails localConnection(LocalPostgres server) {
        LocalPostgres.Connection connection = server.ordinaryConnection("plumbrow");
        return new JdbcConnectionDetails() {
            @Override
            public String getJdbcUrl() {
                return connection.url();
            }

            @Override
            public String getUsername() {
                return connection.user();
            }

            @Override
            public String getPassword() {
                return connection.password();
            }
        };
    }

    static final class NoServerNamed implements Condition {
        @Override
        public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
            return !StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"));
        }
    }
}
