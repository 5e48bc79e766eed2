package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.MethodParameter;
import org.springframework.core.ResolvableType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.trammel.shop.ShopTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every shape that the API takes or gives is described as what it is, and not as another module's of the same name. */
@ShopTest
class ApiSchemasTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping mapping;

    @Test
    void theDescribedPropertiesOfEachRecordAreItsOwn() throws Exception {
        JsonNode api = JsonMapper.shared()
                .readTree(mvc.perform(get("/api/docs/openapi").with(user("auditor")))
                        .andReturn()
                        .getResponse()
                        .getContentAsString());
        JsonNode schemas = api.path("components").path("schemas");
        Map<String, Set<String>> wrong = new TreeMap<>();
        Set<Class<?>> records = records();
        assertThat(records).hasSizeGreaterThan(100);
        for (Class<?> type : records) {
            JsonNode described = schemas.path(new SchemaNames().getNameOfClass(type));
            Set<String> own = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getName)
                    .collect(Collectors.toSet());
            Set<String> said = new HashSet<>(described.path("properties").propertyNames());
            if (described.isMissingNode() || !own.containsAll(said) || said.isEmpty() && !own.isEmpty()) {
                wrong.put(type.getName(), said);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Records that a verb of the API takes as its body or gives back, alone or in a list. */
    private Set<Class<?>> records() {
        Set<Class<?>> records = new LinkedHashSet<>();
        mapping.getHandlerMethods().forEach((info, method) -> {
            if (info.getPatternValues().stream().anyMatch(path -> path.startsWith("/api/v1/"))) {
                Stream.concat(Stream.of(method.getReturnType()), bodies(method))
                        .map(ResolvableType::forMethodParameter)
                        .flatMap(type -> Stream.concat(Stream.of(type), List.of(type.getGenerics()).stream()))
                        .map(type -> type.resolve(Object.class))
                        .filter(Class::isRecord)
                        .filter(type -> type.getName().startsWith("org.trammel."))
                        .forEach(records::add);
            }
        });
        return records;
    }

    private static Stream<MethodParameter> bodies(HandlerMethod method) {
        return Arrays.stream(method.getMethodParameters())
                .filter(parameter -> parameter.hasParameterAnnotation(RequestBody.class));
    }
}
