package org.plumbrow.web;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.springframework.context.annotation.Configuration;
import org.springframework.format.Formatter;
import org.springframework.format.FormatterRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Numbers in forms are read as people write them. */
@Configuration
class WebSetUp implements WebMvcConfigurer {

    @Override
    public void addFormatters(FormatterRegistry registry) {
        for (Class<? extends Number> type : List.of(Integer.class, Long.class, Double.class, BigDecimal.class)) {
            register(registry, type);
        }
    }

    private static <T extends Number> void register(FormatterRegistry registry, Class<T> type) {
        registry.addFormatterForFieldType(type, new Formatter<T>() {
            @Override
            public T parse(String text, Locale locale) {
                return type.cast(NumbersAsWritten.read(text, type));
            }

            @Override
            public String print(T number, Locale locale) {
                return NumbersAsWritten.write(number);
            }
        });
    }
}
