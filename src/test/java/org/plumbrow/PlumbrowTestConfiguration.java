package org.plumbrow;

import javax.sql.DataSource;
import net.ttddyy.dsproxy.support.ProxyDataSourceBuilder;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** What all tests share, so that they share one Spring context: a clock to set and a counter of queries. */
@TestConfiguration(proxyBeanMethods = false)
class PlumbrowTestConfiguration {

    @Bean
    @Primary
    TestClock testClock() {
        return new TestClock();
    }

    @Bean
    static BeanPostProcessor countedDataSource() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof DataSource dataSource
                        ? ProxyDataSourceBuilder.create(dataSource)
                                .listener(new Queries.Listener())
                                .build()
                        : bean;
            }
        };
    }
}
